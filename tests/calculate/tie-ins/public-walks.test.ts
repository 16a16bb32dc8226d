import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import { calcGrades } from '../../../src/calculate/grades/index.ts';
import type { PublicWalk } from '../../../src/calculate/job.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { transitionLengthIn } from '../../../src/calculate/tie-ins/index.ts';
import { heightAt } from '../../../src/geometry/index.ts';
import { Usd } from '../../../src/units/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { testExpressions } from '../evaluate.ts';
import { pointsAt } from '../grades/a-grade.ts';
import { aWalk, SPOTS, tied } from './a-walk.ts';

const walkOf = (changed: Partial<PublicWalk> = {}) => {
  const figures = tied(aWalk(changed)).made.figures['public-walks']?.['city'];
  if (figures === undefined) throw new Error('no figures');
  return figures;
};
const codesOf = (changed: Partial<PublicWalk>, points?: Parameters<typeof tied>[1]) =>
  tied(aWalk(changed), points).made.problems.map(({ code, path }) => `${code} ${path}`);

/** Height of the new surface at a place, by the way that is chosen. */
function surfaceAt(way: PublicWalk['way'], xIn: number, yIn: number): number {
  const { graded, made } = tied(aWalk({ way }));
  const slab = calcGrades({ ...graded, existing: {}, tied: made.data.surface }).data.slabs['drive'];
  if (slab === undefined) throw new Error('no surface');
  return heightAt(slab.surface, { xIn, yIn });
}

describe('the length of a transition', () => {
  test('exact: 2 in at 1 in per ft takes 2 ft from level, 32 in where the slab falls 1/4 in per ft itself', () => {
    expect(transitionLengthIn({ settledIn: 2, ownSlope: 0, slope: 1 / 12 })).toBeCloseTo(24, 9);
    expect(transitionLengthIn({ settledIn: 2, ownSlope: 1 / 48, slope: 1 / 12 })).toBeCloseTo(32, 9);
    expect(transitionLengthIn({ settledIn: -2, ownSlope: 1 / 48, slope: 1 / 12 })).toBeCloseTo(19.2, 9);
    expect(transitionLengthIn({ settledIn: 0, ownSlope: 1, slope: 0.01 })).toBe(0);
  });

  test('none where the slab goes that way as steeply by itself', () => {
    expect(transitionLengthIn({ settledIn: 2, ownSlope: 1 / 12, slope: 1 / 12 })).toBeNull();
    expect(transitionLengthIn({ settledIn: -2, ownSlope: -1 / 12, slope: 1 / 12 })).toBeNull();
    expect(transitionLengthIn({ settledIn: -2, ownSlope: 1 / 12, slope: 1 / 12 })).toBeCloseTo(12, 9);
  });

  test.each([0, -0.1, Number.NaN, Infinity])('a slope of %s is refused', (slope) => {
    expect(() => transitionLengthIn({ settledIn: 2, ownSlope: 0, slope })).toThrow(RangeError);
  });

  test('NaN is refused', () => {
    expect(() => transitionLengthIn({ settledIn: Number.NaN, ownSlope: 0, slope: 0.1 })).toThrow(RangeError);
  });

  test('invariant: at its end the two lines meet at the walk', () => {
    const slopes = fc.double({ min: 0.02, max: 0.4, noNaN: true });
    const settled = fc.double({ min: -6, max: 6, noNaN: true });
    fc.assert(
      fc.property(
        settled,
        fc.double({ min: -0.1, max: 0.1, noNaN: true }),
        slopes,
        (settledIn, ownSlope, slope) => {
          const lengthIn = transitionLengthIn({ settledIn, ownSlope, slope });
          if (lengthIn === null) return;
          expect(lengthIn).toBeGreaterThanOrEqual(0);
          const startIn = ownSlope * lengthIn;
          const endIn = startIn - Math.sign(settledIn) * slope * lengthIn;
          expect(endIn).toBeCloseTo(-settledIn, 6);
        },
      ),
      { numRuns: runCount(200) },
    );
  });
});

