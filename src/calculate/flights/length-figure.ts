import { type Figure, figure } from '../figure.ts';

/** A height of a flight of steps: an expression over its inputs, in inches. */
export function lengthFigure(
  value: number,
  formula: string,
  inputs: Figure['inputs'],
  source?: string,
): Figure {
  return figure({
    value,
    unit: 'in',
    decimals: 3,
    formula,
    inputs,
    ...(source === undefined ? {} : { source }),
  });
}
