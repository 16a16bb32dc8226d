import { expect, test } from 'vitest';
import { findingsView } from '../../src/describe/parts/findings-view.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';

test('a dip past the last slab is placed by its profile and by the point where the slope changes', () => {
  const { job, results } = jobNamed(preparedIn(DEMO_JOBS), 'maple-court');
  const places = findingsView(job, results.findings, en as Words).map(({ place }) => place);
  // The dip of point 3 is at point 2, the gutter.
  expect(places).toContain('Middle of the drive, garage to public walk, Gutter');
});
