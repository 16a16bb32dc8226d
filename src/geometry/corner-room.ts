import { distanceIn, type Ring, vertexAt } from './outline.ts';

type SetbackAt = (corner: number, side: 'setbackBeforeIn' | 'setbackAfterIn') => number;

/**
 * What the neighbours of a corner leave of its two edges [in], 0 where they want more than there is.
 *
 * @param index     Of the corner, from 0.
 * @param setbackAt Setback of a corner by its number from 1, 0 where it is not rounded.
 */
export function roomAt(
  ring: Ring,
  index: number,
  setbackAt: SetbackAt,
): { readonly beforeIn: number; readonly afterIn: number } {
  const before = vertexAt(ring, index - 1);
  const here = vertexAt(ring, index);
  const after = vertexAt(ring, index + 1);
  const cornerAt = (place: number) => ((place + ring.length) % ring.length) + 1;
  const beforeIn = distanceIn(before, here) - setbackAt(cornerAt(index - 1), 'setbackAfterIn');
  const afterIn = distanceIn(here, after) - setbackAt(cornerAt(index + 1), 'setbackBeforeIn');
  // A neighbour that wants more than the whole edge leaves nothing here; it is not owed a negative length.
  return { beforeIn: Math.max(0, beforeIn), afterIn: Math.max(0, afterIn) };
}
