import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compactedSqFtPerHr, liftCount, plateHr } from '../../../src/calculate/base/index.ts';
import { type FigureTree, num } from '../../../src/calculate/figure.ts';
import type { Machine } from '../../../src/calculate/job.ts';
import { runCount } from '../../support/property-runs.ts';
import { machine } from '../crew/a-plan.ts';
import { aBaseSupplier, aSlab, base, byId, rectangle } from '../haul/a-haul.ts';
import { wrongFormulas } from '../haul/reevaluate.ts';

const SEED = 20_261_125;
const runs = { numRuns: runCount(200), seed: SEED };

/** 23 in wide, 3,600 ft an hour, lifts of 5 in, 3 passes each way. */
function aPlate(id: string, plate: Partial<Machine['plate']> = {}): Machine {
  return machine('plate-compactor', {
    id,
    plate: { widthIn: 23, travelFtPerHr: 3600, liftIn: 5, passesEachWay: 3, ...plate },
  });
}

/** What is figured for one slab of so many feet. */
function compacted(
  made: {
    readonly baseIn?: number;
    readonly feet?: readonly [number, number];
    readonly machines?: readonly Machine[];
    readonly baseMachine?: string | null;
  } = {},
) {
  const { baseIn = 8, feet: [lengthFt, widthFt] = [30, 20], machines = [], baseMachine = null } = made;
  const slab = aSlab({ baseIn, shape: rectangle(lengthFt, widthFt) });
  const { figures } = base([slab], aBaseSupplier(), 0, { machines: byId(machines), baseMachine });
  const own = figures.slabs['drive'];
  if (own === undefined) throw new RangeError('the slab has no base');
  return {
    figures,
    lifts: num(own.lifts),
    liftIn: num(own['lift-thickness']),
    passes: num(own.passes),
    hours: num(own['plate-hours']),
    totalHr: num(figures.total['plate-hours']),
  };
}

describe('exact: 30 x 20 ft by hand', () => {
  // Without a plate of its own: lifts of 4 in; 17 in of 20 tell, 4,200 ft/h, 50 min/h, 4 passes.
  // (17/12) x 4200 x (50/60) / 4 = 1239.58 sq ft/h.
  test.each([
    { baseIn: 4, lifts: 1, liftIn: 4 },
    { baseIn: 8, lifts: 2, liftIn: 4 },
    { baseIn: 8.25, lifts: 3, liftIn: 2.75 },
    { baseIn: 2, lifts: 1, liftIn: 2 },
  ])('$baseIn in of base in lifts of 4 in at most: $lifts of $liftIn in', ({ baseIn, lifts, liftIn }) => {
    const found = compacted({ baseIn });
    expect(found).toMatchObject({ lifts, liftIn, passes: 4 });
    expect(found.hours).toBeCloseTo((600 * lifts) / 1239.583333333, 9);
  });

  // 20 in of 23 tell: (20/12) x 3600 x (50/60) / 6 = 833.33 sq ft/h; 600 x 2 / 833.33 = 1.44 h.
  test('the plate of the company', () => {
    const found = compacted({ machines: [aPlate('plate')] });
    expect(found).toMatchObject({ lifts: 2, liftIn: 4, passes: 6 });
    expect(found.hours).toBeCloseTo(1.44, 12);
  });

  test('what a plate does not say is as is usual', () => {
    const found = compacted({ machines: [aPlate('plate', { travelFtPerHr: null, passesEachWay: null })] });
    expect(found).toMatchObject({ lifts: 2, passes: 4 });
    expect(found.hours).toBeCloseTo((600 * 2 * 4) / ((20 / 12) * 4200 * (50 / 60)), 9);
  });
});

describe('which compactor', () => {
  const machines = [machine('jackhammer'), aPlate('small', { liftIn: 3 }), aPlate('large', { liftIn: 8 })];

  test.each([
    ['the machine of the base', 'large', 1],
    ['the first plate where the base is made by another machine', 'jackhammer', 3],
    ['the first plate where the base has no machine', null, 3],
  ])('%s', (_, baseMachine, lifts) => {
    expect(compacted({ machines, baseMachine }).lifts).toBe(lifts);
  });

  test('keys of a plate on another machine do not count', () => {
    const saw = { ...aPlate('saw', { liftIn: 2 }), kind: 'cut-off-saw' } as const;
    expect(compacted({ machines: [saw], baseMachine: 'saw' })).toMatchObject({ lifts: 2, passes: 4 });
  });
});

test('hours add up over the slabs with a base, and none are run without one', () => {
  const slabs = [aSlab({ baseIn: 4 }), aSlab({ id: 'walk', baseIn: 9 }), aSlab({ id: 'patio' })];
  const { figures } = base(slabs);
  const each = Object.values(figures.slabs).map((slab) => num(slab['plate-hours']));
  // 500 sq ft in one lift and in three.
  expect(each).toHaveLength(2);
  expect((each[1] ?? 0) / (each[0] ?? 0)).toBeCloseTo(3, 12);
  expect(num(figures.total['plate-hours'])).toBeCloseTo((500 * 4) / 1239.583333333, 9);
  expect(num(base([aSlab()]).figures.total['plate-hours'])).toBe(0);
});

