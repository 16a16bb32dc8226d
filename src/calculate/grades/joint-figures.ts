import {
  type Bounds,
  boundsOf,
  chordsOf,
  climbTowards,
  distanceIn,
  distanceToEdgeIn,
  heightAt,
  leftOf,
  type Outline,
  orient,
  type Point,
  planeAt,
} from '../../geometry/index.ts';
import { type Figure, figure } from '../figure.ts';
import { inputsByName } from '../parts.ts';
import { NEAR_IN } from './points.ts';
import type { SlabSurface } from './surfaces.ts';

export type JointFigures = {
  /** How far one surface stands above the other along the joint, at the most [in]. */
  readonly lip: Figure;
  /** Change of slope square to the joint, at the most [rise over run]. */
  readonly break: Figure;
};

/** So far to either side of a joint its two slopes are taken [in]. */
const BESIDE_IN = 6;
/** So often along an edge it is looked whether the other slab is beside it [in]. */
const STEP_IN = 12;

type Station = { readonly at: Point; readonly edge: { readonly from: Point; readonly to: Point } };

/**
 * What two surfaces make of the joint between their slabs, whatever the joint is: their edges lie along each
 * other for a foot or more. Null where they do not.
 */
export function jointFigures(one: SlabSurface, other: SlabSurface): JointFigures | null {
  const around = boundsOf(other.outline);
  const shared = stationsAlong(one.outline).filter(
    ({ at }) => isNear(around, at) && distanceToEdgeIn(other.outline, at) <= NEAR_IN,
  );
  if (shared.length < 2) return null;
  const lipsIn = shared.map(({ at }) => Math.abs(heightAt(one.surface, at) - heightAt(other.surface, at)));
  const breaks = shared.map(({ at, edge }) => {
    const { a, b } = leftOf(edge.from, edge.to);
    const beside = (offIn: number) => ({ xIn: at.xIn + offIn * a, yIn: at.yIn + offIn * b });
    const climb = ({ surface }: SlabSurface, offIn: number) =>
      climbTowards(planeAt(surface, beside(offIn)), Math.atan2(b, a));
    return Math.abs(climb(one, BESIDE_IN) - climb(other, -BESIDE_IN));
  });
  const points = Object.fromEntries(
    [...one.points, ...other.points].map(({ point, height }) => [point.id, height]),
  );
  const inputs = inputsByName(points, 'In');
  return {
    lip: figure({
      value: Math.max(...lipsIn),
      unit: 'in',
      decimals: 2,
      formula: { method: 'the most that one surface stands above the other along the joint' },
      inputs,
    }),
    break: figure({
      value: Math.max(...breaks),
      unit: 'ratio',
      decimals: 4,
      formula: { method: 'the most that the slope square to the joint differs from side to side' },
      inputs,
    }),
  };
}

function stationsAlong(outline: Outline): readonly Station[] {
  return orient(outline).rings.flatMap((ring) =>
    chordsOf(ring).flatMap((edge) => {
      const { from, to } = edge;
      const count = Math.max(2, Math.ceil(distanceIn(from, to) / STEP_IN));
      // Not at its ends, where the next edge starts: a corner alone is no joint.
      return Array.from({ length: count }, (_, step): Station => {
        const share = (step + 0.5) / count;
        const at = {
          xIn: from.xIn + share * (to.xIn - from.xIn),
          yIn: from.yIn + share * (to.yIn - from.yIn),
        };
        return { at, edge };
      });
    }),
  );
}

function isNear({ minXIn, maxXIn, minYIn, maxYIn }: Bounds, { xIn, yIn }: Point): boolean {
  return (
    xIn >= minXIn - NEAR_IN && xIn <= maxXIn + NEAR_IN && yIn >= minYIn - NEAR_IN && yIn <= maxYIn + NEAR_IN
  );
}
