import { containsPoint, distanceToEdgeIn, type Point } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import { type GradedSlab, placeAt } from '../grades/index.ts';
import type { Flight, FootSpot } from '../job.ts';

/** How far the new surface lies above the one that is there, by spot [in]; below 0 where lower. */
export type FootChanges = Readonly<Record<FootSpot, FigureInput>>;

/** By spot: what is there now and the new surface above the datum, and how far that is above the other [in]. */
export type FootHeights = Readonly<
  Record<FootSpot, { readonly now: Figure; readonly planned: Figure; readonly change: Figure }>
>;

export type Foot = {
  readonly changes: FootChanges;
  /** Null where the job says the changes. */
  readonly heights: FootHeights | null;
  readonly problems: readonly CoreProblem[];
};

/** A slab that far from a foot is still at it: common practice, no source [in]. */
const AT_FOOT_IN = 12;

/**
 * What changes at the foot of a flight that stays: as the job says, or the new surface less what is there
 * now, at both ends and halfway between.
 *
 * @param graded The slabs whose surface is known from the heights of the job.
 */
export function footOf(flight: Pick<Flight, 'id' | 'foot'>, graded: readonly GradedSlab[]): Foot {
  const { id, foot } = flight;
  if (foot.kind === 'typed') {
    const said = (spot: FootSpot) => given(`site.flights.${id}.foot.${spot}`, foot.changeIn[spot], 'in');
    const changes = { left: said('left'), middle: said('middle'), right: said('right') };
    return { changes, heights: null, problems: [] };
  }
  const { left, right } = foot;
  const middle = { xIn: (left.xIn + right.xIn) / 2, yIn: (left.yIn + right.yIn) / 2 };
  const path = `site.flights.${id}.foot-ends`;
  const slab = slabAt(middle, graded);
  if (slab === null) return unknown({ code: 'foot-off-slabs', path, parts: {} });
  const heights = {
    left: heightsAt(slab, left),
    middle: heightsAt(slab, middle),
    right: heightsAt(slab, right),
  };
  if (heights.left === null || heights.middle === null || heights.right === null) {
    return unknown({ code: 'foot-without-old', path, parts: { slab: slab.slab.label } });
  }
  const known = { left: heights.left, middle: heights.middle, right: heights.right };
  return {
    changes: { left: known.left.change, middle: known.middle.change, right: known.right.change },
    heights: known,
    problems: [],
  };
}

function slabAt(at: Point, graded: readonly GradedSlab[]): GradedSlab | null {
  const offIn = ({ outline }: GradedSlab) => (containsPoint(outline, at) ? 0 : distanceToEdgeIn(outline, at));
  const [nearest] = graded.toSorted((one, other) => offIn(one) - offIn(other));
  return nearest !== undefined && offIn(nearest) <= AT_FOOT_IN ? nearest : null;
}

function heightsAt(slab: GradedSlab, at: Point): FootHeights[FootSpot] | null {
  const { finish, existing } = placeAt(slab, slab.parts, at);
  if (existing === undefined) return null;
  const change = figure({
    value: num(finish) - num(existing),
    unit: 'in',
    decimals: 3,
    formula: 'thenIn - nowIn',
    inputs: { thenIn: finish, nowIn: existing },
  });
  return { now: existing, planned: finish, change };
}

/** The other topics run on a foot that stays as it is, and the problem keeps all of it off paper. */
function unknown(problem: CoreProblem): Foot {
  const none = figure({ value: 0, unit: 'in', decimals: 3, formula: '0', inputs: {} });
  return { changes: { left: none, middle: none, right: none }, heights: null, problems: [problem] };
}