test('formulas give their values', () => {
  const { figures } = compacted({ baseIn: 7.3, feet: [41.7, 3.9], machines: [aPlate('plate')] });
  expect(wrongFormulas(figures satisfies FigureTree)).toEqual([]);
});

describe(`invariants (seed ${SEED})`, () => {
  const thickness = fc.double({ min: 0.5, max: 48, noNaN: true });
  const more = fc.double({ min: 0.01, max: 12, noNaN: true });
  const feet = fc.double({ min: 1, max: 200, noNaN: true });

  test('a thicker base never has fewer lifts nor fewer hours', () => {
    fc.assert(
      fc.property(thickness, more, (baseIn, moreIn) => {
        const [one, other] = [compacted({ baseIn }), compacted({ baseIn: baseIn + moreIn })];
        expect(other.lifts).toBeGreaterThanOrEqual(one.lifts);
        expect(other.hours).toBeGreaterThanOrEqual(one.hours);
      }),
      runs,
    );
  });

  test('equal lifts make the base, none over the limit, and one fewer would not do', () => {
    fc.assert(
      fc.property(thickness, fc.double({ min: 1, max: 24, noNaN: true }), (baseIn, mostIn) => {
        const { lifts, liftIn } = compacted({ baseIn, machines: [aPlate('plate', { liftIn: mostIn })] });
        expect(lifts * liftIn).toBeCloseTo(baseIn, 9);
        expect(liftIn).toBeLessThanOrEqual(mostIn * (1 + 1e-8));
        expect((lifts - 1) * mostIn).toBeLessThan(baseIn);
      }),
      runs,
    );
  });

  test('hours grow with the area', () => {
    fc.assert(
      fc.property(feet, feet, more, (lengthFt, widthFt, moreFt) => {
        const larger = compacted({ feet: [lengthFt + moreFt, widthFt] });
        expect(larger.totalHr).toBeGreaterThan(compacted({ feet: [lengthFt, widthFt] }).totalHr);
      }),
      runs,
    );
  });

  test('a wider, faster plate with fewer passes never takes longer', () => {
    const key = fc.constantFrom('widthIn' as const, 'travelFtPerHr' as const, 'liftIn' as const);
    fc.assert(
      fc.property(key, fc.double({ min: 1, max: 3, noNaN: true }), (grown, factor) => {
        const { plate } = aPlate('plate');
        const better = aPlate('plate', { [grown]: (plate[grown] ?? 0) * factor });
        const hours = compacted({ machines: [aPlate('plate')] }).hours;
        expect(compacted({ machines: [better] }).hours).toBeLessThanOrEqual(hours);
        const fewer = aPlate('plate', { passesEachWay: 2 });
        expect(compacted({ machines: [fewer] }).hours).toBeCloseTo((hours * 2) / 3, 9);
      }),
      runs,
    );
  });
});

describe('refusals', () => {
  const plate = { widthIn: 20, overlapIn: 3, travelFtPerHr: 4200, efficiencyRatio: 0.8, passes: 4 };

  test.each([
    ['no base', () => liftCount({ thicknessIn: 0, mostIn: 4 })],
    ['a base that is no number', () => liftCount({ thicknessIn: Number.NaN, mostIn: 4 })],
    ['lifts of nothing', () => liftCount({ thicknessIn: 4, mostIn: 0 })],
    ['a plate no wider than its overlap', () => compactedSqFtPerHr({ ...plate, widthIn: 3 })],
    ['an overlap below 0', () => compactedSqFtPerHr({ ...plate, overlapIn: -0.1 })],
    ['a plate that stands', () => compactedSqFtPerHr({ ...plate, travelFtPerHr: 0 })],
    ['more than the whole hour', () => compactedSqFtPerHr({ ...plate, efficiencyRatio: 1.01 })],
    ['nothing of the hour', () => compactedSqFtPerHr({ ...plate, efficiencyRatio: 0 })],
    ['less than one pass', () => compactedSqFtPerHr({ ...plate, passes: 0.9 })],
    ['an area below 0', () => plateHr({ areaSqFt: -1, lifts: 1, sqFtPerHr: 1000 })],
    ['less than one lift', () => plateHr({ areaSqFt: 1, lifts: 0, sqFtPerHr: 1000 })],
    ['no output', () => plateHr({ areaSqFt: 1, lifts: 1, sqFtPerHr: Number.NaN })],
  ])('%s', (_, call) => {
    expect(call).toThrow(RangeError);
  });

  test('the ends are taken', () => {
    expect(liftCount({ thicknessIn: 4, mostIn: 4 })).toBe(1);
    expect(compactedSqFtPerHr({ ...plate, overlapIn: 0, efficiencyRatio: 1, passes: 1 })).toBe(7000);
    expect(plateHr({ areaSqFt: 0, lifts: 1, sqFtPerHr: 1000 })).toBe(0);
  });
});
