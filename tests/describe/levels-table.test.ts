import { describe, expect, test } from 'vitest';
import type { Existing, LevelNote, LevelPoint, UnitSystem } from '../../src/calculate/job.ts';
import { calcLevels } from '../../src/calculate/levels/index.ts';
import type { PublicText } from '../../src/calculate/text.ts';
import { showIn } from '../../src/describe/show/index.ts';
import { levelsView } from '../../src/describe/work-order/levels-table.ts';
import { en, type Words } from '../../src/words/index.ts';
import { aPoint, back, fore, height, someHeights } from '../calculate/levels/a-book.ts';
import { rectangle } from '../calculate/slabs.ts';

const OLD_BAY: Existing = {
  id: 'old-bay',
  label: 'Old bay' as PublicText,
  shape: rectangle(60, 60),
  material: 'concrete',
  thicknessIn: 4,
  thicknessIs: 'measured',
  thickestIn: null,
  coating: { kind: 'tile', thicknessIn: 1.25 },
  soilStuckIn: 0,
  steel: 'none',
  breakOut: 'breaker',
  unitWeightLbPerCuFt: null,
};

const label = (text: string) => text as PublicText;

const POINTS: readonly LevelPoint[] = [
  aPoint({
    id: 'lawn',
    label: label('Lawn'),
    kind: 'existing',
    stoodOn: { kind: 'dirt' },
    heightIn: 1193.25,
  }),
  aPoint({ heightIn: 1200, at: { xIn: 18, yIn: -6 } }),
  aPoint({ id: 'same', label: label('Sill'), heightIn: 1200.05 }),
  aPoint({ id: 'edge', label: label('New edge'), kind: 'finish', stoodOn: null, heightIn: 1201.5 }),
  aPoint({
    id: 'bay',
    label: label('Bay'),
    kind: 'fixed',
    stoodOn: { kind: 'existing', id: 'old-bay' },
    heightIn: 1203,
  }),
];

function viewOf(points: readonly LevelPoint[], notes: readonly LevelNote[] = [], system: UnitSystem = 'us') {
  const heights = someHeights(points, notes);
  const existing = { 'old-bay': OLD_BAY };
  const levels = calcLevels({ heights, existing, plans: { slabs: {}, existing: {} }, corners: {} });
  return levelsView({
    job: { heights, site: { existing } },
    results: { levels },
    show: showIn(system),
    words: en as Words,
  });
}

describe('the table of heights', () => {
  test('has every point against the datum and against the first that is fixed', () => {
    const table = viewOf(POINTS)?.table;
    expect(table?.caption).toBe('Heights against the datum: Nail in the curb');
    expect(table?.columns.at(-1)?.heading).toBe('From Garage floor');
    expect(table?.rows.map(({ cells }) => cells)).toEqual([
      ['Lawn', '0″', '0″', 'now, on dirt', '99.44 ft', '6 3/4″ below'],
      ['Garage floor', '1′ 6″', '-6″', 'fixed, on what stays', '100.00 ft', 'level'],
      ['Sill', '0″', '0″', 'fixed, on what stays', '100.00 ft', 'level'],
      ['New edge', '0″', '0″', 'new, chosen', '100.13 ft', '1 1/2″ above'],
      ['Bay', '0″', '0″', 'fixed, on Old bay', '100.15 ft', '1 3/4″ above'],
    ]);
    expect(table?.rows.map(({ note }) => note)).toEqual([
      null,
      null,
      null,
      null,
      'The rod read 100.25 ft on a layer that goes; what stays lies 1 1/4″ lower.',
    ]);
  });

  test('a metric job has metres to the millimetre, and millimetres', () => {
    const rows = viewOf(POINTS, [], 'metric')?.table.rows ?? [];
    expect(rows.map(({ cells }) => cells.slice(4))).toEqual([
      ['30.309 m', '171 mm below'],
      ['30.480 m', 'level'],
      ['30.481 m', '1 mm above'],
      ['30.518 m', '38 mm above'],
      ['30.524 m', '44 mm above'],
    ]);
  });

  test('without a fixed point others are measured from the first', () => {
    const points = POINTS.filter(({ kind }) => kind !== 'fixed');
    expect(viewOf(points)?.table.columns.at(-1)?.heading).toBe('From Lawn');
  });

  test('a job without heights has no table', () => {
    const levels = calcLevels({
      heights: null,
      existing: {},
      plans: { slabs: {}, existing: {} },
      corners: {},
    });
    const job = { heights: null, site: { existing: {} } };
    expect(levelsView({ job, results: { levels }, show: showIn('us'), words: en as Words })).toBeNull();
  });
});

describe('what is said of level notes', () => {
  test.each<readonly [string, readonly LevelNote[], string]>([
    [
      'one set-up',
      [back('floor', 50), fore('floor', 50.0625)],
      'The level notes from Garage floor end 1/16″ off a known height; 1/8″ is allowed.',
    ],
    [
      'more than one',
      [height('nail', 1190), back('nail', 50), fore('tp', 50), back('tp', 60), fore('floor', 50)],
      'The level notes from nail end 0″ off a known height; 1/8″ is allowed. It is spread evenly over 2 set-ups.',
    ],
    [
      'none that closes',
      [back('floor', 50), fore('tp', 50)],
      'The level notes from Garage floor do not end on a known height, so nothing shows a slip of the rod. Shoot one before forms are set.',
    ],
  ])('%s', (_, notes, said) => {
    expect(viewOf([aPoint({ heightIn: 1200 })], notes)?.notes).toEqual([said]);
  });

  test('nothing where there are none', () => {
    expect(viewOf([aPoint()])?.notes).toEqual([]);
  });
});
