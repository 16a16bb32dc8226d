import { describe, expect, test } from 'vitest';
import { heightsOf } from '../../src/model/heights.ts';
import { heightsSection } from '../../src/read/schema/heights.ts';
import { FULL_JOB, jobNamed, preparedIn, TEST_JOBS } from '../support/project.ts';

const point = (changed: object) => ({ label: 'Floor', at: ['1 ft', '-2 in'], kind: 'fixed', ...changed });
const read = (section: object) =>
  heightsSection().parse({ datum: 'Nail', points: { floor: point({}) }, ...section });

describe('heights as written', () => {
  test.each([
    ['100.25 ft', 1203],
    ['+1 1/2 in', 1.5],
    ['-3/4 in', -0.75],
    ['−3/4 in', -0.75],
    ['+ 2 in', 2],
    [`8' 4 1/2"`, 100.5],
    ['0.254 m', 10],
    ['-0.254 m', -10],
    ['5,280 ft', 63360],
  ])('%s is %s in above the datum', (written, heightIn) => {
    const heights = heightsOf(read({ points: { floor: point({ height: written }) } }));
    expect(heights?.points['floor']?.heightIn).toBe(heightIn);
  });

  test.each(['100.25', '+1', '--1 in', '+-1 in', '++1 in', '+', '30,001 ft', '-2,001 ft'])(
    '%s is refused',
    (height) => {
      expect(
        heightsSection().safeParse({ datum: 'Nail', points: { floor: point({ height }) } }).success,
      ).toBe(false);
    },
  );

  test('readings of a rod, in their order', () => {
    const notes = [
      { on: 'nail', height: '100 ft' },
      { on: 'nail', backsight: `5' 1 3/16"` },
      { on: 'floor', foresight: '0.254 m' },
    ];
    const heights = heightsOf(read({ notes, 'closing-error': '1/8 in' }));
    expect(heights?.notes).toEqual([
      { on: 'nail', kind: 'height', valueIn: 1200 },
      { on: 'nail', kind: 'backsight', valueIn: 61.1875 },
      { on: 'floor', kind: 'foresight', valueIn: 10 },
    ]);
    expect(heights?.closingErrorIn).toBe(0.125);
  });

  test.each(['Turning point', 'a'.repeat(41), '7', ''])('no rod stands on "%s"', (on) => {
    const notes = [{ on, foresight: '1 ft' }];
    expect(heightsSection().safeParse({ datum: 'Nail', notes, points: {} }).success).toBe(false);
  });

  test.each([
    ['fixed', undefined, { kind: 'stays' }],
    ['fixed', 'old-porch', { kind: 'existing', id: 'old-porch' }],
    ['existing', 'dirt', { kind: 'dirt' }],
    ['existing', 'stays', { kind: 'stays' }],
    ['finish', undefined, null],
  ])('a point that is %s, the rod on %s', (kind, stoodOn, expected) => {
    const heights = heightsOf(read({ points: { floor: point({ kind, 'stood-on': stoodOn }) } }));
    expect(heights?.points['floor']).toEqual({
      id: 'floor',
      label: 'Floor',
      at: { xIn: 12, yIn: -2 },
      heightIn: null,
      kind,
      stoodOn: expected,
    });
  });

  test('a job without them has none', () => {
    expect(heightsOf(undefined)).toBeNull();
  });

  test('what a rod stood on has an origin where nobody wrote it', () => {
    const { origins } = jobNamed(preparedIn(TEST_JOBS), FULL_JOB);
    const originOf = (id: string) => origins.get(`heights.points.${id}.stood-on`);
    expect(originOf('garage-right')).toEqual({ spot: null, text: 'stays', from: 'shipped' });
    expect(originOf('garage-left')).toMatchObject({ text: 'stays', from: 'job' });
    expect(originOf('drive-end')).toBeUndefined();
  });
});
