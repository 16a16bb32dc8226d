import {
  type LocatedProblem,
  nearestName,
  type Origins,
  type ProblemCode,
  type ProblemParts,
  problemAt,
  shortened,
  spotOf,
  type Thing,
} from '../problems/index.ts';
import { childrenOf } from './paths.ts';

/** Of what stands where an id should [characters]. */
const MOST_SHOWN = 40;

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
export type Known = {
  readonly thing: Thing;
  readonly below: string;
  /** Whether their section was read and may hold none, so that an id names nothing even then. */
  readonly mayBeNone?: boolean;
  /** Words that may stand there instead of an id. */
  readonly orWords?: readonly string[];
};

/**
 * Adds a problem where the id written at a path is not one of the things below another. Nothing is
 * said where nothing stands, or where none of the things stands in the files.
 */
export function checkId(
  finder: Finder,
  path: string,
  { thing, below, mayBeNone = false, orWords = [] }: Known,
): void {
  const id = textAt(path, finder.origins);
  const things = childrenOf(below, finder.origins);
  const known = [...orWords, ...things];
  if (id === null || known.includes(id) || (things.length === 0 && !mayBeNone)) return;
  finder.add(path, 'unknown-id', {
    id: shortened(id, MOST_SHOWN),
    thing,
    nearest: nearestName(id, known),
    known,
  });
}

/** As `checkId` for a list, in which nothing may stand twice. */
export function checkIds(finder: Finder, path: string, known: Known): void {
  const places = childrenOf(path, finder.origins).map((index) => `${path}.${index}`);
  for (const place of places) checkId(finder, place, known);
  checkNamedOnce(finder, path);
}

/** Adds a problem at each id of a list that stands in it before. */
export function checkNamedOnce(finder: Finder, path: string): void {
  const places = childrenOf(path, finder.origins).map((index) => `${path}.${index}`);
  const ids = places.map((place) => idAt(place, finder.origins));
  for (const [index, place] of places.entries()) {
    const id = ids[index] ?? null;
    if (id !== null && ids.indexOf(id) !== index) finder.add(place, 'named-twice', { id });
  }
}

/** An id as written, without quotes; null where none stands or it has characters no id has. */
export function idAt(path: string, origins: Origins): string | null {
  const written = textAt(path, origins);
  return written !== null && /^[a-z0-9-]+$/.test(written) ? written : null;
}

/** A value as written, without quotes; null where none stands. */
export function textAt(path: string, origins: Origins): string | null {
  return origins.get(path)?.text.replace(/^(["'])(.*)\1$/, '$2') ?? null;
}
