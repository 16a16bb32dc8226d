/**
 * Volume of a flat thing: V = A t / 12.
 *
 * @param thing.areaSqFt    Above 0 [sq ft].
 * @param thing.thicknessIn Above 0 [in].
 * @returns [cu ft].
 * @throws {RangeError} If one of them is not above 0.
 */
export function flatVolumeCuFt(thing: { readonly areaSqFt: number; readonly thicknessIn: number }): number {
  const { areaSqFt, thicknessIn } = thing;
  if (!(areaSqFt > 0)) throw new RangeError(`areaSqFt must be above 0, got ${areaSqFt}`);
  if (!(thicknessIn > 0)) throw new RangeError(`thicknessIn must be above 0, got ${thicknessIn}`);
  return (areaSqFt * thicknessIn) / 12;
}

/**
 * Weight of a volume in place: W = V g. The loose volume never sets the weight: published weights
 * of a yard of broken concrete differ by almost 3 to 1, because they describe different piles.
 *
 * @param thing.volumeCuFt          0 or more [cu ft].
 * @param thing.unitWeightLbPerCuFt In place, above 0 [lb/cu ft].
 * @returns [lb].
 * @throws {RangeError} If one of them is outside its range.
 */
export function weightLb(thing: {
  readonly volumeCuFt: number;
  readonly unitWeightLbPerCuFt: number;
}): number {
  const { volumeCuFt, unitWeightLbPerCuFt } = thing;
  if (!(volumeCuFt >= 0)) throw new RangeError(`volumeCuFt must be 0 or more, got ${volumeCuFt}`);
  if (!(unitWeightLbPerCuFt > 0)) {
    throw new RangeError(`unitWeightLbPerCuFt must be above 0, got ${unitWeightLbPerCuFt}`);
  }
  return volumeCuFt * unitWeightLbPerCuFt;
}

/**
 * Weight of a square foot of a flat thing: w = t g / 12.
 *
 * @returns [lb/sq ft].
 * @throws {RangeError} If the thickness or the unit weight is not above 0.
 */
export function weightLbPerSqFt(thing: {
  readonly thicknessIn: number;
  readonly unitWeightLbPerCuFt: number;
}): number {
  const { thicknessIn, unitWeightLbPerCuFt } = thing;
  if (!(thicknessIn > 0)) throw new RangeError(`thicknessIn must be above 0, got ${thicknessIn}`);
  if (!(unitWeightLbPerCuFt > 0)) {
    throw new RangeError(`unitWeightLbPerCuFt must be above 0, got ${unitWeightLbPerCuFt}`);
  }
  return (thicknessIn * unitWeightLbPerCuFt) / 12;
}

/**
 * Unit weight from a paving rate: a square yard an inch thick is 9 / 12 cu ft, so g = 12 r / 9.
 *
 * @param rateLb Pounds an inch of thickness and square yard, above 0.
 * @returns [lb/cu ft].
 * @throws {RangeError} If the rate is not above 0.
 */
export function unitWeightOfPavingLbPerCuFt(rateLb: number): number {
  if (!(rateLb > 0)) throw new RangeError(`a paving rate must be above 0, got ${rateLb}`);
  return (rateLb * 12) / 9;
}
