import { all, create } from 'mathjs';
import { type Figure, type FigureTree, num, walkFigures } from '../../../src/calculate/figure.ts';

/** Evaluates expressions on its own; a step is guarded against the noise of doubles. */
const math = create({ ...all });
const guard = (quotient: number) => 1e-9 * Math.max(1, Math.abs(quotient));
math.import({
  ceilStep: (x: number, step: number) => Math.ceil(x / step - guard(x / step)) * step,
  floorStep: (x: number, step: number) => Math.floor(x / step + guard(x / step)) * step,
  roundCent: (x: number) => Math.round((x + 1e-9) * 100) / 100,
});

/**
 * Ids of figures whose expression does not give their value: to the last bit for the figures of the
 * tree that are numbers, to 1e-12 for figures of other topics among their inputs, to a
 * ten-millionth of a cent for money, which is made in decimals.
 */
export function wrongFormulas(tree: FigureTree): string[] {
  const own = walkFigures(tree);
  const seen = new Set(own.map(({ figure }) => figure));
  const wrong = own.flatMap(({ id, figure }) => disagreement(id, figure, 0));
  const visitInputs = (id: string, figure: Figure) => {
    for (const [key, input] of Object.entries(figure.inputs)) {
      if (!('figure' in input) || seen.has(input)) continue;
      seen.add(input);
      wrong.push(...disagreement(`${id} < ${key}`, input, 1e-12));
      visitInputs(`${id} < ${key}`, input);
    }
  };
  for (const { id, figure } of own) visitInputs(id, figure);
  return wrong;
}

function disagreement(id: string, { formula, inputs, unit, value }: Figure, ratio: number): string[] {
  if (!('expression' in formula)) return [];
  const scope = Object.fromEntries(Object.entries(inputs).map(([key, input]) => [key, num(input)]));
  const evaluated = Number(math.evaluate(formula.expression, scope));
  const apart = unit.startsWith('$') ? 1e-9 : ratio * Math.abs(Number(value));
  return Math.abs(evaluated - Number(value)) <= apart
    ? []
    : [`${id}: ${formula.expression} gives ${evaluated}, not ${value}`];
}

/** How many figures of a tree carry an expression, so that a test of them is never empty. */
export function expressionCount(tree: FigureTree): number {
  return walkFigures(tree).filter(({ figure }) => 'expression' in figure.formula).length;
}
