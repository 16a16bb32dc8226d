import { describe, expect, test } from 'vitest';
import { problemsEn } from '../../src/words/problems-en.ts';

const { texts } = problemsEn;

describe('what the calculation finds wrong with steps and walls, in words', () => {
  test('names the number that does not fit and the one it does not fit to', () => {
    expect(texts['foot-above-tread']({ rise: '8″', riser: '7″' })).toContain(
      'would rise 8″ here, and the lowest step is 7″ high',
    );
    expect(texts['treads-rise-too-much']({ treads: '22″', rise: '21″' })).toContain(
      'would rise 22″, and the whole flight rises 21″',
    );
    expect(texts['steps-without-room']({ run: '5′ 0″', room: '4′ 6″' })).toContain(
      'are 5′ 0″ along the ground, and there is room for 4′ 6″',
    );
    expect(texts['steps-do-not-rise']({ from: 'walk-end', to: 'porch', by: '2″' })).toContain(
      '"porch" lies 2″ below "walk-end"',
    );
    expect(texts['steps-of-nothing']({})).toContain('so nothing is poured');
    expect(texts['wall-off-slab']({ slab: 'Walk', by: '1′ 2″' })).toContain('1′ 2″ away from "Walk"');
    expect(texts['wall-without-surface']({ slab: 'Walk' })).toContain('three points of the heights on it');
  });
});
