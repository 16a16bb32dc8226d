import { lineOfAreaXIn } from './area-left.ts';
import { turnOutline } from './build.ts';
import { clipLineToOutline } from './clip.ts';
import { boundsOf, labelPointOf, outlineAreaSqIn } from './measure.ts';
import type { Outline, Point } from './outline.ts';
import { piecesBetween } from './overlap.ts';

/** A straight piece of a cut, inside the outline from end to end. */
export type CutLine = { readonly from: Point; readonly to: Point };

export type Slice = {
  /** Where it starts, from right to left as seen in the direction; none for the first. */
  readonly lines: readonly CutLine[];
  /** Inside, far from every edge; of a slice in several pieces, in the largest. */
  readonly label: Point;
};

/** What the areas together may differ from that of the outline [in²]; the last slice takes it. */
const SUM_OFF_SQ_IN = 0.5;

/** A label stands far from every arc: it can do with coarse chords [in]. */
const LABEL_OFF_ARC_IN = 2;

/**
 * Cuts an outline by parallel lines, square to a direction, into slices of given areas that follow each
 * other in that direction. Exact with arcs and holes, to 1e-5 sq in.
 *
 * @param cut.towardsDeg Direction, anticlockwise from x.
 * @param cut.areasSqIn  Of each slice in order, above 0; together the area of the outline.
 * @throws {RangeError} If there is no area, one is not above 0, or they do not add up.
 */
export function sliceOutline(cut: {
  readonly outline: Outline;
  readonly towardsDeg: number;
  readonly areasSqIn: readonly number[];
}): readonly Slice[] {
  const { outline, towardsDeg, areasSqIn } = cut;
  const turned = turnOutline(outline, -towardsDeg);
  const placesXIn = cutPlacesXIn(turned, areasSqIn);
  const { minXIn, maxXIn } = boundsOf(turned);
  return areasSqIn.map((_, index) => {
    const fromXIn = placesXIn[index - 1] ?? minXIn;
    const toXIn = placesXIn[index] ?? maxXIn;
    const lines = index === 0 ? [] : linesAt(turned, fromXIn);
    return {
      lines: lines.map(({ from, to }) => ({
        from: turnedPoint(from, towardsDeg),
        to: turnedPoint(to, towardsDeg),
      })),
      label: turnedPoint(labelIn(turned, fromXIn, toXIn), towardsDeg),
    };
  });
}

/** Length of all the lines that such slices need [in], without looking at the slices themselves. */
export function cutLengthIn(cut: Parameters<typeof sliceOutline>[0]): number {
  const turned = turnOutline(cut.outline, -cut.towardsDeg);
  return cutPlacesXIn(turned, cut.areasSqIn)
    .flatMap((atXIn) => linesAt(turned, atXIn))
    .reduce((sumIn, { from, to }) => sumIn + to.yIn - from.yIn, 0);
}

/** Where the lines between slices stand, one fewer than there are slices. */
function cutPlacesXIn(turned: Outline, areasSqIn: readonly number[]): readonly number[] {
  const wholeSqIn = outlineAreaSqIn(turned);
  const sumSqIn = areasSqIn.reduce((sum, areaSqIn) => sum + areaSqIn, 0);
  if (!(areasSqIn.length > 0 && areasSqIn.every((areaSqIn) => areaSqIn > 0))) {
    throw new RangeError(`areasSqIn must be areas above 0, got ${areasSqIn.join(', ')}`);
  }
  if (!(Math.abs(sumSqIn - wholeSqIn) <= SUM_OFF_SQ_IN)) {
    throw new RangeError(`areasSqIn must add up to ${wholeSqIn}, got ${sumSqIn}`);
  }
  let beforeSqIn = 0;
  return areasSqIn.slice(0, -1).map((areaSqIn) => {
    beforeSqIn += areaSqIn;
    return lineOfAreaXIn(turned, beforeSqIn);
  });
}

function linesAt(turned: Outline, atXIn: number): readonly CutLine[] {
  const line = { fromXIn: atXIn, fromYIn: 0, toXIn: atXIn, toYIn: 1 };
  return clipLineToOutline(line, turned).map(({ fromIn, toIn }) => ({
    from: { xIn: atXIn, yIn: fromIn },
    to: { xIn: atXIn, yIn: toIn },
  }));
}

/** @throws {RangeError} If the slice is too thin to have a piece. */
function labelIn(turned: Outline, fromXIn: number, toXIn: number): Point {
  const pieces = piecesBetween(turned, { fromXIn, toXIn, offArcIn: LABEL_OFF_ARC_IN });
  const [largest] = pieces.toSorted((one, other) => outlineAreaSqIn(other) - outlineAreaSqIn(one));
  if (largest === undefined) throw new RangeError(`no piece between ${fromXIn} and ${toXIn} in`);
  return labelPointOf(largest);
}

function turnedPoint({ xIn, yIn }: Point, turnDeg: number): Point {
  const [vertex] = turnOutline({ rings: [[{ xIn, yIn, bulge: 0, edge: 'formed' }]] }, turnDeg).rings[0] ?? [];
  if (vertex === undefined) throw new RangeError('one vertex in, one out');
  return { xIn: vertex.xIn, yIn: vertex.yIn };
}
