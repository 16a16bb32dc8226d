import type { ProblemTexts } from './codes.ts';
import { type LocatedProblem, problemAt } from './problem.ts';
import type { CoreProblem, Origin, Origins, SourceSpot, WholeFile } from './types.ts';

/**
 * The origin of a job path, or of the nearest thing it belongs to that stands in a file.
 *
 * @returns null if nothing on the way up does.
 */
function originOf(path: string, origins: Origins): Origin | null {
  for (let at = path; at !== ''; at = parentOf(at)) {
    const origin = origins.get(at);
    if (origin !== undefined && origin.spot !== null) return origin;
  }
  return null;
}

function parentOf(path: string): string {
  return path.slice(0, Math.max(0, path.lastIndexOf('.')));
}

/** The spot of a job path, or of its nearest parent that has one, or the job's folder. */
export function spotOf(path: string, origins: Origins, folder: string): SourceSpot | WholeFile {
  return originOf(path, origins)?.spot ?? { file: folder, line: null };
}

/**
 * A problem of the core with its place in the files.
 *
 * @param where.folder Shown where no part of the path stands in a file.
 * @param where.texts  The texts in any language: they know which codes there are.
 * @throws {RangeError} If the core gave a code that has no text, which only a programmer can cause.
 */
export function locateProblem(
  problem: CoreProblem,
  origins: Origins,
  where: { readonly folder: string; readonly texts: ProblemTexts },
): LocatedProblem {
  if (!isCode(problem.code, where.texts))
    throw new RangeError(`no text for the problem code ${problem.code}`);
  return problemAt(spotOf(problem.path, origins, where.folder), problem.code, problem.parts as never);
}

function isCode(code: string, texts: ProblemTexts): code is keyof ProblemTexts {
  return Object.hasOwn(texts, code);
}
