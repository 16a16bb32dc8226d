import type { Numbering } from './outline-bases.ts';
import { childrenOf } from './paths.ts';
import type { Finder } from './problems-found.ts';

const SIZES = ['rise', 'radius', 'through'] as const;

/** Edges that are there and straight, each bent in one way, with the side it bends to where it needs one. */
export function checkBends(finder: Finder, path: string, { edges, arcs }: Numbering): void {
  const { origins, add } = finder;
  for (const edge of childrenOf(`${path}.bent`, origins)) {
    const at = `${path}.bent.${edge}`;
    if (Number(edge) > edges) add(at, 'no-such-edge', { edge, count: String(edges) });
    else if (arcs.includes(Number(edge))) add(at, 'edge-is-arc', { edge });
    checkBend(finder, at);
  }
}

function checkBend({ origins, add }: Finder, path: string): void {
  const [size, ...others] = SIZES.filter((key) => origins.has(`${path}.${key}`));
  if (size === undefined || others.length > 0) return add(path, 'bend-unclear', { known: SIZES });
  const hasSide = origins.has(`${path}.bends`);
  if (size === 'through' && hasSide) add(`${path}.bends`, 'bend-with-side', {});
  if (size !== 'through' && !hasSide) add(path, 'bend-without-side', { key: size });
}
