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
