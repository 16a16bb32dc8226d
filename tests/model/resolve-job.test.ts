import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Job } from '../../src/calculate/job.ts';
import { resolveJob } from '../../src/model/index.ts';
import { listJobs, readCompany, readJob, readRules } from '../../src/read/index.ts';
import { someBars } from '../calculate/slabs.ts';
import { runCount } from '../support/property-runs.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const JOBS = join(ROOT, 'jobs');
const company = readCompany(join(JOBS, 'company'));
const rules = readRules();
const resolve = (name: string) => resolveJob(readJob(join(JOBS, name)), company, rules);

function soundJob(name: string): Job {
  const { job, problems } = resolve(name);
  expect(problems).toEqual([]);
  if (job === null) throw new Error(`${name} has no job`);
  return job;
}

describe('the demo jobs', () => {
  const { ids } = listJobs(JOBS);

  test('are there, and the company has no problem', () => {
    expect(ids).toEqual(expect.arrayContaining(['corner-walk', 'garden-row', 'maple-court']));
    expect(company.problems).toEqual([]);
  });

  test.each(ids)('%s reads without problems, and twice alike', (id) => {
    expect(soundJob(id).id).toBe(id);
    const [one, other] = [resolve(id), resolve(id)];
    expect(one.job).toEqual(other.job);
    expect([...one.origins]).toEqual([...other.origins]);
  });
});

describe('values, from the definition of their units', () => {
  test('US units come in the units of the core', () => {
    const { build, company: own, plan } = soundJob('maple-court');
    const drive = build.slabs['drive'];
    expect(drive?.shape.base).toEqual({ kind: 'rectangle', lengthIn: 432, widthIn: 216 });
    expect(drive?.shape.rounded).toEqual([
      { corner: 2, by: { kind: 'setback', setbackIn: 36 } },
      { corner: 3, by: { kind: 'setback', setbackIn: 36 } },
    ]);
    expect(drive?.shape.edges).toEqual(
      expect.arrayContaining([
        { edge: 4, kind: 'house' },
        { edge: 2, kind: 'stays' },
      ]),
    );
    expect(drive?.fall.slope).toBe(1 / 64);
    expect(drive?.reinforcement).toEqual(someBars());
    expect(plan.startsOn).toBe('2026-05-04');
    expect(own.suppliers.base.incrementTon).toBe(0.5);
    expect(own.suppliers.concrete.shortLoadBelowCuYd).toBe(4);
    expect(own.suppliers.sundries.curingPackGal).toBe(5);
    expect(own.suppliers.sundries.isolationStripIn).toBe(120);
    expect(own.places['landfill']?.distanceMi).toBe(14);
    expect(own.places['landfill']?.driveHr).toBe(0.5);
    expect(own.forms.boards['2x4']?.heightIn).toBe(3.5);
    expect(own.pricing.validDays).toBe(30);
    expect(own.pricing.payments.map(({ shareRatio }) => shareRatio)).toEqual([0.25, 0.35, 0.3, 0.1]);
    expect(own.labor.people['foreman']?.wage.amountUsd.toString()).toBe('36');
  });

  test('metric units convert exactly: 100 mm is 500/127 in', () => {
    const { build, unitSystem } = soundJob('garden-row');
    expect(unitSystem).toBe('metric');
    expect(build.slabs['patio']?.thicknessIn).toBe(500 / 127);
    expect(build.slabs['patio']?.fall.slope).toBe(1 / 50);
    expect(build.slabs['patio']?.shape.base).toMatchObject({ kind: 'corners', points: { length: 8 } });
    expect(build.steps['back-step']).toMatchObject({
      rise: { from: 'step-foot', to: 'door', riserCount: 2 },
      widthIn: 1500 / 25.4,
      treadIn: 300 / 25.4,
    });
  });
});

describe('what a job does not say', () => {
  test('is a constant that came with the program', () => {
    const { job, origins } = resolve('corner-walk');
    expect(job?.build.slabs['panel']?.reinforcement).toEqual({ kind: 'none' });
    expect(origins.get('build.slabs.panel.reinforcement')).toEqual({
      spot: null,
      text: 'none',
      from: 'shipped',
    });
    expect(job?.site.existing['broken-panel']?.material).toBe('concrete');
    expect(origins.get('site.existing.broken-panel.material')).toEqual({
      spot: null,
      text: 'concrete',
      from: 'shipped',
    });
    expect(job?.client).toMatchObject({ phone: null, email: null });
    expect(job?.price).toEqual({ hidden: {}, otherCosts: {}, notIncluded: [] });
    expect(origins.get('company.places.fill-site.minimum')).toMatchObject({ text: '$0', from: 'shipped' });
  });
});

