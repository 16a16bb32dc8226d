import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Job, TapedShape } from '../../src/calculate/job.ts';
import { resolveJob } from '../../src/model/index.ts';
import type { Origins } from '../../src/problems/index.ts';
import { readCompany, readJob, readRules } from '../../src/read/index.ts';
import { FULL_JOB, TEST_JOBS } from '../support/project.ts';

const rules = readRules();

function resolved(jobs: string, name: string): { readonly job: Job; readonly origins: Origins } {
  const { job, origins, problems } = resolveJob(
    readJob(join(jobs, name)),
    readCompany(join(jobs, 'company')),
    rules,
  );
  expect(problems).toEqual([]);
  if (job === null) throw new Error(`${name} has no job`);
  return { job, origins };
}

/** Worked by hand: 12 in a foot, 180 degrees in pi. */
describe('every way to tape a shape, in the units of the core', () => {
  const { job } = resolved(TEST_JOBS, FULL_JOB);
  const slab = (id: string): TapedShape => {
    const shape = job.build.slabs[id]?.shape;
    if (shape === undefined) throw new Error(`no slab ${id}`);
    return shape;
  };

  test.each(['terrace', 'pad', 'seat', 'bay', 'wedge', 'plot', 'path', 'ramp', 'yard'])(
    'an existing %s is read as a new one is',
    (id) => {
      const old = job.site.existing[`old-${id}`]?.shape;
      expect(old?.base.kind).toBe(slab(id).base.kind);
      expect({ ...old, base: null }).toEqual({ ...slab(id), base: null });
    },
  );

  test.each<[string, TapedShape['base']]>([
    ['terrace', { kind: 'trapezoid', baseIn: 120, topIn: 96, depthIn: 96, offsetIn: 12 }],
    ['pad', { kind: 'four-sides', sidesIn: [108, 96, 110, 96], diagonalIn: 144, otherDiagonalIn: 146.5 }],
    ['seat', { kind: 'circle', diameterIn: 84 }],
    ['bay', { kind: 'sector', radiusIn: 72, angleRad: Math.PI / 2 }],
    [
      'wedge',
      {
        kind: 'sides',
        sides: [
          { lengthIn: 108, turnRad: 0 },
          { lengthIn: 84, turnRad: Math.PI / 2 },
          { lengthIn: 109, turnRad: Math.PI / 2 },
          { lengthIn: 84, turnRad: Math.PI / 2 },
        ],
      },
    ],
    [
      'plot',
      {
        kind: 'triangles',
        baseIn: 96,
        corners: [
          { from: [1, 2], distancesIn: [132, 96], side: 'left' },
          { from: [1, 3], distancesIn: [96, 96], side: 'left' },
          { from: [4, 1], distancesIn: [60, 60], side: 'right' },
        ],
      },
    ],
    [
      'path',
      {
        kind: 'strip',
        widthIn: 36,
        endWidthIn: null,
        line: [
          { kind: 'straight', lengthIn: 60 },
          { kind: 'turn', turnRad: -Math.PI / 4, rounding: { how: 'parallel', setbackIn: 24 } },
          { kind: 'straight', lengthIn: 72 },
          { kind: 'arc', radiusIn: 60, turnRad: Math.PI / 3 },
          { kind: 'straight', lengthIn: 36 },
        ],
        edges: { start: 'house', end: 'joint', left: 'formed', right: 'stays' },
      },
    ],
    [
      'ramp',
      {
        kind: 'strip',
        widthIn: 36,
        endWidthIn: 48,
        line: [{ kind: 'straight', lengthIn: 96 }],
        edges: { start: 'formed', end: 'formed', left: 'formed', right: 'formed' },
      },
    ],
  ])('%s', (id, base) => {
    expect(slab(id).base).toEqual(base);
  });

  test('corners are rounded in four ways, in the order of their numbers', () => {
    expect(slab('terrace').rounded).toEqual([
      { corner: 1, by: { kind: 'radius', radiusIn: 12 } },
      { corner: 2, by: { kind: 'chord', chordIn: 36, riseIn: 8 } },
      { corner: 3, by: { kind: 'setback', setbackIn: 12 } },
      {
        corner: 4,
        by: { kind: 'two-arcs', firstRadiusIn: 36, firstTurnRad: Math.PI / 6, secondRadiusIn: 24 },
      },
    ]);
  });

  test('edges are bent in three ways', () => {
    expect(slab('pad').bent).toEqual([
      { edge: 1, by: { kind: 'rise', riseIn: 6, bends: 'out' } },
      { edge: 2, by: { kind: 'radius', radiusIn: 240, bends: 'in' } },
      { edge: 3, by: { kind: 'through', at: { xIn: 48, yIn: 108 } } },
    ]);
  });

  test('parts are left out and joined, each at its place and turned', () => {
    const { cutOuts, added } = slab('yard');
    expect(Object.keys(cutOuts)).toEqual(['post', 'drain', 'tree', 'bed', 'column']);
    expect(cutOuts['post']).toEqual({
      id: 'post',
      label: 'Gate post',
      base: { kind: 'rectangle', lengthIn: 8, widthIn: 8 },
      at: { xIn: 84, yIn: 24 },
      turnedRad: Math.PI / 4,
      around: 'stays',
    });
    expect(cutOuts['column']).toMatchObject({ base: { kind: 'corners' }, turnedRad: 0, around: 'house' });
    expect(Object.keys(added)).toEqual(['landing', 'niche', 'quarter', 'ledge']);
    expect(added['landing']).toEqual({
      id: 'landing',
      label: 'Landing',
      base: { kind: 'rectangle', lengthIn: 48, widthIn: 24 },
      at: { xIn: 72, yIn: 0 },
      turnedRad: Math.PI,
    });
  });

  test('how it was taped, where it stands and how it is turned', () => {
    expect(slab('yard').taped).toEqual({ how: 'on-slope', slope: 1 / 25, runs: 'along' });
    expect(slab('yard').at).toEqual({ xIn: 480, yIn: 480 });
    expect(slab('drive').taped).toBeNull();
    expect(slab('terrace').turnedRad).toBe(Math.PI / 18);
  });

  test('north, the photo points, and how far a tape may miss', () => {
    expect(job.site.northDeg).toBe(30);
    expect(job.site.photoPoints['sill']).toEqual({
      id: 'sill',
      label: 'Door sill and house wall',
      at: { xIn: 48, yIn: 240 },
      lookingDeg: 190,
    });
    expect(job.company.allowances).toMatchObject({ closingErrorIn: 2.5, joiningGapIn: 0.75 });
  });
});

