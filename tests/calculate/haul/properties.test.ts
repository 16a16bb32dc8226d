import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import {
  boxLimitLbPerCuYd,
  loadCount,
  roundTripCount,
  splitWeightLb,
  sqFtPerLoad,
  ticketUsd,
  tripHr,
  volumeOfWeightCuYd,
  weightOfVolumeLb,
} from '../../../src/calculate/haul/index.ts';
import type { Material, Steel } from '../../../src/calculate/job.ts';
import { Usd } from '../../../src/units/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { anExisting, aPlace, aSlab, haul, LONG_BOX, rate, rectangle, SHORT_BOX } from './a-haul.ts';

const SEED = 20_260_504;
const TICKET = { looseCuYd: 1, streams: [], withBase: false };
const runs = { numRuns: runCount(200), seed: SEED };

const thing = fc.record({
  lengthFt: fc.double({ min: 2, max: 80, noNaN: true }),
  widthFt: fc.double({ min: 2, max: 30, noNaN: true }),
  thicknessIn: fc.double({ min: 1, max: 12, noNaN: true }),
  material: fc.constantFrom<Material>('concrete', 'brick', 'asphalt'),
  steel: fc.constantFrom<Steel>('none', 'mesh', 'bars'),
  unitWeight: fc.option(fc.double({ min: 30, max: 180, noNaN: true })),
});
type Thing = typeof thing extends fc.Arbitrary<infer T> ? T : never;

function existingOf(things: readonly Thing[], factor = 1) {
  return things.map((made, index) =>
    anExisting({
      id: `thing-${index}`,
      shape: rectangle(made.lengthFt, made.widthFt),
      thicknessIn: made.thicknessIn * factor,
      material: made.material,
      steel: made.steel,
      unitWeightLbPerCuFt: made.unitWeight,
    }),
  );
}

describe(`invariants of the haul (seed ${SEED})`, () => {
  test('the loads of a stream add up to it exactly; none is over payload or box', () => {
    const dig = fc.double({ min: 0.5, max: 12, noNaN: true });
    fc.assert(
      fc.property(fc.array(thing, { maxLength: 4 }), dig, fc.boolean(), (things, digIn, small) => {
        const trailers = small ? [SHORT_BOX] : [LONG_BOX];
        const payload = small ? 7_300 : 9_800;
        const { lengthIn, widthIn, heightIn } = (small ? SHORT_BOX : LONG_BOX).box;
        const boxCuYd = (lengthIn * widthIn * heightIn) / 46_656;
        const existing = existingOf(things);
        const { figures, data } = haul({ existing, slabs: [aSlab({ digIn })], trailers });

        for (const [stream, planned] of Object.entries(figures.streams)) {
          const loads = data.loads.filter((load) => load.streams.some((one) => one === stream));
          const weight = planned.loads.inputs['weightLb'];
          expect(weight).toBeDefined();
          expect(loads.reduce((sum, load) => sum + load.weightLb, 0)).toBe(weight && num(weight));
          expect(loads.length).toBe(num(planned.loads));
        }
        expect(data.loads.reduce((sum, load) => sum.plus(load.feeUsd), new Usd(0)).toFixed(2)).toBe(
          new Usd(figures.total.fees.value).toFixed(2),
        );
        for (const load of data.loads) {
          expect(load.weightLb).toBeGreaterThan(0);
          expect(load.weightLb).toBeLessThanOrEqual(payload * (1 + 1e-9));
          expect(load.looseCuYd).toBeLessThanOrEqual(boxCuYd * (1 + 1e-6));
        }
      }),
      runs,
    );
  });

  test('the square feet of the loads are those of the things', () => {
    fc.assert(
      fc.property(fc.array(thing, { minLength: 1, maxLength: 4 }), (things) => {
        const { data } = haul({ existing: existingOf(things) });
        const loadedSqFt = data.loads.reduce((sum, load) => sum + (load.areaSqFt ?? 0), 0);
        const thereSqFt = things.reduce((sum, made) => sum + made.lengthFt * made.widthFt, 0);
        expect(loadedSqFt / thereSqFt).toBeCloseTo(1, 7);
      }),
      runs,
    );
  });

  test('loads and cost never fall when the weight grows', () => {
    const more = fc.double({ min: 1, max: 2, noNaN: true });
    fc.assert(
      fc.property(fc.array(thing, { minLength: 1, maxLength: 3 }), more, (things, factor) => {
        const trailers = [SHORT_BOX, LONG_BOX];
        const plain = haul({ existing: existingOf(things), trailers: [LONG_BOX] });
        const thick = haul({ existing: existingOf(things, factor), trailers: [LONG_BOX] });
        expect(thick.data.loads.length).toBeGreaterThanOrEqual(plain.data.loads.length);
        const cost = (scale: number) =>
          num(haul({ existing: existingOf(things, scale), trailers }).figures.total.cost);
        expect(cost(factor)).toBeGreaterThanOrEqual(cost(1));
      }),
      runs,
    );
  });

  test('never a load too few, never one too many', () => {
    const lb = fc.double({ min: 1, max: 1e6, noNaN: true });
    const yd = fc.double({ min: 0.01, max: 500, noNaN: true });
    fc.assert(
      fc.property(lb, yd, lb, yd, (weightLb, looseCuYd, payloadLb, boxCuYd) => {
        const count = loadCount({ weightLb, looseCuYd, payloadLb, boxCuYd });
        expect(count * payloadLb).toBeGreaterThanOrEqual(weightLb * (1 - 1e-8));
        expect(count * boxCuYd).toBeGreaterThanOrEqual(looseCuYd * (1 - 1e-8));
        const fewer = count - 1;
        expect(fewer * payloadLb < weightLb || fewer * boxCuYd < looseCuYd).toBe(true);
      }),
      runs,
    );
  });

  test('a split is exact and even', () => {
    const count = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(fc.double({ min: 100, max: 1e6, noNaN: true }), count, (weightLb, loadsCount) => {
        const loads = splitWeightLb(weightLb, loadsCount, 1);
        expect(loads.length).toBe(loadsCount);
        expect(loads.reduce((sum, load) => sum + load, 0)).toBe(weightLb);
        expect(Math.max(...loads) - Math.min(...loads)).toBeLessThanOrEqual(1);
      }),
      runs,
    );
  });

  test('more money never buys a cheaper ticket, and none is under the minimum', () => {
    const lb = fc.double({ min: 0, max: 20_000, noNaN: true });
    const cents = fc.integer({ min: 0, max: 20_000 });
    fc.assert(
      fc.property(lb, lb, cents, cents, (oneLb, otherLb, feeCents, minimumCents) => {
        const minimumUsd = new Usd(minimumCents).dividedBy(100);
        const place = aPlace({ fee: rate((feeCents / 100).toFixed(2), 'ton'), minimumUsd });
        const ticket = (weightLb: number) => ticketUsd(place, { ...TICKET, weightLb });
        const [light, heavy] = oneLb < otherLb ? [oneLb, otherLb] : [otherLb, oneLb];
        expect(ticket(heavy).gte(ticket(light))).toBe(true);
        expect(ticket(light).gte(minimumUsd)).toBe(true);
      }),
      runs,
    );
  });

  test('round trips lie between the larger count and the sum', () => {
    const count = fc.integer({ min: 0, max: 40 });
    fc.assert(
      fc.property(count, count, count, (outCount, baseCount, pairableCount) => {
        const trips = roundTripCount({ outCount, baseCount, pairableCount });
        expect(trips).toBeGreaterThanOrEqual(Math.max(outCount, baseCount));
        expect(trips).toBeLessThanOrEqual(outCount + baseCount);
      }),
      runs,
    );
  });
});

