import { describe, expect, test } from 'vitest';
import { type Figure, num } from '../../../src/calculate/figure.ts';
import type { TapedShape } from '../../../src/calculate/job.ts';
import { calcLayout } from '../../../src/calculate/layout/index.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { at, rectangle, TAPE_LIMITS } from '../slabs.ts';

function laidOut(shapes: Readonly<Record<string, TapedShape>>, stepIn = 12) {
  const slabs = Object.fromEntries(
    Object.entries(shapes).map(([id, shape]) => [id, { id, label: id as PublicText, shape }]),
  );
  const { figures, data, problems } = calcOutline({ slabs, existing: {}, limits: TAPE_LIMITS });
  expect(problems).toEqual([]);
  return calcLayout({
    shapes: figures,
    outlines: data.slabs,
    corners: data.corners,
    lies: data.lies,
    stepIn,
    unitIn: 12,
  });
}

const inchesOf = (figures: Readonly<Record<string, Figure>> | undefined) =>
  Object.values(figures ?? {}).map(num);

describe('calcLayout', () => {
  // Exact: a square corner set back 3 ft: radius 3 ft, arc 3 pi / 2 ft, chord 3 sqrt 2 ft, rise 3 (1 - 1 / sqrt 2) ft.
  test('a square corner set back 3 ft', () => {
    const { figures } = laidOut({
      drive: rectangle(432, 216, { rounded: [{ corner: 2, by: { kind: 'setback', setbackIn: 36 } }] }),
    });
    const c1 = at(at(figures.slabs, 'drive').curves ?? {}, 'c1');
    expect(num(c1.radius)).toBeCloseTo(36, 9);
    expect(num(c1['arc-length'])).toBeCloseTo(18 * Math.PI, 9);
    expect(inchesOf({ chord: c1.chord ?? c1.radius, rise: c1.rise ?? c1.radius })[0]).toBeCloseTo(
      36 * Math.SQRT2,
      9,
    );
    expect(inchesOf({ rise: c1.rise ?? c1.radius })[0]).toBeCloseTo(36 * (1 - Math.SQRT1_2), 9);
    expect(inchesOf({ setback: c1.setback ?? c1.chord ?? c1.radius })[0]).toBeCloseTo(36, 9);
    // The radius point is 3 ft inside both edges: its ties are the distances from two sharp corners.
    const centre = { xIn: 432 - 36, yIn: 36 };
    const corners = [
      [0, 0],
      [432, 0],
      [432, 216],
      [0, 216],
    ] as const;
    for (const [name, tie] of Object.entries(c1.ties ?? {})) {
      const [xIn, yIn] = corners[Number(name.replace('corner-', '')) - 1] ?? [0, 0];
      expect(num(tie), name).toBeCloseTo(Math.hypot(centre.xIn - xIn, centre.yIn - yIn), 9);
    }
    expect(Object.keys(c1.ties ?? {})).toHaveLength(2);
  });

  // Published (seen): matheass.eu, "Circular Sections": chord 21, rise 6 belongs to radius 12.1875.
  // The offsets at 0, 2, ... follow from sqrt(R² - x²) - (R - rise); they start with the rise and end with 0.
  test('offsets from the chord start with the rise and end with nothing', () => {
    const bent = [{ edge: 1, by: { kind: 'rise' as const, riseIn: 72, bends: 'out' as const } }];
    const { figures, data } = laidOut({ drive: rectangle(252, 240, { bent }) }, 24);
    const c1 = at(at(figures.slabs, 'drive').curves ?? {}, 'c1');
    expect(num(c1.radius)).toBeCloseTo(146.25, 9);
    const offsets = at(data.curves, 'drive')[0]?.fromChordIn ?? [];
    expect(offsets[0]).toBeCloseTo(72, 9);
    expect(offsets[1]).toBeCloseTo(Math.sqrt(146.25 ** 2 - 24 ** 2) - (146.25 - 72), 9);
    expect(offsets.at(-1)).toBeCloseTo(0, 9);
    expect(offsets).toEqual([...offsets].sort((one, other) => other - one));
  });

  // Published (seen): Army carpentry course, "Squaring building lines": a rectangle is square when its
  // diagonals are equal; 3-4-5. Exact: 18 x 36 ft has diagonals of 40.2492 ft; 27 and 36 ft do not fit, 18 and 24 do.
  test('diagonals, and the largest 3-4-5 that fits', () => {
    const { figures, data } = laidOut({ drive: rectangle(432, 216) });
    const drive = at(figures.slabs, 'drive');
    expect(drive.curves).toBeUndefined();
    expect(Object.keys(drive.diagonals ?? {})).toEqual(['1-to-3', '2-to-4']);
    for (const lengthIn of inchesOf(drive.diagonals)) expect(lengthIn / 12).toBeCloseTo(40.2492, 4);
    expect(inchesOf(drive.square).toSorted((one, other) => one - other)).toEqual(
      [18, 24, 30].map((feet) => 12 * feet),
    );
    expect(data.squares['drive']?.corner).toBe(1);
  });

  test('curves are numbered over all slabs, a round planter is one of them', () => {
    const well = {
      id: 'well',
      label: 'Well' as PublicText,
      base: { kind: 'circle', diameterIn: 36 } as const,
      at: { xIn: 60, yIn: 60 },
      turnedRad: 0,
      around: 'formed' as const,
    };
    const rounded = [{ corner: 2, by: { kind: 'radius' as const, radiusIn: 24 } }];
    const { figures } = laidOut({
      one: rectangle(240, 120, { rounded }),
      two: rectangle(240, 120, { cutOuts: { well } }),
    });
    expect(Object.keys(at(figures.slabs, 'one').curves ?? {})).toEqual(['c1']);
    const round = at(at(figures.slabs, 'two').curves ?? {}, 'c2');
    expect(num(round['arc-length'])).toBeCloseTo(36 * Math.PI, 9);
    expect(round.chord).toBeUndefined();
  });

  test('a slope in the tape moves what is drawn and not what is taped', () => {
    const rounded = [{ corner: 2, by: { kind: 'radius' as const, radiusIn: 24 } }];
    const flat = laidOut({ drive: rectangle(240, 120, { rounded }) });
    const taped = { how: 'level', slope: 0, runs: 'along' } as const;
    const noSlope = laidOut({ drive: rectangle(240, 120, { rounded, taped }) });
    expect(noSlope.data.curves).toEqual(flat.data.curves);
    const steep = laidOut({
      drive: rectangle(240, 120, { taped: { ...taped, how: 'on-slope', slope: 0.75 } }),
    });
    // Corners on the level plan: 20 ft on a slope of 3 in 4 are 16 ft on the plan.
    expect(steep.data.corners['drive']?.map((corner) => corner.at.xIn)[1]).toBeCloseTo(192, 9);
    expect(inchesOf(at(steep.figures.slabs, 'drive').diagonals)[0]).toBeCloseTo(Math.hypot(240, 120), 9);
  });
});
