import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { Build, Slab, Stream, Use } from '../job.ts';
import { inputName, thingNamed } from '../parts.ts';
import { type FleetFigures, fleetFigures, truckRatingFigure } from './fleet-figures.ts';

export type SlabChecks = { readonly thickness: Figure; readonly base: Figure; readonly fall: Figure };

export type CheckedFigures = {
  /** By what a slab is for, so that a rule can be about driveways alone: `checks.driveway.drive.base`. */
  readonly [use in Use]?: Readonly<Record<string, SlabChecks>>;
} & {
  readonly mix: { readonly 'strength-shortfall': Figure; readonly air: Figure };
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
  readonly slabs: Readonly<Record<string, Pick<Slab, 'id' | 'use' | 'thicknessIn' | 'baseIn' | 'fall'>>>;
  readonly mix: Pick<Build['mix'], 'strengthPsi' | 'airRatio'>;
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
    return [use, Object.fromEntries(slabs.map((slab) => [slab.id, slabChecks(slab)]))];
  });
  return {
    ...Object.fromEntries(byUse),
    mix: {
      'strength-shortfall': shortfall(input.mix.strengthPsi, input.strengthFloorPsi),
      air: taken('airRatio', 'build.mix.air', input.mix.airRatio, 'ratio'),
    },
    loads: loadChecks(input),
    fleet: fleetFigures(input.fleet),
    truck: hauling.length === 0 ? {} : { rating: truckRatingFigure(towVehicle.grossRatingLb) },
  };
}

function slabChecks({
  id,
  thicknessIn,
  baseIn,
  fall,
}: Pick<Slab, 'id' | 'thicknessIn' | 'baseIn' | 'fall'>): SlabChecks {
  const at = (key: string) => `build.slabs.${id}.${key}`;
  return {
    thickness: taken('thicknessIn', at('thickness'), thicknessIn, 'in'),
    base: taken('baseIn', at('base'), baseIn, 'in'),
    fall: taken('fallSlope', at('fall'), fall.slope, 'ratio'),
  };
}

function taken(key: string, path: string, value: number, unit: 'in' | 'ratio'): Figure {
  const inputs = { [key]: given(path, value, unit) };
  return figure({ value, unit, decimals: unit === 'in' ? 2 : 4, formula: key, inputs });
}

/** max(0, floor - strength), psi */
function shortfall(strengthPsi: number, floorPsi: Figure): Figure {
  return figure({
    value: Math.max(0, num(floorPsi) - strengthPsi),
    unit: 'psi',
    decimals: 0,
    formula: 'max(0, floorPsi - strengthPsi)',
    inputs: { floorPsi, strengthPsi: given('build.mix.strength', strengthPsi, 'psi') },
  });
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