describe('refusals', () => {
  const load = { weightLb: 1, looseCuYd: 1, payloadLb: 1, boxCuYd: 1 };
  test.each([
    ['a weight below 0', () => loadCount({ ...load, weightLb: -1 })],
    ['a volume of NaN', () => loadCount({ ...load, looseCuYd: Number.NaN })],
    ['no payload', () => loadCount({ ...load, payloadLb: 0 })],
    ['no box', () => loadCount({ ...load, boxCuYd: 0 })],
    ['a limit of no box', () => boxLimitLbPerCuYd(1, 0)],
    ['a volume of weightless stuff', () => volumeOfWeightCuYd(1, 0)],
    ['a volume of less than nothing', () => volumeOfWeightCuYd(-1, 1)],
    ['a weight of weightless stuff', () => weightOfVolumeLb(1, 0)],
    ['a weight of less than nothing', () => weightOfVolumeLb(-1, 1)],
    ['half a load', () => splitWeightLb(1, 0.5, 1)],
    ['an endless weight', () => splitWeightLb(Infinity, 2, 1)],
    ['a step of 0', () => splitWeightLb(1, 2, 0)],
    [
      'square feet of a weightless slab',
      () => sqFtPerLoad({ payloadLb: 1, boxCuYd: 1, looseLbPerCuFt: 1, weightLbPerSqFt: 0, stepSqFt: 1 }),
    ],
    ['a trip that gains time', () => tripHr({ loadingHr: 0, outHr: -1, turnHr: 0, backHr: 0 })],
    ['half a trip', () => roundTripCount({ outCount: 1.5, baseCount: 0, pairableCount: 0 })],
    ['a fee by the mile', () => ticketUsd(aPlace({ fee: rate('1', 'mi') }), { ...TICKET, weightLb: 1 })],
  ])('%s', (_, call) => {
    expect(call).toThrow(RangeError);
  });
});
