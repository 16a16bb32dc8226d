import type { ProblemCode, ProblemParts } from './codes.ts';
import type { SourceSpot, WholeFile } from './types.ts';

/** Something a user wrote that cannot be taken: what, where, and the parts of its message. */
export type LocatedProblem = {
  readonly [C in ProblemCode]: {
    readonly code: C;
    readonly spot: SourceSpot | WholeFile;
    readonly parts: ProblemParts[C];
  };
}[ProblemCode];

/** A problem with the parts that its code asks for. */
export function problemAt<C extends ProblemCode>(
  spot: SourceSpot | WholeFile,
  code: C,
  parts: ProblemParts[C],
): LocatedProblem {
  return { code, spot, parts } as LocatedProblem;
}

/**
 * By file, line and column, then by code, so that a list is the same in every run; what several jobs
 * find in the files they share stands once.
 */
export function sortProblems(problems: readonly LocatedProblem[]): LocatedProblem[] {
  const sorted = problems.toSorted(compareProblems);
  return sorted.filter((problem, index) => index === 0 || !isSame(problem, sorted[index - 1]));
}

function compareProblems(one: LocatedProblem, other: LocatedProblem): number {
  return (
    compareText(one.spot.file, other.spot.file) ||
    (one.spot.line ?? 0) - (other.spot.line ?? 0) ||
    columnOf(one) - columnOf(other) ||
    compareText(one.code, other.code) ||
    compareText(JSON.stringify(one.parts), JSON.stringify(other.parts))
  );
}

function isSame(one: LocatedProblem, other: LocatedProblem | undefined): boolean {
  return other !== undefined && compareProblems(one, other) === 0;
}

function columnOf(problem: LocatedProblem): number {
  return problem.spot.line === null ? 0 : problem.spot.column;
}

/** By code units: the same order on every machine, whatever its language. */
function compareText(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
