import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import { calcGrades } from '../../../src/calculate/grades/index.ts';
import type { Job } from '../../../src/calculate/job.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { calcTieIns } from '../../../src/calculate/tie-ins/index.ts';
import { testExpressions } from '../evaluate.ts';
import { pointsAt } from '../grades/a-grade.ts';
import { aSlab, byId, NO_TIE_INS, rectangle } from '../slabs.ts';
import { aWalk, onSlab, SPOTS } from './a-walk.ts';

const drive = aSlab({ shape: rectangle(480, 216, { at: { xIn: 0, yIn: 0 } }) });

const GARAGE: Job['tieIns']['garages'][string] = {
  id: 'garage',
  label: 'Garage floor' as PublicText,
  slab: 'drive',
  points: ['garage-left', 'garage-right'],
  lipIn: 0.5,
  sealIn: 3,
};

function made(tieIns: Partial<Job['tieIns']>, spots: Parameters<typeof pointsAt>[0] = SPOTS) {
  const graded = onSlab(drive, pointsAt(spots, 'fixed', { kind: 'stays' }));
  const tied = calcTieIns({ ...graded, tieIns: { ...NO_TIE_INS, ...tieIns } });
  const grades = calcGrades({ ...graded, existing: {}, tied: tied.data.surface });
  return { tied, slab: grades.figures.driveway?.['drive'], problems: [...tied.problems, ...grades.problems] };
}

describe('a garage floor', () => {
  // The floor at 100 in at both corners: the slab comes up to 99.5 there, and falls from that to the walk.
  test('exact: the surface stays below it by the lip at the joint', () => {
    const { tied, slab, problems } = made({ garages: byId(GARAGE) });
    expect(problems).toEqual([]);
    const tops = tied.figures.garages?.['garage']?.tops ?? {};
    expect(Object.entries(tops).map(([id, top]) => [id, num(top)])).toEqual([
      ['garage-left', 99.5],
      ['garage-right', 99.5],
    ]);
    const finishes = Object.values(slab?.places ?? {}).map(({ finish }) => num(finish));
    expect(finishes.filter((heightIn) => heightIn === 99.5)).toHaveLength(2);
    expect(Math.max(...finishes)).toBe(99.5);
  });

  test('exact: a public walk is come down to from the slab, not from the floor', () => {
    const { tied } = made({ garages: byId(GARAGE), publicWalks: byId(aWalk()) });
    const left = tied.figures['public-walks']?.['city']?.ends.left['as-it-is'];
    // 11.5 in over 480 in, where 12 in would be from the floor.
    expect(left !== undefined && 'falls' in left && num(left.falls)).toBeCloseTo(11.5 / 480, 12);
  });

  test('a point that its slab does not meet is a problem', () => {
    const spots = { ...SPOTS, shed: [240, 300, 100] } as const;
    const { problems } = made({ garages: byId({ ...GARAGE, points: ['garage-left', 'shed'] }) }, spots);
    expect(problems.map(({ code, path }) => [code, path])).toEqual([
      ['tie-in-off-slab', 'heights.garages.garage.points.1'],
    ]);
  });

  testExpressions('garages', made({ garages: byId(GARAGE) }).tied.figures, 4);
});

test('regression: water is followed anew where other lines are kept dry', () => {
  const graded = onSlab(drive, pointsAt(SPOTS, 'fixed', { kind: 'stays' }));
  const keptDry = (xIn: number): Job['tieIns']['keepDry'] => ({
    lot: {
      id: 'lot',
      label: 'Lot line' as PublicText,
      kind: 'neighbor',
      along: [
        { xIn, yIn: -100 },
        { xIn, yIn: 400 },
      ],
    },
  });
  // It falls along x: a line behind the garage gets nothing, one before the street nearly all.
  const share = (xIn: number) =>
    num(
      calcGrades({ ...graded, existing: {}, keepDry: keptDry(xIn) }).figures.driveway!['drive']!.towards![
        'lot'
      ]!,
    );
  expect([share(-20), share(500)]).toEqual([0, 1]);
});

describe('lines that a surface bends along', () => {
  /*
   * A ridge from the middle of one end to the middle of the other, 4 in high, between edges at 0. Of the four corners
   * and the two ends of the ridge the triangles could also run from side to side and cut it off.
   */
  const ROOF = {
    a: [0, 0, 0],
    b: [480, 0, 0],
    c: [480, 216, 0],
    d: [0, 216, 0],
    top: [190, 108, 4],
    end: [290, 108, 4],
  } as const;
  const LONG = {
    ...ROOF,
    top: [30, 108, 4],
    end: [450, 108, 4],
    near: [240, 0, 0],
    far: [240, 216, 0],
  } as const;

  test('the surface is as high between two points as they are', () => {
    const middle = (bends: Job['tieIns']['bends'], spots: Parameters<typeof pointsAt>[0]) =>
      num(made({ bends }, spots).slab!.places['middle']!.finish);
    expect(middle([['top', 'end']], ROOF)).toBeCloseTo(4, 9);
    // 420 in apart and 216 in wide: by themselves the triangles run across, and the middle lies on the edges.
    expect(middle([], LONG)).toBeLessThan(3.9);
    expect(middle([['top', 'end']], LONG)).toBeCloseTo(4, 9);
  });

  test('two that cross are a problem, and two that meet at a point are none', () => {
    const codes = (bends: Job['tieIns']['bends']) =>
      made({ bends }, ROOF).problems.map(({ code, path, parts }) => [code, path, parts]);
    const parts = { first: '1', second: '2' };
    expect(
      codes([
        ['a', 'c'],
        ['b', 'd'],
      ]),
    ).toEqual([['bends-cross', 'heights.bends-along.1', parts]]);
    expect(
      codes([
        ['a', 'top', 'end'],
        ['end', 'c'],
      ]),
    ).toEqual([]);
  });
});
