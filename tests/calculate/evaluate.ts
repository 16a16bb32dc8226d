import { Decimal } from 'decimal.js';
import { all, create, type MathNode } from 'mathjs';
import { expect, test } from 'vitest';
import { type Figure, type FigureInput, type FigureTree, walkFigures } from '../../src/calculate/figure.ts';

const math = create(all ?? {});

/** A way to calculate: doubles for figures that are numbers, exact decimals for money. */
export type Arithmetic<T> = {
  readonly from: (value: number | Decimal | string) => T;
  /** An input of a figure; its full value where this is not said. */
  readonly fromInput?: (input: FigureInput) => T;
  readonly operators: Readonly<Record<string, (one: T, other: T) => T>>;
  readonly functions: Readonly<Record<string, (...args: T[]) => T>>;
};

const noise = (quotient: number) => 1e-9 * Math.max(1, Math.abs(quotient));

const doubles: Arithmetic<number> = {
  from: Number,
  operators: {
    '+': (a, b) => a + b,
    '-': (a, b) => a - b,
    '*': (a, b) => a * b,
    '/': (a, b) => a / b,
    '^': (a, b) => a ** b,
  },
  functions: {
    min: Math.min,
    max: Math.max,
    ceil: Math.ceil,
    floor: Math.floor,
    sqrt: Math.sqrt,
    ceilStep: (x = Number.NaN, step = Number.NaN) =>
      Number((Math.ceil(x / step - noise(x / step)) * step).toPrecision(15)),
    floorStep: (x = Number.NaN, step = Number.NaN) =>
      Number((Math.floor(x / step + noise(x / step)) * step).toPrecision(15)),
  },
};

const Exact = Decimal.clone({ precision: 60 });
const decimals: Arithmetic<Decimal> = {
  from: (value) => new Exact(value),
  operators: {
    '+': (a, b) => a.plus(b),
    '-': (a, b) => a.minus(b),
    '*': (a, b) => a.times(b),
    '/': (a, b) => a.dividedBy(b),
  },
  functions: {
    min: (...args) => Exact.min(...args),
    max: (...args) => Exact.max(...args),
    roundCent: (x = new Exact(Number.NaN)) => x.toDecimalPlaces(2, Decimal.ROUND_HALF_UP),
    // Decimal division is exact to 60 digits; a quotient that should be whole is off by no more.
    ceilStep: (x = new Exact(Number.NaN), step = new Exact(Number.NaN)) =>
      x.dividedBy(step).toDecimalPlaces(9).ceil().times(step),
  },
};

/** The value of a figure's expression from its inputs alone; null where the formula is a method. */
export function evaluateFigure(figure: Figure): number | Decimal | null {
  if (!('expression' in figure.formula)) return null;
  return typeof figure.value === 'number' ? evaluateIn(doubles, figure) : evaluateIn(decimals, figure);
}

/** A figure's expression in an arithmetic of the caller's own. @throws {RangeError} If it is a method. */
export function evaluateIn<T>(arithmetic: Arithmetic<T>, figure: Figure): T {
  if (!('expression' in figure.formula)) throw new RangeError('a method is no expression');
  return evaluate(math.parse(figure.formula.expression), figure, arithmetic);
}

function evaluate<T>(node: MathNode, figure: Figure, arithmetic: Arithmetic<T>): T {
  const part = (child: MathNode) => evaluate(child, figure, arithmetic);
  if (math.isConstantNode(node)) return arithmetic.from(String(node.value));
  if (math.isParenthesisNode(node)) return part(node.content);
  if (math.isSymbolNode(node)) {
    const input = figure.inputs[node.name];
    if (input === undefined) throw new Error(`${node.toString()} is no input`);
    return arithmetic.fromInput?.(input) ?? arithmetic.from(input.value);
  }
  if (math.isOperatorNode(node)) {
    const [one, other] = node.args;
    const operator = arithmetic.operators[node.op];
    if (one === undefined || other === undefined || operator === undefined)
      throw new Error(`cannot do ${node.op}`);
    return operator(part(one), part(other));
  }
  if (math.isFunctionNode(node)) {
    const called = arithmetic.functions[node.fn.name];
    if (called === undefined) throw new Error(`no function ${node.fn.name}`);
    return called(...node.args.map(part));
  }
  throw new Error(`cannot evaluate ${node.toString()}`);
}

/** One test: every expression of a tree gives its figure's value again, and names every input it uses. */
export function testExpressions(name: string, tree: FigureTree, leastCount: number): void {
  test(`${name}: every expression gives its value again`, () => {
    const evaluated = walkFigures(tree).flatMap(({ id, figure }) => {
      const value = evaluateFigure(figure);
      return value === null ? [] : [{ id, found: value.toString(), expected: figure.value.toString() }];
    });
    expect(evaluated.length).toBeGreaterThanOrEqual(leastCount);
    for (const { id, found, expected } of evaluated) expect(found, id).toBe(expected);
  });
}
