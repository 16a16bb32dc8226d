import { type Figure, type FigureTree, walkFigures } from '../figure.ts';

export type Match = { readonly id: string; readonly where: string; readonly figure: Figure };

/** The place of a finding whose pattern has no star. */
const WHOLE_JOB = 'job';

/**
 * The figures a pattern names. A star stands for exactly one name.
 *
 * @example matchFigures('joints.slabs.*.panel-ratio', tree) // where: drive, walk
 */
export function matchFigures(pattern: string, figures: FigureTree): readonly Match[] {
  const wanted = pattern.split('.');
  return walkFigures(figures).flatMap(({ id, figure }) => {
    const names = id.split('.');
    if (names.length !== wanted.length) return [];
    if (!wanted.every((name, index) => name === '*' || name === names[index])) return [];
    const starred = names.filter((_, index) => wanted[index] === '*');
    return [{ id, where: starred.length === 0 ? WHOLE_JOB : starred.join('.'), figure }];
  });
}
