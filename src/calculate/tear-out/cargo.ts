import type { Figure } from '../figure.ts';
import type { Existing, Hollow, OldSteps, Steel, Stream } from '../job.ts';
import type { ExistingFigures } from './existing-figures.ts';
import type { GreenFigures } from './green-figures.ts';
import type { HollowFigures } from './hollow-figures.ts';
import type { PartFigures } from './part-figures.ts';
import type { PostFigures } from './post-figures.ts';
import type { SoilFigures } from './soil-figures.ts';

/** Something that is hauled away, all of one stream. */
export type Cargo = {
  /** Of its own among all cargo. */
  readonly name: string;
  /**
   * Id of the existing or hollow thing it comes off; `posts.`, `old-steps.` or `green.` before the id of
   * one of those; null for soil dug out under a slab.
   */
  readonly existingId: string | null;
  readonly stream: Stream;
  /** On the heavy side where a thickness is assumed, with all that sticks to it [lb]. */
  readonly weight: Figure;
  /** In the box [yd3]. */
  readonly 'loose-volume': Figure;
  /** In the box [lb/cu ft]. */
  readonly 'loose-unit-weight': Figure;
  /** Null where it is not loaded by the square foot. */
  readonly 'weight-per-sq-ft': Figure | null;
};

/** A flat thing, in one piece with all that sticks to it. */
export function flatCargo(thing: Existing, figures: ExistingFigures): Cargo {
  return {
    name: thing.id,
    existingId: thing.id,
    stream: streamOfExisting(thing),
    weight: figures['load-weight'] ?? figures.weight,
    'loose-volume': figures['load-loose-volume'] ?? figures['loose-volume'],
    'loose-unit-weight': figures['loose-unit-weight'],
    'weight-per-sq-ft': figures['weight-per-sq-ft'],
  };
}

/** Walls, footing and fill of a hollow thing, which come apart and go their own ways. */
export function hollowCargo(thing: Hollow, figures: HollowFigures): readonly Cargo[] {
  const concrete = streamOfConcrete(thing.steel);
  const parts: readonly (readonly [part: string, Stream, PartFigures | undefined])[] = [
    ['walls', thing.material === 'concrete' ? concrete : 'masonry', figures.walls],
    ['footing', concrete, figures.footing],
    ['fill', thing.fill?.material === 'concrete' ? concrete : 'soil', figures.fill],
  ];
  return parts.flatMap(([part, stream, made]) =>
    // Two hyphens: no id of a job has them, so that the name is no other thing's.
    made === undefined ? [] : [looseCargo(`${thing.id}--${part}`, thing.id, stream, made)],
  );
}

/** Footings of posts. */
export function postsCargo(id: string, { footings }: PostFigures): Cargo {
  return looseCargo(`posts--${id}`, `posts.${id}`, streamOfConcrete('none'), footings);
}

export function oldStepsCargo({ id, material, steel }: OldSteps, figures: PartFigures): Cargo {
  const stream = material === 'concrete' ? streamOfConcrete(steel) : 'masonry';
  return looseCargo(`old-steps--${id}`, `old-steps.${id}`, stream, figures);
}

export function greenCargo(id: string, figures: GreenFigures): Cargo {
  return looseCargo(`green--${id}`, `green.${id}`, 'green', figures);
}

/** Soil dug out under a slab. */
export function soilCargo(slabId: string, figures: SoilFigures): Cargo {
  return looseCargo(slabId, null, 'soil', figures);
}

function looseCargo(
  name: string,
  existingId: string | null,
  stream: Stream,
  figures: Pick<Cargo, 'weight' | 'loose-volume' | 'loose-unit-weight'>,
): Cargo {
  return {
    name,
    existingId,
    stream,
    weight: figures.weight,
    'loose-volume': figures['loose-volume'],
    'loose-unit-weight': figures['loose-unit-weight'],
    'weight-per-sq-ft': null,
  };
}

/** Yards sort concrete by what is on it and whether steel is in it; the others by what they are. */
function streamOfExisting(thing: Existing): Stream {
  switch (thing.material) {
    case 'concrete':
      return thing.coating === null ? streamOfConcrete(thing.steel) : 'coated';
    case 'brick':
    case 'block':
      return 'masonry';
    case 'asphalt':
      return 'asphalt';
  }
}

function streamOfConcrete(steel: Steel): Stream {
  return steel === 'none' ? 'clean-concrete' : 'concrete-with-steel';
}
