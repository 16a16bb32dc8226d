import { expect, test } from 'vitest';
import { describeJob } from '../../src/describe/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';

// Regression: a metric job told 7.65 m³ in loads of 3.82 m³ and 3.82 m³, at a price of a cubic yard.
test('what is sold by the yard is ordered by the yard, so that loads and price add up', () => {
  const { materials, workOrder } = describeJob(jobNamed(preparedIn(DEMO_JOBS), 'garden-row'), en as Words);
  const factOf = (label: string) => materials.concrete.facts.find((fact) => fact.label === label)?.value;
  const say = en.materials.concrete;
  expect(factOf(say.order)).toBe('10.00 yd³ (7.65 m³)');
  expect(factOf(say.loads)).toBe('5.00 yd³ + 5.00 yd³');
  expect(materials.concrete.cost?.rows[0]?.cells).toEqual([
    say.cost.concrete,
    '10.00 yd³ at $172.00 per yd³',
    '$1,720.00',
  ]);
  expect(workOrder.chute?.trucks.rows[0]?.cells[1]).toBe('5.00 yd³');
  expect(workOrder.pourDay?.facts.map(({ value }) => value)).toContain('10.00 yd³ (7.65 m³)');
});

test('base is ordered by the ton', () => {
  const { materials } = describeJob(jobNamed(preparedIn(DEMO_JOBS), 'garden-row'), en as Words);
  const order = materials.base?.facts.find(({ label }) => label === en.materials.base.order);
  expect(order?.value).toBe('18.0 tons (16.3 t)');
});

test('a job in the units of the supplier says it once', () => {
  const { materials } = describeJob(jobNamed(preparedIn(DEMO_JOBS), 'maple-court'), en as Words);
  expect(materials.concrete.facts[0]?.value).toBe('12.25 yd³');
});
