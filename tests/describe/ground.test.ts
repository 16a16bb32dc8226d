import { describe, expect, test } from 'vitest';
import { describeJob } from '../../src/describe/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { FULL_JOB, jobNamed, preparedIn, TEST_JOBS } from '../support/project.ts';

/*
 * The full job has fabric under its walk, five posts and a lip to chip. Their figures are tested where they
 * are made; here is what each reader is told.
 */
const views = describeJob(jobNamed(preparedIn(TEST_JOBS), FULL_JOB), en as Words);

describe('the work order', () => {
  const lists = views.workOrder.days.map(({ work }) => work.items.map(({ text }) => text));

  test('has holes and fabric right before the base, on its days alone', () => {
    const isBase = (text: string) => text.startsWith('Base in lifts');
    const withBase = lists.filter((texts) => texts.some(isBase));
    expect(withBase.length).toBeGreaterThan(0);
    for (const texts of withBase) {
      const at = texts.findIndex(isBase);
      expect(texts[at - 2]).toBe(
        'Fill the holes of the posts (Fence posts) with base in lifts, tamp every one',
      );
      expect(texts[at - 1]).toMatch(/^Roll out the fabric \(Walk\).* laps of 13″/);
    }
    const all = lists
      .flat()
      .filter((text) => text.startsWith('Roll out') || text.startsWith('Fill the holes'));
    expect(all).toHaveLength(2 * withBase.length);
  });

  test('has the lip among what goes, in bags', () => {
    const row = views.workOrder.goes?.rows.find(({ cells }) => cells[0] === 'Coating on the garage lip');
    expect(row?.cells).toEqual(['Coating on the garage lip', 'Coating', '6 sq ft, 1/4″', 'In bags']);
    expect(row?.note).toContain('16 lb');
  });
});

test('the shopping list has the rolls at their supplier, and base with that for the holes', () => {
  const rowsOf = (name: string) =>
    views.materials.shopping.suppliers
      .find((supplier) => supplier.name === name)
      ?.table.rows.map(({ cells }) => cells);
  expect(rowsOf('Fabric yard')).toEqual([[en.materials.shopping.fabric, '1 × 6′ 0″ by 50′ 0″']]);
  expect(rowsOf('Stone yard')?.[0]?.[0]).toMatch(/, 0\.4 tons of it for the holes of posts$/);
});

test('the homeowner reads of the lip and of the fabric, where there is any', () => {
  const lip = views.proposal.removal?.items.find((text) => text.startsWith('Coating on the garage lip'));
  expect(lip).toMatch(/6 sq ft, about 1\/4″ thick, chipped off; the concrete under it stays\.$/);
  const told = views.proposal.areas.items
    .filter(({ points }) => points.includes(en.proposal.areas.fabric))
    .map(({ heading }) => heading);
  expect(told).toEqual(['Walk']);
});
