import { describe, expect, test } from 'vitest';
import { problemsEn } from '../../src/words/problems-en.ts';

const { texts } = problemsEn;

describe('what the calculation finds wrong with an outline, in words', () => {
  test('names the measurement that would explain two diagonals that disagree', () => {
    const parts = { miss: '6″', computed: '120″', wouldBe: '102″' };
    const text = (culprit: string) => texts['diagonals-disagree']({ ...parts, culprit });
    expect(text('2')).toContain('it may be edge 2, which would be 102″.');
    expect(text('diagonal')).toContain('it may be the first diagonal, which would be 102″.');
    expect(text('')).toBe(
      'The other diagonal misses by 6″: by the sides and the first diagonal it is 120″. Tape them again.',
    );
  });

  test('says how far an added piece misses, where it lies along an edge at all', () => {
    const parts = { piece: 'Landing', allowed: '1″' };
    expect(texts['added-does-not-touch']({ ...parts, miss: '3″' })).toContain('misses its outline by 3″; 1″');
    expect(texts['added-does-not-touch']({ ...parts, miss: '' })).toContain(
      'No edge of the added piece "Landing"',
    );
  });

  test('gives the largest radius of a rounding that does not fit', () => {
    const parts = { corner: '2', wanted: '40″', available: '36″', mostRadius: '36″' };
    expect(texts['corner-does-not-fit'](parts)).toContain('the largest radius that fits is 36″.');
  });

  test('a circle has no corners rather than 0', () => {
    expect(texts['no-such-corner']({ corner: '1', count: '0' })).toContain('this outline has none');
  });
});
