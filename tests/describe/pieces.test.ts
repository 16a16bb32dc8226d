import { describe, expect, test } from 'vitest';
import { showIn } from '../../src/describe/show/index.ts';
import { piecesFacts } from '../../src/describe/work-order/pieces.ts';
import { en, type Words } from '../../src/words/index.ts';
import { allJobs } from '../support/project.ts';

function preparedJob(id: string) {
  const prepared = allJobs().find(({ job }) => job.id === id);
  if (prepared === undefined) throw new Error(`no job ${id}`);
  return prepared;
}

/** What is said of a thing on each day on which it is. */
function saidOf(jobId: string, label: string): readonly string[] {
  const { job, results } = preparedJob(jobId);
  const made = { job, results, show: showIn(job.unitSystem), words: en as Words };
  return results.crew.data.days.flatMap((day) =>
    piecesFacts(made, [day])
      .map(({ value }) => value)
      .filter((value) => value.split(': ')[0]?.split(', ').includes(label)),
  );
}

describe('how large the pieces of what goes may be', () => {
  // 4 in of 150 lb/cu ft: 51 lb are 12.12 in square, 930 lb 51.75 in.
  test('by hand first, then the place, then the machine; all rounded down to the inch', () => {
    const [text] = saidOf('full', 'Old terrace');
    expect(text).toContain('to 12″ or less by one pair of hands');
    expect(text).toMatch(/; 23″ for Breaker yard; 51″ square by the .*$/);
  });

  test('a jackhammer has no machine that lifts', () => {
    const said = saidOf('full', 'Old round seat');
    expect(said.length).toBeGreaterThan(0);
    for (const text of said) expect(text).not.toContain('square by the');
  });

  test('what is sawn has its grid, on the days on which it is sawn and on which it is lifted', () => {
    const { results } = preparedJob('full');
    const said = saidOf('full', 'Old drive');
    const doneOn = (wanted: string) =>
      results.crew.data.days
        .filter(({ tasks }) => tasks.some(({ task }) => task === wanted))
        .map(({ on }) => on);
    expect(said).toHaveLength(new Set([...doneOn('saw-cut'), ...doneOn('saw-and-lift')]).size);
    expect(doneOn('saw-cut').length).toBeGreaterThan(0);
    // 30 by 16 ft in 9 by 5 pieces.
    for (const text of said) expect(text).toContain('saw a grid of 40″ by 38 3/8″');
  });

  test('nothing is said of days on which nothing is broken', () => {
    const { job, results } = preparedJob('full');
    const made = { job, results, show: showIn(job.unitSystem), words: en as Words };
    const pours = results.crew.data.days.filter(({ phase }) => phase === 'pour');
    expect(pours.length).toBeGreaterThan(0);
    expect(piecesFacts(made, pours)).toEqual([]);
  });
});
