import { formatProblems, type LocatedProblem } from '../problems/index.ts';
import { sourceLines } from '../read/index.ts';
import { problemsEn } from '../words/problems-en.ts';

/** All problems as the user reads them on a terminal. */
export function showProblems(problems: readonly LocatedProblem[]): string {
  return formatProblems(problems, problemsEn, sourceLines());
}