describe('the ways to meet a public walk', () => {
  test('exact: 12 in and 11 in down over 40 ft as it is, 10 in as it should be', () => {
    const { ends, length, 'most-lip': lip, bevel, 'panel-area': area } = walkOf();
    expect(num(ends.left.run)).toBe(480);
    expect(ends.left['as-it-is']).toMatchObject({ falls: { value: 12 / 480 } });
    expect(ends.right['as-it-is']).toMatchObject({ falls: { value: 11 / 480 } });
    expect(ends.right['as-it-should-be']).toMatchObject({ falls: { value: 10 / 480 } });
    expect([num(ends.left.lip), num(ends.right.lip), num(lip)]).toEqual([2, 1, 2]);
    // 2 in over 5 ft across, and 5 ft of 18.
    expect(num(bevel)).toBeCloseTo(2 / 60, 12);
    expect(num(length)).toBe(216);
    expect(num(area)).toBe(90);
    expect(num(ends.left.transition ?? lip)).toBeCloseTo(32, 9);
    expect(num(ends.right.transition ?? lip)).toBeCloseTo(16, 9);
    expect(num(ends.left['transition-start'] ?? lip)).toBeCloseTo(90 + 32 / 48, 9);
    expect(num(ends.left['panel-start'] ?? lip)).toBeCloseTo(91.25, 9);
    expect(ends.left['over-panel']).toMatchObject({ falls: { value: expect.closeTo(3.25 / 60, 9) } });
  });

  test('along the joint it rises from left to right as it is, and is level as it should be', () => {
    expect(walkOf()['along-now']).toMatchObject({ rises: { value: 1 / 216 } });
    expect(walkOf()['along-should']).toMatchObject({ falls: { value: 0 } });
  });

  test('the homeowner pays a share to the cent, half up', () => {
    expect(walkOf()['owner-pays']).toBeUndefined();
    const panel = { priceUsd: new Usd('1850.25'), ownerRatio: 0.5 };
    expect(String(walkOf({ panel })['owner-pays']?.value)).toBe('925.13');
  });

  test.each([
    [null, { undecided: 1, 'without-word': 0 }],
    ['match', { undecided: 0, 'without-word': 0, 'lip-later': 2 }],
    ['transition', { undecided: 0, 'without-word': 0 }],
    ['replace', { undecided: 0, 'without-word': 1 }],
    ['hold-back', { undecided: 0, 'without-word': 1 }],
    ['grind', { undecided: 0, 'without-word': 1, 'bevel-ground': 2 / 60 }],
    ['leave-edge', { undecided: 0, 'without-word': 1, 'edge-left': 2 }],
  ] as const)('what the rules ask of %s', (way, expected) => {
    const figures: Readonly<Record<string, unknown>> = walkOf({ way });
    const asked = ['undecided', 'without-word', 'lip-later', 'bevel-ground', 'edge-left'];
    const found = Object.fromEntries(
      asked.flatMap((key) => {
        const value = (figures[key] as { value?: number } | undefined)?.value;
        return value === undefined ? [] : [[key, value]];
      }),
    );
    expect(found).toEqual(expected);
  });

  test('the word of the authority is asked for no more once it is there', () => {
    expect(num(walkOf({ way: 'replace', word: 'Yes' as PublicText })['without-word'])).toBe(0);
  });
});

testExpressions(
  'public walks',
  tied(aWalk({ panel: { priceUsd: new Usd(1), ownerRatio: 0.5 } })).made.figures,
  25,
);

describe('the surface by the way that is chosen', () => {
  test.each([
    [null, 88, 89],
    ['match', 88, 89],
    ['replace', 90, 90],
    ['grind', 90, 90],
    ['hold-back', 90, 90],
    ['leave-edge', 90, 90],
    ['transition', 88, 89],
  ] as const)('%s: it ends at %s and %s', (way, left, right) => {
    expect(surfaceAt(way, 480, 216)).toBeCloseTo(left, 9);
    expect(surfaceAt(way, 480, 0)).toBeCloseTo(right, 9);
  });

  test('exact: a transition leaves the rest of the slab as it should be, and bends in one line', () => {
    expect(surfaceAt('transition', 240, 216)).toBeCloseTo(95, 9);
    expect(surfaceAt('transition', 240, 108)).toBeCloseTo(95, 9);
    expect(surfaceAt('transition', 448, 216)).toBeCloseTo(90 + 32 / 48, 9);
    expect(surfaceAt('transition', 464, 0)).toBeCloseTo(90 + 16 / 48, 9);
    // Halfway along the bend, and from there halfway down to the middle of the joint.
    expect(surfaceAt('transition', 456, 108)).toBeCloseTo(90.5, 9);
  });
});

describe('ways that cannot be gone', () => {
  const path = 'heights.public-walks.city';

  test('a transition no steeper than the slab, and one longer than it', () => {
    expect(codesOf({ way: 'transition', transitionSlope: 1 / 48 })).toEqual([
      `no-way-down ${path}.transition`,
    ]);
    expect(codesOf({ way: 'transition', transitionSlope: 11.9 / 480 })).toEqual([
      `way-too-long ${path}.transition`,
    ]);
    expect(codesOf({ way: 'match', transitionSlope: 1 / 48 })).toEqual([]);
  });

  test('a last panel as long as the slab', () => {
    expect(codesOf({ way: 'hold-back', lastPanelIn: 480 })).toEqual([`way-too-long ${path}.last-panel`]);
    expect(codesOf({ way: 'hold-back', lastPanelIn: 479 })).toEqual([]);
  });

  test('grinding what lies low at both ends', () => {
    expect(codesOf({ way: 'grind' })).toEqual([`grind-what-is-low ${path}.way`]);
    const { left } = aWalk().ends;
    const right = { now: 'walk-right', shouldIn: 88, up: 'garage-right' };
    expect(codesOf({ way: 'grind', ends: { left, right } })).toEqual([]);
  });

  test('points at one place, and points that the slab does not meet', () => {
    const moved = (spots: object) => pointsAt({ ...SPOTS, ...spots }, 'fixed', { kind: 'stays' });
    expect(codesOf({}, moved({ 'garage-left': [480, 216, 88] }))).toEqual([
      `ends-at-one-place ${path}.left.up`,
    ]);
    expect(codesOf({}, moved({ 'walk-right': [480, 216, 88] }))).toEqual([
      `ends-at-one-place ${path}.right.now`,
    ]);
    expect(codesOf({}, moved({ 'walk-right': [492, 0, 89] }))).toEqual([`tie-in-off-slab ${path}.right.now`]);
  });
});
