import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { TapedShape } from '../../../src/calculate/job.ts';
import { barPieces, barRuns, diagonalsOf, lapsOf } from '../../../src/calculate/reinforcement/index.ts';
import { containsPoint, distanceToEdgeIn, type Outline } from '../../../src/geometry/index.ts';
import {
  anyShape,
  aSlab,
  asTaped,
  at,
  lShape,
  outlined,
  propertyRuns,
  rectangle,
  tapedIn,
} from '../slabs.ts';

function outlineOf(shape: TapedShape): Outline {
  return at(outlined(aSlab({ shape })).outlines, 'drive');
}

const both = (spacingIn: number) => ({ along: spacingIn, across: spacingIn });

describe('barRuns', () => {
  test('runs of an L end at its inner edges', () => {
    const outline = outlineOf(lShape({ lengthIn: 240, widthIn: 240, legIn: 90, armIn: 90 }));
    const runs = barRuns({ outline, spacingIn: both(59), coverIn: 2 });
    const lengths = (way: string) => runs.filter((run) => run.way === way).map(({ lengthIn }) => lengthIn);
    // Places 2, 61, 120, 179 and 238 in: two in the arm, three in the leg.
    expect(lengths('along')).toEqual([236, 236, 86, 86, 86]);
    expect(lengths('across')).toEqual([236, 236, 86, 86, 86]);
  });

  test('a hole parts the bars that meet it, the cover round it too', () => {
    const shape = rectangle(240, 240, {
      cutOuts: {
        tree: {
          id: 'tree',
          label: 'Tree' as never,
          base: { kind: 'circle', diameterIn: 60 },
          at: { xIn: 90, yIn: 90 },
          turnedRad: 0,
          around: 'stays',
        },
      },
    });
    const outline = outlineOf(shape);
    const runs = barRuns({ outline, spacingIn: both(118), coverIn: 2 }).filter(({ way }) => way === 'along');
    const middle = runs.filter(({ from }) => Math.abs(from.yIn - 120) < 1e-6);
    expect(runs.length).toBe(4);
    // Through the middle of the circle: 240 - 2 x 2 - 2 x 32, halved.
    expect(middle.map(({ lengthIn }) => lengthIn)).toEqual([86, 86]);
  });

  test('a turned slab has the bars of one that is not', () => {
    const lengthsOf = (turnedRad: number) =>
      barRuns({
        outline: outlineOf(rectangle(300, 200, { turnedRad })),
        spacingIn: both(18),
        coverIn: 2,
      }).map(({ way, lengthIn }) => `${way} ${lengthIn}`);
    expect(lengthsOf(0.3)).toEqual(lengthsOf(0));
  });

  test('invariant: a bar is inside and no nearer to any edge than the cover, and ends there', () => {
    const shapes = fc.oneof(
      anyShape,
      tapedIn(60, 400).map((diameterIn) => asTaped({ kind: 'circle', diameterIn })),
    );
    fc.assert(
      fc.property(shapes, tapedIn(6, 30), tapedIn(1, 4), (shape, spacingIn, coverIn) => {
        const outline = outlineOf(shape);
        for (const { from, to, lengthIn } of barRuns({ outline, spacingIn: both(spacingIn), coverIn })) {
          for (const share of [0, 0.31, 0.5, 0.77, 1]) {
            const point = {
              xIn: from.xIn + (to.xIn - from.xIn) * share,
              yIn: from.yIn + (to.yIn - from.yIn) * share,
            };
            expect(containsPoint(outline, point)).toBe(true);
            expect(distanceToEdgeIn(outline, point)).toBeGreaterThanOrEqual(coverIn - 1e-5);
          }
          // Cut down by less than the step, half of it at either end.
          const along = { xIn: (to.xIn - from.xIn) / lengthIn, yIn: (to.yIn - from.yIn) / lengthIn };
          const past = { xIn: to.xIn + along.xIn * 0.126, yIn: to.yIn + along.yIn * 0.126 };
          expect(distanceToEdgeIn(outline, past)).toBeLessThan(coverIn + 1e-5);
        }
      }),
      propertyRuns,
    );
  });

  test('refuses what is outside its range', () => {
    const outline = outlineOf(rectangle(240, 120));
    expect(() => barRuns({ outline, spacingIn: both(0), coverIn: 2 })).toThrow(RangeError);
    expect(() => barRuns({ outline, spacingIn: both(12), coverIn: -1 })).toThrow(RangeError);
  });
});

