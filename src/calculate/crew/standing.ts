import type { Figure } from '../figure.ts';
import type { Hollow, Site, Steel } from '../job.ts';

type Volume = { readonly volume: Figure /* cu ft in place */ };

/** The parts of hollow things, by id. */
export type HollowVolumes = Readonly<
  Record<string, { readonly walls: Volume; readonly footing?: Volume; readonly fill?: Volume }>
>;

/** Something that is broken out or dug out by its volume. */
export type StandingPart = {
  /** Of its own: two hyphens stand in no id. */
  readonly name: string;
  readonly volume: Figure;
  /** Inside it: none in masonry. */
  readonly steel: Steel;
};

/** Walls, footings and concrete inside them, of the things that go in one way. */
export function brokenParts(
  things: Site['hollow'],
  volumes: HollowVolumes,
  way: Hollow['breakOut'],
): readonly StandingPart[] {
  return partsOf(things, volumes).flatMap(({ thing, part, ...standing }) => {
    const isBroken = part !== 'fill' || thing.fill?.material === 'concrete';
    return isBroken && thing.breakOut === way ? [standing] : [];
  });
}

/** Footings of posts and solid steps, which a breaker takes. */
export function brokenOthers(
  steps: Site['oldSteps'],
  volumes: {
    readonly posts: Readonly<Record<string, { readonly footings: Volume }>>;
    readonly 'old-steps': Readonly<Record<string, Volume>>;
  },
): readonly StandingPart[] {
  return [
    ...Object.entries(volumes.posts).map(([id, { footings }]): StandingPart => {
      return { name: `posts--${id}`, volume: footings.volume, steel: 'none' };
    }),
    ...Object.entries(volumes['old-steps']).map(([id, { volume }]): StandingPart => {
      const flight = steps[id];
      const steel = flight?.material === 'concrete' ? flight.steel : 'none';
      return { name: `old-steps--${id}`, volume, steel };
    }),
  ];
}

/** Soil and gravel inside walls, which are dug out. */
export function dugParts(things: Site['hollow'], volumes: HollowVolumes): readonly StandingPart[] {
  return partsOf(things, volumes).flatMap(({ thing, part, ...standing }) =>
    part === 'fill' && thing.fill?.material !== 'concrete' ? [standing] : [],
  );
}

const PARTS = ['walls', 'footing', 'fill'] as const;

function partsOf(things: Site['hollow'], volumes: HollowVolumes) {
  return Object.entries(volumes).flatMap(([id, made]) => {
    const thing = things[id];
    if (thing === undefined) return [];
    return PARTS.flatMap((part) => {
      const volume = made[part]?.volume;
      if (volume === undefined) return [];
      const isMasonry = part === 'walls' && thing.material !== 'concrete';
      const steel: Steel = isMasonry ? 'none' : thing.steel;
      return [{ thing, part, name: `${id}--${part}`, volume, steel }];
    });
  });
}
