import { expect, test } from 'vitest';
import { describeJob } from '../../src/describe/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';

test('regression: base that the supplier brings arrives on one day, though the work with it takes two', () => {
  const prepared = jobNamed(preparedIn(DEMO_JOBS), 'garden-row');
  const baseDays = prepared.results.crew.data.days.filter(({ phase }) => phase === 'base-and-forms');
  expect(baseDays.length).toBeGreaterThan(1);
  expect(prepared.results.haul.data.deliveredLb).toBeGreaterThan(0);
  const { days } = describeJob(prepared, en as Words).workOrder;
  const arrivals = days.flatMap(({ facts }) =>
    facts.filter(({ label, value }) => label === en.workOrder.day.arrives && value.endsWith('of base')),
  );
  expect(arrivals).toHaveLength(1);
});
