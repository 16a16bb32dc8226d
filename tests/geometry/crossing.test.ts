import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { polygonRing, segmentsMeet, selfCrossing } from '../../src/geometry/index.ts';
import { runCount } from '../support/property-runs.ts';

/** Few places, so that edges touch, overlap and fold back often. */
const points = fc.array(
  fc.record({ xIn: fc.integer({ min: 0, max: 6 }), yIn: fc.integer({ min: 0, max: 4 }) }),
  { minLength: 3, maxLength: 9 },
);

/** Every pair of edges that are not neighbours, one after the other. */
function firstMeeting(corners: readonly { xIn: number; yIn: number }[]): readonly [number, number] | null {
  const count = corners.length;
  const edges = corners.map((from, index) => ({ from, to: corners[(index + 1) % count] ?? from }));
  for (const [index, one] of edges.entries()) {
    for (const [step, other] of edges.slice(index + 2).entries()) {
      const isLast = index === 0 && index + 2 + step === count - 1;
      if (!isLast && segmentsMeet(one, other)) return [index + 1, index + 3 + step];
    }
  }
  return null;
}

test('invariant: the sweep finds what looking at every pair finds', () => {
  fc.assert(
    fc.property(points, (corners) => {
      const isSame = corners.some((corner, index) => {
        const next = corners[(index + 1) % corners.length];
        return next !== undefined && corner.xIn === next.xIn && corner.yIn === next.yIn;
      });
      fc.pre(!isSame);
      const found = selfCrossing(polygonRing(corners));
      const meeting = firstMeeting(corners);
      // The sweep also finds neighbours that fold back on each other, which come before or instead.
      if (meeting !== null) {
        expect(found).not.toBeNull();
        const isFold =
          found !== null && (found[1] === found[0] + 1 || (found[0] === 1 && found[1] === corners.length));
        if (!isFold) expect(found).toEqual(meeting);
      } else if (found !== null) {
        expect(found[1] === found[0] + 1 || (found[0] === 1 && found[1] === corners.length)).toBe(true);
      }
    }),
    { numRuns: runCount(400), seed: 20260504 },
  );
});
