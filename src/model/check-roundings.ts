import type { Numbering } from './outline-bases.ts';
import { childrenOf } from './paths.ts';
import type { Finder } from './problems-found.ts';

const WAYS = ['rounded', 'rounded-to-radius', 'rounded-by-chord', 'rounded-by-two-arcs'] as const;

/** Corners that are there, each rounded in one way, and between two straight edges. */
export function checkRoundings(finder: Finder, path: string, numbering: Numbering): void {
  const { origins, add } = finder;
  const arcs = new Set([...numbering.arcs, ...childrenOf(`${path}.bent`, origins).map(Number)]);
  const before = new Map<string, string>();
  for (const way of WAYS) {
    for (const corner of childrenOf(`${path}.${way}`, origins)) {
      const at = `${path}.${way}.${corner}`;
      const first = before.get(corner);
      if (Number(corner) > numbering.corners) {
        add(at, 'no-such-corner', { corner, count: String(numbering.corners) });
      } else if (first !== undefined) {
        add(at, 'corner-rounded-twice', { corner, first, second: way });
      } else {
        const arc = edgesAt(Number(corner), numbering.edges).find((edge) => arcs.has(edge));
        if (arc !== undefined) add(at, 'corner-beside-arc', { corner, edge: String(arc) });
      }
      before.set(corner, first ?? way);
    }
  }
}

/** The edge that ends at a corner and the one that starts there; none for what is no number. */
function edgesAt(corner: number, edgeCount: number): readonly number[] {
  return [corner === 1 ? edgeCount : corner - 1, corner];
}
