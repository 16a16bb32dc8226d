import { describe, expect, test } from 'vitest';
import type { FigureTree } from '../../../src/calculate/figure.ts';
import { num, walkFigures } from '../../../src/calculate/figure.ts';
import { formShortByIn, leastBendFt, stakeCount } from '../../../src/calculate/forms/index.ts';
import { testExpressions } from '../evaluate.ts';
import { at } from '../slabs.ts';
import { aStrip, box, formsOf, ring, roundedDrive, someForms } from './a-form.ts';

/** Every figure of a tree by its path. */
function valuesOf(tree: FigureTree): Record<string, number> {
  return Object.fromEntries(walkFigures(tree).map(({ id, figure }) => [id, num(figure)]));
}

/** A driveway along the house, one corner rounded; a walk on the higher board; a ribbon. */
const slabs = {
  drive: { outline: roundedDrive },
  'front-walk': { outline: box(360, 48), board: 'two-by-six' },
  'ribbon-2': { outline: box(240, 24, ['stays']), thicknessIn: 3.5 },
};
const result = formsOf(slabs);

describe('forms of a job by hand', () => {
  test('a driveway with its curve of boards sawn to bend', () => {
    const arcIn = (Math.PI * 60) / 2; // 94.25
    expect(valuesOf(at(result.figures.slabs, 'drive'))).toEqual({
      length: expect.closeTo((156 + 420 + 216 + arcIn) / 12, 9),
      'short-by': 0.5,
      // 156: cut. 420: 2 and one past the corner to 216, which takes 1 and a piece of 24. The arc is cut.
      boards: 4,
      pieces: 3,
      'cut-length': 156 + 94.25 + 24,
      // 156: 5 spaces. 420 = 192 + 192 + 36: 6 + 6 + 1. 216 = 192 + 24: 6 + 1. One more on each.
      'stakes-straight': 6 + 14 + 8,
      // 94.25 at 24 in: 4 spaces.
      'stakes-curved': 5,
      stakes: 33,
      'curves-without-strip': 1,
    });
  });

  test('a board as high as the slab or higher is not short', () => {
    expect(num(at(result.figures.slabs, 'front-walk')['short-by'])).toBe(0);
    expect(num(at(result.figures.slabs, 'ribbon-2')['short-by'])).toBe(0);
  });

  test('pieces of two slabs share boards, and what is on hand comes off', () => {
    // Ribbon, 24, 240 and 24 formed: 24 past its corner on one board, 240 past the next on two, 24 cut.
    expect(valuesOf(at(result.figures.boards, 'two-by-four'))).toEqual({
      whole: 4 + 3,
      pieces: 3 + 1,
      'cut-length': 274.25 + 24,
      // 156 + 24 = 180 1/8 with the saw; 94 1/4 and 24. (298 1/4 + 4/8) / (192 1/8) = 1.55.
      'cut-least': 2,
      'cut-from': 2,
      cuts: 4,
      needed: 9,
      shortage: 4,
    });
    expect(result.data.cuts.board['two-by-four']).toEqual({
      pieces: [
        { slab: 'drive', form: 0, lengthIn: 156 },
        { slab: 'drive', form: 1, lengthIn: 94.25 },
        { slab: 'drive', form: 3, lengthIn: 24 },
        { slab: 'ribbon-2', form: 2, lengthIn: 24 },
      ],
      boards: [
        { pieces: [0, 2], leftIn: 192 - 180.125 },
        { pieces: [1, 3], leftIn: 192 - 118.375 },
      ],
    });
  });

  test('stakes over all slabs', () => {
    // Walk of 144 in boards: 360 = 144 + 144 + 72, 4 + 4 + 2 + 1; 48, 2 + 1. Ribbon: 24, 240, 24: 2, 9, 2.
    expect(valuesOf(result.figures.stakes)).toEqual({
      needed: 33 + 2 * 11 + 2 * 3 + 13,
      shortage: 14,
    });
  });

  test('a slab between house and neighbours needs no form and no stake', () => {
    const enclosed = formsOf({ drive: { outline: box(120, 96, ['stays', 'stays', 'house', 'joint']) } });
    expect(valuesOf(enclosed.figures.slabs)).toMatchObject({
      'drive.length': 0,
      'drive.boards': 0,
      'drive.stakes': 0,
    });
    expect(valuesOf(enclosed.figures.boards)).toMatchObject({ 'two-by-four.shortage': 0 });
  });

  test('a board or strip the company does not have is refused', () => {
    expect(() => formsOf({ drive: { outline: box(120, 96), board: 'two-by-eight' } })).toThrow(
      /two-by-eight/,
    );
    expect(() => formsOf({ drive: { outline: box(120, 96), curveForm: 'tin' } })).toThrow(/tin/);
  });

  test('form height, true board and base inside are three measures', () => {
    const stood = (formHeightIn: number | null) => {
      const made = formsOf({ drive: { outline: box(120, 96), thicknessIn: 4, formHeightIn } });
      const { 'gap-under-board': gap, 'base-drop': drop } = at(made.figures.slabs, 'drive');
      return [gap, drop].map((one) => (one === undefined ? null : num(one)));
    };
    // A board of 3 1/2 in with its top 3 3/4 in up, and a slab of 4 in.
    expect(stood(3.75)).toEqual([0.25, 0.25]);
    expect(stood(4)).toEqual([0.5, 0]);
    expect(stood(3)).toEqual([0, 1]);
    expect(stood(null)).toEqual([null, null]);
  });

  testExpressions(
    'forms at a stated height',
    formsOf({ drive: { outline: box(120, 96), formHeightIn: 3.75 } }).figures,
    12,
  );
  testExpressions('forms', result.figures, 23);
});

