import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { JointLine, Slab } from '../../../src/calculate/job.ts';
import { calcJoints, earlyEntryDepthIn } from '../../../src/calculate/joints/index.ts';
import { aSlab, at, outlined, rectangle } from '../slabs.ts';

type Place = readonly [number, number];

/** A joint of the job's own, its places in feet. */
function joint(id: string, from: Place, to: Place | null): Record<string, JointLine> {
  const inInches = ([x, y]: Place) => ({ xIn: x * 12, yIn: y * 12 });
  return { [id]: { id, from: inInches(from), to: to === null ? null : inInches(to) } };
}

function laid(joints: Partial<Slab['joints']>, changed: Partial<Slab> = {}) {
  const made = outlined(
    aSlab({
      shape: rectangle(432, 216),
      jointSpacingIn: 150,
      joints: { cut: 'wet-sawn', lines: {}, propose: 'rest', sealed: false, ...joints },
      ...changed,
    }),
  );
  const { figures, data, problems } = calcJoints({ ...made, mix: { slumpIn: 4, aggregateIn: 0.75 } });
  const lines = at(data.lines, 'drive').map(({ fromXIn, fromYIn, toXIn, toYIn }) =>
    [fromXIn, fromYIn, toXIn, toYIn].map((valueIn) => Math.round(valueIn * 1000) / 12_000),
  );
  return { figures: at(figures.slabs, 'drive'), total: figures.total, lines, problems };
}

// A drive of 36 by 18 ft with joints at most 12 ft 6 in apart: proposed are lines at 12 and 24 ft, and one
// along the middle.
describe('joints that the job gives', () => {
  test('one that starts at an edge runs square to it, and the rest is proposed round it', () => {
    const { lines, figures } = laid({ lines: joint('door', [14, 0], null) });
    expect(lines).toContainEqual([14, 0, 14, 18]);
    // 14 ft are two panels of 7, 22 ft two of 11: four joints across in place of three panels.
    expect(num(figures['length-over-limit'])).toBeLessThanOrEqual(1);
    expect(num(figures.panels)).toBeGreaterThan(6);
    const { proposed } = figures;
    expect(proposed === undefined ? null : num(proposed.panels)).toBe(6);
  });

  test('with nothing proposed a panel gets longer, and that shows against what was proposed', () => {
    const { lines, figures } = laid({ lines: joint('door', [14, 0], [14, 18]), propose: 'nothing' });
    expect(lines).toEqual([[14, 0, 14, 18]]);
    expect(num(figures.panels)).toBe(2);
    expect(num(figures['panel-length'])).toBeCloseTo(22 * 12, 9);
    expect(num(figures['length-over-limit'])).toBeCloseTo((22 * 12) / 150, 9);
    const { proposed } = figures;
    expect(proposed === undefined ? null : num(proposed['panel-length'])).toBeCloseTo(12 * 12, 9);
  });

  test('one that ends in the concrete runs on to the next edge or joint', () => {
    const { lines } = laid({
      lines: { ...joint('middle', [0, 9], [36, 9]), ...joint('short', [12, 1], [12, 5]) },
      propose: 'nothing',
    });
    expect(lines).toEqual([
      [12, 0, 12, 9],
      [0, 9, 36, 9],
    ]);
  });

  test('without any, there is nothing to compare with', () => {
    expect(laid({}).figures.proposed).toBeUndefined();
  });

  test.each<[string, Record<string, JointLine>]>([
    ['outside', joint('lost', [40, 2], [44, 8])],
    ['along the edge', joint('lost', [0, 0], [36, 0])],
    ['on another', { ...joint('first', [12, 0], [12, 18]), ...joint('lost', [12, 2], [12, 9]) }],
  ])('one that cuts nothing is a problem where it stands: %s', (_, lines) => {
    expect(laid({ lines }).problems).toEqual([
      { code: 'joint-line-outside', path: 'build.slabs.drive.joints.lines.lost', parts: {} },
    ]);
  });
});

describe('how joints are made', () => {
  // ACI 302.1R (memory): an early-entry saw cuts 1 in in slabs up to 9 in; beyond, a quarter of the slab.
  test('an early-entry saw cuts an inch where a wet saw cuts a quarter', () => {
    expect(num(laid({ cut: 'early-entry' }, { thicknessIn: 6 }).figures.depth)).toBe(1);
    expect(num(laid({ cut: 'wet-sawn' }, { thicknessIn: 6 }).figures.depth)).toBe(1.5);
    expect([9, 9.5, 12].map(earlyEntryDepthIn)).toEqual([1, 2.375, 3]);
    expect(() => earlyEntryDepthIn(0)).toThrow(RangeError);
  });

  test('what is tooled is not sawn', () => {
    const house = rectangle(432, 216, { edges: [{ edge: 4, kind: 'house' }] });
    const tooled = laid({ cut: 'tooled' }, { shape: house });
    expect(num(tooled.total.sawn)).toBe(0);
    expect(num(tooled.total.length)).toBeCloseTo(72, 9);
    const sawn = laid({}, { shape: house });
    expect(num(sawn.total.sawn)).toBeCloseTo(72, 9);
  });
});
