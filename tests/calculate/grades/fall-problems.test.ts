import { describe, expect, test } from 'vitest';
import type { LevelPoint, Slab } from '../../../src/calculate/job.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { aSlab, rectangle } from '../slabs.ts';
import { graded, pointsAt } from './a-grade.ts';

/** A drive of 40 by 18 ft that is said to fall 2 %, along its length: 9.6 in. */
const FALL: Slab['fall'] = { slope: 0.02, towards: 'the street' as PublicText, directionDeg: 90 };
const driveOf = (changed: Partial<Slab> = {}) =>
  aSlab({ shape: rectangle(480, 216, { at: { xIn: 0, yIn: 0 } }), fall: FALL, ...changed });

/** Its four corners, so much lower at the far end. */
function problemsOf(
  dropIn: number,
  made: { readonly slab?: Partial<Slab>; readonly kind?: LevelPoint['kind']; readonly turned?: boolean } = {},
) {
  const { slab = {}, kind = 'fixed', turned = false } = made;
  const [near, far] = [100, 100 - dropIn];
  const points = pointsAt(
    {
      a: [0, 0, near],
      b: [0, 216, turned ? far : near],
      c: [480, 0, turned ? near : far],
      d: [480, 216, far],
    },
    kind,
    kind === 'fixed' ? { kind: 'stays' } : null,
  );
  return graded({ slabs: [driveOf(slab)], points }).problems;
}

describe('a stated fall against fixed heights', () => {
  test('exact: what they leave is named with both points and by how much they are apart', () => {
    expect(problemsOf(9.6)).toEqual([]);
    expect(problemsOf(4)).toMatchObject([
      {
        code: 'fall-against-heights',
        path: 'build.slabs.drive.fall',
        parts: {
          first: 'Point a',
          second: 'Point c',
          stated: '9 5/8″',
          drop: '4″',
          by: '5 5/8″',
          slope: '0.8 %',
        },
      },
    ]);
  });

  // 1/96 of 480 in is 5 in.
  test.each([
    [4.61, 0],
    [4.59, 1],
    [14.59, 0],
    [14.61, 1],
  ])('exact: %s in instead of 9.6 in is a problem from 1/96 on', (dropIn, count) => {
    expect(problemsOf(dropIn)).toHaveLength(count);
  });

  test('what is chosen may be otherwise, and so may a fall without a direction and that of a walk', () => {
    expect(problemsOf(2, { kind: 'finish' })).toEqual([]);
    expect(problemsOf(2, { slab: { fall: { ...FALL, directionDeg: null } } })).toEqual([]);
    expect(problemsOf(2, { slab: { use: 'walk' } })).toEqual([]);
  });

  test('a direction that the fixed heights do not leave is one too', () => {
    // It falls over its width, and is said to fall over its length.
    expect(problemsOf(9.6, { turned: true }).map(({ code }) => code)).toEqual(['fall-against-heights']);
    expect(problemsOf(4.32, { turned: true, slab: { fall: { ...FALL, directionDeg: 0 } } })).toEqual([]);
  });
});
