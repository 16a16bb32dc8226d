import { ceilCount } from '../../units/index.ts';
import { COMMON_PRACTICE, constant, type Figure, figure, num } from '../figure.ts';
import type { Reinforcement } from '../job.ts';

/** Between chairs each way [ft]: stiffer bars reach farther, and those of glass fibre two thirds as far. */
const closeFt = 3;
const wideFt = 4;
const glassFibreFt = { close: 2, wide: 2.5 } as const;

const CHAIR_SOURCE = `${COMMON_PRACTICE}; 2 to 6 ft by stiffness in Concrete Construction, Choosing supports (seen)`;
const GLASS_FIBRE_SOURCE = `${CHAIR_SOURCE}; glass fibre needs closer ones, ACI 440.1R (memory), at two thirds`;

type Steel = Exclude<Reinforcement, { kind: 'none' }>;

export function chairSpacingFt(steel: Steel): number {
  if (steel.kind === 'mesh') return closeFt;
  const isThick = steel.size >= 4;
  if (steel.material === 'glass-fibre') return isThick ? glassFibreFt.wide : glassFibreFt.close;
  return isThick ? wideFt : closeFt;
}

/**
 * Chairs under a mat, one for each square of the spacing.
 *
 * @throws {RangeError} If the area is below 0 or the spacing is not above 0.
 */
export function chairCount(made: { areaSqFt: number; spacingFt: number }): number {
  const { areaSqFt, spacingFt } = made;
  if (!(areaSqFt >= 0 && areaSqFt < Infinity))
    throw new RangeError(`areaSqFt must be 0 or more, got ${areaSqFt}`);
  if (!(spacingFt > 0 && spacingFt < Infinity))
    throw new RangeError(`spacingFt must be above 0, got ${spacingFt}`);
  return ceilCount(areaSqFt / spacingFt ** 2);
}

/** Chairs under the mat of a slab. */
export function chairsFigure(steel: Steel, areaSqFt: Figure): Figure {
  const spacingFt = chairSpacingFt(steel);
  const isGlassFibre = steel.kind === 'bars' && steel.material === 'glass-fibre';
  const source = isGlassFibre ? GLASS_FIBRE_SOURCE : CHAIR_SOURCE;
  return figure({
    value: chairCount({ areaSqFt: num(areaSqFt), spacingFt }),
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(areaSqFt / spacingFt ^ 2, 1)',
    inputs: { areaSqFt, spacingFt: constant('chair spacing each way', spacingFt, 'ft', source) },
    source,
    rounding: 'up',
  });
}
