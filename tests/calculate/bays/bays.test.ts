import { describe, expect, test } from 'vitest';
import { type BaysResult, calcBays } from '../../../src/calculate/bays/index.ts';
import { num, walkFigures } from '../../../src/calculate/figure.ts';
import type { LoadPiece } from '../../../src/calculate/haul/index.ts';
import type { TapedShape } from '../../../src/calculate/job.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { containsPoint } from '../../../src/geometry/index.ts';
import { allJobs } from '../../support/project.ts';
import { asTaped, rectangle, TAPE_LIMITS } from '../slabs.ts';

type Pieces = readonly (readonly [id: string | null, areaSqFt: number | null])[];

const pieceOf = ([existingId, areaSqFt]: Pieces[number]): LoadPiece => ({
  existingId,
  areaSqFt,
  weightLb: 1,
});

/** Bays of some shapes, of which each load takes what is said. */
function bays(shapes: Readonly<Record<string, TapedShape>>, loads: readonly Pieces[]): BaysResult {
  const existing = Object.fromEntries(
    Object.entries(shapes).map(([id, shape]) => [id, { id, label: id as PublicText, shape }]),
  );
  const outline = calcOutline({ slabs: {}, existing, limits: TAPE_LIMITS });
  expect(outline.problems).toEqual([]);
  return calcBays({
    loads: loads.map((pieces, index) => ({ name: `load-${index + 1}`, pieces: pieces.map(pieceOf) })),
    outlines: outline.data.existing,
    lies: outline.data.existingLies,
    shapes: outline.figures,
  });
}

const inchesOf = (result: BaysResult) =>
  Object.fromEntries(
    walkFigures(result.figures).map(({ id, figure }) => [id, Math.round(num(figure) * 1e6) / 1e6]),
  );

