import { keptResult, noteResult } from './kept-results.ts';

/** More than the hidden conditions of a job; what was asked for longest ago goes first. */
const KEPT_RESULTS = 32;

/**
 * A topic that remembers what it made of its latest inputs.
 *
 * Inputs are compared part by part by identity: an edit makes new objects only along its path, so a
 * rerun computes anew what the edit reaches and takes the rest from here.
 */
export function remember<I extends object, R>(topic: (input: I) => R): (input: I) => R {
  type Made = { readonly input: I; readonly result: R };
  // The latest first.
  let made: readonly Made[] = [];
  return (input) => {
    const known = made.find((one) => hasSameParts(one.input, input));
    const latest = known ?? { input, result: topic(input) };
    made = [latest, ...made.filter((one) => one !== latest)].slice(0, KEPT_RESULTS);
    return latest.result;
  };
}

function hasSameParts<I extends object>(one: I, other: I): boolean {
  const keys = Object.keys(one) as (keyof I)[];
  return keys.length === Object.keys(other).length && keys.every((key) => Object.is(one[key], other[key]));
}

/**
 * A slow function of plain data that remembers its latest results by the value of its input: what is the same
 * slab to it is not worked out again where an edit made a new object of it, nor in the next run of the program
 * where results are kept (`withKeptResults`).
 *
 * @param name Of the function among the kept results; no two have the same.
 * @param make Takes and gives plain data without figures, which are told apart by identity; never gives undefined.
 * @param most How many results are remembered, 1 or more; the oldest goes first.
 */
export function rememberByValue<I extends object, R>(
  name: string,
  make: (input: I) => R,
  most: number,
): (input: I) => R {
  const made = new Map<string, R>();
  return (input) => {
    const key = JSON.stringify(input);
    let result = made.get(key);
    if (result === undefined) {
      const kept = keptResult(name, key) as R | undefined;
      result = kept === undefined ? make(input) : kept;
      const [oldest] = made.keys();
      if (made.size >= most && oldest !== undefined) made.delete(oldest);
      made.set(key, result);
    }
    noteResult(name, key, result);
    return result;
  };
}
