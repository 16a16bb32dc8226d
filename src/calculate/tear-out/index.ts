import type { CoreProblem } from '../../problems/index.ts';
import { formatFeetInches } from '../../units/index.ts';
import type { Figure } from '../figure.ts';
import type { Existing, Job, Stream } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import {
  type Cargo,
  flatCargo,
  greenCargo,
  hollowCargo,
  oldStepsCargo,
  postsCargo,
  soilCargo,
} from './cargo.ts';
import { hollowProblem, outerRing } from './check-hollow.ts';
import { type ChipFigures, chipFigures } from './chip-figures.ts';
import {
  type ExistingFigures,
  existingFigures,
  type HandLaborFigures,
  handLaborFigures,
} from './existing-figures.ts';
import { type GreenFigures, greenFigures } from './green-figures.ts';
import { handRateFor } from './hand-work.ts';
import { type HollowFigures, hollowFigures } from './hollow-figures.ts';
import { oldStepsFigures } from './old-steps-figures.ts';
import type { PartFigures } from './part-figures.ts';
import { type PostFigures, postFigures } from './post-figures.ts';
import { type SoilFigures, soilFigures, soilVolume } from './soil-figures.ts';

export type { Cargo } from './cargo.ts';
export type { ExistingFigures, HandLaborFigures } from './existing-figures.ts';
export { handLaborHr, handPieceSideIn } from './hand-work.ts';
export type { HollowFigures } from './hollow-figures.ts';
export type { PartFigures } from './part-figures.ts';
export type { PostFigures } from './post-figures.ts';
export type { SoilFigures } from './soil-figures.ts';
export { loadFactor, looseVolume, swellRatio } from './swell.ts';
export { flatVolumeCuFt, unitWeightOfPavingLbPerCuFt, weightLb, weightLbPerSqFt } from './weight.ts';

/** In the order in which they leave: what lies on top first, the soil below it last. */
export const STREAMS: readonly Stream[] = [
  'green',
  'clean-concrete',
  'concrete-with-steel',
  'coated',
  'masonry',
  'asphalt',
  'other',
  'soil',
];

export type StreamFigures = {
  /** [lb] */
  readonly weight: Figure;
  /** [yd3] */
  readonly 'loose-volume': Figure;
};

export type TearOutFigures = {
  readonly existing: Readonly<Record<string, ExistingFigures>>;
  readonly hollow: Readonly<Record<string, HollowFigures>>;
  readonly posts: Readonly<Record<string, PostFigures>>;
  readonly 'old-steps': Readonly<Record<string, PartFigures>>;
  readonly green: Readonly<Record<string, GreenFigures>>;
  readonly chip: Readonly<Record<string, ChipFigures>>;
  /** Only of slabs under which soil is dug out. */
  readonly soil: Readonly<Record<string, SoilFigures>>;
  /** Labor by hand tools [labor h]; only where a rate is published for the thing. */
  readonly 'hand-labor': Readonly<Record<string, HandLaborFigures>>;
  /** Only the streams of this job. */
  readonly streams: { readonly [stream in Stream]?: StreamFigures };
  readonly total: {
    /** [lb] */
    readonly weight: Figure;
    /** [ft] */
    readonly 'saw-cut': Figure;
  };
};

export type TearOutResult = TopicResult<TearOutFigures, { readonly cargo: readonly Cargo[] }>;

type TearOutInput = {
  readonly existing: Job['site']['existing'];
  readonly hollow: Job['site']['hollow'];
  readonly posts: Job['site']['posts'];
  readonly oldSteps: Job['site']['oldSteps'];
  readonly green: Job['site']['green'];
  readonly chip: Job['site']['chip'];
  readonly slabs: Job['build']['slabs'];
  readonly shapes: OutlineResult['figures'];
  /** Of existing and hollow things, on the surface. */
  readonly outlines: OutlineResult['data']['existing'];
  /** Under each slab whose digging is known from heights [cu ft]. */
  readonly dug?: Readonly<Record<string, Figure>>;
  /** Below the slabs that have thickened edges [cu ft]. */
  readonly thickened?: Readonly<Record<string, { readonly volume: Figure }>>;
};

/**
 * What goes: its weight from the volume in place, its loose volume for the box, by stream.
 *
 * @throws {RangeError} If the outline of something is missing.
 */
