import { describe, expect, test } from 'vitest';
import { describeJob } from '../../src/describe/index.ts';
import type { TableView } from '../../src/describe/views.ts';
import { en, type Words } from '../../src/words/index.ts';
import { FULL_JOB, jobNamed, preparedIn, TEST_JOBS } from '../support/project.ts';

/* The full job has flights that stay in every state there is. The expected numbers are worked by hand. */
const { workOrder, proposal } = describeJob(jobNamed(preparedIn(TEST_JOBS), FULL_JOB), en as Words);

function rowsOf(table: TableView | null, label: string): readonly (readonly string[])[] {
  return (table?.rows ?? []).flatMap(({ cells: [first, ...others] }) => (first === label ? [others] : []));
}

function noteOf(table: TableView | null, label: string): string {
  return (table?.rows ?? []).findLast(({ cells }) => cells[0] === label)?.note ?? '';
}

describe('flights that stay, in the work order', () => {
  // 7 in less 1, 1 1/4 and 1 1/2 in; the others of 7 1/4 and 7 1/8 in want 6 7/8 in at least.
  test('say at each spot how far the surface is off', () => {
    expect(rowsOf(workOrder.flights, 'Front steps')).toEqual([
      ['Left end', '7″', '6″', 'at least 7/8″ lower'],
      ['Middle', '7″', '5 3/4″', 'at least 1 1/8″ lower'],
      ['Right end', '7″', '5 1/2″', 'at least 1 3/8″ lower'],
    ]);
    expect(noteOf(workOrder.flights, 'Front steps')).toContain('come up 1/8″ or go down 1/2″');
    expect(noteOf(workOrder.flights, 'Front steps')).toContain('1/4″ now, 1 3/4″ then');
  });

  test('say where no height of the surface helps, and where it has to move as it is', () => {
    expect(rowsOf(workOrder.flights, 'Side steps').map((cells) => cells[3])).toEqual(
      Array.from({ length: 3 }, () => 'no height helps'),
    );
    expect(noteOf(workOrder.flights, 'Side steps')).toContain('no height of the surface makes');
    expect(noteOf(workOrder.flights, 'Side steps')).not.toContain('no step has to be touched');
    // 6 in beside 7 in: 5/8 in too low at least, 1 3/8 in at most.
    expect(noteOf(workOrder.flights, 'Steps at the back')).toContain('go down 5/8″ to 1 3/8″');
    expect(noteOf(workOrder.flights, 'Steps at the gate')).toContain('come up 5/8″ to 1 3/8″');
  });

  test('say where only the slope along the step is at fault', () => {
    expect(noteOf(workOrder.flights, 'Cellar steps')).toContain('slopes too much along the step');
    expect(noteOf(workOrder.flights, 'Front steps')).not.toContain('slopes too much');
  });

  // 20 1/8 in are three of 6.708 in; with 1/4 in on the landing 20 3/8 in three of 6.792 in.
  test('say what each tread takes, with the landing as it is and with it raised', () => {
    expect(rowsOf(workOrder.flightSplits, 'Front steps')).toEqual([
      ['as it is', '6 11/16″', '1', 'up 15/16″', 'no, too thick to lay'],
      ['as it is', '6 11/16″', '2', 'up 7/16″', 'no, too thin to lay'],
      ['1/4″ laid on it', '6 13/16″', '1', 'up 1 1/16″', 'no, too thick to lay'],
      ['1/4″ laid on it', '6 13/16″', '2', 'up 9/16″', 'yes, lay it'],
    ]);
    expect(rowsOf(workOrder.flightSplits, 'Side steps')).toEqual([
      ['as it is', '7″', '1', 'down 1″', 'only by taking concrete off'],
      ['as it is', '7″', '2', 'none', 'leave it'],
    ]);
  });
});

test('the homeowner is told how high the lowest step will be, and nothing of what is wrong with it', () => {
  const areas = proposal.areas.items.map(({ heading, facts }) => [heading, facts.at(-1)?.value] as const);
  const told = new Map<string, string | undefined>(areas);
  expect(told.get('Front steps')).toBe(
    '5 1/2″ to 6″ high once the surface before it is new, 7″ now; the other steps stay as they are.',
  );
  expect(told.get('Side steps')).toBe(
    '8″ high once the surface before it is new, 8 1/2″ now; the other steps stay as they are.',
  );
});

describe('steps to build, in the work order', () => {
  // 19 1/2 in in three, two treads of 12 in rising 1/8 in each: forms of 6 5/12 in.
  test('are formed at heights above their foot, and against the datum where that is known', () => {
    expect(rowsOf(workOrder.stepTops, 'Porch steps')).toEqual([
      ['Tread 1', '6 7/16″', '6 9/16″', ''],
      ['Tread 2', '12 15/16″', '13 1/16″', ''],
      ['Landing, front', '19 1/2″', '', ''],
    ]);
    expect(rowsOf(workOrder.stepTops, 'Steps at the side door').at(-1)).toEqual([
      'What they end on',
      expect.stringMatching(/^\d+( \d+\/\d+)?″$/),
      '',
      '102.60 ft',
    ]);
  });
});

test('parts of walls are clear or covered, with what they want at least', () => {
  const rows = new Map(workOrder.walls?.rows.map(({ cells }) => [cells[0], cells]));
  expect(rows.get('Siding behind the drive')?.slice(1)).toEqual([
    'earth',
    '101.55 ft',
    '101.20 ft',
    '4 3/16″',
    '6″',
  ]);
  expect(rows.get('Open joints of the brick')?.slice(4)).toEqual(['covered by 1 7/16″', 'not covered']);
  expect(rows.get('Vent of the dryer')?.at(-1)).toBe('3″');
});
