import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { Existing, LevelNote, LevelPoint } from '../../../src/calculate/job.ts';
import { calcLevels } from '../../../src/calculate/levels/index.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { testExpressions } from '../evaluate.ts';
import { aSlab, at, outlined, rectangle } from '../slabs.ts';
import { aPoint, back, fore, height, someHeights } from './a-book.ts';

/** On the plan from 0 to 480 in along and 0 to 216 in across. */
const { plans } = {
  plans: {
    slabs: outlined(aSlab({ shape: rectangle(480, 216, { at: { xIn: 0, yIn: 0 } }) })).outlines,
    existing: {},
  },
};

function anOldPorch(coating: Existing['coating']): Existing {
  return {
    id: 'old-porch',
    label: 'Old porch' as PublicText,
    shape: rectangle(60, 60),
    material: 'concrete',
    thicknessIn: 4,
    thicknessIs: 'measured',
    thickestIn: null,
    coating,
    soilStuckIn: 0,
    steel: 'none',
    breakOut: 'breaker',
    unitWeightLbPerCuFt: null,
  };
}

const TILED = { 'old-porch': anOldPorch({ kind: 'tile', thicknessIn: 1.25 }) };
const ON_PORCH = { kind: 'existing', id: 'old-porch' } as const;

function levels(
  points: readonly LevelPoint[],
  notes: readonly LevelNote[] = [],
  existing: Readonly<Record<string, Existing>> = {},
) {
  return calcLevels({ heights: someHeights(points, notes), existing, plans, corners: {} });
}

describe('heights of points', () => {
  test('without heights there is nothing', () => {
    expect(calcLevels({ heights: null, existing: {}, plans, corners: {} })).toEqual({
      figures: {},
      data: { heightOf: {}, runs: [] },
      problems: [],
    });
  });

  test('a written height counts as it is, below the datum too', () => {
    const { data, figures } = levels([aPoint(), aPoint({ id: 'drain', heightIn: -0.75 })]);
    expect(data.heightOf).toEqual({ floor: 100, drain: -0.75 });
    expect(Object.keys(figures)).toEqual(['points']);
    expect(at(figures.points ?? {}, 'drain').height.inputs).toEqual({
      heightIn: { path: 'heights.points.drain.height', value: -0.75, unit: 'in' },
    });
  });

  test('exact: a fixed height read on a layer that goes is lowered by the layer', () => {
    const { figures, data } = levels([aPoint({ stoodOn: ON_PORCH })], [], TILED);
    const { read, height: lowered } = at(figures.points ?? {}, 'floor');
    expect([read, lowered].map((figure) => (figure === undefined ? null : num(figure)))).toEqual([
      100, 98.75,
    ]);
    expect(lowered.inputs['layerIn']).toMatchObject({ path: 'site.existing.old-porch.coating-thickness' });
    expect(data.heightOf).toEqual({ floor: 98.75 });
  });

  test('what is there now is not lowered: its top is its top', () => {
    const point = aPoint({ kind: 'existing', stoodOn: ON_PORCH });
    expect(levels([point], [], TILED).data.heightOf).toEqual({ floor: 100 });
  });

  test.each([null, { kind: 'paint' } as const])(
    'a fixed point on what goes without a layer is refused',
    (coating) => {
      const existing = { 'old-porch': anOldPorch(coating) };
      expect(() => levels([aPoint({ stoodOn: ON_PORCH })], [], existing)).toThrow(RangeError);
    },
  );

  test('a height of the notes, and one that a note says', () => {
    const points = [aPoint({ heightIn: null }), aPoint({ id: 'nail', heightIn: null })];
    const { data, problems } = levels(points, [height('nail', 1200), back('nail', 50), fore('floor', 62)]);
    expect(data.heightOf).toEqual({ floor: 1188, nail: 1200 });
    expect(problems).toEqual([]);
  });

  test('exact: two sights within the closing error are averaged', () => {
    const notes = [back('nail', 50), fore('floor', 40), back('nail', 60), fore('floor', 49.875)];
    const { data, problems } = levels([aPoint({ heightIn: null }), aPoint({ id: 'nail' })], notes);
    expect(data.heightOf['floor']).toBe(110.0625);
    expect(problems).toEqual([]);
  });

  test('a height that nobody gave is refused', () => {
    expect(() => levels([aPoint({ heightIn: null })])).toThrow(RangeError);
  });
});

