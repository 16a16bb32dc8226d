import { childrenOf } from './paths.ts';
import { checkId, checkIds, type Finder, idAt, textAt } from './problems-found.ts';

const GARAGES = 'heights.garages';
const BENDS = 'heights.bends-along';
const POINTS = 'heights.points';

/** What garage floors and the lines name that a surface bends at: points that fit what is said of them. */
export function checkSurfaceLines(finder: Finder): void {
  const floors = new Set<string>();
  for (const id of childrenOf(GARAGES, finder.origins)) {
    checkId(finder, `${GARAGES}.${id}.slab`, { thing: 'slab', below: 'build.slabs' });
    const points = pointsOf(finder, `${GARAGES}.${id}.points`);
    for (const { path, point, kind } of points) {
      if (kind === 'finish' || kind === 'existing') finder.add(path, 'floor-not-fixed', { kind });
      if (point !== null && floors.has(point)) finder.add(path, 'floor-of-two', { id: point });
    }
    for (const { point } of points) if (point !== null) floors.add(point);
  }
  for (const number of childrenOf(BENDS, finder.origins))
    for (const { path, kind } of pointsOf(finder, `${BENDS}.${number}`))
      if (kind === 'existing') finder.add(path, 'bend-at-existing', {});
}

/** The points that a list names, each once, with their kinds. */
function pointsOf(
  finder: Finder,
  below: string,
): readonly { readonly path: string; readonly point: string | null; readonly kind: string | null }[] {
  checkIds(finder, below, { thing: 'level-point', below: POINTS, mayBeNone: true });
  return childrenOf(below, finder.origins).map((index) => {
    const path = `${below}.${index}`;
    const point = idAt(path, finder.origins);
    return { path, point, kind: textAt(`${POINTS}.${point}.kind`, finder.origins) };
  });
}
