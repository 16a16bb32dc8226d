import {
  type CutLine,
  type EdgeKind,
  type Outline,
  type Point,
  sliceDirectionDeg,
  sliceOutline,
  tapeCorner,
} from '../../geometry/index.ts';
import { rememberByValue } from '../remember.ts';

/** Where the truck does not stand. */
const AWAY_FROM: readonly EdgeKind[] = ['house', 'stays'];
const SQ_IN_PER_SQ_FT = 144;

/** One end of a bay's line: how far it is from a corner that the crew can see. */
export type Tie = { readonly corner: Point; readonly lengthIn: number };

/** A bay on the surface of its thing. */
export type CutBay = {
  readonly label: Point;
  /** Where it starts; none for the first. */
  readonly lines: readonly CutLine[];
  readonly ties: readonly Tie[];
};

type Cut = { readonly outline: Outline; readonly areasSqFt: readonly number[] };

/**
 * One thing cut into bays that follow each other from the end farther from the house and from what stays.
 *
 * @param areasSqFt Of each bay, in the order of the loads; together the area of the outline.
 * @throws {RangeError} If they do not add up to it.
 */
export function cutThing(outline: Outline, areasSqFt: readonly number[]): readonly CutBay[] {
  return remembered({ outline, areasSqFt });
}

/** More things than a job has; other loads of one thing leave the others as they are. */
const KEPT_THINGS = 100;
const remembered = rememberByValue('bays', cut, KEPT_THINGS);

function cut({ outline, areasSqFt }: Cut): readonly CutBay[] {
  const areasSqIn = areasSqFt.map((areaSqFt) => areaSqFt * SQ_IN_PER_SQ_FT);
  // A whole thing has no lines, whichever way they would run.
  const isCut = areasSqIn.length > 1;
  const towardsDeg = isCut ? sliceDirectionDeg({ outline, areasSqIn, awayFrom: AWAY_FROM }) : 0;
  const [ring = []] = outline.rings;
  return sliceOutline({ outline, towardsDeg, areasSqIn }).map(({ lines, label }) => ({
    label,
    lines,
    // A line that is parted by a hole runs on behind it: only its ends on the outer edge are taped.
    ties: lines
      .flatMap(({ from, to }) => [from, to])
      .flatMap((at) => tapeCorner({ ring, at, towardsDeg }) ?? []),
  }));
}