describe('figures of notes', () => {
  const NOTES = [
    height('nail', 1200),
    back('nail', 50),
    fore('floor', 40),
    fore('tp', 50),
    back('tp', 55),
    fore('nail', 54.9),
    back('nail', 10),
    fore('tp', 10.05),
  ];
  const { figures, problems } = levels([aPoint({ heightIn: null })], NOTES);

  test('stand in the order of the notes, by their stations', () => {
    expect(problems).toEqual([]);
    expect(Object.entries(figures.notes ?? {}).map(([key, made]) => [key, Object.keys(made)])).toEqual([
      ['note-2-nail', ['instrument']],
      ['note-3-floor', ['height', 'adjusted']],
      ['note-4-tp', ['height', 'adjusted']],
      ['note-5-tp', ['instrument']],
      ['note-6-nail', ['height', 'adjusted']],
      ['note-7-nail', ['instrument']],
      ['note-8-tp', ['height']],
    ]);
  });

  test('the tenth after the ninth', () => {
    const walk = Array.from({ length: 10 }, (_, index) => fore(`p-${index}`, 40));
    const made = levels([aPoint()], [back('floor', 50), ...walk]).figures.notes ?? {};
    expect(Object.keys(made).slice(7)).toEqual(['note-8-p-6', 'note-9-p-7', 'note-10-p-8', 'note-11-p-9']);
  });

  test('exact: the miss, what is allowed, and how many runs are open', () => {
    const { miss, allowed } = at(figures.runs ?? {}, 'run-1');
    expect(num(miss)).toBeCloseTo(0.1, 9);
    expect(num(allowed)).toBe(0.125);
    expect(Object.keys(figures.runs ?? {})).toEqual(['run-1']);
    expect(figures.total === undefined ? null : num(figures.total['open-runs'])).toBe(1);
    expect(num(at(figures.points ?? {}, 'floor').height)).toBeCloseTo(1209.95, 9);
  });

  testExpressions('levels', figures, 13);
});

describe('notes that cannot be built on', () => {
  const nail = aPoint({ id: 'nail' });

  test.each([
    ['on the limit', 50.125, 0],
    ['just over it, low', 50.1251, 1],
    ['just over it, high', 49.8749, 1],
  ])('a sight on a known height %s', (_, foreIn, count) => {
    const { problems } = levels([nail], [back('nail', 50), fore('nail', foreIn)]);
    expect(problems.map(({ code, path }) => [code, path])).toEqual(
      Array.from({ length: count }, () => ['levels-do-not-close', 'heights.notes.1.foresight']),
    );
  });

  test('the message has the heights, the miss and what is allowed', () => {
    const { problems } = levels([nail], [back('nail', 50), fore('nail', 49.4)]);
    expect(problems[0]?.parts).toEqual({
      station: 'nail',
      read: '8.383 ft',
      other: '8.333 ft',
      miss: '0.050 ft (0.60 in)',
      allowed: '0.010 ft (0.13 in)',
    });
  });

  test('two sights on one station further apart than that', () => {
    const notes = [back('nail', 50), fore('tp', 40), back('nail', 60), fore('tp', 49.8)];
    expect(levels([nail], notes).problems).toEqual([
      {
        code: 'sights-disagree',
        path: 'heights.notes.3.foresight',
        parts: {
          station: 'tp',
          read: '9.183 ft',
          other: '9.167 ft',
          miss: '0.017 ft (0.20 in)',
          allowed: '0.010 ft (0.13 in)',
        },
      },
    ]);
  });
});

describe('notes that agree once the miss of a run is spread', () => {
  // Read as 110.05 in and 109.9 in; half of the first run's miss of 0.1 in leaves them 0.1 in apart.
  test('are taken', () => {
    const closed = [
      back('nail', 50),
      fore('walk', 39.95),
      fore('tp', 50),
      back('tp', 50),
      fore('nail', 49.9),
    ];
    const again = [back('nail', 50), fore('walk', 40.1)];
    const { problems } = levels([aPoint({ id: 'nail' })], [...closed, ...again]);
    expect(problems).toEqual([]);
  });
});

describe('points of the finished surface', () => {
  const finish = (xIn: number, yIn: number) => aPoint({ kind: 'finish', stoodOn: null, at: { xIn, yIn } });

  test.each([
    ['inside', 240, 100, []],
    ['on a corner', 480, 216, []],
    ['an inch beside the edge', 481, 100, []],
    ['further out', 486, 100, [{ slab: 'drive', by: '6″' }]],
  ])('%s', (_, xIn, yIn, parts) => {
    const { problems } = levels([finish(xIn, yIn)]);
    expect(problems.map((problem) => problem.parts)).toEqual(parts);
    for (const { code, path } of problems)
      expect([code, path]).toEqual(['finish-outside-slabs', 'heights.points.floor.at']);
  });

  test('the nearest slab is named', () => {
    const walk = aSlab({ id: 'walk', shape: rectangle(48, 48, { at: { xIn: 600, yIn: 0 } }) });
    const both = { slabs: { ...plans.slabs, ...outlined(walk).outlines }, existing: {} };
    const heights = someHeights([finish(590, 20)]);
    const { problems } = calcLevels({ heights, existing: {}, plans: both, corners: {} });
    expect(problems.map((problem) => problem.parts)).toEqual([{ slab: 'walk', by: '10″' }]);
  });

  test('what is fixed or there now may lie anywhere', () => {
    const points = [
      aPoint({ at: { xIn: -99, yIn: -99 } }),
      aPoint({ id: 'lawn', kind: 'existing', at: { xIn: 999, yIn: 999 } }),
    ];
    expect(levels(points).problems).toEqual([]);
  });
});
