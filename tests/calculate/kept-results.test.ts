import { deserialize, serialize } from 'node:v8';
import { expect, test } from 'vitest';
import { calculateJob } from '../../src/calculate/index.ts';
import { withKeptResults } from '../../src/calculate/kept-results.ts';
import { allJobs } from '../support/project.ts';

// Kept in a file they have to be plain data, or come back as something else: invariant.
test.each(allJobs().map((prepared) => [prepared.job.id, prepared] as const))(
  'what %s would keep comes back from a file as it was, and is all there is to work out',
  (_id, { job }) => {
    const first = withKeptResults(new Map(), () => calculateJob(job));
    const kept: typeof first.asked = deserialize(serialize(first.asked));
    expect(kept).toStrictEqual(first.asked);
    expect(first.isAnyNew).toBe(first.asked.size > 0);
    const second = withKeptResults(kept, () => calculateJob(job));
    expect(second.isAnyNew).toBe(false);
    expect(second.asked).toStrictEqual(first.asked);
  },
);

test('a driveway keeps what is slow and plain of it', () => {
  const maple = allJobs().find(({ job }) => job.id === 'maple-court');
  if (maple === undefined) throw new RangeError('there is no maple-court');
  const { asked } = withKeptResults(new Map(), () => calculateJob(maple.job));
  expect([...asked.keys()].sort()).toEqual([
    'bars to cut',
    'bays',
    'chute',
    'joints',
    'next trips',
    'old pieces',
    'other trips',
    'trips',
    'water',
  ]);
});
