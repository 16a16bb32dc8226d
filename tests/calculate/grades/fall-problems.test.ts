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
    expect(problemsOf(9.6, { turned: true }).map(({ code }) => code)).toEqual(['fall-against-climb']);
    expect(problemsOf(4.32, { turned: true, slab: { fall: { ...FALL, directionDeg: 0 } } })).toEqual([]);
  });
});

test('exact: where the heights are level or climb no slope is offered', () => {
  expect(problemsOf(0)).toMatchObject([
    { code: 'fall-against-climb', parts: { stated: '9 5/8″', rise: '0″', by: '9 5/8″' } },
  ]);
  expect(problemsOf(-4)).toMatchObject([
    { code: 'fall-against-climb', parts: { stated: '9 5/8″', rise: '4″', by: '13 5/8″' } },
  ]);
});

describe('what says little of a fall is passed over', () => {
  /** Two fixed points, and two far ones that are chosen. */
  const codesOf = (one: readonly [number, number, number], other: readonly [number, number, number]) => {
    const fixed = pointsAt({ one, other }, 'fixed', { kind: 'stays' });
    const chosen = pointsAt({ far: [480, 0, 90.4], wide: [480, 216, 90.4] }, 'finish');
    return graded({ slabs: [driveOf()], points: [...fixed, ...chosen] }).problems.map(({ code }) => code);
  };

  test('two points nearly side by side, whose difference is the cross fall', () => {
    // 40 in along, 216 across: 0.8 in stated, 2 in read.
    expect(codesOf([0, 0, 100], [40, 216, 98])).toEqual([]);
    // As much with the same run, one behind the other.
    expect(codesOf([0, 0, 100], [40, 10, 98])).toEqual(['fall-against-heights']);
  });

  test('two points less than 3 ft apart', () => {
    expect(codesOf([0, 0, 100], [35, 0, 98])).toEqual([]);
    expect(codesOf([0, 0, 100], [36, 0, 98])).toEqual(['fall-against-heights']);
  });

  test('a miss of up to half an inch', () => {
    // 40 in are 0.8 in of fall; 1/96 of them are 0.42 in.
    expect(codesOf([0, 0, 100], [40, 0, 98.71])).toEqual([]);
    expect(codesOf([0, 0, 100], [40, 0, 98.69])).toEqual(['fall-against-heights']);
  });
});
