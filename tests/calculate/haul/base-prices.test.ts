import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import { Usd } from '../../../src/units/index.ts';
import { aBaseSupplier, aPlace, aSlab, haul, rate } from './a-haul.ts';

/*
 * Base of 10.83 tons, ordered as 11. A load of the long box is 9,800 lb, 4.9 tons: three loads ride back on
 * the three trips with rubble, or one delivery brings all of it.
 */
const SLABS = [aSlab({ baseIn: 4 })];
const PRICED = { price: rate('12', 'ton'), minimumUsd: new Usd(0) };

function baseOf(made: Parameters<typeof haul>[0]) {
  const { figures, data } = haul({ slabs: SLABS, ...made });
  return { base: figures.base, data, cost: data.planned?.plan.costUsd ?? 0, total: num(figures.total.cost) };
}

describe('base at a price of its own', () => {
  // Delivered at $19: 209 and 90. Fetched at $12: 132 and a quarter of an hour at the gate, three times.
  test('exact: a cheap yard is worth the turns that a delivery would spare', () => {
    const baseSupplier = aBaseSupplier({ deliveryUsd: new Usd(10) });
    const asDear = baseOf({ baseSupplier });
    expect(num(asDear.base.deliveries)).toBe(1);
    const cheap = baseOf({ baseSupplier, places: [aPlace({ base: PRICED })] });
    expect(num(cheap.base.deliveries)).toBe(0);
    expect(num(cheap.base.paired)).toBe(3);
    expect(num(cheap.base.bought?.['yard']?.cost ?? cheap.base.cost)).toBeCloseTo(11 * 12, 2);
    expect(cheap.cost).toBeCloseTo(cheap.total + 11 * 12, 2);
    expect(asDear.cost).toBeCloseTo(asDear.total + 11 * 19 + 10, 2);
  });

  test('exact: a minimum a load that is more than the load costs is paid', () => {
    const least = { price: rate('12', 'ton'), minimumUsd: new Usd(50) };
    const { base, data } = baseOf({ places: [aPlace({ base: least })] });
    // 4.9 tons are $58.80 and 1.2 tons $14.40: what the minimum pays for is filled in each load first.
    const loads = data.loads.filter(({ returns }) => returns === 'base').map(({ baseLb }) => baseLb);
    expect(loads.reduce((sum, lb) => sum + lb, 0)).toBeCloseTo(22_000, 6);
    expect(num(base.bought?.['yard']?.cost ?? base.cost)).toBe(150);
  });

  test('exact: the cheap place is filled first, the dear one brings what is left', () => {
    const places = [
      aPlace({ id: 'cheap', accepts: ['clean-concrete'], base: PRICED }),
      aPlace({ id: 'dear', accepts: ['soil'], base: { ...PRICED, price: rate('30', 'ton') } }),
    ];
    const { base, data } = baseOf({
      places,
      baseSupplier: aBaseSupplier({ deliveryUsd: new Usd(2000) }),
      slabs: [aSlab({ baseIn: 8, digIn: 2 })],
    });
    const { bought = {} } = base;
    const tonsOf = (place: string) => num(bought[place]?.tons ?? base.cost);
    const back = data.loads.filter(({ returns }) => returns === 'base');
    const alone = data.trips.filter(({ load, place }) => load === null && place === 'cheap').length;
    const cheapCount = back.filter(({ place }) => place === 'cheap').length + alone;
    // Every cheap load is full; on those of the dear place rides the rest.
    expect(cheapCount).toBeGreaterThan(0);
    expect(tonsOf('cheap')).toBeCloseTo(4.9 * cheapCount, 9);
    expect(tonsOf('dear')).toBeGreaterThan(0);
    expect(tonsOf('cheap') + tonsOf('dear') + num(base['supplier-tons'] ?? base.cost)).toBeCloseTo(22, 9);
  });

  test('where no place has a price of its own the supplier sells all', () => {
    const { base } = baseOf({});
    expect([base.bought, base['supplier-tons']]).toEqual([undefined, undefined]);
  });

  test('what is delivered is the supplier’s, to the ton', () => {
    const { base } = baseOf({
      places: [aPlace({ base: PRICED })],
      baseRoomLb: 9800,
      baseSupplier: aBaseSupplier({ deliveryUsd: new Usd(0), price: rate('20', 'ton') }),
    });
    expect(
      num(base['supplier-tons'] ?? base.cost) + num(base.bought?.['yard']?.tons ?? base.cost),
    ).toBeCloseTo(11, 9);
  });
});
