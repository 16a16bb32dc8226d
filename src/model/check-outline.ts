import type { Thing } from '../problems/index.ts';
import { checkBase } from './check-base.ts';
import { checkBends } from './check-bends.ts';
import { checkRoundings } from './check-roundings.ts';
import {
  ADDED_BASES,
  BASES,
  type Base,
  CUT_OUT_BASES,
  type Numbering,
  numberingOf,
} from './outline-bases.ts';
import { childrenOf } from './paths.ts';
import type { Finder } from './problems-found.ts';

/** One base of its own, and roundings, bends and edges only where there are corners and edges. */
export function checkOutline(finder: Finder, path: string, thing: Thing): void {
  checkParts(finder, `${path}.cut-outs`, 'cut-out', CUT_OUT_BASES);
  checkParts(finder, `${path}.added`, 'added-piece', ADDED_BASES);

  const base = onlyBase(finder, path, thing, BASES);
  if (base === null || !checkBase(finder, path, base)) return;
  if (base === 'strip') return checkWithoutNumbers(finder, path);
  const numbering = numberingOf(base, path, finder.origins);
  if (numbering === null) return;
  checkRoundings(finder, path, numbering);
  checkBends(finder, path, numbering);
  checkEdges(finder, path, numbering);
}

/** What is left out of an outline or joined to it. */
function checkParts(finder: Finder, path: string, thing: Thing, known: readonly Base[]): void {
  for (const id of childrenOf(path, finder.origins)) {
    const base = onlyBase(finder, `${path}.${id}`, thing, known);
    if (base !== null) checkBase(finder, `${path}.${id}`, base);
  }
}

function onlyBase(finder: Finder, path: string, thing: Thing, known: readonly Base[]): Base | null {
  const { origins, add } = finder;
  const [first, ...others] = known.filter((base) => origins.has(`${path}.${base}`));
  if (first === undefined) add(path, 'no-outline', { thing, known });
  for (const second of others)
    add(`${path}.${second}`, 'two-outlines', { thing, first: first ?? '', second });
  return others.length === 0 ? (first ?? null) : null;
}

/** Said by the number of an edge, beside bends. */
const BY_EDGE = ['edges', 'thickened-edges', 'edge-joints'] as const;

const WITH_NUMBERS = [
  'rounded',
  'rounded-to-radius',
  'rounded-by-chord',
  'rounded-by-two-arcs',
  'bent',
  ...BY_EDGE,
] as const;

function checkWithoutNumbers({ origins, add }: Finder, path: string): void {
  for (const key of WITH_NUMBERS) {
    if (origins.has(`${path}.${key}`)) add(`${path}.${key}`, 'not-with-strip', { key });
  }
}

function checkEdges({ origins, add }: Finder, path: string, { edges }: Numbering): void {
  for (const key of BY_EDGE) {
    for (const edge of childrenOf(`${path}.${key}`, origins)) {
      if (Number(edge) > edges) add(`${path}.${key}.${edge}`, 'no-such-edge', { edge, count: String(edges) });
    }
  }
}
