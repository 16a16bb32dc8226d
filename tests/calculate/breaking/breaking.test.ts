import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calcBreaking } from '../../../src/calculate/breaking/index.ts';
import { num } from '../../../src/calculate/figure.ts';
import type { Existing, Production, TapedShape } from '../../../src/calculate/job.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import { existing, fig, machine, production, row } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';
import { anyShape, asTaped, at, byId, propertyRuns, rectangle, TAPE_LIMITS, values } from '../slabs.ts';

const old = at(existing, 'old-drive');
const sawn = (changed: Partial<Existing> = {}): Existing => ({
  ...old,
  breakOut: 'saw-and-lift',
  ...changed,
});
const lifting = production({
  'saw-and-lift': row('saw-and-lift', '200 sq ft per h', 2, { machine: 'loader-with-breaker' }),
  'break-out-by-hand': row('break-out-by-hand', '30 sq ft per h', 1, { machine: 'jackhammer' }),
});
const lifter = (liftsLb: number | null) =>
  byId(machine('loader-with-breaker', { liftsLb }), machine('jackhammer'));

/** Of 150 lb/cu ft: 50 lb/sq ft where it is 4 in thick. */
function breakingAt(rows: Production, things: readonly Existing[], liftsLb: number | null) {
  const shapes = calcOutline({ slabs: {}, existing: byId(...things), limits: TAPE_LIMITS });
  const weights = things.map(({ id, thicknessIn }) => [
    id,
    { 'weight-per-sq-ft': fig((thicknessIn * 150) / 12, 'lb/sq ft') },
  ]);
  return calcBreaking({
    existing: byId(...things),
    tearOut: { existing: Object.fromEntries(weights) },
    shapes: shapes.figures,
    outlines: shapes.data.existing,
    production: rows,
    machines: lifter(liftsLb),
  }).figures;
}
const breaking = (things: readonly Existing[], liftsLb: number | null = 800) =>
  breakingAt(lifting, things, liftsLb);
const gridOf = (shape: TapedShape, liftsLb = 800) =>
  values(at(breaking([sawn({ shape })], liftsLb).grids, 'old-drive'));
const cutFt = (shape: TapedShape, liftsLb = 800) => gridOf(shape, liftsLb)['cut-length'];

describe('pieces that a machine lifts', () => {
  // 4 in of 150 lb/cu ft is 50 lb/sq ft, and 800 lb of it 16 sq ft: 4 ft square.
  test('by hand: 20 by 10 ft in 5 by 3 pieces of 48 by 40 in, 4 cuts of 10 ft and 2 of 20', () => {
    const { grids, 'machine-piece': pieces, total } = breaking([sawn({ shape: rectangle(240, 120) })]);
    expect(num(at(pieces, 'old-drive'))).toBeCloseTo(48, 12);
    expect(values(at(grids, 'old-drive'))).toEqual({
      'box-along': 240,
      'box-across': 120,
      'pieces-along': 5,
      'pieces-across': 3,
      'piece-along': 48,
      'piece-across': 40,
      'cut-length': 80,
    });
    expect(num(total['cut-length'])).toBe(80);
  });

  test('twice as thick is half as large in area: 24 by 24 in of 8 in weigh 400 lb', () => {
    const { 'machine-piece': pieces } = breaking([sawn({ thicknessIn: 8 })], 400);
    expect(num(at(pieces, 'old-drive'))).toBeCloseTo(24, 12);
  });

  test('a thing that is as small as a piece is lifted whole', () => {
    expect(cutFt(rectangle(48, 48))).toBe(0);
  });

  test('an L of 8 by 8 ft is cut where it is: each line crosses an arm of 40 in', () => {
    const points = [
      [0, 0],
      [96, 0],
      [96, 40],
      [40, 40],
      [40, 96],
      [0, 96],
    ].map(([xIn = 0, yIn = 0]) => ({ xIn, yIn }));
    // The lines at 48 in run through the arms of 40 in alone.
    expect(cutFt(asTaped({ kind: 'corners', points }))).toBeCloseTo(80 / 12, 9);
  });

  test('what a breaker breaks has a piece where its machine says what it lifts, and no grid', () => {
    const broken: Existing = { ...old, breakOut: 'breaker' };
    const rows = production({
      'break-out': row('break-out', '120 sq ft per h', 2, { machine: 'loader-with-breaker' }),
    });
    const made = (liftsLb: number | null) => breakingAt(rows, [broken], liftsLb);
    expect(num(at(made(200)['machine-piece'], 'old-drive'))).toBeCloseTo(24, 12);
    expect(made(200).grids).toEqual({});
    expect(made(null)['machine-piece']).toEqual({});
    expect(num(made(200).total['cut-length'])).toBe(0);
  });

  test('what a jackhammer breaks has no piece of a machine', () => {
    expect(breaking([{ ...old, breakOut: 'jackhammer' }])).toMatchObject({ 'machine-piece': {}, grids: {} });
  });

  test('sawn things add their cuts; a machine that does not say what it lifts throws', () => {
    const two = [
      sawn({ id: 'one', shape: rectangle(240, 120) }),
      sawn({ id: 'two', shape: rectangle(96, 48) }),
    ];
    expect(num(breaking(two).total['cut-length'])).toBe(84);
    expect(() => breaking([sawn()], null)).toThrow(RangeError);
  });

  test('property: no piece is heavier than the lift, one fewer would be, and turning changes nothing', () => {
    fc.assert(
      fc.property(
        anyShape,
        fc.integer({ min: 60, max: 3000 }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (shape, liftsLb, turnedRad) => {
          const grid = gridOf(shape, liftsLb);
          const sideIn = 12 * Math.sqrt(liftsLb / 50);
          expect(((grid['piece-along'] * grid['piece-across']) / 144) * 50).toBeLessThanOrEqual(
            liftsLb * (1 + 1e-6),
          );
          for (const way of ['along', 'across'] as const) {
            expect(grid[`piece-${way}`]).toBeLessThanOrEqual(sideIn * (1 + 1e-6));
            const fewer = grid[`pieces-${way}`] - 1;
            if (fewer > 0) expect(grid[`box-${way}`] / fewer).toBeGreaterThan(sideIn);
          }
          expect(cutFt({ ...shape, turnedRad }, liftsLb)).toBeCloseTo(grid['cut-length'], 5);
        },
      ),
      { ...propertyRuns, numRuns: Math.ceil(propertyRuns.numRuns / 4) },
    );
  });

  testExpressions('breaking', breaking([sawn()]), 6);
});
