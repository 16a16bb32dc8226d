import {
  type LocatedProblem,
  nearestName,
  type Origins,
  type ProblemCode,
  type ProblemParts,
  problemAt,
  spotOf,
  type Thing,
} from '../problems/index.ts';
import { childrenOf } from './paths.ts';

/** Collects what does not fit together, each at the origin of a job path. */
export type Finder = {
  readonly origins: Origins;
  readonly found: readonly LocatedProblem[];
  readonly add: <C extends ProblemCode>(path: string, code: C, parts: ProblemParts[C]) => void;
};

/** @param folder Shown where a path stands in no file. */
export function aFinder(origins: Origins, folder: string): Finder {
  const found: LocatedProblem[] = [];
  return {
    origins,
    found,
    add: (path, code, parts) => {
      found.push(problemAt(spotOf(path, origins, folder), code, parts));
    },
  };
}

/** What an id may be: the things below a job path, whether or not they could be read. */
export type Known = { readonly thing: Thing; readonly below: string };

/**
 * Adds a problem where an id is not one of the things below a path. Where none of them stands in the
 * files, a problem with the files has said so.
 */
export function checkId(finder: Finder, path: string, id: string, { thing, below }: Known): void {
  const known = childrenOf(below, finder.origins);
  if (known.length === 0 || known.includes(id)) return;
  finder.add(path, 'unknown-id', { id, thing, nearest: nearestName(id, known), known });
}

/** As `checkId` for a list, in which nothing may stand twice. */
export function checkIds(finder: Finder, path: string, ids: readonly string[], known: Known): void {
  for (const [index, id] of ids.entries()) {
    checkId(finder, `${path}.${index}`, id, known);
    if (ids.indexOf(id) !== index) finder.add(`${path}.${index}`, 'named-twice', { id });
  }
}
