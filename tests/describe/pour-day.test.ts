import { afterAll, describe, expect, test } from 'vitest';
import { num } from '../../src/calculate/figure.ts';
import { describeJob } from '../../src/describe/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { partOfFull } from '../support/part-of-full.ts';
import { FULL_JOB, TEST_JOBS } from '../support/project.ts';
import { readTrees, withLeaf } from '../support/trees.ts';
import { aWorkbench } from '../support/workbench.ts';

const bench = aWorkbench(FULL_JOB, { why: false });
afterAll(() => bench.remove());

describe('the steps of a pour whose joints are cut in two ways', () => {
  const full = readTrees(TEST_JOBS, FULL_JOB);
  const cutEarly = ['build', 'slabs', 'bay', 'joints', 'cut'];
  const prepared = bench.prepare(
    partOfFull({ ...full, job: withLeaf(full.job, cutEarly, 'early-entry') }, ['bay']),
  );
  const { pourDay } = describeJob(prepared, en as Words).workOrder;
  const steps = pourDay?.clock.rows.map(({ cells }) => cells[1] ?? '') ?? [];

  test('name the slabs that each saw cuts, and none that has no joint', () => {
    const { slabs } = prepared.results.joints.figures;
    expect(num(slabs['bay']!.sawn)).toBe(0);
    expect(steps.find((step) => step.startsWith('Early-entry saw'))).toMatch(/ \(Drive\)$/);
    expect(steps.find((step) => step.startsWith('Saw,'))).toMatch(/ \(Walk\)$/);
  });
});
