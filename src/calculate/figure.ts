import type { Decimal } from 'decimal.js';

/** Units a figure can carry; printed as written. */
export type FigureUnit =
  | 'in'
  | 'deg'
  | 'ft'
  | 'sq ft'
  | 'cu ft'
  | 'yd3'
  | 'lb'
  | 'ton'
  | 'lb/cu ft'
  | 'lb/sq ft'
  | 'sq in'
  | 'sq in/ft'
  | 'h'
  | 'days'
  | '$'
  | '$/h'
  | '$/yd3'
  | '$/ton'
  | '$/load'
  | '$/mi'
  | '$/lb'
  | '$/ft'
  | '$/day'
  | '$/each'
  | '$/sq ft'
  | '$/visit'
  | 'each'
  | 'ratio'
  | 'gal'
  | 'sq ft/gal'
  | 'psi'
  | '°F'
  | 'mph'
  | 'lb/sq ft/h'
  | 'mi'
  | 'per h'
  | 'yd3/h'
  | 'ft/h'
  | 'APF'
  | 'dBA';

export type FigureValue = number | Decimal;

/**
 * How the value was rounded where it was made. `none`: full precision, rounded for display only.
 * `up`: to the next increment. `down`: a legal maximum or a cap. `cent`: half up to the cent.
 */
export type Rounding = 'none' | 'up' | 'down' | 'cent';

/** A value that stands in the job or the company files, by its path. */
export type Given = { readonly path: string; readonly value: FigureValue; readonly unit: FigureUnit };

/** A constant of a published table or of a definition, with where it stands. */
export type Constant = {
  readonly constant: string;
  readonly value: FigureValue;
  readonly unit: FigureUnit;
  readonly source: string;
};

export type FigureInput = Figure | Given | Constant;

/**
 * How a figure was made. An `expression` is over the names of the inputs, with + - * / ^ ( ),
 * `ceil`, `floor`, `min`, `max`, `round`, `ceilStep(x, step)`, `floorStep(x, step)` and
 * `roundCent(x)`; it is evaluated again by an independent evaluator in the tests. A `method` names
 * a procedure that is not one expression (the area of an outline, a search).
 */
export type Formula = { readonly expression: string } | { readonly method: string };

/** One number that reaches a page: what it is, how it was made, from what, and on whose word. */
export type Figure = {
  readonly figure: true;
  readonly value: FigureValue;
  readonly unit: FigureUnit;
  /** Digits behind the point when shown. */
  readonly decimals: number;
  readonly formula: Formula;
  readonly inputs: Readonly<Record<string, FigureInput>>;
  /** The published source, or `definition`, or `company figure`, or `common practice, no source`. */
  readonly source: string;
  readonly rounding: Rounding;
};

/** A tree of figures: what a topic returns; a figure's id is its path by names. */
export type FigureTree = { readonly [name: string]: Figure | FigureTree };

export const DEFINITION = 'definition';
export const COMPANY_FIGURE = 'company figure';
export const COMMON_PRACTICE = 'common practice, no source';

/**
 * Wraps a value as a figure.
 *
 * @throws {RangeError} If the value is not a finite number: a figure never carries NaN or Infinity.
 */
export function figure(made: {
  value: FigureValue;
  unit: FigureUnit;
  decimals: number;
  formula: Formula | string;
  inputs: Readonly<Record<string, FigureInput>>;
  source?: string;
  rounding?: Rounding;
}): Figure {
  const { value, unit, decimals, formula, inputs, source = DEFINITION, rounding = 'none' } = made;
  if (typeof value === 'number' ? !Number.isFinite(value) : !value.isFinite()) {
    throw new RangeError(`a figure must be a finite number, got ${value} (${JSON.stringify(formula)})`);
  }
  const shownFormula = typeof formula === 'string' ? { expression: formula } : formula;
  return { figure: true, value, unit, decimals, formula: shownFormula, inputs, source, rounding };
}

/** A value of the job or company files as an input of a figure. */
export function given(path: string, value: FigureValue, unit: FigureUnit): Given {
  return { path, value, unit };
}

/** A constant with its source as an input of a figure. */
export function constant(name: string, value: FigureValue, unit: FigureUnit, source: string): Constant {
  return { constant: name, value, unit, source };
}

/** The value as a plain number, for geometry and physics. */
export function num(input: FigureInput): number {
  return typeof input.value === 'number' ? input.value : input.value.toNumber();
}

export function isFigure(node: Figure | FigureTree): node is Figure {
  return 'figure' in node && node.figure === true;
}

/** Every figure of a tree with its id, in the order of the tree. */
export function walkFigures(
  tree: FigureTree,
  prefix = '',
): { readonly id: string; readonly figure: Figure }[] {
  return Object.entries(tree).flatMap(([name, node]) => {
    const id = prefix === '' ? name : `${prefix}.${name}`;
    return isFigure(node) ? [{ id, figure: node }] : walkFigures(node, id);
  });
}
