import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../../src/calculate/edits.ts';
import { type FigureTree, num } from '../../../src/calculate/figure.ts';
import type { Coating, Existing, Job } from '../../../src/calculate/job.ts';
import type { ExistingFigures } from '../../../src/calculate/tear-out/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { anExisting, haul, tearOut } from '../haul/a-haul.ts';
import { expressionCount, wrongFormulas } from '../haul/reevaluate.ts';

const SEED = 20_261_126;
const runs = { numRuns: runCount(50), seed: SEED };

/** 500 sq ft of 4 in, 150 lb/cu ft, with one thing changed. */
function torn(changed: Partial<Existing> = {}) {
  const result = tearOut([anExisting(changed)]);
  const [cargo] = result.data.cargo;
  const figures = result.figures.existing['drive'];
  if (cargo === undefined || figures === undefined) throw new Error('the drive goes');
  return { result, cargo, figures };
}

function loadWeightLb(figures: ExistingFigures): number {
  return num(figures['load-weight'] ?? figures.weight);
}

const ASSUMED = { thicknessIs: 'assumed' } as const;

describe('a thickness that nobody has seen', () => {
  test('exact: loads are planned for an inch more, all else for the thickness', () => {
    const { result, cargo, figures } = torn(ASSUMED);
    const measured = torn();
    expect(num(figures['load-thickness'])).toBe(5);
    expect(num(figures['weight-per-sq-ft'])).toBeCloseTo(62.5, 12);
    expect(num(figures.weight)).toBeCloseTo(25_000, 6);
    expect(num(cargo.weight)).toBeCloseTo(31_250, 6);
    expect(cargo.weight).toBe(figures['load-weight']);
    expect(num(cargo['loose-volume'])).toBeCloseTo(((500 * 5) / 12 / 27) * 1.6, 9);
    expect(num(result.figures.total.weight)).toBeCloseTo(31_250, 6);
    expect(num(cargo['loose-unit-weight'])).toBeCloseTo(93.75, 9);
    const hoursOf = (of: typeof result) => num(of.figures['hand-labor']['drive']?.slow ?? figures.weight);
    expect(hoursOf(result)).toBe(hoursOf(measured.result));
  });

  test('the most it may be, where somebody says it', () => {
    const { cargo, figures } = torn({ ...ASSUMED, thickestIn: 6 });
    expect(num(figures['load-thickness'])).toBe(6);
    expect(num(cargo.weight)).toBeCloseTo(37_500, 6);
  });

  test('a measured thickness has one weight', () => {
    const { cargo, figures } = torn();
    expect(num(figures['load-thickness'])).toBe(4);
    expect(cargo.weight).toBe(figures.weight);
    expect(cargo['loose-volume']).toBe(figures['loose-volume']);
    expect(figures).not.toHaveProperty('load-weight');
  });

  test('a load carries as much of it as if it were at its thickest', () => {
    const existing = [anExisting({ ...ASSUMED, thickestIn: 6 })];
    const perLoad = haul({ existing }).figures.streams['clean-concrete']?.['sq-ft-per-load']['drive']?.[
      'long-box'
    ];
    // 9,800 lb of 75 lb/sq ft are 130.67 sq ft.
    expect(perLoad === undefined ? null : num(perLoad)).toBe(130);
  });

  test('found thicker, it is known: loads are planned for what was found, not for an inch more', () => {
    const job = { site: { existing: { drive: anExisting(ASSUMED) } } } as unknown as Job;
    const { site } = applyEdits(job, [{ edit: 'thicker-existing', of: 'drive', byIn: 1 }]);
    const found = site.existing['drive'];
    expect(found).toMatchObject({ thicknessIn: 5, thicknessIs: 'measured', thickestIn: null });
    expect(num(torn(found).figures['load-thickness'])).toBe(5);
    // Which is what loads were planned for while nobody knew.
    expect(num(torn(ASSUMED).figures['load-thickness'])).toBe(5);
  });

  test.each([
    { thickestIn: 3.9375, codes: ['thickest-below-thickness'] },
    { thickestIn: 4, codes: [] },
  ])('at its thickest $thickestIn in, of 4 in: $codes', ({ thickestIn, codes }) => {
    const { problems } = torn({ ...ASSUMED, thickestIn }).result;
    expect(problems.map(({ code }) => code)).toEqual(codes);
    for (const { path, parts } of problems) {
      expect(path).toBe('site.existing.drive.thickest');
      expect(parts).toEqual({ thickest: '3 15/16″', thickness: '4″' });
    }
  });
});

