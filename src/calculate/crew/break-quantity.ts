import { COMMON_PRACTICE, constant, type Figure, figure, given, num } from '../figure.ts';
import type { Site, Steel } from '../job.ts';
import { inputKey, inputsOf, type Part } from '../sum-figure.ts';
import { BREAK_OUT_PACE_IN, BREAK_OUT_RATIO, BREAK_OUT_SOURCE } from './practice.ts';
import type { StandingPart } from './standing.ts';

type Areas = Readonly<Record<string, { readonly area: Figure }>>;

/**
 * Area of plain slab of 4 in that takes as long to break out [sq ft].
 *
 * equivalent = area (thickness / 4) k, k for the steel in it.
 *
 * @param slab.areaSqFt    Area of the slab [sq ft].
 * @param slab.thicknessIn Thickness [in].
 * @param slab.steelRatio  Of `BREAK_OUT_RATIO`.
 */
export function plainSlabSqFt(slab: { areaSqFt: number; thicknessIn: number; steelRatio: number }): number {
  return ((slab.areaSqFt * slab.thicknessIn) / BREAK_OUT_PACE_IN) * slab.steelRatio;
}

/**
 * What is broken or lifted, as plain slab of 4 in. Steel counts where it is broken. Where it is sawn
 * and lifted it does not, since the saw parts it; the thickness does, since each lift is as heavy as
 * the machine takes and there are the more of them.
 */
export function plainSlabQuantity(
  areas: Areas,
  existing: Site['existing'],
  { steelCounts, standing }: { readonly steelCounts: boolean; readonly standing: readonly StandingPart[] },
): Figure {
  const slabs = Object.entries(areas).flatMap(([id, { area }]) => {
    const slab = existing[id];
    return slab === undefined ? [] : [{ id, area, slab }];
  });
  const terms = slabs.map(({ id }) => {
    const key = (what: string, unit: string) => inputKey(what, id, unit);
    const term = `${key('area', 'SqFt')} * ${key('thickness', 'In')} / ${BREAK_OUT_PACE_IN}`;
    return steelCounts ? `${term} * ${key('steel', 'Ratio')}` : term;
  });
  const inputs = slabs.flatMap(({ id, area, slab }): Part[] => [
    { key: inputKey('area', id, 'SqFt'), input: area },
    {
      key: inputKey('thickness', id, 'In'),
      input: given(`site.existing.${id}.thickness`, slab.thicknessIn, 'in'),
    },
    ...(steelCounts ? [steelPart(id, slab.steel)] : []),
  ]);
  const ofSlabs = slabs.reduce((sumSqFt, { area, slab }) => {
    const { thicknessIn, steel } = slab;
    const steelRatio = steelCounts ? BREAK_OUT_RATIO[steel] : 1;
    return sumSqFt + plainSlabSqFt({ areaSqFt: num(area), thicknessIn, steelRatio });
  }, 0);
  const source = steelCounts ? BREAK_OUT_SOURCE : COMMON_PRACTICE;
  return figure({
    value: standing.reduce((sumSqFt, one) => sumSqFt + standingSqFt(one), ofSlabs),
    unit: 'sq ft',
    decimals: 0,
    formula: [...terms, ...standing.map(standingTerm)].join(' + ') || '0',
    inputs: inputsOf([
      ...inputs,
      ...standing.flatMap(({ name, volume, steel }) => [
        { key: inputKey('volume', name, 'CuFt'), input: volume },
        steelPart(name, steel),
      ]),
    ]),
    source: standing.length === 0 ? source : `${source}; ${STANDING_SOURCE}`,
  });
}

const STANDING_SOURCE = 'walls, footings and steps at the pace of as much slab: common practice, no source';

/** A cubic foot is a square foot of slab a foot thick. */
function standingSqFt({ volume, steel }: StandingPart): number {
  return plainSlabSqFt({ areaSqFt: num(volume), thicknessIn: 12, steelRatio: BREAK_OUT_RATIO[steel] });
}

function standingTerm({ name }: StandingPart): string {
  return `${inputKey('volume', name, 'CuFt')} * 12 / ${BREAK_OUT_PACE_IN} * ${inputKey('steel', name, 'Ratio')}`;
}

function steelPart(id: string, steel: Steel): Part {
  return {
    key: inputKey('steel', id, 'Ratio'),
    input: constant(`time to break out, steel: ${steel}`, BREAK_OUT_RATIO[steel], 'ratio', BREAK_OUT_SOURCE),
  };
}