describe('what a shape does not say', () => {
  let jobs = '';
  beforeAll(() => {
    jobs = mkdtempSync(join(tmpdir(), 'shapes-'));
    cpSync(join(TEST_JOBS, '..', 'problems', 'base', 'job'), join(jobs, 'walk'), { recursive: true });
    cpSync(join(TEST_JOBS, '..', 'problems', 'base', 'company'), join(jobs, 'company'), { recursive: true });
  });
  afterAll(() => {
    rmSync(jobs, { recursive: true });
  });

  function shapedAs(keys: string) {
    const rest = 'thickness: 4 in, base: 4 in, dig: 4 in, finish: broom, board: 2x4, short-board: drop-base';
    const mix = '{ strength: 4000 psi, air: 6 %, slump: 4 in, aggregate: 3/4 in, exposure: freezing }';
    const fall = 'fall: { slope: 1/4 in per ft, towards: the lawn }';
    const slab = `{ label: Walk, use: walk, ${rest}, ${fall}, ${keys} }`;
    writeFileSync(join(jobs, 'walk', 'build.yaml'), `build:\n  slabs: { walk: ${slab} }\n  mix: ${mix}\n`);
    const { job, origins } = resolved(jobs, 'walk');
    const shape = job.build.slabs['walk']?.shape;
    if (shape === undefined) throw new Error('no slab');
    return { job, origins, shape };
  }

  test('is a constant that came with the program', () => {
    const { shape, origins } = shapedAs('trapezoid: { base: 9 ft, top: 7 ft, depth: 4 ft }');
    expect(shape).toEqual({
      base: { kind: 'trapezoid', baseIn: 108, topIn: 84, depthIn: 48, offsetIn: 0 },
      rounded: [],
      bent: [],
      edges: [],
      cutOuts: {},
      added: {},
      taped: null,
      at: null,
      turnedRad: 0,
    });
    const offset = origins.get('build.slabs.walk.trapezoid.offset');
    expect(offset).toEqual({ spot: null, text: '0 in', from: 'shipped' });
  });

  test('of a company too', () => {
    const { job, origins } = shapedAs('circle: { diameter: 2 m }');
    expect(job.company.allowances).toMatchObject({ closingErrorIn: 2, joiningGapIn: 1 });
    expect(origins.get('company.allowances.closing-error')).toMatchObject({ text: '2 in', from: 'shipped' });
    expect(job.site).toMatchObject({ northDeg: null, photoPoints: {} });
  });

  test('a side that goes straight on turns by 0, one to the right by less', () => {
    const { shape } = shapedAs(
      'sides: [{ length: 9 ft }, { turn: straight, length: 1 ft }, { turn: right, length: 4 ft }, { turn: 0 deg right, length: 1 ft }], turned: -90 deg',
    );
    expect(shape.base).toEqual({
      kind: 'sides',
      sides: [
        { lengthIn: 108, turnRad: 0 },
        { lengthIn: 12, turnRad: 0 },
        { lengthIn: 48, turnRad: -Math.PI / 2 },
        { lengthIn: 12, turnRad: 0 },
      ],
    });
    expect(shape.turnedRad).toBe(-Math.PI / 2);
  });

  test('a turn of a walk that is not rounded stays sharp', () => {
    const { shape, origins } = shapedAs(
      'strip: { width: 4 ft, line: [{ straight: 9 ft }, { turn: left }, { straight: 9 ft }] }',
    );
    expect(shape.base).toMatchObject({ line: [{}, { turnRad: Math.PI / 2, rounding: null }, {}] });
    expect(origins.get('build.slabs.walk.strip.start')).toMatchObject({ text: 'formed', from: 'shipped' });
  });
});