describe('curves of strips by hand', () => {
  const striped = { ...slabs, drive: { outline: roundedDrive, curveForm: 'hardboard' } };
  const made = formsOf(striped);

  test('one rounded corner: laps on both straights, the last strip cut', () => {
    expect(valuesOf(at(made.figures.slabs, 'drive'))).toMatchObject({
      boards: 4,
      pieces: 2,
      'cut-length': 180,
      // 84 - 12 = 72 in to the lap, at 18 in 4 spaces; 22.25 more: 2.
      'stakes-curved': 7,
      'strips.whole': 1,
      'strips.pieces': 1,
      'strips.cut-length': 34.25,
      'end-stake-setback': 0.25,
      'curves.curve-1.radius': expect.closeTo(60, 9),
      'curves.curve-1.arc-length': expect.closeTo(30 * Math.PI, 9),
      'curves.curve-1.end-laps': 2,
      'curves.curve-1.strip-length': 118.25,
      'curves.curve-1.strips': 2,
      // 1/4 in bent across the grain: 2 ft.
      'curves.curve-1.radius-short-by': 0,
    });
    expect(at(made.figures.slabs, 'drive')).not.toHaveProperty('curves-without-strip');
  });

  test('strips are needed and short like boards', () => {
    expect(valuesOf(at(made.figures.strips, 'hardboard'))).toEqual({
      'least-radius': 24,
      whole: 1,
      pieces: 1,
      'cut-length': 34.25,
      'cut-least': 1,
      'cut-from': 1,
      cuts: 1,
      needed: 2,
      shortage: 1,
    });
  });

  test('a radius is short of what the strip bends to, and the company knows better', () => {
    const shortBy = (changed: Parameters<typeof aStrip>[0]) =>
      valuesOf(formsOf(striped, someForms({ strips: { hardboard: aStrip(changed) } })).figures.slabs)[
        'drive.curves.curve-1.radius-short-by'
      ];
    expect(shortBy({ thicknessIn: 0.5 })).toBeCloseTo(72 - 60, 9);
    expect(shortBy({ bent: 'along-grain' })).toBeCloseTo(0, 9);
    expect(shortBy({ thicknessIn: 0.5, leastRadiusIn: 48 })).toBe(0);
  });

  test('a strip lower than the slab is short by the difference', () => {
    const low = formsOf(striped, someForms({ strips: { hardboard: aStrip({ heightIn: 3 }) } }));
    expect(valuesOf(low.figures.slabs)['drive.strip-short-by']).toBe(1);
  });

  test('a slab without a curve takes no strip, though it names one', () => {
    const plain = formsOf({ walk: { outline: box(120, 48), curveForm: 'hardboard' } });
    expect(valuesOf(plain.figures.strips)).toMatchObject({ 'hardboard.needed': 0, 'hardboard.shortage': 0 });
  });

  test('no stake stands back where a curve meets no straight', () => {
    const circle = { rings: [ring([0, 0, 'formed', 1], [96, 0, 'formed', 1])] };
    const round = formsOf({ pad: { outline: circle, curveForm: 'hardboard' } });
    expect(valuesOf(round.figures.slabs)).not.toHaveProperty('pad.end-stake-setback');
  });

  testExpressions('curved forms', made.figures, 34);
});

