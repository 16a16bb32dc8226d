import { describe, expect, onTestFinished, test } from 'vitest';
import { describeJob } from '../../src/describe/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { partOfFull } from '../support/part-of-full.ts';
import { DEMO_JOBS, FULL_JOB, jobNamed, preparedIn, TEST_JOBS } from '../support/project.ts';
import { readTrees } from '../support/trees.ts';
import { aWorkbench } from '../support/workbench.ts';

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

test('of a slab that was taped on a slope the plan writes no radius, and the words beside it do', () => {
  const bench = aWorkbench(FULL_JOB, { why: false });
  onTestFinished(() => bench.remove());
  const prepared = bench.prepare(partOfFull(readTrees(TEST_JOBS, FULL_JOB), ['yard', 'terrace']));
  const { items } = describeJob(prepared, en as Words).proposal.areas;
  const radiiOf = (label: string) => {
    const { plan } = items.find(({ heading }) => heading === label) ?? {};
    const primitives = plan?.drawing.layers.flatMap((layer) => layer.primitives) ?? [];
    return primitives.flatMap((one) => (one.kind === 'text' && /^R \d/.test(one.text) ? [one.text] : []));
  };
  expect(radiiOf('Terrace').length).toBeGreaterThan(0);
  expect(radiiOf('Yard')).toEqual([]);
  expect(items.find(({ heading }) => heading === 'Yard')?.points).toContain(
    'Curved with radii of 2′ 0″, 1′ 0″, 1′ 6″.',
  );
});

test('how far the slab stays below the garage floor is told to the homeowner', () => {
  const { items } = proposalOf('maple-court').areas;
  expect(items.find(({ heading }) => heading === 'Garage floor')?.facts).toEqual([
    { label: 'Where the new concrete meets it', value: 'it stays 3/8″ below the floor' },
  ]);
});

test('pins into concrete that stays are promised where they are planned, and nowhere else', () => {
  const itemsOf = (id: string) =>
    describeJob(jobNamed(preparedIn(DEMO_JOBS), id), en as Words).proposal.areas.items;
  const pinned = itemsOf('garden-row').filter(({ points }) => points.includes(en.proposal.areas.dowels));
  expect(pinned.map(({ heading }) => heading)).toEqual(['Parking bay']);
  const all = [...itemsOf('maple-court'), ...itemsOf('garden-row')].flatMap(({ points }) => points);
  expect(all).not.toContain(en.proposal.areas.ties);
});
