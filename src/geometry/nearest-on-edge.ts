import { arcOf, pointOnArc } from './arc.ts';
import { distanceIn, type Edge, type Point } from './outline.ts';

/**
 * The point of an edge nearest to a point, and the direction of the edge there [rad]. A line from the point to it
 * is square to the edge, unless it is one of its ends.
 */
export function nearestOnEdge(
  { from, to }: Edge,
  point: Point,
): { readonly point: Point; readonly alongRad: number } {
  if (from.bulge === 0) {
    const [dxIn, dyIn] = [to.xIn - from.xIn, to.yIn - from.yIn];
    const share = ((point.xIn - from.xIn) * dxIn + (point.yIn - from.yIn) * dyIn) / (dxIn ** 2 + dyIn ** 2);
    const within = Math.min(1, Math.max(0, share));
    return {
      point: { xIn: from.xIn + dxIn * within, yIn: from.yIn + dyIn * within },
      alongRad: Math.atan2(dyIn, dxIn),
    };
  }
  const arc = arcOf(from, to);
  const fullRad = 2 * Math.PI;
  const sign = Math.sign(arc.sweepRad);
  const toRad = Math.atan2(point.yIn - arc.centre.yIn, point.xIn - arc.centre.xIn);
  const turnedRad = ((((toRad - arc.startRad) * sign) % fullRad) + fullRad) % fullRad;
  const share = turnedRad / Math.abs(arc.sweepRad);
  const nearerEnd = distanceIn(from, point) <= distanceIn(to, point) ? 0 : 1;
  const at = share <= 1 ? share : nearerEnd;
  return { point: pointOnArc(arc, at), alongRad: arc.startRad + arc.sweepRad * at + (sign * Math.PI) / 2 };
}
