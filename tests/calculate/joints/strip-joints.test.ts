import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { TapedBase } from '../../../src/calculate/job.ts';
import { calcJoints } from '../../../src/calculate/joints/index.ts';
import { containsPoint, distanceToEdgeIn } from '../../../src/geometry/index.ts';
import { aSlab, asTaped, at, outlined, propertyRuns } from '../slabs.ts';

type Line = Extract<TapedBase, { kind: 'strip' }>['line'];
const mix = { slumpIn: 4, aggregateIn: 0.75 };

function walk(widthIn: number, line: Line, place = { xIn: 0, yIn: 0 }, turnedRad = 0) {
  const base: TapedBase = {
    kind: 'strip',
    widthIn,
    endWidthIn: null,
    line,
    edges: { start: 'formed', end: 'formed', left: 'formed', right: 'formed' },
  };
  const slab = aSlab({ id: 'walk', use: 'walk', shape: asTaped(base, { at: place, turnedRad }) });
  const made = outlined(slab);
  const { figures, data } = calcJoints({ ...made, mix });
  return {
    outline: at(made.outlines, 'walk'),
    figures: at(figures.slabs, 'walk'),
    lines: at(data.lines, 'walk'),
  };
}

const lengthOf = (line: ReturnType<typeof walk>['lines'][number]) =>
  Math.hypot(line.toXIn - line.fromXIn, line.toYIn - line.fromYIn);

describe('joints of a strip', () => {
  // UFGS 03300N, walks (seen): every 5 ft. 20 ft of walk 4 ft wide: four panels, three joints of 4 ft.
  test('a straight walk of 20 ft has three, square to it at 5, 10 and 15 ft', () => {
    const { figures, lines } = walk(48, [{ kind: 'straight', lengthIn: 240 }], { xIn: 100, yIn: 50 });
    expect(num(figures.panels)).toBe(4);
    expect(num(figures.length)).toBeCloseTo(12, 9);
    expect(lines.map((line) => [line.fromXIn, line.toXIn].map((xIn) => Math.round(xIn)))).toEqual([
      [160, 160],
      [220, 220],
      [280, 280],
    ]);
    for (const line of lines) expect([line.fromYIn, line.toYIn].toSorted((a, b) => a - b)).toEqual([26, 74]);
  });

  // Exact: a quarter circle of radius 10 ft is 15.708 ft long: four panels. Each joint runs along a radius,
  // so the lines through their ends meet at the centre, 10 ft to the left of the start.
  test('on a bend every joint points at its centre', () => {
    const { figures, lines } = walk(48, [{ kind: 'arc', radiusIn: 120, turnRad: Math.PI / 2 }]);
    // At the outside, 12 ft from the centre, four panels would be 4.7 ft long along the chord; three 6.2 ft.
    expect(num(figures.panels)).toBe(4);
    expect(lines).toHaveLength(num(figures.panels) - 1);
    for (const { fromXIn, fromYIn, toXIn, toYIn } of lines) {
      const cross = (toXIn - fromXIn) * (120 - fromYIn) - (toYIn - fromYIn) * (0 - fromXIn);
      expect(cross / 48).toBeCloseTo(0, 6);
      const radii = [Math.hypot(fromXIn, 120 - fromYIn), Math.hypot(toXIn, 120 - toYIn)].toSorted(
        (a, b) => a - b,
      );
      expect(radii[0]).toBeCloseTo(96, 6);
      expect(radii[1]).toBeCloseTo(144, 6);
    }
  });

  // Just past a sharp turn the line of a joint runs on into the other leg; the joint ends at its own edges.
  test.each([Math.PI / 2, -Math.PI / 2])(
    'beside a sharp turn no joint is longer than the walk is wide',
    (turnRad) => {
      const { lines } = walk(48, [
        { kind: 'straight', lengthIn: 120 },
        { kind: 'turn', turnRad, rounding: null },
        { kind: 'straight', lengthIn: 200 },
      ]);
      expect(lines.length).toBeGreaterThan(4);
      for (const line of lines) expect(lengthOf(line)).toBeLessThan(48 + 1e-6);
    },
  );

  // Regression: after lengths that are no whole inches the line at a turn was that of the leg after it, and
  // the walk was cut along its middle.
  test('after an odd length a turn is halved all the same', () => {
    const { figures, lines } = walk(47.24409448818898, [
      { kind: 'straight', lengthIn: 59.05511811023622 },
      { kind: 'arc', radiusIn: 141.73228346456693, turnRad: 0.6108652381980153 },
      { kind: 'arc', radiusIn: 141.73228346456693, turnRad: -0.6108652381980153 },
      { kind: 'straight', lengthIn: 118.11023622047244 },
      { kind: 'turn', turnRad: -Math.PI / 3, rounding: { how: 'parallel', setbackIn: 23.62204724409449 } },
      { kind: 'straight', lengthIn: 157.48031496062993 },
    ]);
    expect(num(figures.panels)).toBe(lines.length + 1);
    for (const line of lines) expect(lengthOf(line)).toBeLessThan(60);
    expect(num(figures['smallest-angle'])).toBeGreaterThan(80);
  });

  test('a wide strip has a joint along it too, beside those across', () => {
    const { figures, lines } = walk(180, [{ kind: 'straight', lengthIn: 240 }]);
    expect(num(figures.panels)).toBeGreaterThan(lines.length);
    const along = lines.filter((line) => Math.abs(line.fromYIn - line.toYIn) < 1e-6);
    const rows = num(figures.panels) / (lines.length - along.length + 1);
    expect(rows).toBe(along.length + 1);
    expect(along.reduce((sumIn, line) => sumIn + lengthOf(line), 0)).toBeCloseTo(240 * along.length, 6);
  });

  test('invariant: every joint of a bent walk lies inside it and ends on its edges', () => {
    const turn = fc.double({ min: -1.2, max: 1.2, noNaN: true }).filter((rad) => Math.abs(rad) > 0.1);
    fc.assert(
      fc.property(turn, turn, fc.double({ min: -3, max: 3, noNaN: true }), (first, second, turnedRad) => {
        const line: Line = [
          { kind: 'straight', lengthIn: 130 },
          { kind: 'arc', radiusIn: 120, turnRad: first },
          { kind: 'straight', lengthIn: 90 },
          { kind: 'arc', radiusIn: 100, turnRad: second },
        ];
        const { outline, lines } = walk(48, line, { xIn: 37, yIn: -12 }, turnedRad);
        expect(lines.length).toBeGreaterThan(2);
        for (const one of lines) {
          expect(lengthOf(one)).toBeCloseTo(48, 5);
          const middle = { xIn: (one.fromXIn + one.toXIn) / 2, yIn: (one.fromYIn + one.toYIn) / 2 };
          expect(containsPoint(outline, middle)).toBe(true);
          expect(distanceToEdgeIn(outline, { xIn: one.fromXIn, yIn: one.fromYIn })).toBeLessThan(1e-5);
        }
      }),
      propertyRuns,
    );
  });
});
