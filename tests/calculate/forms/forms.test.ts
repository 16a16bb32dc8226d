import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boardCount, calcForms, formShortByIn, stakeCount } from '../../../src/calculate/forms/index.ts';
import type { Company } from '../../../src/calculate/job.ts';
import { testExpressions } from '../evaluate.ts';
import { aSlab, at, outlined, propertyRuns, rectangle, values } from '../slabs.ts';

const forms: Company['forms'] = {
  boards: {
    'two-by-four': {
      id: 'two-by-four',
      heightIn: 3.5,
      lengthIn: 192,
      onHandCount: 5,
      priceUsd: new Decimal('11.40'),
    },
    'two-by-six': {
      id: 'two-by-six',
      heightIn: 5.5,
      lengthIn: 144,
      onHandCount: 20,
      priceUsd: new Decimal('14.10'),
    },
  },
  stakeSpacingIn: 36,
  stakePriceUsd: new Decimal('1.10'),
  stakesOnHandCount: 60,
};

/** A driveway along the house, two corners rounded, and a walk on the higher board. */
const drive = aSlab({
  shape: rectangle(480, 216, {
    edges: [{ edge: 1, kind: 'house' }],
    rounded: [{ corner: 3, setbackIn: 60 }],
  }),
});
const walk = aSlab({ id: 'front-walk', shape: rectangle(360, 48), board: 'two-by-six' });
const ribbon = aSlab({ id: 'ribbon-2', shape: rectangle(240, 24), thicknessIn: 3.5 });

const result = calcForms({ ...outlined(drive, walk, ribbon), forms });

describe('calcForms', () => {
  test('the driveway by hand', () => {
    // Straight: 216 - 60, 480 - 60 and 216 in; curved: a quarter circle of 60 in radius.
    const lengthFt = (156 + 420 + 216 + (Math.PI * 60) / 2) / 12;
    const made = values(at(result.figures.slabs, 'drive'));
    expect(made.length).toBeCloseTo(lengthFt, 9);
    expect(made['short-by']).toBe(0.5);
    expect(made.boards).toBe(5); // 73.85 ft of 16 ft boards
    expect(made.stakes).toBe(26); // 25 spaces of 3 ft and the end
  });

  test('a board as high as the slab or higher is not short', () => {
    expect(values(at(result.figures.slabs, 'front-walk'))['short-by']).toBe(0);
    expect(values(at(result.figures.slabs, 'ribbon-2'))['short-by']).toBe(0);
  });

  test('boards add up by kind, stakes over all slabs, and what is on hand comes off', () => {
    // Ribbon: 44 ft, 3 boards and 16 stakes. Walk: 68 ft, 6 boards of 12 ft and 24 stakes.
    expect(values(at(result.figures.boards, 'two-by-four'))).toEqual({ needed: 8, shortage: 3 });
    expect(values(at(result.figures.boards, 'two-by-six'))).toEqual({ needed: 6, shortage: 0 });
    expect(values(result.figures.stakes)).toEqual({ needed: 26 + 16 + 24, shortage: 6 });
  });

  test('a slab between house and neighbours needs no form and no stake', () => {
    const edges = [1, 2, 3, 4].map((edge) => ({ edge, kind: 'stays' as const }));
    const enclosed = calcForms({ ...outlined(aSlab({ shape: rectangle(120, 96, { edges }) })), forms });
    expect(values(at(enclosed.figures.slabs, 'drive'))).toMatchObject({ length: 0, boards: 0, stakes: 0 });
  });

  test('a board the company does not have is refused', () => {
    expect(() => calcForms({ ...outlined(aSlab({ board: 'two-by-eight' })), forms })).toThrow(/two-by-eight/);
  });

  testExpressions('forms', result.figures, 17);
});

describe('counts', () => {
  test('exact: a length of whole boards takes no board more', () => {
    expect(boardCount({ lengthFt: 48, boardLengthIn: 192 })).toBe(3);
    expect(boardCount({ lengthFt: 48.01, boardLengthIn: 192 })).toBe(4);
    expect(stakeCount({ lengthFt: 9, stakeSpacingIn: 36 })).toBe(4);
  });

  test('refused: what is no length', () => {
    expect(() => formShortByIn({ thicknessIn: 0, boardHeightIn: 3.5 })).toThrow(RangeError);
    expect(() => formShortByIn({ thicknessIn: 4, boardHeightIn: Number.NaN })).toThrow(RangeError);
    expect(() => boardCount({ lengthFt: -1, boardLengthIn: 192 })).toThrow(RangeError);
    expect(() => stakeCount({ lengthFt: 10, stakeSpacingIn: 0 })).toThrow(RangeError);
  });

  test('invariant: boards cover the length, one fewer would not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        fc.integer({ min: 24, max: 240 }),
        (lengthFt, boardLengthIn) => {
          const boards = boardCount({ lengthFt, boardLengthIn });
          expect((boards * boardLengthIn) / 12).toBeGreaterThanOrEqual(lengthFt - 1e-6);
          expect(((boards - 1) * boardLengthIn) / 12).toBeLessThan(lengthFt);
        },
      ),
      propertyRuns,
    );
  });
});
