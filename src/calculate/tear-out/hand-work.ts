import { cuFtToCuM, inToMm } from '../../units/index.ts';
import type { Material, Steel } from '../job.ts';

/**
 * The most that the lifting equation lets two hands lift under ideal conditions [lb].
 * Source: NIOSH, Applications Manual for the Revised NIOSH Lifting Equation, load constant (from
 * memory). Reach, twist and frequency lower it; it is not a limit for every lift.
 */
export const TWO_HAND_LIFT_LB = 51;
export const TWO_HAND_LIFT_SOURCE =
  'NIOSH, Applications Manual for the Revised NIOSH Lifting Equation, load constant (from memory)';

/** [cu m] in a cu ft, by definition of the foot. */
export const CU_M_PER_CU_FT = cuFtToCuM(1);

/**
 * Side of the largest square piece of a slab that weighs no more than a limit.
 *
 * @param piece.limitLb         Above 0 [lb].
 * @param piece.weightLbPerSqFt Of the slab, above 0 [lb/sq ft].
 * @returns [in].
 * @throws {RangeError} If one of them is not above 0.
 *
 * a = 12 sqrt(W / w), from w (a / 12)² = W.
 *
 * @example handPieceSideIn({ limitLb: 51, weightLbPerSqFt: 50 }) // 12.12, a 4 in slab
 */
export function handPieceSideIn(piece: {
  readonly limitLb: number;
  readonly weightLbPerSqFt: number;
}): number {
  const { limitLb, weightLbPerSqFt } = piece;
  if (!(limitLb > 0)) throw new RangeError(`limitLb must be above 0, got ${limitLb}`);
  if (!(weightLbPerSqFt > 0)) throw new RangeError(`weightLbPerSqFt must be above 0, got ${weightLbPerSqFt}`);
  return 12 * Math.sqrt(limitLb / weightLbPerSqFt);
}

/**
 * Labor to break out a volume by hand and carry it off: a published rate by the cubic metre.
 *
 * @param work.volumeCuFt 0 or more [cu ft].
 * @param work.hrPerCuM   Above 0 [labor h/m3].
 * @returns [labor h].
 * @throws {RangeError} If one of them is outside its range.
 */
export function handLaborHr(work: { readonly volumeCuFt: number; readonly hrPerCuM: number }): number {
  const { volumeCuFt, hrPerCuM } = work;
  if (!(volumeCuFt >= 0)) throw new RangeError(`volumeCuFt must be 0 or more, got ${volumeCuFt}`);
  if (!(hrPerCuM > 0)) throw new RangeError(`hrPerCuM must be above 0, got ${hrPerCuM}`);
  return volumeCuFt * CU_M_PER_CU_FT * hrPerCuM;
}

/** Labor h/m3 to break out and remove by hand tools, from the fast to the slow crew. */
export type HandRate = {
  readonly material: Material;
  readonly reinforced: boolean;
  /** From this thickness on [mm]. */
  readonly fromMm: number;
  /** Below this thickness [mm]. */
  readonly belowMm: number;
  readonly fastHrPerCuM: number;
  readonly slowHrPerCuM: number;
};

export const HAND_RATE_SOURCE = 'Planning Planet wiki, "Breaking out", hand tools (seen)';

/*
 * Source: Planning Planet wiki, "Breaking out" (seen): slabs unreinforced and reinforced in two
 * bands of thickness, asphalt paving in one. The page has no row for brick paving on the flat, and
 * none thinner or thicker than these. A crew's own pace replaces them.
 */
export const HAND_RATES: readonly HandRate[] = [
  { material: 'concrete', reinforced: false, fromMm: 50, belowMm: 150, fastHrPerCuM: 1.9, slowHrPerCuM: 3.2 },
  {
    material: 'concrete',
    reinforced: false,
    fromMm: 150,
    belowMm: 300,
    fastHrPerCuM: 3.7,
    slowHrPerCuM: 5.5,
  },
  { material: 'concrete', reinforced: true, fromMm: 50, belowMm: 150, fastHrPerCuM: 3.9, slowHrPerCuM: 5.2 },
  { material: 'concrete', reinforced: true, fromMm: 150, belowMm: 300, fastHrPerCuM: 4.7, slowHrPerCuM: 9.1 },
  { material: 'asphalt', reinforced: false, fromMm: 50, belowMm: 100, fastHrPerCuM: 1.6, slowHrPerCuM: 2.1 },
];

/** The published row for a thing, or null where none is published: no band is stretched. */
export function handRateFor(thing: {
  readonly material: Material;
  readonly steel: Steel;
  readonly thicknessIn: number;
}): HandRate | null {
  const thicknessMm = inToMm(thing.thicknessIn);
  const reinforced = thing.steel !== 'none';
  const row = HAND_RATES.find(
    (rate) =>
      rate.material === thing.material &&
      rate.reinforced === reinforced &&
      thicknessMm >= rate.fromMm &&
      thicknessMm < rate.belowMm,
  );
  return row ?? null;
}
