import { type Figure, type FigureTree, isFigure } from '../figure.ts';

export type Match = { readonly id: string; readonly where: string; readonly figure: Figure };

/** The place of a finding whose pattern has no star. */
const WHOLE_JOB = 'job';

/**
 * The figures a pattern names, in the order of the tree. A star stands for exactly one name.
 *
 * @example matchFigures('joints.slabs.*.panel-ratio', tree) // where: drive, walk
 */
export function matchFigures(pattern: string, figures: FigureTree): readonly Match[] {
  return below(figures, pattern.split('.'), [], []);
}

function below(
  node: Figure | FigureTree,
  wanted: readonly string[],
  names: readonly string[],
  starred: readonly string[],
): readonly Match[] {
  if (isFigure(node)) {
    if (wanted.length > 0) return [];
    return [
      { id: names.join('.'), where: starred.length === 0 ? WHOLE_JOB : starred.join('.'), figure: node },
    ];
  }
  const [first, ...rest] = wanted;
  if (first === undefined) return [];
  const named = first === '*' ? Object.keys(node) : [first].filter((name) => Object.hasOwn(node, name));
  return named.flatMap((name) => {
    const child = node[name];
    if (child === undefined) return [];
    return below(child, rest, [...names, name], first === '*' ? [...starred, name] : starred);
  });
}
