import type { Thing } from '../problems/index.ts';
import { childrenOf } from './paths.ts';
import type { Finder } from './problems-found.ts';

const RECTANGLE_CORNERS = 4;
const FEWEST_CORNERS = 3;

/** One outline, of at least three corners, and roundings and edges only where there are corners. */
export function checkOutline(finder: Finder, path: string, thing: Thing): void {
  const { origins, add } = finder;
  const isRectangle = origins.has(`${path}.rectangle`);
  const hasCorners = origins.has(`${path}.corners`);
  if (!isRectangle && !hasCorners) return add(path, 'no-outline', { thing });
  if (isRectangle && hasCorners) return add(`${path}.corners`, 'two-outlines', { thing });

  const cornerCount = isRectangle ? RECTANGLE_CORNERS : childrenOf(`${path}.corners`, origins).length;
  const count = String(cornerCount);
  if (cornerCount < FEWEST_CORNERS) return add(`${path}.corners`, 'too-few-corners', { count });
  for (const corner of childrenOf(`${path}.rounded`, origins)) {
    if (Number(corner) > cornerCount) add(`${path}.rounded.${corner}`, 'no-such-corner', { corner, count });
  }
  for (const edge of childrenOf(`${path}.edges`, origins)) {
    if (Number(edge) > cornerCount) add(`${path}.edges.${edge}`, 'no-such-edge', { edge, count });
  }
}
