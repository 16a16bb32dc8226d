import type { Words } from '../../words/index.ts';
import type { Show } from '../show/index.ts';

/** How deep to dig at a place, or how much to fill; none where both are too little to show. */
export function depthText(
  { digIn, fillIn }: { readonly digIn: number; readonly fillIn: number },
  show: Show,
  say: Words['workOrder']['grades']['digs'],
): string {
  const none = show.size(0);
  if (show.size(digIn) !== none) return show.size(digIn);
  return show.size(fillIn) === none ? say.none : say.fill(show.size(fillIn));
}
