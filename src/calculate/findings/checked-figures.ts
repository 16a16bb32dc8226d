import type { MixFigures } from '../concrete/index.ts';
import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { Build, Slab, Stream, Use } from '../job.ts';
import { inputName, thingNamed } from '../parts.ts';
import { type FleetFigures, fleetFigures, truckRatingFigure } from './fleet-figures.ts';
import { type MixChecks, mixChecks } from './mix-checks.ts';

export type SlabChecks = {
  readonly thickness: Figure;
  readonly base: Figure;
  readonly fall: Figure;
  /** The largest stone over the thickness. */
  readonly 'stone-share': Figure;
  /** How much less deep than it is thick the base was probed; only where it was. */
  readonly 'probed-short'?: Figure;
};

export type CheckedFigures = {
  /** By what a slab is for, so that a rule can be about driveways alone: `checks.driveway.drive.base`. */
  readonly [use in Use]?: Readonly<Record<string, SlabChecks>>;
} & {
  readonly mix: MixChecks;
  readonly loads: Readonly<Record<string, { readonly fullness: Figure }>>;
  /** By trailer that hauls something. */
  readonly fleet: Readonly<Record<string, FleetFigures>>;
  /** Of the truck by itself; nothing where no trailer hauls. */
  readonly truck: { readonly rating?: Figure };
};

/**
 * Figures that exist only to be held against a limit: what the job says of a slab and its mix, how
 * near to the payload the heaviest load of a stream comes, and what truck and trailers are rated for.
 */
export function calcChecks(input: {
  readonly slabs: Readonly<Record<string, CheckedSlab & Pick<Slab, 'use' | 'reinforcement'>>>;
  readonly mix: Build['mix'];
  readonly mixFigures: MixFigures;
  readonly strengthFloorPsi: Figure;
  readonly trailers: Readonly<Record<string, { readonly payload: Figure }>>;
  readonly loads: readonly {
    readonly streams: readonly Stream[];
    readonly trailer: string;
    readonly weightLb: number;
  }[];
  readonly fleet: Parameters<typeof fleetFigures>[0];
}): CheckedFigures {
  const { towVehicle, hauling } = input.fleet;
  const uses = [...new Set(Object.values(input.slabs).map(({ use }) => use))];
  const byUse = uses.map((use) => {
    const slabs = Object.values(input.slabs).filter((slab) => slab.use === use);
    return [use, Object.fromEntries(slabs.map((slab) => [slab.id, slabChecks(slab, input.mix.aggregateIn)]))];
  });
  return {
    ...Object.fromEntries(byUse),
    mix: mixChecks({
      mix: input.mix,
      figures: input.mixFigures,
      strengthFloorPsi: input.strengthFloorPsi,
      slabs: Object.values(input.slabs),
    }),
    loads: loadChecks(input),
    fleet: fleetFigures(input.fleet),
    truck: hauling.length === 0 ? {} : { rating: truckRatingFigure(towVehicle.grossRatingLb) },
  };
}

type CheckedSlab = Pick<Slab, 'id' | 'thicknessIn' | 'probedIn' | 'baseIn' | 'fall'>;

function slabChecks(
  { id, thicknessIn, probedIn, baseIn, fall }: CheckedSlab,
  aggregateIn: number,
): SlabChecks {
  const at = (key: string) => `build.slabs.${id}.${key}`;
  const thickness = given(at('thickness'), thicknessIn, 'in');
  return {
    thickness: taken('thicknessIn', at('thickness'), thicknessIn, 'in'),
    base: taken('baseIn', at('base'), baseIn, 'in'),
    fall: taken('fallSlope', at('fall'), fall.slope, 'ratio'),
    'stone-share': figure({
      value: aggregateIn / thicknessIn,
      unit: 'ratio',
      decimals: 3,
      formula: 'aggregateIn / thicknessIn',
      inputs: { aggregateIn: given('build.mix.aggregate', aggregateIn, 'in'), thicknessIn: thickness },
    }),
    ...(probedIn === null
      ? {}
      : {
          'probed-short': figure({
            value: Math.max(0, thicknessIn - probedIn),
            unit: 'in',
            decimals: 2,
            formula: 'max(0, thicknessIn - probedIn)',
            inputs: { thicknessIn: thickness, probedIn: given(at('probed-depth'), probedIn, 'in') },
          }),
        }),
  };
}

function taken(key: string, path: string, value: number, unit: 'in' | 'ratio'): Figure {
  const inputs = { [key]: given(path, value, unit) };
  return figure({ value, unit, decimals: unit === 'in' ? 2 : 4, formula: key, inputs });
}

function loadChecks({ trailers, loads }: Parameters<typeof calcChecks>[0]): CheckedFigures['loads'] {
  const streams = [...new Set(loads.flatMap((load) => load.streams))];
  return Object.fromEntries(
    streams.map((stream) => {
      const ofStream = loads.filter((load) => load.streams.includes(stream));
      const used = [...new Set(ofStream.map(({ trailer }) => trailer))];
      const payloadOf = (id: string) => thingNamed(trailers, id, 'trailer').payload;
      const fullness = figure({
        value: Math.max(...ofStream.map(({ weightLb, trailer }) => weightLb / num(payloadOf(trailer)))),
        unit: 'ratio',
        decimals: 3,
        formula: { method: 'the fullest of its loads: its weight over the payload of its trailer' },
        inputs: Object.fromEntries(used.map((id) => [inputName(id, 'PayloadLb'), payloadOf(id)])),
        source: COMPANY_FIGURE,
      });
      return [stream, { fullness }];
    }),
  );
}
