import { type Figure, type FigureUnit, figure, num } from './figure.ts';

/**
 * The name a thing's figure has as an input: its id in camelCase, then the unit.
 *
 * A digit after a hyphen gets an underscore, so that two ids never become one name.
 *
 * @example inputName('front-walk', 'SqFt') // frontWalkSqFt
 * @example inputName('slab-1', 'SqFt') // slab_1SqFt
 */
export function inputName(id: string, unitSuffix: string): string {
  const camel = id.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase()).replaceAll(/[.-]/g, '_');
  return `${/^\d/.test(camel) ? '_' : ''}${camel}${unitSuffix}`;
}

/** Figures by id as the inputs of another figure. */
export function inputsByName(
  parts: Readonly<Record<string, Figure>>,
  unitSuffix: string,
): Record<string, Figure> {
  return Object.fromEntries(Object.entries(parts).map(([id, part]) => [inputName(id, unitSuffix), part]));
}

/** The sum as an expression over its inputs; nothing adds up to 0. */
export function sumExpression(inputs: Readonly<Record<string, Figure>>): string {
  return Object.keys(inputs).join(' + ') || '0';
}

/** Left to right, as the expression of a sum is evaluated, so that both give the same double. */
export function sumOf(parts: Readonly<Record<string, Figure>>): number {
  return Object.values(parts).reduce((sum, part) => sum + num(part), 0);
}

/** The sum of like figures, by id. */
export function sumFigure(made: {
  readonly parts: Readonly<Record<string, Figure>>;
  readonly unitSuffix: string;
  readonly unit: FigureUnit;
  readonly decimals: number;
}): Figure {
  const { parts, unitSuffix, unit, decimals } = made;
  const inputs = inputsByName(parts, unitSuffix);
  return figure({ value: sumOf(parts), unit, decimals, formula: sumExpression(inputs), inputs });
}

/** One figure of every thing: `pick(slabs, 'boards')` is the boards of each slab, by its id. */
export function pick<K extends string>(
  things: Readonly<Record<string, Readonly<Record<K, Figure>>>>,
  key: K,
): Record<string, Figure> {
  return Object.fromEntries(Object.entries(things).map(([id, thing]) => [id, thing[key]]));
}

/**
 * What a record holds under an id.
 *
 * @throws {RangeError} If it holds nothing: references are checked where files are read, and a
 *   topic does not run on shapes that could not be closed.
 */
export function thingNamed<T>(things: Readonly<Record<string, T>>, id: string, kind: string): T {
  const thing = Object.hasOwn(things, id) ? things[id] : undefined;
  if (thing === undefined) throw new RangeError(`no ${kind} called ${id}`);
  return thing;
}
