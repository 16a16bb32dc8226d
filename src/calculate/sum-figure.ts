import type { Decimal } from 'decimal.js';
import { Usd } from '../units/index.ts';
import { type Figure, type FigureInput, type FigureUnit, figure } from './figure.ts';
import { inputName } from './parts.ts';

/** One named input of a sum. */
export type Part = { readonly key: string; readonly input: FigureInput };

/**
 * The name of an input made of what it is, the id of the thing it belongs to, and its unit.
 *
 * @example inputKey('area', 'front-walk', 'SqFt') // 'areaFrontWalkSqFt'
 */
export function inputKey(what: string, id: string, unitSuffix: string): string {
  return inputName(`${what}-${id}`, unitSuffix);
}

/** The sum of quantities that are numbers; 0 where there are none. */
export function sumOfParts(made: {
  readonly parts: readonly Part[];
  readonly unit: FigureUnit;
  readonly decimals: number;
}): Figure {
  const { parts, unit, decimals } = made;
  const value = parts.reduce((sum, { input }) => sum + Number(input.value), 0);
  return figure({ value, unit, decimals, formula: sumExpression(parts), inputs: inputsOf(parts) });
}

/** The exact sum of amounts of money; $0 where there are none. */
export function sumOfUsdParts(parts: readonly Part[]): Figure {
  const value = exactSum(parts);
  return figure({ value, unit: '$', decimals: 2, formula: sumExpression(parts), inputs: inputsOf(parts) });
}

/** Every double taken at the digits it prints with, so that no order of adding changes a cent. */
export function exactSum(parts: readonly Part[]): Decimal {
  return parts.reduce<Decimal>((sum, { input }) => sum.plus(input.value), new Usd(0));
}

export function sumExpression(parts: readonly { readonly key: string }[]): string {
  return parts.length === 0 ? '0' : parts.map(({ key }) => key).join(' + ');
}

export function inputsOf(parts: readonly Part[]): Record<string, FigureInput> {
  return Object.fromEntries(parts.map(({ key, input }) => [key, input]));
}