describe('calcBays', () => {
  // By hand: 36 by 18 ft; 162, 216 and 270 sq ft are 9, 12 and 15 ft of its length.
  test('each line is found from the two corners of the end where the loads begin', () => {
    const result = bays({ drive: rectangle(432, 216) }, [
      [['drive', 162]],
      [['drive', 216]],
      [['drive', 270]],
    ]);
    expect(inchesOf(result)).toEqual({
      'drive.load-2.from-a': 108,
      'drive.load-2.from-b': 108,
      'drive.load-3.from-a': 252,
      'drive.load-3.from-b': 252,
    });
    expect(result.data.marks['drive']).toEqual([
      { mark: 'a', at: { xIn: 0, yIn: 0 } },
      { mark: 'b', at: { xIn: 0, yIn: 216 } },
    ]);
    expect(result.data.bays.map(({ load, areaSqFt, lines }) => [load, areaSqFt, lines.length])).toEqual([
      ['load-1', 162, 0],
      ['load-2', 216, 1],
      ['load-3', 270, 1],
    ]);
    expect(result.problems).toEqual([]);
  });

  test('with the house at that end they begin at the other', () => {
    const edges = [{ edge: 4, kind: 'house' }] as const;
    const result = bays({ drive: rectangle(432, 216, { edges }) }, [[['drive', 162]], [['drive', 486]]]);
    const [first, second] = result.data.bays;
    expect(first?.label.xIn).toBeGreaterThan(324);
    expect(second?.lines[0]?.fromXIn).toBeCloseTo(324, 6);
    expect(result.data.marks['drive']?.map(({ at }) => at.xIn)).toEqual([432, 432]);
  });

  test('soil and what is not loaded by area have none; a whole thing has one without a line', () => {
    const result = bays({ pad: rectangle(120, 120), bed: rectangle(120, 120) }, [
      [
        ['pad', 100],
        ['bed', null],
      ],
      [[null, null]],
    ]);
    expect(result.data.bays.map(({ load, existingId, lines }) => [load, existingId, lines])).toEqual([
      ['load-1', 'pad', []],
    ]);
    expect([result.figures, result.data.marks]).toEqual([{}, {}]);
  });

  test('letters run on over the things; bays stand in driving order', () => {
    const result = bays({ walk: rectangle(240, 48), pad: rectangle(120, 120) }, [
      [
        ['walk', 40],
        ['pad', 30],
      ],
      [
        ['pad', 70],
        ['walk', 40],
      ],
    ]);
    expect(Object.values(result.data.marks).map((marks) => marks.map(({ mark }) => mark))).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
    expect(result.data.bays.map(({ load }) => load)).toEqual(['load-1', 'load-1', 'load-2', 'load-2']);
    expect(inchesOf(result)).toEqual({
      'walk.load-2.from-a': 120,
      'walk.load-2.from-b': 120,
      'pad.load-2.from-c': 36,
      'pad.load-2.from-d': 36,
    });
  });

  test('after z comes aa', () => {
    const ids = Array.from({ length: 14 }, (_, index) => `pad-${index + 1}`);
    const half = ids.map((id) => [id, 50] as const);
    const result = bays(Object.fromEntries(ids.map((id) => [id, rectangle(120, 120)])), [half, half]);
    const marks = Object.values(result.data.marks).flatMap((own) => own.map(({ mark }) => mark));
    expect(marks.slice(24)).toEqual(['y', 'z', 'aa', 'ab']);
  });

  test('what is noise of the weights is nobody to chalk', () => {
    const result = bays({ pad: rectangle(120, 120) }, [[['pad', 100 - 1e-9]], [['pad', 1e-9]]]);
    expect(result.data.bays.map(({ load }) => load)).toEqual(['load-1']);
  });

  test('both ends of a line across a circle hang on one corner, by two figures', () => {
    const halfSqFt = (Math.PI * 25) / 2;
    const round = asTaped({ kind: 'circle', diameterIn: 120 });
    const result = bays({ seat: round }, [[['seat', halfSqFt]], [['seat', halfSqFt]]]);
    const chordIn = expect.closeTo(60 * Math.SQRT2, 4);
    expect(inchesOf(result)).toEqual({ 'seat.load-2.from-a': chordIn, 'seat.load-2.from-a-2': chordIn });
    expect(result.data.marks['seat']).toHaveLength(1);
  });

  // Taped level on a 3-4-5 slope of 75 %: what is 96 in on the plan is 120 in on the surface.
  test('on a slope the tape reads the surface, the drawing is level', () => {
    const slope = { how: 'level', slope: 0.75, runs: 'along' } as const;
    const result = bays({ ramp: rectangle(192, 48, { taped: slope }) }, [[['ramp', 40]], [['ramp', 40]]]);
    expect(inchesOf(result)).toEqual({ 'ramp.load-2.from-a': 120, 'ramp.load-2.from-b': 120 });
    expect(result.data.bays[1]?.lines.map(({ fromXIn, toXIn }) => [fromXIn, toXIn])).toEqual([
      [expect.closeTo(96, 6), expect.closeTo(96, 6)],
    ]);
    expect(Math.abs((result.data.bays[1]?.label.xIn ?? 0) - 144)).toBeLessThan(6);
  });

  test('refuses loads that leave something of a thing behind', () => {
    expect(() => bays({ pad: rectangle(120, 120) }, [[['pad', 60]], [['pad', 39]]])).toThrow(/add up/);
  });
});

describe.each(allJobs().map(({ job, results }) => [job.id, results] as const))(
  'the bays of %s',
  (_, results) => {
    const { bays: all } = results.bays.data;

    test('are what the loads take, and together each thing', () => {
      const taken = results.haul.data.loads.flatMap(({ name, pieces }) =>
        pieces.flatMap(({ existingId, areaSqFt }) =>
          areaSqFt === null ? [] : [[name, existingId, areaSqFt]],
        ),
      );
      expect(all.map(({ load, existingId, areaSqFt }) => [load, existingId, areaSqFt])).toEqual(
        expect.arrayContaining(taken),
      );
      for (const id of new Set(all.map(({ existingId }) => existingId))) {
        const sumSqFt = all
          .filter(({ existingId }) => existingId === id)
          .reduce((sum, { areaSqFt }) => sum + areaSqFt, 0);
        const area = results.outline.figures.existing[id]?.area;
        expect(sumSqFt, id).toBeCloseTo(area === undefined ? Number.NaN : num(area), 6);
      }
    });

    test('have their labels on their things, and every line a figure for each end', () => {
      for (const { existingId, load, label, lines, ties } of all) {
        const plan = results.outline.data.plans.existing[existingId];
        expect(plan !== undefined && containsPoint(plan, label), `${existingId} ${load}`).toBe(true);
        const figures = results.bays.figures[existingId]?.[load] ?? {};
        expect(Object.keys(figures)).toEqual(ties.map(({ figure }) => figure));
        if (lines.length === 0) expect(ties).toEqual([]);
        else expect(ties.length).toBeGreaterThanOrEqual(2);
      }
    });
  },
);
