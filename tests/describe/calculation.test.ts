import { describe, expect, test } from 'vitest';
import { constant, figure, given } from '../../src/calculate/figure.ts';
import { figureGroups } from '../../src/describe/calculation/figure-rows.ts';
import { placesFrom } from '../../src/describe/calculation/places.ts';
import { numberedSources } from '../../src/describe/calculation/sources.ts';
import { describeJob, figureIds } from '../../src/describe/index.ts';
import type { Origin } from '../../src/problems/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS, preparedIn } from '../support/project.ts';

function origin(from: Origin['from'], file: string, line: number): Origin {
  return { from, text: '1 ft', spot: { file, line, column: 1, length: 1 } };
}

const origins = new Map([
  ['build.slabs.drive.rectangle', origin('job', 'jobs/elm-street/job.yaml', 7)],
  ['company.rates.crew', origin('company', 'jobs/company/rates.yaml', 3)],
  ['company.pricing.margin', origin('job', 'jobs/elm-street/company.yaml', 9)],
]);

describe('placesFrom', () => {
  test.each([
    ['a file of the job by its name', 'build.slabs.drive.rectangle', 'job.yaml:7'],
    ['the nearest thing it stands in', 'build.slabs.drive.rectangle.length', 'job.yaml:7'],
    ['another file from the jobs folder on', 'company.rates.crew', 'company/rates.yaml:3'],
    ['what a job overrides, where it does', 'company.pricing.margin', 'company.yaml:9'],
    ['nothing for what stands nowhere', 'plan.crew', null],
  ])('%s', (_, path, place) => {
    expect(placesFrom(origins)(path)).toBe(place);
  });
});

test('a source has one number, the first is 1', () => {
  const sources = numberedSources();
  expect(['a', 'b', 'a', 'c'].map(sources.numberOf)).toEqual(['1', '2', '1', '3']);
  expect(sources.list()).toEqual(['a', 'b', 'c']);
});

test('figures of one thing stand under its name, with where each input comes from', () => {
  const side = (name: string) => given(`build.slabs.drive.rectangle.${name}`, 144, 'in');
  const area = figure({
    value: 144,
    unit: 'sq ft',
    decimals: 1,
    formula: 'lengthIn * widthIn / 144',
    inputs: { lengthIn: side('length'), widthIn: side('width') },
  });
  const weight = figure({
    value: 7200.4,
    unit: 'lb',
    decimals: 0,
    formula: { method: 'area times weight' },
    inputs: {
      areaSqFt: area,
      perSqFt: constant('weight', 50, 'lb/sq ft', 'Handbook'),
      reserve: given('load-reserve', 300, 'lb'),
    },
    source: 'Handbook',
    rounding: 'down',
  });
  const total = figure({
    value: 7200.4,
    unit: 'lb',
    decimals: 0,
    formula: 'driveLb',
    inputs: { driveLb: weight },
  });
  const tree = { drive: { area, weight }, total };
  const sheet = {
    idOf: figureIds({ haul: tree }),
    placeOf: placesFrom(origins),
    sources: numberedSources(),
    say: en.calculation,
  };
  expect(figureGroups('haul', tree, sheet)).toEqual([
    {
      heading: 'haul.drive',
      figures: [
        {
          name: 'area',
          value: '144.0 sq ft',
          formula: 'lengthIn [144 in] × widthIn [144 in] / 144',
          origins: 'lengthIn, widthIn: job.yaml:7',
          source: '1',
        },
        {
          name: 'weight',
          value: '7,200 lb',
          formula: 'area times weight',
          origins:
            'areaSqFt [144.0 sq ft]: area; perSqFt [50 lb/sq ft]: source 2; reserve [300 lb]: default of this program, load-reserve; rounded down',
          source: '2',
        },
      ],
    },
    {
      heading: null,
      figures: [
        {
          name: 'haul.total',
          value: '7,200 lb',
          formula: 'driveLb [7,200 lb]',
          origins: 'driveLb: haul.drive.weight',
          source: '1',
        },
      ],
    },
  ]);
});

test('a topic without a figure has no heading', () => {
  for (const prepared of preparedIn(DEMO_JOBS)) {
    const { topics } = describeJob(prepared, en as Words).calculation;
    expect(topics.filter(({ groups }) => groups.length === 0).map(({ id }) => id)).toEqual([]);
    const hasHidden = Object.keys(prepared.results.hidden.data).length > 0;
    expect(topics.some(({ id }) => id === 'hidden')).toBe(hasHidden);
  }
});
