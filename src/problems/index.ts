/** What can be wrong with the input, where, and how it is shown. Knows no language. */
export type { ReadLine } from './code-frame.ts';
export type { ProblemCode, ProblemParts, ProblemTexts, ProblemWords } from './codes.ts';
export { formatProblems } from './format-problems.ts';
export { locateProblem, spotOf } from './locate-problem.ts';
export { nearestName } from './nearest-name.ts';
export { shortened } from './plain-line.ts';
export { type LocatedProblem, problemAt, sortProblems } from './problem.ts';
export type { CrewReadable, CrewText, OfficeText, PublicText } from './text.ts';
export { isThing, type Measure, type Thing } from './things.ts';
export type { CoreProblem, Origin, Origins, SourceSpot, WholeFile } from './types.ts';
