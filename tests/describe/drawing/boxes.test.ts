import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Box,
  boxesOverlap,
  boxMeetsSegment,
  type Segment,
  uprightBox,
} from '../../../src/describe/drawing/boxes.ts';
import { runCount } from '../../support/property-runs.ts';

const inches = fc.double({ min: 0, max: 8, noNaN: true });
const place = fc.record({ xIn: inches, yIn: inches });
const size = fc.double({ min: 0.05, max: 3, noNaN: true });
type Sides = Parameters<typeof uprightBox>[0];
const sides: fc.Arbitrary<Sides> = fc.tuple(place, size, size).map(([{ xIn, yIn }, widthIn, heightIn]) => ({
  leftIn: xIn,
  rightIn: xIn + widthIn,
  topIn: yIn,
  bottomIn: yIn + heightIn,
}));
/** What is told of a box is told of one a hair larger and one a hair smaller: nothing only touches. */
function isPlain({ leftIn, rightIn, topIn, bottomIn }: Sides, isTold: (box: Box) => boolean): boolean {
  const [more, less] = [1e-6, -1e-6].map((hairIn) =>
    isTold(
      uprightBox({
        leftIn: leftIn - hairIn,
        rightIn: rightIn + hairIn,
        topIn: topIn - hairIn,
        bottomIn: bottomIn + hairIn,
      }),
    ),
  );
  return more === less;
}
const segment: fc.Arbitrary<Segment> = fc.record({ from: place, to: place });
const run = { numRuns: runCount(1000) };

type Place = Segment['from'];
/** The same sheet, turned: what is upright is told in another way from what lies askew. */
const turnedBy =
  (turnRad: number) =>
  ({ xIn, yIn }: Place): Place => {
    const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
    return { xIn: xIn * cos - yIn * sin, yIn: xIn * sin + yIn * cos };
  };
const turned = turnedBy(0.3);
const turnedBox = (corners: Box, turn = turned): Box => corners.map(turn) as unknown as Box;

describe('an upright box', () => {
  test('property: meets a line where both meet on a turned sheet', () => {
    fc.assert(
      fc.property(sides, segment, (around, line) => {
        fc.pre(isPlain(around, (one) => boxMeetsSegment(one, line)));
        const corners = uprightBox(around);
        const askew = { from: turned(line.from), to: turned(line.to) };
        expect(boxMeetsSegment(corners, line)).toBe(boxMeetsSegment(turnedBox(corners), askew));
      }),
      run,
    );
  });

  test('property: overlaps another where both do on a turned sheet', () => {
    fc.assert(
      fc.property(sides, sides, (around, aroundOther) => {
        const other = uprightBox(aroundOther);
        fc.pre(isPlain(around, (box) => boxesOverlap(box, other)));
        const one = uprightBox(around);
        expect(boxesOverlap(one, other)).toBe(boxesOverlap(turnedBox(one), turnedBox(other)));
      }),
      run,
    );
  });

  test('property: overlaps a box that lies askew where it does on a sheet turned back', () => {
    const found = { apart: 0, over: 0 };
    fc.assert(
      fc.property(sides, sides, (around, aroundOther) => {
        const back = turnedBy(-0.3);
        const other = turnedBox(uprightBox(aroundOther));
        fc.pre(isPlain(around, (box) => boxesOverlap(box, other)));
        const one = uprightBox(around);
        const overlap = boxesOverlap(one, other);
        found[overlap ? 'over' : 'apart'] += 1;
        expect(overlap).toBe(boxesOverlap(turnedBox(one, back), uprightBox(aroundOther)));
      }),
      run,
    );
    expect(Math.min(found.apart, found.over)).toBeGreaterThan(run.numRuns / 20);
  });

  test('boxes that only touch do not overlap; a line that only touches one meets it', () => {
    const one = uprightBox({ leftIn: 0, rightIn: 2, topIn: 0, bottomIn: 1 });
    const beside = uprightBox({ leftIn: 2, rightIn: 3, topIn: 0, bottomIn: 1 });
    expect(boxesOverlap(one, beside)).toBe(false);
    expect(boxMeetsSegment(one, { from: { xIn: 2, yIn: 0.5 }, to: { xIn: 4, yIn: 0.5 } })).toBe(true);
    // Past a corner, the bounds of the two meet and they do not; inside, from end to end; along a side.
    expect(boxMeetsSegment(one, { from: { xIn: 1.8, yIn: 2 }, to: { xIn: 4, yIn: 0.2 } })).toBe(false);
    expect(boxMeetsSegment(one, { from: { xIn: 0.5, yIn: 0.5 }, to: { xIn: 1, yIn: 0.6 } })).toBe(true);
    expect(boxMeetsSegment(one, { from: { xIn: -1, yIn: 1 }, to: { xIn: 3, yIn: 1 } })).toBe(true);
  });
});