describe('what a job has different from the company', () => {
  const { job, origins } = resolve('garden-row');

  test('takes the place of it, key by key', () => {
    expect(job?.company.paper).toBe('a4');
    expect(job?.company.name).toBe(soundJob('maple-court').company.name);
    expect(job?.company.pricing.marginRatio).toBe(0.18);
    expect(job?.company.pricing.overheadRatio).toBe(soundJob('maple-court').company.pricing.overheadRatio);
  });

  test('comes from the job, the rest from the company', () => {
    expect(origins.get('company.pricing.margin')).toMatchObject({ text: '18 %', from: 'job' });
    expect(origins.get('company.pricing.margin')?.spot?.file).toMatch(/garden-row\/job\.yaml$/);
    expect(origins.get('company.pricing.overhead')).toMatchObject({ from: 'company' });
    expect(origins.get('company.paper')).toMatchObject({ text: 'a4', from: 'job' });
  });
});

describe('origins', () => {
  const { origins } = resolve('maple-court');

  test('point at the value as it is written', () => {
    const origin = origins.get('build.slabs.drive.thickness');
    const { file = '', line = 0, column = 0, length = 0 } = origin?.spot ?? {};
    const written = readFileSync(file, 'utf8').split('\n')[line - 1] ?? '';
    expect(written.slice(column - 1, column - 1 + length)).toBe('5 in');
    expect(origin).toMatchObject({ text: '5 in', from: 'job' });
  });

  test.each([
    'site.existing.old-drive.thickness',
    'build.slabs.drive.base',
    'build.slabs.drive.dig',
    'build.slabs.drive.fall',
    'build.slabs.drive.reinforcement',
    'build.mix.strength',
    'build.mix.air',
    'build.mix.slump',
    'build.mix.aggregate',
    'plan.crew',
    'plan.starts-on',
    'plan.trailers',
    'job.acknowledged.0',
    'price.other-costs.permit.cost',
    'price.hidden.more-base.edits',
    'company.labor.burden',
    'company.labor.day',
    'company.labor.people.foreman.wage',
    'company.machines.loader.cost',
    'company.trailers.long-box.gross-rating',
    'company.trailers.long-box.empty',
    'company.trailers.long-box.box.height',
    'company.tow-vehicle.tow-rating',
    'company.tow-vehicle.cost',
    'company.load-reserve',
    'company.loading-time',
    'company.places.landfill.fee',
    'company.places.landfill.turn',
    'company.suppliers.concrete.short-load-below',
    'company.suppliers.bagged.mixing',
    'company.suppliers.base.loose-over-compacted',
    'company.suppliers.mesh.lap',
    'company.suppliers.bars.stock',
    'company.suppliers.sundries.chair-price',
    'company.forms.boards.2x4.height',
    'company.forms.stakes-on-hand',
    'company.allowances.base-margin',
    'company.production.place.pace',
    'company.production.place.people',
    'company.pricing.margin',
    'company.pricing.minimum-charge',
    'company.pricing.payments',
    'company.places',
  ])('has %s', (path) => {
    expect(origins.get(path)?.spot).not.toBeNull();
    expect(origins.get(path)?.text).not.toBe('');
  });
});

