import { describe, expect, test } from 'vitest';
import { calcCuring } from '../../../src/calculate/curing/index.ts';
import { num } from '../../../src/calculate/figure.ts';
import type { Finish, Pour } from '../../../src/calculate/job.ts';
import { fig } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';

/** A slab of 400 sq ft of each finish, and steps of 50 sq ft; 200 sq ft a gallon. */
function curingOf(
  finishes: readonly Finish[],
  pour: Partial<Pour> = {},
  roughSqFtPerGal: number | null = null,
) {
  const ids = finishes.map((finish, index) => ({ id: `slab-${index}`, finish }));
  return calcCuring({
    pour: { curing: null, laterCoat: null, ...pour },
    slabs: Object.fromEntries(ids.map((slab) => [slab.id, slab])),
    areas: Object.fromEntries(ids.map(({ id }) => [id, { area: fig(400, 'sq ft') }])),
    curedSqFt: fig(400 * finishes.length + 50, 'sq ft'),
    sundries: { curingCoverageSqFtPerGal: 200, curingRoughCoverageSqFtPerGal: roughSqFtPerGal },
  });
}

const gal = (...asked: Parameters<typeof curingOf>) => num(curingOf(...asked).figures.compound);

describe('what curing takes', () => {
  test('exact: a broomed face takes a third more than a smooth one', () => {
    // Steps are rough: 50 / 150.
    expect(gal(['float'])).toBeCloseTo(400 / 200 + 50 / 150, 9);
    expect(gal(['broom'])).toBeCloseTo(450 / 150, 9);
    expect(gal(['float', 'exposed-aggregate'])).toBeCloseTo(400 / 200 + 450 / 150, 9);
    expect(gal(['broom'], {}, 90)).toBe(5);
  });

  test('under covers no compound is needed, with a tenth more for laps', () => {
    for (const curing of ['wet-cover', 'sheeting'] as const) {
      const { compound, sheeting } = curingOf(['broom'], { curing }).figures;
      expect(num(compound)).toBe(0);
      expect(num(sheeting)).toBeCloseTo(495, 9);
    }
    expect(num(curingOf(['broom'], { curing: 'curing-compound' }).figures.sheeting)).toBe(0);
  });

  test('only a film is in the way of what comes later', () => {
    const inTheWay = (pour: Partial<Pour>) => num(curingOf(['broom'], pour).figures['film-in-the-way']);
    expect(inTheWay({ laterCoat: 'sealer' })).toBe(1);
    expect(inTheWay({ laterCoat: 'stain', curing: 'curing-compound' })).toBe(1);
    expect(inTheWay({ laterCoat: 'overlay', curing: 'sheeting' })).toBe(0);
    expect(inTheWay({})).toBe(0);
  });

  test('what nobody said is cured with compound', () => {
    expect(curingOf(['broom']).data.method).toBe('curing-compound');
    expect(curingOf(['broom'], { curing: 'wet-cover' }).data.method).toBe('wet-cover');
  });
});

testExpressions('curing compound', curingOf(['float', 'broom']).figures, 5);
testExpressions('curing under sheeting', curingOf(['float'], { curing: 'sheeting' }, 120).figures, 5);
