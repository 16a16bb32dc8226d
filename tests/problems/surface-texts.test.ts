import { describe, expect, test } from 'vitest';
import { problemsEn } from '../../src/words/problems-en.ts';

const { texts } = problemsEn;

describe('what the calculation finds wrong with a new surface, in words', () => {
  test('two heights at one place are named, with how far they are apart', () => {
    const parts = { first: 'Garage floor', second: 'Drive, first corner', by: '1/2″' };
    expect(texts['heights-disagree'](parts)).toBe(
      '"Garage floor" and "Drive, first corner" are at one place, and their heights are 1/2″ apart. Level one of them again, or move it to where it was read.',
    );
  });

  test('too few points are named, and what would do', () => {
    expect(texts['surface-short-of-points']({ slab: 'Drive', known: '"Garage floor"' })).toBe(
      'The new surface of "Drive" has "Garage floor", and it takes three points that are not in a line. Write the height of another place on it, kind: finish.',
    );
  });

  test('a profile that crosses no known surface says what would do', () => {
    expect(texts['profile-off-slabs']({})).toContain('Run it across one, not along its edge');
  });

  test('a foot that heights cannot tell says which are missing', () => {
    expect(texts['foot-off-slabs']({})).toContain('No slab with heights lies at this foot');
    expect(texts['foot-without-old']({ slab: 'Walk' })).toContain(
      'What is there now under "Walk" is not known',
    );
  });
});
