import { insetRing, type Outline, type Ring } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatFeetInches } from '../../units/index.ts';
import type { Hollow } from '../job.ts';

/** The outer face of a hollow thing. */
export function outerRing(outline: Outline): Ring {
  const [outer, ...holes] = outline.rings;
  if (outer === undefined || holes.length > 0) throw new RangeError('a hollow thing has one outer face');
  return outer;
}

/** What keeps walls or a footing from standing inside an outer face; null where nothing does. */
export function hollowProblem({ id, walls, footing }: Hollow, outer: Ring): CoreProblem | null {
  const path = `site.existing.${id}`;
  const inside = insetRing(outer, walls.thicknessIn);
  if (!inside.ok && inside.reason === 'arc-at-an-angle') {
    return { code: 'walls-on-bent-outline', path: `${path}.walls`, parts: {} };
  }
  if (!inside.ok) {
    const parts = { thickness: formatFeetInches(walls.thicknessIn, 16) };
    return { code: 'walls-do-not-fit', path: `${path}.walls.thickness`, parts };
  }
  // Its inner edge lies half its width in from the middle of the walls.
  if (footing === null || insetRing(outer, (walls.thicknessIn + footing.widthIn) / 2).ok) return null;
  const parts = { width: formatFeetInches(footing.widthIn, 16) };
  return { code: 'footing-does-not-fit', path: `${path}.footing.width`, parts };
}
