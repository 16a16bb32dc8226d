import { describe, expect, test } from 'vitest';
import { describeJob } from '../../src/describe/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';

const jobs = preparedIn(DEMO_JOBS);
const proposalOf = (id: string) => describeJob(jobNamed(jobs, id), en as Words).proposal;
/** Spaces at which no line ends, as a reader sees them. */
const read = (text: string) => text.replaceAll('\u00a0', ' ');

describe('the first page of a proposal', () => {
  test('names all that will be new, slabs with their size and top, steps with their risers', () => {
    const { rows } = proposalOf('garden-row').summary.whatYouGet;
    const { build } = jobNamed(jobs, 'garden-row').job;
    const built = [...Object.values(build.slabs), ...Object.values(build.steps)];
    expect(rows.map(({ cells }) => cells[0])).toEqual(built.map(({ label }) => label));
    expect(rows[1]?.cells.slice(2)).toEqual(['100 mm', 'Broom finish']);
    expect(rows.at(-1)?.cells).toEqual(['Step at the back door', '2 risers', '', '']);
  });
});

describe('the calendar of a proposal', () => {
  const daysOf = (id: string) => proposalOf(id).calendar.rows.map(({ cells }) => read(cells[0] ?? ''));

  test('writes a month once where a run of days stays in it, and twice where it does not', () => {
    expect(daysOf('maple-court').slice(0, 3)).toEqual([
      'Mon 4 to Tue 5 May',
      'Wed 6 to Thu 7 May',
      'Fri 8 May',
    ]);
    expect(daysOf('corner-walk')).toContain('Sun 28 June to Wed 1 July');
  });

  test('keeps the days of a row on one line', () => {
    for (const { cells } of proposalOf('maple-court').calendar.rows) expect(cells[0]).not.toContain(' ');
  });
});

test('several curves of a slab are told in one sentence', () => {
  const pointsOf = (label: string) =>
    proposalOf('garden-row').areas.items.find(({ heading }) => heading === label)?.points ?? [];
  expect(pointsOf('Patio')).toContain('Curved with a radius of 1.20 m.');
  expect(pointsOf('Garden walk').filter((point) => point.startsWith('Curved'))).toEqual([
    'Curved with radii of 4.20 m, 3.00 m, 1.04 m, 2.24 m.',
  ]);
});
