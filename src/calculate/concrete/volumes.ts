/** A slab of 324 sq ft is a cubic yard for each inch: 27 cu ft of 12 in. */
const SQ_FT_IN_PER_CU_YD = 324;
const CU_IN_PER_CU_YD = 46656;

/**
 * Concrete of a slab by its plan dimensions.
 *
 * @param slab.areaSqFt    [sq ft], 0 or more.
 * @param slab.thicknessIn [in], 0 or more.
 * @returns [yd³]
 * @throws {RangeError} If a value is below 0 or not finite.
 *
 * V = A t / 324. Source: definition, 27 x 12.
 *
 * @example slabCuYd({ areaSqFt: 81, thicknessIn: 4 }) // 1
 */
export function slabCuYd(slab: { areaSqFt: number; thicknessIn: number }): number {
  const { areaSqFt, thicknessIn } = slab;
  requireNotNegative({ areaSqFt, thicknessIn });
  return (areaSqFt * thicknessIn) / SQ_FT_IN_PER_CU_YD;
}

/**
 * Concrete that fills a base which lies low on average.
 *
 * @param base.lowIn    How low [in], 0 or more.
 * @param base.areaSqFt Of all slabs [sq ft], 0 or more.
 * @returns [yd³]
 * @throws {RangeError} If a value is below 0 or not finite.
 *
 * V = d A / 324; on a 4 in slab 1/8 in is 3 % (NRMCA CIP 8, Discrepancies in Yield, seen).
 */
export function unevennessCuYd(base: { lowIn: number; areaSqFt: number }): number {
  const { lowIn, areaSqFt } = base;
  requireNotNegative({ lowIn, areaSqFt });
  return (lowIn * areaSqFt) / SQ_FT_IN_PER_CU_YD;
}

/**
 * Concrete of a solid straight flight: equal risers, the top one up to a landing as wide as the flight.
 *
 * @param steps.widthIn    [in], above 0.
 * @param steps.riserCount Whole number, 1 or more.
 * @param steps.riserIn    Height of one [in], above 0.
 * @param steps.treadIn    Depth of one [in], above 0.
 * @param steps.landingIn  Depth of the landing [in], 0 or more.
 * @returns Above the ground it stands on [yd³].
 * @throws {RangeError} If a value is outside its range.
 *
 * V = W r (T n (n - 1) / 2 + n D): n risers carry n - 1 treads, and the landing stands on all of them.
 * Source: geometry.
 */
export function stepsCuYd(steps: {
  widthIn: number;
  riserCount: number;
  riserIn: number;
  treadIn: number;
  landingIn: number;
}): number {
  const { widthIn, riserCount, riserIn, treadIn, landingIn } = steps;
  for (const [name, lengthIn] of Object.entries({ widthIn, riserIn, treadIn })) {
    if (!(lengthIn > 0 && lengthIn < Infinity))
      throw new RangeError(`${name} must be above 0, got ${lengthIn}`);
  }
  requireNotNegative({ landingIn });
  if (!(Number.isInteger(riserCount) && riserCount >= 1)) {
    throw new RangeError(`riserCount must be a whole number of 1 or more, got ${riserCount}`);
  }
  const sideSqIn = (treadIn * riserCount * (riserCount - 1)) / 2 + riserCount * landingIn;
  return (widthIn * riserIn * sideSqIn) / CU_IN_PER_CU_YD;
}

/**
 * Concrete that goes where forms bow out.
 *
 * @param forms.bulgeIn  How far they bow out, on average [in], 0 or more.
 * @param forms.faceSqFt Their face: length times depth of the concrete [sq ft], 0 or more.
 * @returns [yd³]
 * @throws {RangeError} If a value is below 0 or not finite.
 *
 * V = b A / 324, as of a slab of the bulge's thickness. Source: geometry.
 */
export function bulgeCuYd(forms: { bulgeIn: number; faceSqFt: number }): number {
  return slabCuYd({ areaSqFt: forms.faceSqFt, thicknessIn: forms.bulgeIn });
}

/**
 * What is spilled, left in the truck or in the barrows.
 *
 * @param net.netCuYd    By plan dimensions [yd³], 0 or more.
 * @param net.spillRatio Share of it, 0 or more.
 * @returns [yd³]
 * @throws {RangeError} If a value is below 0 or not finite.
 */
export function spillCuYd(net: { netCuYd: number; spillRatio: number }): number {
  const { netCuYd, spillRatio } = net;
  requireNotNegative({ netCuYd, spillRatio });
  return spillRatio * netCuYd;
}

function requireNotNegative(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} must be 0 or more, got ${value}`);
  }
}