describe('what sticks to a slab', () => {
  test.each<Coating>([
    { kind: 'paint' },
    { kind: 'sealer' },
    { kind: 'epoxy' },
    { kind: 'tile', thicknessIn: 1 },
    { kind: 'overlay', thicknessIn: 1 },
  ])('with $kind it is coated, whatever steel is in it', (coating) => {
    for (const steel of ['none', 'mesh', 'bars'] as const) {
      expect(torn({ coating, steel }).cargo.stream).toBe('coated');
    }
  });

  test('a film weighs nothing', () => {
    expect(num(torn({ coating: { kind: 'epoxy' } }).cargo.weight)).toBeCloseTo(25_000, 6);
  });

  // ASCE 7 (from memory): mortar 130 lb/cu ft; tile of 3/4 in on 1/2 in of mortar 16 lb/sq ft.
  test.each([
    { coating: { kind: 'overlay', thicknessIn: 1.5 }, layerLb: ((500 * 1.5) / 12) * 130 },
    { coating: { kind: 'tile', thicknessIn: 1.25 }, layerLb: 500 * 16 },
  ] as const)('published: $coating.kind adds $layerLb lb to 500 sq ft', ({ coating, layerLb }) => {
    const { cargo, figures } = torn({ coating });
    expect(num(figures.coating?.weight ?? figures.volume)).toBeCloseTo(layerLb, 6);
    expect(num(cargo.weight)).toBeCloseTo(25_000 + layerLb, 6);
    expect(num(figures['weight-per-sq-ft'])).toBeCloseTo(50 + layerLb / 500, 9);
    expect(num(cargo['loose-volume'])).toBeCloseTo(((500 * (4 + coating.thicknessIn)) / 12 / 27) * 1.6, 9);
  });

  // 3,400 lb/yd3 in place, 2,700 loose: worked haul problem, expertsmind.com 30170401 (seen).
  test('exact: half an inch of soil below it rides with it', () => {
    const { cargo, figures } = torn({ soilStuckIn: 0.5 });
    const soilLb = ((500 * 0.5) / 12 / 27) * 3400;
    expect(num(figures['soil-stuck']?.volume ?? figures.weight)).toBeCloseTo((500 * 0.5) / 12, 9);
    expect(num(figures['soil-stuck']?.weight ?? figures.weight)).toBeCloseTo(soilLb, 6);
    expect(cargo.stream).toBe('clean-concrete');
    expect(num(cargo.weight)).toBeCloseTo(25_000 + soilLb, 6);
    expect(num(cargo['loose-volume'])).toBeCloseTo(((500 * 4) / 12 / 27) * 1.6 + soilLb / 2700, 9);
  });

  test('formulas give their values', () => {
    const changes: readonly Partial<Existing>[] = [
      { ...ASSUMED },
      { ...ASSUMED, thickestIn: 5.5, soilStuckIn: 0.75 },
      { coating: { kind: 'tile', thicknessIn: 1.125 } },
      {
        ...ASSUMED,
        coating: { kind: 'overlay', thicknessIn: 2 },
        soilStuckIn: 0.25,
        unitWeightLbPerCuFt: 144,
      },
    ];
    const existing = changes.map((changed, index) => anExisting({ id: `thing-${index}`, ...changed }));
    const figures = tearOut(existing).figures satisfies FigureTree;
    expect(wrongFormulas(figures)).toEqual([]);
    expect(expressionCount(figures)).toBeGreaterThan(50);
  });

  test(`invariant: cargo is the slab at its thickest and its layers, none lighter (seed ${SEED})`, () => {
    const inches = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(inches(1, 12), inches(0, 3), inches(0.25, 3), inches(0.1, 2), (stated, more, on, below) => {
        const range = { ...ASSUMED, thicknessIn: stated, thickestIn: stated + more };
        const layers = { coating: { kind: 'overlay', thicknessIn: on }, soilStuckIn: below } as const;
        const alone = torn(range).figures;
        const { cargo, figures } = torn({ ...range, ...layers });
        const layersLb = [figures.coating, figures['soil-stuck']].reduce(
          (sum, layer) => sum + (layer === undefined ? Number.NaN : num(layer.weight)),
          0,
        );
        expect(loadWeightLb(alone)).toBeGreaterThanOrEqual(num(alone.weight) * (1 - 1e-12));
        expect(loadWeightLb(figures) / (loadWeightLb(alone) + layersLb)).toBeCloseTo(1, 9);
        expect(num(figures['hand-piece'])).toBeLessThan(num(alone['hand-piece']));
        const boxLb = num(cargo['loose-volume']) * 27 * num(cargo['loose-unit-weight']);
        expect(boxLb / num(cargo.weight)).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });
});
