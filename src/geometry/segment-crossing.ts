import type { Line } from './clip.ts';
import type { Point } from './outline.ts';

/** Nearer to parallel than this two lines do not cross: the sine of the angle between them. */
const PARALLEL = 1e-9;

/**
 * Where a stretch is crossed by another, from its start [in]; null where they do not meet, or run side by side.
 * A stretch that ends on the other meets it.
 */
export function segmentCrossingIn(
  stretch: { readonly from: Point; readonly to: Point },
  { fromXIn, fromYIn, toXIn, toYIn }: Line,
): number | null {
  const { from, to } = stretch;
  const along = { xIn: to.xIn - from.xIn, yIn: to.yIn - from.yIn };
  const other = { xIn: toXIn - fromXIn, yIn: toYIn - fromYIn };
  const cross = along.xIn * other.yIn - along.yIn * other.xIn;
  const sidesSqIn = (along.xIn ** 2 + along.yIn ** 2) * (other.xIn ** 2 + other.yIn ** 2);
  if (cross ** 2 <= PARALLEL ** 2 * sidesSqIn) return null;
  const start = { xIn: fromXIn - from.xIn, yIn: fromYIn - from.yIn };
  const share = (start.xIn * other.yIn - start.yIn * other.xIn) / cross;
  const otherShare = (start.xIn * along.yIn - start.yIn * along.xIn) / cross;
  const meets = share >= 0 && share <= 1 && otherShare >= 0 && otherShare <= 1;
  return meets ? share * Math.hypot(along.xIn, along.yIn) : null;
}