export function calcTearOut(input: TearOutInput): TearOutResult {
  const existing: Record<string, ExistingFigures> = {};
  const handLabor: Record<string, HandLaborFigures> = {};
  for (const thing of Object.values(input.existing)) {
    const figures = existingFigures(thing, thingNamed(input.shapes.existing, thing.id, 'outline'));
    const rate = handRateFor(thing);
    existing[thing.id] = figures;
    if (rate !== null) handLabor[thing.id] = handLaborFigures(figures.volume, rate);
  }
  const hollows = hollowThings(input);
  const posts = mapped(input.posts, postFigures);
  const oldSteps = mapped(input.oldSteps, oldStepsFigures);
  const green = mapped(input.green, greenFigures);
  const soil = Object.fromEntries(
    Object.values(input.slabs).flatMap((slab) => {
      const volume = soilVolume(slab, thingNamed(input.shapes.slabs, slab.id, 'outline'), {
        dug: input.dug?.[slab.id],
        thickened: input.thickened?.[slab.id]?.volume,
      });
      return volume === null ? [] : [[slab.id, soilFigures(volume)] as const];
    }),
  );
  const cargo = [
    ...Object.values(input.existing).map((thing) =>
      flatCargo(thing, thingNamed(existing, thing.id, 'figures')),
    ),
    ...Object.entries(hollows.figures).flatMap(([id, figures]) =>
      hollowCargo(thingNamed(input.hollow, id, 'hollow thing'), figures),
    ),
    ...Object.entries(posts).map(([id, figures]) => postsCargo(id, figures)),
    ...Object.values(input.oldSteps).map((steps) =>
      oldStepsCargo(steps, thingNamed(oldSteps, steps.id, 'steps')),
    ),
    ...Object.entries(green).map(([id, figures]) => greenCargo(id, figures)),
    ...Object.entries(soil).map(([id, figures]) => soilCargo(id, figures)),
  ];
  const streams = streamFigures(cargo);

  return {
    figures: {
      existing,
      hollow: hollows.figures,
      posts,
      'old-steps': oldSteps,
      green,
      chip: mapped(input.chip, chipFigures),
      soil,
      'hand-labor': handLabor,
      streams,
      total: {
        weight: sumFigure({ parts: pick(streams, 'weight'), unitSuffix: 'Lb', unit: 'lb', decimals: 0 }),
        'saw-cut': sumFigure({ parts: pick(existing, 'saw-cut'), unitSuffix: 'Ft', unit: 'ft', decimals: 1 }),
      },
    },
    data: { cargo },
    problems: [...Object.values(input.existing).flatMap(thickestProblems), ...hollows.problems],
  };
}

function mapped<T, F>(
  things: Readonly<Record<string, T>>,
  figuresOf: (thing: T) => F,
): Readonly<Record<string, F>> {
  return Object.fromEntries(Object.entries(things).map(([id, thing]) => [id, figuresOf(thing)]));
}

/** Figures of what walls and footings have room in, problems of what they have not. */
function hollowThings({ hollow, shapes, outlines }: Pick<TearOutInput, 'hollow' | 'shapes' | 'outlines'>) {
  const figures: Record<string, HollowFigures> = {};
  const problems: CoreProblem[] = [];
  for (const thing of Object.values(hollow)) {
    const outer = outerRing(thingNamed(outlines, thing.id, 'outline'));
    const problem = hollowProblem(thing, outer);
    if (problem !== null) problems.push(problem);
    else figures[thing.id] = hollowFigures(thing, thingNamed(shapes.existing, thing.id, 'outline'), outer);
  }
  return { figures, problems };
}

/** What may be thicker than its thickness is not thinner than it. */
function thickestProblems({ id, thicknessIn, thickestIn }: Existing): readonly CoreProblem[] {
  if (thickestIn === null || thickestIn >= thicknessIn) return [];
  const parts = { thickest: formatFeetInches(thickestIn, 16), thickness: formatFeetInches(thicknessIn, 16) };
  return [{ code: 'thickest-below-thickness', path: `site.existing.${id}.thickest`, parts }];
}

function streamFigures(cargo: readonly Cargo[]): TearOutFigures['streams'] {
  const streams: { [stream in Stream]?: StreamFigures } = {};
  for (const stream of STREAMS) {
    const ofStream = cargo.filter((one) => one.stream === stream);
    if (ofStream.length === 0) continue;
    const parts = Object.fromEntries(ofStream.map((one) => [one.name, one]));
    streams[stream] = {
      weight: sumFigure({ parts: pick(parts, 'weight'), unitSuffix: 'Lb', unit: 'lb', decimals: 0 }),
      'loose-volume': sumFigure({
        parts: pick(parts, 'loose-volume'),
        unitSuffix: 'CuYd',
        unit: 'yd3',
        decimals: 1,
      }),
    };
  }
  return streams;
}
