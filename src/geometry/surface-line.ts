import { valueOf } from './half-plane.ts';
import { distanceIn, type Point } from './outline.ts';
import { planeAt, planeHeightIn, type Surface } from './surface.ts';
import { cellsOf } from './surface-cells.ts';

/** A part of a line over which a surface runs evenly; distances from the first point of the line. */
export type LinePiece = {
  readonly fromIn: number;
  readonly toIn: number;
  readonly fromHeightIn: number;
  readonly toHeightIn: number;
};

/** Cuts nearer than this are one [in]: the noise of crossing two lines. */
const SAME_CUT_IN = 1e-6;
/** Heights and climbs nearer than this are the same [in, rise over run]. */
const SAME = 1e-9;

/**
 * A surface along a straight line: pieces from break to break, in order. Exact, since it is plane between
 * the edges of its triangles; where nothing breaks at an edge the pieces beside it are one.
 *
 * @throws {RangeError} If the two points are the same.
 */
export function surfaceAlong(
  surface: Surface,
  line: { readonly from: Point; readonly to: Point },
): readonly LinePiece[] {
  const lengthIn = distanceIn(line.from, line.to);
  if (!(lengthIn > 0)) throw new RangeError('a line needs two different points');
  const marksIn = [0, ...cutsIn(surface, line, lengthIn), lengthIn];
  const pieces = marksIn.slice(1).map((toIn, index): LinePiece => {
    const fromIn = marksIn[index] ?? 0;
    const plane = planeAt(surface, pointAlong(line, (fromIn + toIn) / 2));
    const heightIn = (alongIn: number) => planeHeightIn(plane, pointAlong(line, alongIn));
    return { fromIn, toIn, fromHeightIn: heightIn(fromIn), toHeightIn: heightIn(toIn) };
  });
  return joined(pieces);
}

/** A point so far along a line [in]. */
export function pointAlong(
  { from, to }: { readonly from: Point; readonly to: Point },
  alongIn: number,
): Point {
  const share = alongIn / distanceIn(from, to);
  return { xIn: from.xIn + share * (to.xIn - from.xIn), yIn: from.yIn + share * (to.yIn - from.yIn) };
}

/** How much a piece climbs [rise over run]; below 0 where it falls. */
export function climbOf({ fromIn, toIn, fromHeightIn, toHeightIn }: LinePiece): number {
  return (toHeightIn - fromHeightIn) / (toIn - fromIn);
}

/** Where a line crosses what may part two planes of a surface [in along it], between its ends. */
function cutsIn(
  surface: Surface,
  { from, to }: { readonly from: Point; readonly to: Point },
  lengthIn: number,
): readonly number[] {
  const all = cellsOf(surface).flatMap(({ sides }) =>
    sides.flatMap((side) => {
      const [here, there] = [valueOf(side, from), valueOf(side, to)];
      return here * there < 0 ? [(lengthIn * here) / (here - there)] : [];
    }),
  );
  const inOrder = all
    .filter((alongIn) => alongIn > SAME_CUT_IN && alongIn < lengthIn - SAME_CUT_IN)
    .toSorted((one, other) => one - other);
  return inOrder.filter((alongIn, index) => alongIn - (inOrder[index - 1] ?? 0) > SAME_CUT_IN);
}

function joined(pieces: readonly LinePiece[]): readonly LinePiece[] {
  const kept: LinePiece[] = [];
  for (const piece of pieces) {
    const last = kept.at(-1);
    const runsOn =
      last !== undefined &&
      Math.abs(last.toHeightIn - piece.fromHeightIn) < SAME &&
      Math.abs(climbOf(last) - climbOf(piece)) < SAME;
    if (runsOn) kept[kept.length - 1] = { ...last, toIn: piece.toIn, toHeightIn: piece.toHeightIn };
    else kept.push(piece);
  }
  return kept;
}