describe('kickers, screws and form release', () => {
  const forms = someForms({
    kickerSpacingIn: 72,
    screwsPerStakeCount: 2,
    releaseCoverageSqFtPerGal: 400,
    stakeSpacingCurvedIn: 12,
    sawKerfIn: 0.25,
    runPastIn: 12,
  });
  const braced = formsOf({ walk: { outline: box(360, 48) } }, forms);

  test('by hand', () => {
    // 68 ft: 816 / 72 = 11.3. 360 = 192 + 168: 6 + 5 + 1 stakes, 48: 2 + 1.
    expect(valuesOf(at(braced.figures.slabs, 'walk'))).toMatchObject({
      stakes: 2 * 12 + 2 * 3,
      kickers: 12,
      screws: 60,
      release: expect.closeTo((68 * 3.5) / 12 / 400, 12),
      // Past 12 in nothing sticks out: 168, 48, 168, 48 are cut.
      boards: 2,
      pieces: 4,
    });
    // A kicker takes a stake as its brace and one that holds it.
    expect(valuesOf(braced.figures.stakes)).toEqual({ 'at-forms': 30, needed: 54, shortage: 0 });
    expect(valuesOf(braced.figures.total)).toMatchObject({ kickers: 12, screws: 60 });
  });

  test('where the company says nothing there is no figure', () => {
    expect(result.figures.total).toEqual({});
    expect(result.figures.stakes).not.toHaveProperty('at-forms');
  });

  testExpressions('braced forms', braced.figures, 18);
});

describe('counts', () => {
  const along = (lengthIn: number, spacingIn: number, isClosed = false) =>
    stakeCount({ sectionsIn: [{ lengthIn, count: 1 }], spacingIn, isClosed });

  test('exact: one at each end, and one at each spacing between', () => {
    expect(along(108, 36)).toBe(4);
    expect(along(108.01, 36)).toBe(5);
    expect(along(108, 36, true)).toBe(3);
    expect(stakeCount({ sectionsIn: [], spacingIn: 36, isClosed: false })).toBe(0);
  });

  test('refused: what is no length', () => {
    expect(() => formShortByIn({ thicknessIn: 0, boardHeightIn: 3.5 })).toThrow(RangeError);
    expect(() => formShortByIn({ thicknessIn: 4, boardHeightIn: Number.NaN })).toThrow(RangeError);
    expect(() => along(-1, 36)).toThrow(RangeError);
    expect(() => along(10, 0)).toThrow(RangeError);
    expect(() => leastBendFt({ thicknessIn: 0.76, bent: 'across-grain' })).toThrow(RangeError);
    expect(() => leastBendFt({ thicknessIn: 0, bent: 'across-grain' })).toThrow(RangeError);
    expect(() => leastBendFt({ thicknessIn: Number.NaN, bent: 'along-grain' })).toThrow(RangeError);
  });

  test('between two rows of the table the thicker one holds, below the first the first', () => {
    expect(leastBendFt({ thicknessIn: 0.45, bent: 'across-grain' })).toBe(6);
    expect(leastBendFt({ thicknessIn: 0.1, bent: 'along-grain' })).toBe(5);
  });
});
