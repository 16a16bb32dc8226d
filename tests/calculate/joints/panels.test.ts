import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { TapedShape } from '../../../src/calculate/job.ts';
import { calcJoints } from '../../../src/calculate/joints/index.ts';
import {
  boundsOf,
  containsPoint,
  distanceToEdgeIn,
  lineLengthIn,
  outlineAreaSqIn,
} from '../../../src/geometry/index.ts';
import { anyShape, aSlab, at, lShape, outlined, propertyRuns, tapedIn } from '../slabs.ts';
import { AWKWARD } from './awkward.ts';

function laid(shape: TapedShape, jointSpacingIn: number, use: 'patio' | 'walk' = 'patio') {
  const slab = aSlab({ shape, jointSpacingIn, use });
  const made = outlined(slab);
  const { figures, data } = calcJoints({ ...made, mix: { slumpIn: 4, aggregateIn: 0.75 } });
  return {
    outline: at(made.outlines, 'drive'),
    figures: at(figures.slabs, 'drive'),
    lines: at(data.lines, 'drive'),
    panels: at(data.panels, 'drive'),
  };
}

/** A layout looks at hundreds of cuts. */
const fewerRuns = { ...propertyRuns, numRuns: Math.ceil(propertyRuns.numRuns / 10) };

type Laid = ReturnType<typeof laid>;

/** Every point of the slab in one panel, areas that add up, joints from edge to edge and never outside. */
function expectSound({ outline, lines, panels }: Laid) {
  const sumSqFt = panels.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0);
  expect(sumSqFt).toBeCloseTo(outlineAreaSqIn(outline) / 144, 6);

  const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(outline);
  // Shares that are no fraction of a side, so that no point lies on a joint or an edge but by chance.
  for (const across of [0.0713, 0.2319, 0.4177, 0.6283, 0.8071, 0.9619]) {
    for (const up of [0.0571, 0.2137, 0.3947, 0.5813, 0.7691, 0.9433]) {
      const point = { xIn: minXIn + (maxXIn - minXIn) * across, yIn: minYIn + (maxYIn - minYIn) * up };
      const isOnEdge = [outline, ...panels.map((panel) => panel.outline)].some(
        (one) => distanceToEdgeIn(one, point) < 1e-4,
      );
      if (isOnEdge) continue;
      const count = panels.filter((panel) => containsPoint(panel.outline, point)).length;
      expect(count).toBe(containsPoint(outline, point) ? 1 : 0);
    }
  }
  for (const line of lines) {
    expect(lineLengthIn(line)).toBeGreaterThan(1);
    for (const share of [0.01, 0.31, 0.5, 0.77, 0.99]) {
      const point = {
        xIn: line.fromXIn + (line.toXIn - line.fromXIn) * share,
        yIn: line.fromYIn + (line.toYIn - line.fromYIn) * share,
      };
      expect(containsPoint(outline, point) || distanceToEdgeIn(outline, point) < 1e-4).toBe(true);
    }
  }
}

describe('panels of awkward outlines', () => {
  describe.each(Object.entries(AWKWARD))('%s', (_, { shape, limitFt, use }) => {
    const made = laid(shape, limitFt * 12, use);

    test('invariant: panels fill the slab once and joints stay in it', () => expectSound(made));

    test('no panel is over the limit, and no corner that turns in is left', () => {
      expect(num(made.figures['length-over-limit'])).toBeLessThanOrEqual(1 + 1e-9);
      expect(num(made.figures['open-corners'])).toBe(0);
    });

    test('invariant: half the spacing gives no fewer joints, panels or feet', () => {
      const closer = laid(shape, limitFt * 6, use);
      expect(closer.lines.length).toBeGreaterThanOrEqual(made.lines.length);
      expect(closer.panels.length).toBeGreaterThanOrEqual(made.panels.length);
      expect(num(closer.figures.length)).toBeGreaterThanOrEqual(num(made.figures.length) - 1e-6);
    });
  });
});

const THIN_L = lShape({ lengthIn: 122.0625, widthIn: 114.6875, legIn: 24.4125, armIn: 22.9375 });

/* Layouts that were drawn and looked at: what a foreman would cut there, said as what it is made of. */
describe('regression: as a foreman would cut it', () => {
  const of = (name: string) => {
    const { shape, limitFt, use } = AWKWARD[name] ?? {};
    if (shape === undefined || limitFt === undefined) throw new RangeError(`no outline ${name}`);
    return laid(shape, limitFt * 12, use);
  };

  test('a flared apron: joints from the street straight to the drive, and no crumbs in its corners', () => {
    const { panels, lines } = of('flared-drive');
    const apron = panels.filter((panel) => boundsOf(panel.outline).minXIn > 26 * 12 - 1);
    expect(apron).toHaveLength(4);
    expect(Math.min(...apron.map(({ areaSqFt }) => areaSqFt))).toBeGreaterThan(12);
    for (const { fromXIn, toXIn, fromYIn, toYIn } of lines)
      expect(Math.min(Math.abs(toXIn - fromXIn), Math.abs(toYIn - fromYIn))).toBeLessThan(0.01);
  });

  test('a wide bend: two lanes whose joints meet at every joint across', () => {
    const { panels, lines } = of('wide-bend');
    expect(panels).toHaveLength(12);
    expect(Math.max(...panels.map(({ ratio }) => ratio))).toBeLessThan(1.5);
    const ends = lines.flatMap(({ fromXIn, fromYIn, toXIn, toYIn }) => [
      { xIn: fromXIn, yIn: fromYIn },
      { xIn: toXIn, yIn: toYIn },
    ]);
    const { outline } = of('wide-bend');
    // An end inside the slab is one of two lanes that meet there: a lane that misses its neighbour stands alone.
    const inside = ends.filter((end) => distanceToEdgeIn(outline, end) > 1);
    expect(inside.length).toBeGreaterThan(4);
    for (const end of inside) {
      const there = inside.filter(({ xIn, yIn }) => Math.hypot(xIn - end.xIn, yIn - end.yIn) < 0.01);
      expect(there).toHaveLength(2);
    }
  });

  test('a quarter of a circle: two joints square to its sides, from edge to edge', () => {
    const { lines, panels } = of('pie');
    expect(panels).toHaveLength(4);
    expect(lines).toHaveLength(2);
  });
});

describe('panels of any shape', () => {
  test('invariant: they fill the slab once, and joints stay in it', () => {
    fc.assert(
      fc.property(anyShape, tapedIn(40, 180), (shape, spacingIn) => expectSound(laid(shape, spacingIn))),
      fewerRuns,
    );
  });

  test('invariant: half the spacing gives no fewer joints, panels or feet', () => {
    fc.assert(
      fc.property(anyShape, tapedIn(48, 180), (shape, spacingIn) => {
        const made = laid(shape, spacingIn);
        const closer = laid(shape, spacingIn / 2);
        expect(closer.lines.length).toBeGreaterThanOrEqual(made.lines.length);
        expect(closer.panels.length).toBeGreaterThanOrEqual(made.panels.length);
        expect(num(closer.figures.length)).toBeGreaterThanOrEqual(num(made.figures.length) - 1e-6);
      }),
      // An L with thin legs, which only a quarter of its spacing lays out with the fewest joints.
      { ...fewerRuns, examples: [[THIN_L, 150]] },
    );
  });
});
