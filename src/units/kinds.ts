import type { Rational } from './rational.ts';

/** Base units: in, sq ft, cu ft, lb, rise over run, °F, h, ratio 0 to 1, lb per cu ft, psi, mph, sq ft per gal, lb per sq ft per h, degree. */
export type QuantityKind =
  | 'length'
  | 'area'
  | 'volume'
  | 'weight'
  | 'slope'
  | 'temperature'
  | 'duration'
  | 'share'
  | 'density'
  | 'strength'
  | 'speed'
  | 'coverage'
  | 'evaporation'
  | 'angle';

/**
 * A measured value as somebody wrote it.
 *
 * @property value Exact, in the base unit of the kind.
 * @property unit  Symbol of the unit it was written in; `ft-in` for feet and inches, `1:n` for a
 *                 slope so written.
 * @property text  The text as it stood.
 */
export type Quantity<K extends QuantityKind = QuantityKind> = {
  readonly kind: K;
  readonly value: Rational;
  readonly unit: string;
  readonly text: string;
};
