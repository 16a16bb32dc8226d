import { codeFrame, type ReadLine } from './code-frame.ts';
import type { ProblemWords } from './codes.ts';
import { plainLine } from './plain-line.ts';
import { type LocatedProblem, sortProblems } from './problem.ts';

/**
 * A list of problems as a user reads it: each with its place, the lines there, and what would
 * work; sorted by file and line, with a line at the end that counts them.
 *
 * @returns The text without a line break at its end; empty for no problems.
 */
export function formatProblems(
  problems: readonly LocatedProblem[],
  words: ProblemWords,
  readLine: ReadLine,
): string {
  if (problems.length === 0) return '';
  const sorted = sortProblems(problems);
  const blocks = sorted.map((problem) => formatProblem(problem, words, readLine));
  const fileCount = new Set(sorted.map(({ spot }) => spot.file)).size;
  return [...blocks, words.closing({ problemCount: sorted.length, fileCount })].join('\n\n');
}

function formatProblem(problem: LocatedProblem, words: ProblemWords, readLine: ReadLine): string {
  const { spot } = problem;
  const place = spot.line === null ? spot.file : `${spot.file}:${spot.line}:${spot.column}`;
  const frame = spot.line === null ? [] : codeFrame(spot, readLine);
  return [`${plainLine(place)}  ${problem.code}`, ...frame, `  ${plainLine(textOf(problem, words))}`].join(
    '\n',
  );
}

/** The code of a problem decides its parts, which the compiler cannot follow through a lookup. */
function textOf(problem: LocatedProblem, words: ProblemWords): string {
  const text = words.texts[problem.code] as (parts: LocatedProblem['parts']) => string;
  return text(problem.parts);
}
