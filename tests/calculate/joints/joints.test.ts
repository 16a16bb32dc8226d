import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { Slab } from '../../../src/calculate/job.ts';
import {
  calcJoints,
  jointDepthIn,
  jointSpacingLimitIn,
  panelRatio,
  type SlabJoints,
  spacingMultiplier,
  splitIntoPanels,
} from '../../../src/calculate/joints/index.ts';
import type { Line } from '../../../src/geometry/index.ts';
import { testExpressions } from '../evaluate.ts';
import { aSlab, at, lShape, outlined, propertyRuns, rectangle, tapedIn, values } from '../slabs.ts';

const mix = { slumpIn: 4, aggregateIn: 0.75 };

function joints(...slabs: readonly Slab[]) {
  return calcJoints({ ...outlined(...slabs), mix });
}

/** The figures of a slab as numbers; the width of a walk only where it is one. */
function numbersOf(figures: SlabJoints) {
  const { 'walk-width': walkWidth, proposed: _, ...others } = figures;
  return { ...values(others), ...(walkWidth === undefined ? {} : { 'walk-width': num(walkWidth) }) };
}

describe('calcJoints', () => {
  const drive = aSlab({ shape: rectangle(480, 216, { edges: [{ edge: 4, kind: 'house' }] }) });
  const walk = aSlab({ id: 'front-walk', use: 'walk', shape: rectangle(48, 360) });
  const apron = aSlab({ id: 'apron', shape: rectangle(240, 120), jointSpacingIn: 72, thicknessIn: 6 });
  const result = joints(drive, walk, apron);

  // By hand: 30 times 4 in is 10 ft; 40 ft in 4, 18 ft in 2: 10 by 9 ft, 1.11 to 1.
  test('the driveway by hand', () => {
    expect(numbersOf(at(result.figures.slabs, 'drive'))).toEqual({
      'box-length': 480,
      'box-width': 216,
      'spacing-limit': 120,
      panels: 8,
      'panel-length': expect.closeTo(120, 9),
      'panel-ratio': expect.closeTo(120 / 108, 9),
      'length-over-limit': expect.closeTo(1, 9),
      'smallest-angle': expect.closeTo(90, 9),
      'open-corners': 0,
      depth: 1,
      length: 3 * 18 + 40,
      sawn: 94,
    });
    const near = (line: Line) =>
      Object.fromEntries(
        Object.entries(line).map(([key, valueIn]) => [key, Math.round(valueIn * 1e6) / 1e6]),
      );
    expect(at(result.data.lines, 'drive').map(near)).toEqual([
      { fromXIn: 120, fromYIn: 0, toXIn: 120, toYIn: 216 },
      { fromXIn: 240, fromYIn: 0, toXIn: 240, toYIn: 216 },
      { fromXIn: 360, fromYIn: 0, toXIn: 360, toYIn: 216 },
      { fromXIn: 0, fromYIn: 108, toXIn: 480, toYIn: 108 },
    ]);
  });

  test('a walk is cut every 5 ft, square to the way it runs', () => {
    expect(numbersOf(at(result.figures.slabs, 'front-walk'))).toMatchObject({
      'walk-width': 48,
      'spacing-limit': 60,
      panels: 6,
      length: 20,
    });
    expect(at(result.data.lines, 'front-walk').every((line) => line.fromYIn === line.toYIn)).toBe(true);
  });

  test('a spacing of the job goes before the table', () => {
    expect(numbersOf(at(result.figures.slabs, 'apron'))).toMatchObject({
      'spacing-limit': 72,
      panels: 8,
      depth: 1.5,
    });
  });

  test('a long panel gets one joint more', () => {
    const { panels, 'panel-ratio': ratio } = at(
      joints(aSlab({ id: 'strip', shape: rectangle(119, 60) })).figures.slabs,
      'strip',
    );
    expect([num(panels), num(ratio)]).toEqual([2, 60 / 59.5]);
  });

  test('an L is cut at the corner that turns in', () => {
    const corner = joints(aSlab({ shape: lShape({ lengthIn: 240, widthIn: 240, legIn: 90, armIn: 90 }) }));
    const ends = at(corner.data.lines, 'drive').flatMap(({ fromXIn, fromYIn, toXIn, toYIn }) => [
      [fromXIn, fromYIn],
      [toXIn, toYIn],
    ]);
    expect(ends).toContainEqual([90, 90]);
    expect(num(at(corner.figures.slabs, 'drive')['open-corners'])).toBe(0);
  });

  test('totals are the sums of the slabs', () => {
    expect(num(result.figures.total.length)).toBe(94 + 20 + (3 * 10 + 20));
    expect(num(result.figures.total.sawn)).toBe(94 + 20 + (3 * 10 + 20));
  });

  test('no slabs, no joints', () => {
    expect(num(joints().figures.total.length)).toBe(0);
  });

  testExpressions('joints', result.figures, 12);
});

describe('limits of panels', () => {
  test('invariant: panels keep the limit, and the ratio unless they would become too narrow', () => {
    fc.assert(
      fc.property(tapedIn(30, 900), tapedIn(20, 400), tapedIn(24, 180), (one, other, limitIn) => {
        const box = { lengthIn: Math.max(one, other), widthIn: Math.min(one, other) };
        const { alongCount, acrossCount } = splitIntoPanels(box, limitIn);
        const panelLengthIn = box.lengthIn / alongCount;
        const panelWidthIn = box.widthIn / acrossCount;
        expect(Math.max(panelLengthIn, panelWidthIn)).toBeLessThanOrEqual(limitIn + 1e-6);
        const [longIn, count] =
          panelLengthIn > panelWidthIn ? [box.lengthIn, alongCount] : [box.widthIn, acrossCount];
        if (longIn / (count + 1) >= 18)
          expect(panelRatio({ panelLengthIn, panelWidthIn })).toBeLessThanOrEqual(1.5);
      }),
      propertyRuns,
    );
  });
});

describe('limits', () => {
  test('a wide walk may be cut as far apart as it is wide, within the limit of its thickness', () => {
    const limit = (walkWidthIn: number) =>
      jointSpacingLimitIn({ multiplier: 24, thicknessIn: 4, walkWidthIn });
    expect([limit(36), limit(72), limit(144)]).toEqual([60, 72, 96]);
  });

  test('depth is rounded up to an eighth', () => {
    expect([3.5, 4, 4.1, 5, 6].map(jointDepthIn)).toEqual([1, 1, 1.125, 1.25, 1.5]);
  });

  test('refused: what is not above 0', () => {
    expect(() => spacingMultiplier({ slumpIn: 0, aggregateIn: 1 })).toThrow(RangeError);
    expect(() => spacingMultiplier({ slumpIn: 4, aggregateIn: Number.NaN })).toThrow(RangeError);
    expect(() => jointSpacingLimitIn({ multiplier: 24, thicknessIn: -4, walkWidthIn: null })).toThrow(
      RangeError,
    );
    expect(() => splitIntoPanels({ lengthIn: 100, widthIn: 50 }, 0)).toThrow(RangeError);
    expect(() => panelRatio({ panelLengthIn: 100, panelWidthIn: 0 })).toThrow(RangeError);
    expect(() => jointDepthIn(Number.NaN)).toThrow(RangeError);
  });
});
