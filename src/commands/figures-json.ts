import { type Figure, type FigureInput, walkFigures } from '../calculate/figure.ts';
import { figureIds } from '../describe/index.ts';
import type { PreparedJob } from './prepare.ts';

/**
 * Every figure of a job as JSON, keys sorted: value, unit, formula, inputs by path or figure id,
 * source, rounding. No paths of this machine and no times, so two builds give the same bytes.
 */
export function figuresJson({ results }: Pick<PreparedJob, 'results'>): string {
  const ids = figureIds(results.figures);
  const rows = Object.entries(results.figures).flatMap(([topic, tree]) => walkFigures(tree, topic));
  const sorted = [...rows].sort((one, other) => (one.id < other.id ? -1 : 1));
  return `${JSON.stringify(Object.fromEntries(sorted.map(({ id, figure }) => [id, plain(figure, ids)])), null, 1)}\n`;
}

function plain(figure: Figure, ids: ReadonlyMap<Figure, string>): unknown {
  const { value, unit, decimals, formula, inputs, source, rounding } = figure;
  const names = Object.keys(inputs).sort();
  return {
    decimals,
    formula,
    inputs: Object.fromEntries(names.map((name) => [name, inputPlain(inputs[name], ids)])),
    rounding,
    source,
    unit,
    value: typeof value === 'number' ? value : value.toString(),
  };
}

function inputPlain(input: FigureInput | undefined, ids: ReadonlyMap<Figure, string>): unknown {
  if (input === undefined) return null;
  const value = typeof input.value === 'number' ? input.value : input.value.toString();
  const { unit } = input;
  if ('figure' in input) return { figure: ids.get(input) ?? null, unit, value };
  if ('constant' in input) return { constant: input.constant, source: input.source, unit, value };
  return { given: input.path, unit, value };
}