describe('barPieces', () => {
  const pieces = (changed: Partial<Parameters<typeof barPieces>[0]>) =>
    barPieces({ runIn: 428, stockIn: 240, lapIn: 20, jointsIn: [], fromEnd: false, ...changed });

  test('whole stock first; from the other end the same, turned round', () => {
    expect(pieces({})).toEqual([
      { fromIn: 0, lengthIn: 240 },
      { fromIn: 220, lengthIn: 208 },
    ]);
    expect(pieces({ fromEnd: true })).toEqual([
      { fromIn: 0, lengthIn: 208 },
      { fromIn: 188, lengthIn: 240 },
    ]);
  });

  test('a lap moves off a joint, towards the start', () => {
    expect(lapsOf(pieces({ jointsIn: [230] }))).toEqual([{ fromIn: 210, toIn: 230 }]);
    expect(lapsOf(pieces({ jointsIn: [212, 230] }))).toEqual([{ fromIn: 192, toIn: 212 }]);
  });

  test('one bar more where each place of a lap has a joint in it', () => {
    // Two bars reach 460 in: of a run of 455 the lap starts between 215 and 220 in, on the joint at 225.
    const laid = pieces({ runIn: 455, jointsIn: [225] });
    expect(laid.length).toBe(3);
    expect(lapsOf(laid).every(({ fromIn, toIn }) => toIn <= 225 || fromIn >= 225)).toBe(true);
  });

  test('the last bar is two laps long', () => {
    expect(pieces({ runIn: 241 })).toEqual([
      { fromIn: 0, lengthIn: 221 },
      { fromIn: 201, lengthIn: 40 },
    ]);
  });

  test('invariant: bars cover the run with their laps and none is longer than the stock', () => {
    const joints = fc.array(tapedIn(0, 1500), { maxLength: 12 });
    fc.assert(
      fc.property(
        tapedIn(12, 1500),
        tapedIn(60, 480),
        tapedIn(0, 30),
        joints,
        fc.boolean(),
        (runIn, stockIn, lapIn, jointsIn, fromEnd) => {
          const laid = pieces({ runIn, stockIn, lapIn, jointsIn, fromEnd });
          const sumIn = laid.reduce((sum, { lengthIn }) => sum + lengthIn, 0);
          expect(sumIn).toBeCloseTo(runIn + (laid.length - 1) * lapIn, 6);
          expect(laid.every(({ lengthIn }) => lengthIn > 0 && lengthIn <= stockIn + 1e-6)).toBe(true);
          expect(lapsOf(laid).every(({ fromIn, toIn }) => Math.abs(toIn - fromIn - lapIn) < 1e-6)).toBe(true);
        },
      ),
      propertyRuns,
    );
  });

  test('refuses what is outside its range', () => {
    expect(() => pieces({ runIn: 0 })).toThrow(RangeError);
    expect(() => pieces({ stockIn: 20 })).toThrow(RangeError);
  });
});

describe('diagonalsOf', () => {
  const outline = outlineOf(lShape({ lengthIn: 240, widthIn: 240, legIn: 90, armIn: 90 }));

  test('two bars square to the halving line, the cover and 4 in behind it from the corner', () => {
    const made = diagonalsOf({ outline, joints: [], coverIn: 2, stockIn: 240 });
    expect(made.map(({ lengthIn }) => lengthIn)).toEqual([48, 48]);
    for (const [index, { from, to }] of made.entries()) {
      // The corner is at 90, 90; the line x + y = 180 - d sqrt 2 lies d from it.
      const offIn = 2 + 4 * index;
      expect(from.xIn + from.yIn).toBeCloseTo(180 - offIn * Math.SQRT2, 9);
      expect(to.xIn + to.yIn).toBeCloseTo(180 - offIn * Math.SQRT2, 9);
      expect((from.xIn + to.xIn) / 2).toBeCloseTo(90 - offIn / Math.SQRT2, 9);
    }
  });

  test('no longer than the stock', () => {
    const made = diagonalsOf({ outline, joints: [], coverIn: 2, stockIn: 36 });
    expect(made.map(({ lengthIn }) => lengthIn)).toEqual([36, 36]);
  });

  test('none where a joint starts', () => {
    const joint = { fromXIn: 90, fromYIn: 90, toXIn: 90, toYIn: 0 };
    expect(diagonalsOf({ outline, joints: [joint], coverIn: 2, stockIn: 240 })).toEqual([]);
    expect(
      diagonalsOf({ outline, joints: [{ ...joint, fromXIn: 100, toXIn: 100 }], coverIn: 2, stockIn: 240 })
        .length,
    ).toBe(2);
  });
});
