import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { num, walkFigures } from '../../src/calculate/figure.ts';
import { aCalculator, calculateJob, type JobResults } from '../../src/calculate/index.ts';
import type { Job } from '../../src/calculate/job.ts';
import { sameParts } from '../../src/calculate/same-parts.ts';
import { Usd } from '../../src/units/index.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';
import { runCount } from '../support/property-runs.ts';

test('what says the same is one object, and a change makes new ones along its path only', () => {
  const same = sameParts();
  const job = () => ({
    build: { drive: [{ xIn: 1 }, { xIn: 2 }] },
    price: { usd: new Usd('12.50') },
    note: null,
  });
  const first = same(job());
  expect(same(job())).toBe(first);
  const changed = same({ ...job(), price: { usd: new Usd('12.51') } });
  expect(changed).not.toBe(first);
  expect(changed.price.usd.toString()).toBe('12.51');
  expect(changed.build).toBe(first.build);
  expect(same(job())).toBe(first);
});

test.each([
  [[1], ['1']],
  [[0], [-0]],
  [[null], [undefined]],
  [[1n], [1]],
  [[true], ['true']],
  [{ a: 1 }, { b: 1 }],
  [{ a: [] }, { a: {} }],
  [
    { a: 1, b: 2 },
    { b: 2, a: 1 },
  ],
  [[new Decimal(1)], [new Usd(1)]],
  [{ 'a":1,"b': 2 }, { a: 1, b: 2 }],
  [['a,b'], ['a', 'b']],
])('%o and %o stay two', (one, other) => {
  const same = sameParts();
  expect(same(one)).not.toBe(same<unknown>(other));
  expect(same(other)).toStrictEqual(other);
  expect(same(one)).toStrictEqual(one);
});

test('whatever the data, it says afterwards what it said before', () => {
  const same = sameParts();
  const data = fc.jsonValue({ maxDepth: 4 });
  fc.assert(
    fc.property(data, data, (one, other) => {
      const before = structuredClone([one, other]);
      expect([same(one), same(other)]).toStrictEqual(before);
      expect([one, other]).toStrictEqual(before);
    }),
    { numRuns: runCount(200) },
  );
});

const read = (): Job => jobNamed(preparedIn(DEMO_JOBS), 'garden-row').job;

/** Every figure with its inputs, and what was found, without who is the same object as who. */
function said({ figures, findings }: JobResults): string {
  const rows = Object.entries(figures).flatMap(([topic, tree]) => walkFigures(tree, topic));
  const numbers = rows.map(({ id, figure }) => [
    id,
    figure.value,
    figure.unit,
    figure.formula,
    Object.values(figure.inputs).map(num),
  ]);
  return JSON.stringify([
    numbers,
    findings.map(({ code, where, acknowledged }) => [code, where, acknowledged]),
  ]);
}

function resultsOf(calculated: ReturnType<typeof calculateJob>): JobResults {
  if (calculated.results === null) throw new Error(JSON.stringify(calculated.problems));
  return calculated.results;
}

test('a job read anew and changed has the results of one that is calculated alone, and what the change does not reach is taken from before', () => {
  const calculate = aCalculator();
  const first = resultsOf(calculate(read()));
  const job = read();
  const [slab] = Object.values(job.build.slabs);
  if (slab === undefined) throw new RangeError('the demo has no slab');
  const thicker: Job = {
    ...job,
    build: {
      ...job.build,
      slabs: { ...job.build.slabs, [slab.id]: { ...slab, thicknessIn: slab.thicknessIn + 1 } },
    },
  };
  const changed = resultsOf(calculate(thicker));
  expect(said(changed)).toBe(said(resultsOf(calculateJob(thicker))));
  expect(said(changed)).not.toBe(said(first));
  expect(changed.outline).toBe(first.outline);
  expect(changed.concrete).not.toBe(first.concrete);
  const back = resultsOf(calculate(read()));
  expect(said(back)).toBe(said(resultsOf(calculateJob(read()))));
  expect(back.concrete).toBe(first.concrete);
});

test('where water goes is worked out anew for a public walk that is met another way', () => {
  const before = jobNamed(preparedIn(DEMO_JOBS), 'maple-court').job;
  const calculate = aCalculator();
  const asked = { why: false };
  const first = resultsOf(calculate(before, asked));
  const { 'city-walk': walk } = before.tieIns.publicWalks;
  if (walk === undefined) throw new RangeError('the demo has no public walk');
  const job: Job = {
    ...before,
    tieIns: { ...before.tieIns, publicWalks: { 'city-walk': { ...walk, way: 'replace' } } },
  };
  const changed = resultsOf(calculate(job, asked));
  const slopeOf = ({ grades }: JobResults) => Number(grades.figures.driveway?.['drive']?.slope.value);
  expect(slopeOf(changed)).not.toBe(slopeOf(first));
  expect(said(changed)).toBe(said(resultsOf(calculateJob(job, asked))));
});
