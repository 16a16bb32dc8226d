import { describe, expect, test } from 'vitest';
import { calculateJob } from '../../src/calculate/index.ts';
import type { LevelPoint } from '../../src/calculate/job.ts';
import type { CrewText, PublicText } from '../../src/calculate/text.ts';
import { prepareJobs } from '../../src/commands/prepare.ts';
import { describeProposal } from '../../src/describe/proposal/index.ts';
import { proposalFactsOf } from '../../src/describe/proposal-facts.ts';
import { showIn } from '../../src/describe/show/index.ts';
import type { TableView } from '../../src/describe/views.ts';
import { gradesView } from '../../src/describe/work-order/heights-tables.ts';
import { slabsTable } from '../../src/describe/work-order/tables.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS } from '../support/project.ts';

const words = en as Words;
const prepared = prepareJobs({ jobsDir: DEMO_JOBS, names: ['corner-walk'] });
if (!prepared.ok) throw new Error('the demo job is good');
const [demo] = prepared.jobs;
if (demo === undefined) throw new Error('one job was asked for');

function point(
  id: string,
  [xFt, yFt, heightFt]: readonly [number, number, number],
  kind: LevelPoint['kind'],
): LevelPoint {
  const stoodOn = {
    fixed: { kind: 'stays' },
    finish: null,
    existing: { kind: 'existing', id: 'broken-panel' },
  } as const;
  const at = { xIn: xFt * 12, yIn: yFt * 12 };
  return { id, label: id as PublicText, at, heightIn: heightFt * 12, kind, stoodOn: stoodOn[kind] };
}

/** One walk panel of 5 by 4 ft and 4 in over 2 in of base, in place of one of 4 in. */
function withHeights(spots: readonly LevelPoint[]) {
  if (demo === undefined) throw new Error('one job was asked for');
  const points = Object.fromEntries(spots.map((spot) => [spot.id, spot]));
  const heights = { datum: 'A nail' as CrewText, notes: [], closingErrorIn: null, points };
  const job = { ...demo.job, heights };
  const { results } = calculateJob(job);
  if (results === null) throw new Error('it calculates');
  return { job, results, show: showIn('us'), words };
}

const finish = [
  point('Street walk', [0, 0, 100], 'fixed'),
  point('b', [5, 0, 99.9], 'finish'),
  point('c', [0, 4, 100], 'finish'),
];
const old = (byFt: number) => [
  point('d', [0, 0, 100 + byFt], 'existing'),
  point('e', [5, 0, 99.9 + byFt], 'existing'),
  point('f', [0, 4, 100 + byFt], 'existing'),
];
const even = withHeights([...finish, ...old(0)]);

function cellsOf(table: TableView | null | undefined): readonly (readonly string[])[] {
  return (table?.rows ?? []).map(({ cells }) => cells);
}

/** What is told of the digging; how the top falls stands before it. */
const ofDigging = (notes: readonly string[] = []) => notes.filter((note) => !note.includes('falls at most'));

describe('heights for the crew', () => {
  // By hand: 0.1 ft is 1.2 in, nearest 1/8 in 1 1/4 in.
  test('form tops say how far each corner is from the first fixed point', () => {
    const { tops } = gradesView(even) ?? {};
    expect(tops?.caption).toContain('Street walk');
    expect(cellsOf(tops)).toEqual([
      ['Walk panel', '1', '100.00 ft', 'level', 'level'],
      ['Walk panel', '2', '99.90 ft', '1 1/4″ below', '0.10 ft below'],
      ['Walk panel', '3', '99.90 ft', '1 1/4″ below', '0.10 ft below'],
      ['Walk panel', '4', '100.00 ft', 'level', 'level'],
    ]);
    expect(tops?.rows.map(({ note }) => note)).toEqual([
      'Falls 1/4″ / ft (2.0 %) over all.',
      null,
      null,
      null,
    ]);
  });

  test('in a metric job they are in metres and millimetres', () => {
    const { tops } = gradesView({ ...even, show: showIn('metric') }) ?? {};
    expect(cellsOf(tops)[1]).toEqual(['Walk panel', '2', '30.450 m', '30 mm below', '0.030 m below']);
  });

  // By hand: as high as the old panel of 4 in, so 2 in of base are dug.
  test('the digging goes from what the old panel leaves down to the underside of the base', () => {
    const { digs, notes } = gradesView(even) ?? {};
    const [first, second] = cellsOf(digs);
    expect(first).toEqual(['Walk panel, corner 1', '100.00 ft', '100.00 ft', '99.67 ft', '99.50 ft', '2″']);
    expect(second).toEqual(['Walk panel, corner 2', '99.90 ft', '99.90 ft', '99.57 ft', '99.40 ft', '2″']);
    expect(cellsOf(digs).map(([where]) => where)).toContain('Walk panel, middle');
    // 20 sq ft by 2 in.
    expect(even.results.tearOut.figures.soil['panel']?.volume.value).toBeCloseTo(10 / 3, 9);
    expect(ofDigging(notes)[0]).toBe('Walk panel: 0.12 yd³ of soil to dig, as it lies.');
    expect(cellsOf(slabsTable(even))[0]?.[4]).toBe('up to 2″');
  });

  // By hand: the old panel 2 in lower leaves nothing to dig, 3 in lower an inch to fill.
  test('where nothing is dug it says so, and what is filled', () => {
    const lower = withHeights([...finish, ...old(-0.25)]);
    const { digs, notes } = gradesView(lower) ?? {};
    expect(cellsOf(digs).map((cells) => cells[5])).toEqual(Array(5).fill('fill 1″'));
    expect(ofDigging(notes)[0]).toContain('Walk panel: no dig is needed.');
    expect(ofDigging(notes)[1]).toContain('0.06 yd³ to fill');
    expect(lower.results.tearOut.figures.soil).toEqual({});
    expect(cellsOf(slabsTable(lower))[0]?.[4]).toBe('none');
  });

  test('without heights of what is there now the stated depth holds, and that is said', () => {
    const unknown = withHeights(finish);
    const { digs, notes } = gradesView(unknown) ?? {};
    expect(digs).toBeNull();
    expect(ofDigging(notes)[0]).toContain('Walk panel: no heights of what is there now');
    expect(cellsOf(slabsTable(unknown))[0]?.[4]).toBe('2″');
    expect(unknown.results.tearOut.figures.soil['panel']?.volume.value).toBeCloseTo(10 / 3, 9);
  });

  test('a job without heights has no such part', () => {
    if (demo === undefined) throw new Error('one job was asked for');
    expect(gradesView({ ...demo, show: showIn('us'), words })).toBeNull();
    expect(Object.keys(demo.results.figures)).not.toContain('grades');
  });
});

test('the homeowner sees which way water runs, without a number, and only where heights tell', () => {
  const seen = ({ job, results }: Pick<typeof even, 'job' | 'results'>) => {
    const [area] = describeProposal(proposalFactsOf(job, results), words).areas.items;
    return {
      lines: area?.plan?.drawing.layers
        .find(({ name }) => name === 'falls')
        ?.primitives.map(({ kind }) => kind),
      isSaid: area?.points.some((text) => text.startsWith('The arrows')),
    };
  };
  expect(seen(even)).toEqual({ lines: ['line', 'line', 'line'], isSaid: true });
  if (demo === undefined) throw new Error('one job was asked for');
  expect(seen({ ...even, results: demo.results })).toEqual({ lines: undefined, isSaid: false });
});
