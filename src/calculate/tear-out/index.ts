import type { Figure } from '../figure.ts';
import type { Existing, Job, Stream } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import {
  type ExistingFigures,
  existingFigures,
  type HandLaborFigures,
  handLaborFigures,
} from './existing-figures.ts';
import { handRateFor } from './hand-work.ts';
import { type SoilFigures, soilFigures } from './soil-figures.ts';

export type { ExistingFigures, HandLaborFigures } from './existing-figures.ts';
export { handLaborHr, handPieceSideIn } from './hand-work.ts';
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

/** Something that is hauled away, all of one stream. */
export type Cargo = {
  /** Of its own among all cargo. */
  readonly name: string;
  /** Id of the existing thing it comes off; null for soil dug out under a slab. */
  readonly existingId: string | null;
  readonly stream: Stream;
  /** [lb] */
  readonly weight: Figure;
  /** In the box [yd3]. */
  readonly 'loose-volume': Figure;
  /** In the box [lb/cu ft]. */
  readonly 'loose-unit-weight': Figure;
  /** Null where it is not loaded by the square foot. */
  readonly 'weight-per-sq-ft': Figure | null;
};

export type TearOutResult = TopicResult<TearOutFigures, { readonly cargo: readonly Cargo[] }>;

/**
 * What goes: its weight from the volume in place, its loose volume for the box, by stream.
 *
 * @throws {RangeError} If the outline of something is missing.
 */
export function calcTearOut(input: {
  readonly existing: Job['site']['existing'];
  readonly slabs: Job['build']['slabs'];
  readonly shapes: OutlineResult['figures'];
}): TearOutResult {
  const existing: Record<string, ExistingFigures> = {};
  const handLabor: Record<string, HandLaborFigures> = {};
  for (const thing of Object.values(input.existing)) {
    const figures = existingFigures(thing, thingNamed(input.shapes.existing, thing.id, 'outline'));
    const rate = handRateFor(thing);
    existing[thing.id] = figures;
    if (rate !== null) handLabor[thing.id] = handLaborFigures(figures.volume, rate);
  }
  const soil = Object.fromEntries(
    Object.values(input.slabs)
      .filter((slab) => slab.digIn > 0)
      .map((slab) => [slab.id, soilFigures(slab, thingNamed(input.shapes.slabs, slab.id, 'outline'))]),
  );
  const cargo = [
    ...Object.values(input.existing).map((thing) =>
      cargoOf(thing, thingNamed(existing, thing.id, 'figures')),
    ),
    ...Object.entries(soil).map(([id, figures]) => soilCargo(id, figures)),
  ];
  const streams = streamFigures(cargo);

  return {
    figures: {
      existing,
      soil,
      'hand-labor': handLabor,
      streams,
      total: {
        weight: sumFigure({ parts: pick(streams, 'weight'), unitSuffix: 'Lb', unit: 'lb', decimals: 0 }),
        'saw-cut': sumFigure({ parts: pick(existing, 'saw-cut'), unitSuffix: 'Ft', unit: 'ft', decimals: 1 }),
      },
    },
    data: { cargo },
    problems: [],
  };
}

/** Yards sort concrete by whether steel is in it; the others by what they are. */
function streamOfExisting(thing: Existing): Stream {
  switch (thing.material) {
    case 'concrete':
      return thing.steel === 'none' ? 'clean-concrete' : 'concrete-with-steel';
    case 'brick':
      return 'masonry';
    case 'asphalt':
      return 'asphalt';
  }
}

function cargoOf(thing: Existing, figures: ExistingFigures): Cargo {
  return {
    name: thing.id,
    existingId: thing.id,
    stream: streamOfExisting(thing),
    weight: figures.weight,
    'loose-volume': figures['loose-volume'],
    'loose-unit-weight': figures['loose-unit-weight'],
    'weight-per-sq-ft': figures['weight-per-sq-ft'],
  };
}

function soilCargo(slabId: string, figures: SoilFigures): Cargo {
  return {
    name: slabId,
    existingId: null,
    stream: 'soil',
    weight: figures.weight,
    'loose-volume': figures['loose-volume'],
    'loose-unit-weight': figures['loose-unit-weight'],
    'weight-per-sq-ft': null,
  };
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
