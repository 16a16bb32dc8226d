import { describe, expect, test } from 'vitest';
import { showIn } from '../../src/describe/show/index.ts';
import { reChalkTable } from '../../src/describe/work-order/re-chalk-table.ts';
import { en, type Words } from '../../src/words/index.ts';
import { allJobs } from '../support/project.ts';

function rowsOf(jobId: string): readonly (readonly string[])[] {
  const prepared = allJobs().find(({ job }) => job.id === jobId);
  if (prepared === undefined) throw new Error(`no job ${jobId}`);
  const { job, results } = prepared;
  const table = reChalkTable({ job, results, show: showIn(job.unitSystem), words: en as Words });
  return table?.rows.map(({ cells }) => cells) ?? [];
}

describe('the table of what to chalk where a slab is thicker or thinner', () => {
  // By hand: 9,500 lb of 12.5 lb an inch and square foot; the driveway is 36 by 18 ft, 648 sq ft. Its
  // 4 in are assumed, so that the rows lie round 5 in.
  test('feet and inches; of an assumed thickness, it and the one loads are planned for told', () => {
    const driveway = rowsOf('maple-court').filter(
      ([what, trailer]) => what === 'Old driveway' && trailer === '14 ft dump trailer',
    );
    expect(driveway.map(([, , ...cells]) => cells)).toEqual([
      ['4″, as assumed', '190 sq ft', '4'],
      ['4 1/2″', '168 sq ft', '4'],
      ['5″, loads planned', '152 sq ft', '5'],
      ['5 1/2″', '138 sq ft', '5'],
      ['6″', '126 sq ft', '6'],
      ['6 1/2″', '116 sq ft', '6'],
      ['7″', '108 sq ft', '6'],
    ]);
  });

  // By hand: 7,000 lb of 150 lb/cu ft are 1.32145 m³; the patio is 5.4 by 3 m, 16.2 m².
  test('metric, and no area is shown as more than a load carries', () => {
    const patio = rowsOf('garden-row').filter(([what]) => what === 'Old patio');
    expect(patio.map(([, , ...cells]) => cells)).toEqual([
      ['80 mm', '16.5 m²', '1'],
      ['90 mm', '14.6 m²', '2'],
      ['100 mm, as planned', '13.2 m²', '2'],
      ['110 mm', '12.0 m²', '2'],
      ['120 mm', '11.0 m²', '2'],
      ['130 mm', '10.1 m²', '2'],
      ['140 mm', '9.4 m²', '2'],
    ]);
  });

  test('things with the same rows share them, and none is told twice', () => {
    const rows = rowsOf('full');
    const shared = rows.filter(([what]) => what?.includes('Old terrace, Old pad'));
    expect(shared).toHaveLength(7);
    expect(new Set(rows.map((cells) => cells.join('|'))).size).toBe(rows.length);
    const job = allJobs().find(({ job: { id } }) => id === 'full')?.job;
    const told = [...new Set(rows.map(([what]) => what))].flatMap((what) => what?.split(', ') ?? []);
    expect(told.toSorted()).toEqual(
      Object.values(job?.site.existing ?? {})
        .map(({ label }) => String(label))
        .toSorted(),
    );
  });
});
