import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import { calcGrades } from '../../../src/calculate/grades/index.ts';
import type { Drain } from '../../../src/calculate/job.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { calcTieIns, leastPipeSlope } from '../../../src/calculate/tie-ins/index.ts';
import { testExpressions } from '../evaluate.ts';
import { pointsAt, type Spots } from '../grades/a-grade.ts';
import { aSlab, byId, NO_TIE_INS, rectangle } from '../slabs.ts';
import { onSlab } from './a-walk.ts';

/** A drive of 40 by 18 ft with the house along its near end; it comes down to it 5 in from the street. */
const drive = aSlab({
  shape: rectangle(480, 216, { at: { xIn: 0, yIn: 0 }, edges: [{ edge: 4, kind: 'house' }] }),
});
const TO_HOUSE: Spots = {
  right: [0, 0, 100],
  left: [0, 216, 100],
  far: [480, 0, 105],
  other: [480, 216, 105],
};

const PIPE = { sizeIn: 4, invertIn: 85, outletIn: 81, lengthIn: 360, to: 'street' as PublicText };
function aDrain(changed: Partial<Drain> = {}): Drain {
  return {
    id: 'channel',
    label: 'Channel' as PublicText,
    at: [
      { xIn: 24, yIn: 0 },
      { xIn: 24, yIn: 216 },
    ],
    rimIn: 99,
    pipe: PIPE,
    ...changed,
  };
}

function made(drain: Drain, spots: Spots = TO_HOUSE) {
  const graded = onSlab(drive, pointsAt(spots, 'fixed', { kind: 'stays' }));
  const tieIns = calcTieIns({ ...graded, tieIns: { ...NO_TIE_INS, drains: byId(drain) } });
  const grades = calcGrades({
    ...graded,
    existing: {},
    tied: tieIns.data.surface,
    outlets: tieIns.data.outlets,
  });
  return { tieIns, slab: grades.figures.driveway?.['drive'], problems: tieIns.problems };
}

describe('the least slope of a pipe', () => {
  // Published (seen): Chicago Plumbing Code, Table 18-29-704.1: 2 1/2 in or less 1/4, 3 to 6 in 1/8, 8 in or larger
  // 1/16 in per ft. Between the sizes of the table the steeper one is taken.
  test.each([
    [1.5, 1 / 4],
    [2.5, 1 / 4],
    [2.9, 1 / 4],
    [3, 1 / 8],
    [6, 1 / 8],
    [7.9, 1 / 8],
    [8, 1 / 16],
    [12, 1 / 16],
  ])('%s in: %s in per ft', (sizeIn, inPerFt) => {
    expect(num(leastPipeSlope(sizeIn))).toBe(inPerFt / 12);
  });

  test.each([0, -1, Number.NaN])('%s is refused', (sizeIn) => {
    expect(() => leastPipeSlope(sizeIn)).toThrow(RangeError);
  });
});

describe('a drain', () => {
  test('exact: its pipe falls 4 in over 30 ft, 1/90, from 14 in below the rim', () => {
    const figures = made(aDrain()).tieIns.figures.drains?.['channel'];
    expect(figures?.pipe).toMatchObject({
      deep: { value: 14 },
      drop: { value: 4 },
      slope: { value: 4 / 360 },
      'short-by': { value: 0 },
    });
    const flat = made(aDrain({ pipe: { ...PIPE, lengthIn: 480 } })).tieIns.figures.drains?.['channel'];
    expect(num(flat?.pipe?.['short-by'] ?? figures!.rim)).toBeCloseTo(1 / 96 - 4 / 480, 12);
    expect(num(figures!['no-outlet'])).toBe(0);
    expect(num(made(aDrain({ pipe: null })).tieIns.figures.drains!['channel']!['no-outlet'])).toBe(1);
  });

  test('its rim is a fixed height of the surface', () => {
    expect(num(made(aDrain()).slab!.steepest)).toBeCloseTo(1 / 24, 9);
    expect(num(made(aDrain()).slab!.flattest)).toBeCloseTo(6 / 456, 9);
  });

  test('water that runs to the house is no finding where it runs into a drain with an outlet before', () => {
    expect(num(made(aDrain()).slab!['fall-from-house']!)).toBeCloseTo(1 / 24, 9);
    expect(made(aDrain()).slab!['fall-to-house']).toBeUndefined();
    expect(num(made(aDrain({ pipe: null })).slab!['fall-to-house']!)).toBeCloseTo(6 / 456, 9);
  });

  test('a drain that is too short for the house lets water by', () => {
    const at = [
      { xIn: 24, yIn: 90 },
      { xIn: 24, yIn: 126 },
    ];
    expect(num(made(aDrain({ at })).slab!['fall-to-house']!)).toBeGreaterThan(0.01);
  });

  test('the low point at a drain is no ponding, unless it leads nowhere', () => {
    const at = [{ xIn: 240, yIn: 108 }];
    const bowl: Spots = { a: [0, 0, 100], b: [480, 0, 100], c: [480, 216, 100], d: [0, 216, 100] };
    expect(num(made(aDrain({ at }), bowl).slab!['stands-deep'])).toBe(0);
    expect(num(made(aDrain({ at, pipe: null }), bowl).slab!['stands-deep'])).toBeCloseTo(1, 9);
    // Elsewhere water stands as before.
    const aside = [{ xIn: 240, yIn: 20 }];
    const hollow = { ...bowl, deep: [120, 108, 98] } as const;
    expect(num(made(aDrain({ at: aside, rimIn: 99.9 }), hollow).slab!['stands-deep'])).toBeGreaterThan(1);
  });

  test('it lies as low as it has to: a stated fall is not held against its rim', () => {
    const fall = { slope: 5 / 480, towards: 'the house' as PublicText, directionDeg: 270 };
    const low = aDrain({ rimIn: 93, pipe: null });
    const graded = onSlab({ ...drive, fall }, pointsAt(TO_HOUSE, 'fixed', { kind: 'stays' }));
    const tied = calcTieIns({ ...graded, tieIns: { ...NO_TIE_INS, drains: byId(low) } }).data.surface;
    expect(calcGrades({ ...graded, existing: {}, tied }).problems).toEqual([]);
  });

  const path = 'heights.drains.channel';
  test.each([
    [
      'drain-off-slab',
      `${path}.at.1`,
      {
        at: [
          { xIn: 24, yIn: 0 },
          { xIn: 24, yIn: 240 },
        ],
      },
    ],
    ['invert-above-rim', `${path}.pipe.invert`, { pipe: { ...PIPE, invertIn: 96 } }],
    ['pipe-does-not-fall', `${path}.pipe.outlet`, { pipe: { ...PIPE, outletIn: 85 } }],
  ] as const)('%s', (code, where, changed) => {
    expect(made(aDrain(changed)).problems.map((one) => [one.code, one.path])).toEqual([[code, where]]);
  });

  test('a pipe right under the rim, and a place at the edge, are none', () => {
    expect(made(aDrain({ pipe: { ...PIPE, invertIn: 95 } })).problems).toEqual([]);
    expect(made(aDrain({ at: [{ xIn: 24, yIn: -1 }] })).problems).toEqual([]);
  });

  testExpressions('drains', made(aDrain()).tieIns.figures, 5);
});
