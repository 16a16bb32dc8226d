import { describe, expect, test } from 'vitest';
import { formedRuns } from '../../../src/calculate/forms/index.ts';
import { box, QUARTER, ring, roundedDrive } from './a-form.ts';

const shown = (outline: Parameters<typeof formedRuns>[0]) =>
  formedRuns(outline).map(({ isClosed, forms }) => ({
    isClosed,
    forms: forms.map(({ kind, lengthIn, before, after }) =>
      [kind, Math.round(lengthIn), before, after].join(' '),
    ),
  }));

describe('formed runs', () => {
  test('a box formed all round is closed, its corners outside', () => {
    expect(shown(box(300, 100))).toEqual([
      {
        isClosed: true,
        forms: [300, 100, 300, 100].map((lengthIn) => `straight ${lengthIn} outside outside`),
      },
    ]);
  });

  test('a run goes past the start of the ring, and ends at the house', () => {
    expect(shown(box(300, 100, ['formed', 'formed', 'house', 'formed']))).toEqual([
      {
        isClosed: false,
        forms: ['straight 100 end outside', 'straight 300 outside outside', 'straight 100 outside end'],
      },
    ]);
  });

  test('two runs where house and old concrete lie between', () => {
    expect(shown(box(300, 100, ['formed', 'stays', 'formed', 'house']))).toEqual([
      { isClosed: false, forms: ['straight 300 end end'] },
      { isClosed: false, forms: ['straight 300 end end'] },
    ]);
    expect(shown(box(300, 100, ['joint', 'joint', 'joint', 'joint']))).toEqual([]);
  });

  test('an arc goes on smoothly from the straights beside it', () => {
    // A quarter circle of 60 in: 94.2 in.
    expect(shown(roundedDrive)[0]?.forms).toEqual([
      'straight 156 end tangent',
      'curve 94 tangent tangent',
      'straight 420 tangent outside',
      'straight 216 outside end',
    ]);
  });

  test('edges on one line are one straight, also over the start of the ring', () => {
    const outline = { rings: [ring([150, 0], [300, 0], [300, 100], [0, 100], [0, 0])] };
    expect(shown(outline)[0]?.forms).toEqual(
      [100, 300, 100, 300].map((lengthIn) => `straight ${lengthIn} outside outside`),
    );
  });

  test('a circle of two half arcs is one closed curve', () => {
    const outline = { rings: [ring([0, 0, 'formed', 1], [96, 0, 'formed', 1])] };
    expect(formedRuns(outline)).toMatchObject([{ isClosed: true, forms: [{ kind: 'curve', radiusIn: 48 }] }]);
    expect(formedRuns(outline)[0]?.forms[0]?.lengthIn).toBeCloseTo(96 * Math.PI, 9);
  });

  test('arcs of two radii that meet smoothly are one curve, with the smaller radius', () => {
    // From east to north on 60 in, on to west on 36 in.
    const outline = {
      rings: [ring([0, 0, 'formed', QUARTER], [60, 60, 'formed', QUARTER], [24, 96, 'stays'])],
    };
    expect(formedRuns(outline)).toMatchObject([
      { isClosed: false, forms: [{ kind: 'curve', radiusIn: expect.closeTo(36, 9) }] },
    ]);
  });

  test('corners of an L turn out and in, those of a cut-out in alone', () => {
    const ell = {
      rings: [ring([0, 0], [200, 0], [200, 100], [100, 100], [100, 200], [0, 200])],
    };
    expect(shown(ell)[0]?.forms.map((form) => form.split(' ').at(-1))).toEqual([
      'outside',
      'outside',
      'inside',
      'outside',
      'outside',
      'outside',
    ]);
    const well = { rings: [...box(300, 200).rings, ring([100, 80], [100, 120], [140, 120], [140, 80])] };
    expect(shown(well)[1]).toEqual({ isClosed: true, forms: Array(4).fill('straight 40 inside inside') });
  });
});
