import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { Build, Slab, Stream, Use } from '../job.ts';
import { thingNamed } from '../parts.ts';

export type SlabChecks = { readonly thickness: Figure; readonly base: Figure; readonly fall: Figure };

export type CheckedFigures = {
  /** By what a slab is for, so that a rule can be about driveways alone: `checks.driveway.drive.base`. */
  readonly [use in Use]?: Readonly<Record<string, SlabChecks>>;
} & {
  readonly mix: { readonly 'strength-shortfall': Figure; readonly air: Figure };
  readonly loads: Readonly<Record<string, { readonly fullness: Figure }>>;
};

/**
 * Figures that exist only to be held against a limit: what the job says of a slab and its mix, and
 * how near to the payload the heaviest load of a stream comes.
 */
export function calcChecks(input: {
  readonly slabs: Readonly<Record<string, Pick<Slab, 'id' | 'use' | 'thicknessIn' | 'baseIn' | 'fall'>>>;
  readonly mix: Pick<Build['mix'], 'strengthPsi' | 'airRatio'>;
  readonly strengthFloorPsi: Figure;
  readonly streams: Readonly<Partial<Record<Stream, { readonly 'weight-per-load': Figure }>>>;
  readonly trailers: Readonly<Record<string, { readonly payload: Figure }>>;
  readonly loads: readonly { readonly streams: readonly Stream[]; readonly trailer: string }[];
}): CheckedFigures {
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

function loadChecks({ streams, trailers, loads }: Parameters<typeof calcChecks>[0]): CheckedFigures['loads'] {
  const trailerOf = new Map(
    loads.flatMap(({ streams: onIt, trailer }) => onIt.map((stream) => [stream, trailer] as const)),
  );
  const checks = [...trailerOf].flatMap(([stream, trailer]) => {
    const weightLb = streams[stream]?.['weight-per-load'];
    if (weightLb === undefined) return [];
    const payloadLb = thingNamed(trailers, trailer, 'trailer').payload;
    const fullness = figure({
      value: num(weightLb) / num(payloadLb),
      unit: 'ratio',
      decimals: 3,
      formula: 'weightLb / payloadLb',
      inputs: { weightLb, payloadLb },
      source: COMPANY_FIGURE,
    });
    return [[stream, { fullness }] as const];
  });
  return Object.fromEntries(checks);
}