describe('with changed files', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'model-'));
    cpSync(join(JOBS, 'maple-court'), join(folder, 'maple-court'), { recursive: true });
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });
  const changed = (change: (text: string) => string) => {
    const job = readFileSync(join(JOBS, 'maple-court', 'job.yaml'), 'utf8');
    writeFileSync(join(folder, 'maple-court', 'job.yaml'), change(job));
    return resolveJob(readJob(join(folder, 'maple-court')), company, rules);
  };

  test('a company changes the limit and the severity of a rule, in a unit of its own', () => {
    const { job, problems } = changed(
      (text) => `${text}\ncompany:\n  rules:\n    slab-thin: { limit: 10 cm, severity: stop }\n`,
    );
    expect(problems).toEqual([]);
    const rule = job?.rules.find(({ code }) => code === 'slab-thin');
    expect(rule).toMatchObject({ limit: 100 / 25.4, limitText: '10 cm', severity: 'stop' });
  });

  test('a machine of this job alone can be named by its own production', () => {
    const { job, problems } = changed(
      (text) =>
        `${text}\ncompany:\n  machines:\n    hired: { label: Hired saw, kind: cut-off-saw, cost: $90 per day, cab: none, wet: yes }\n  production:\n    saw-cut: { machine: hired }\n`,
    );
    expect(problems).toEqual([]);
    expect(job?.company.production['saw-cut']).toMatchObject({ machine: 'hired', people: 1 });
    expect(job?.company.machines['hired']?.kind).toBe('cut-off-saw');
  });

  test('what a compactor says of itself is in the units of the core, and null where it does not', () => {
    const plates = [
      'wide: { label: Plate, kind: plate-compactor, cost: $90 per day, cab: none, wet: no, plate-width: 50.8 cm, travel: 1524 m per h, lift: 6 in, passes: 3 }',
      'plain: { label: Plate, kind: plate-compactor, cost: $90 per day, cab: none, wet: no, travel: 4000 ft per h }',
    ];
    const { job, problems } = changed(
      (text) => `${text}\ncompany:\n  machines:\n    ${plates.join('\n    ')}\n`,
    );
    expect(problems).toEqual([]);
    // A foot is 0.3048 m.
    expect(job?.company.machines['wide']?.plate).toEqual({
      widthIn: 20,
      travelFtPerHr: 5000,
      liftIn: 6,
      passesEachWay: 3,
    });
    expect(job?.company.machines['plain']?.plate).toEqual({
      widthIn: null,
      travelFtPerHr: 4000,
      liftIn: null,
      passesEachWay: null,
    });
  });

  test('what a machine weighs tied down is in pounds and inches, and nothing where it is not said', () => {
    const { job, problems } = changed(
      (text) =>
        `${text}\ncompany:\n  machines:\n    hired: { label: Loader, kind: loader-with-breaker, cost: $48 per h, cab: open, wet: no, tied-down: { weight: 3 tons, length: 9 ft } }\n    other: { label: Loader, kind: loader-with-breaker, cost: $48 per h, cab: open, wet: no }\n`,
    );
    expect(problems).toEqual([]);
    expect(job?.company.machines['hired']?.tiedDown).toEqual({ weightLb: 6000, lengthIn: 108 });
    expect(job?.company.machines['other']?.tiedDown).toBeNull();
  });

  test.each([
    ['tied-down: { weight: 3 tons }', 'missing-key'],
    ['tied-down: { weight: 0 lb, length: 9 ft }', 'not-above-zero'],
    ['tied-down: { weight: 3 tons, length: 60 ft }', 'too-large'],
    ['plate-width: 5 in', 'too-small'],
    ['travel: 0 ft per h', 'not-above-zero'],
    ['travel: 70 sq ft per h', 'wrong-kind'],
    ['lift: 3 ft', 'too-large'],
    ['passes: 0', 'too-small'],
  ])('a machine of %s is %s', (key, code) => {
    const { job, problems } = changed(
      (text) =>
        `${text}\ncompany:\n  machines:\n    hired: { label: Plate, kind: plate-compactor, cost: $90 per day, cab: none, wet: no, ${key} }\n`,
    );
    expect(job).toBeNull();
    expect(problems.map((problem) => problem.code)).toEqual([code]);
  });

  test('a value that is wrong does not hide what is wrong with another', () => {
    const { job, problems } = changed((text) =>
      text.replace('thickness: 5 in', 'thickness: 5').replace('board: 2x4', 'board: 2x12'),
    );
    expect(job).toBeNull();
    expect(problems.map(({ code }) => code).toSorted()).toEqual(['length-without-unit', 'unknown-id']);
  });

  test('property: a slip of the keyboard never makes it throw', () => {
    const text = readFileSync(join(JOBS, 'maple-court', 'job.yaml'), 'utf8');
    const slip = fc.record({
      at: fc.nat(text.length),
      cut: fc.nat(12),
      put: fc.constantFrom(
        '',
        ' ',
        ':',
        ': ',
        '#',
        '"',
        "'",
        '[',
        '{',
        ',',
        '\n',
        '\t',
        '- ',
        'x',
        '0',
        '-',
        '%',
        '&',
        '*',
        '!',
      ),
    });
    fc.assert(
      fc.property(slip, ({ at, cut, put }) => {
        const { job, problems } = changed(() => text.slice(0, at) + put + text.slice(at + cut));
        expect(job === null).toBe(problems.length > 0);
      }),
      { numRuns: runCount(150) },
    );
  });
});

test('every demo folder is a job or the company', () => {
  const folders = readdirSync(JOBS, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(folders.length).toBe(listJobs(JOBS).ids.length + 1);
});
