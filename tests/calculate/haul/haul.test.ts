import { describe, expect, test } from 'vitest';
import { type FigureTree, num } from '../../../src/calculate/figure.ts';
import type { Stream } from '../../../src/calculate/job.ts';
import { Usd } from '../../../src/units/index.ts';
import {
  aBaseSupplier,
  anExisting,
  aPlace,
  aSlab,
  aTruck,
  haul,
  LONG_BOX,
  rate,
  rectangle,
  SHORT_BOX,
} from './a-haul.ts';
import { expressionCount, wrongFormulas } from './reevaluate.ts';

function streamOf(result: ReturnType<typeof haul>, stream: Stream) {
  const figures = result.figures.streams[stream];
  if (figures === undefined) throw new Error(`no figures of ${stream}`);
  return figures;
}

describe('one stream', () => {
  // Worked by hand: 25,000 lb in 9,800 lb loads; a trip of 0.4 + 0.5 + 0.25 + 0.5 h and 20 mi;
  // $30 an hour, $1 a mile, $40 a load.
  test('500 sq ft of 4 in concrete', () => {
    const result = haul();
    const concrete = streamOf(result, 'clean-concrete');
    expect(num(concrete.loads)).toBe(3);
    expect(num(concrete['weight-per-load'])).toBeCloseTo(8333.333, 3);
    expect(num(concrete['sq-ft-per-load']['drive'] ?? concrete.loads)).toBe(196);
    expect(num(concrete.fee)).toBe(120);
    expect(num(concrete.hours)).toBeCloseTo(4.95, 9);
    expect(num(concrete.miles)).toBe(60);
    expect(num(concrete.cost)).toBe(328.5);
    expect(result.data.choices).toEqual({
      'clean-concrete': { trailer: 'long-box', place: 'yard', limitedBy: 'weight' },
    });
    expect(result.data.loads.map(({ name, weightLb }) => [name, weightLb])).toEqual([
      ['load-1', 8334],
      ['load-2', 8333],
      ['load-3', 8333],
    ]);
  });

  test('a load: its square feet, its height in the box, its ticket', () => {
    const [load] = haul().data.loads;
    expect(load?.areaSqFt).toBeCloseTo(166.68, 6);
    expect(load?.looseCuYd).toBeCloseTo(8334 / 2531.25, 6);
    // 88.896 cu ft over a floor of 98 sq ft.
    expect(load?.fillIn).toBeCloseTo((88.896 / 98) * 12, 6);
    expect(load?.feeUsd.toFixed(2)).toBe('40.00');
    expect(load?.returns).toBe('empty');
    expect(load?.pieces).toEqual([
      { existingId: 'drive', areaSqFt: load?.areaSqFt, weightLb: load?.weightLb },
    ]);
  });

  test('no load more for the noise of doubles: 448 sq ft of 5 in is four loads of 7,000 lb', () => {
    const existing = [anExisting({ shape: rectangle(28, 16), thicknessIn: 5 })];
    const trailers = [{ ...LONG_BOX, grossRatingLb: 11_200 }];
    const result = haul({ existing, trailers });
    expect(num(streamOf(result, 'clean-concrete').loads)).toBe(4);
  });

  test('the box governs light rubble', () => {
    const existing = [anExisting({ unitWeightLbPerCuFt: 40 })];
    const result = haul({ existing });
    // 9.877 loose yd3 in a box of 7.259; 6,667 lb would have been one load.
    expect(num(streamOf(result, 'clean-concrete').loads)).toBe(2);
    expect(result.data.choices['clean-concrete']?.limitedBy).toBe('box');
  });

  test('loads that fill the box to the brim are cut finer than a pound', () => {
    // 245 cu ft in place are 392 loose, two boxes of 196; 8,085 lb, half of it 4,042.5.
    const existing = [anExisting({ shape: rectangle(35, 21), unitWeightLbPerCuFt: 33 })];
    const loads = haul({ existing }).data.loads;
    expect(loads.map(({ weightLb }) => weightLb)).toEqual([4042.5, 4042.5]);
  });

  test('a fee by the ton is the sum of the tickets, each with its minimum', () => {
    const place = aPlace({ fee: rate('38.91', 'ton'), minimumUsd: new Usd(25) });
    // 8,334 lb: 162.13797; 8,333 lb: 162.118515.
    expect(num(streamOf(haul({ places: [place] }), 'clean-concrete').fee)).toBeCloseTo(486.38, 9);
    const dear = aPlace({ fee: rate('38.91', 'ton'), minimumUsd: new Usd(200) });
    expect(num(streamOf(haul({ places: [dear] }), 'clean-concrete').fee)).toBe(600);
  });

  test('a truck may cost by the hour', () => {
    const result = haul({ towVehicle: aTruck({ cost: rate('20', 'h') }) });
    expect(num(streamOf(result, 'clean-concrete').cost)).toBe(120 + 4.95 * 50);
  });

  test('soil is loaded by weight, not by the square foot', () => {
    const result = haul({ existing: [], slabs: [aSlab({ digIn: 6 })] });
    const soil = streamOf(result, 'soil');
    expect(soil['sq-ft-per-load']).toEqual({});
    expect(num(soil.loads)).toBe(4);
    for (const load of result.data.loads) {
      expect(load.areaSqFt).toBeNull();
      expect(load.pieces.map(({ existingId }) => existingId)).toEqual([null]);
    }
  });
});

describe('several things in a stream', () => {
  const existing = [
    anExisting({ id: 'drive', shape: rectangle(20, 10), thicknessIn: 6 }),
    anExisting({ id: 'walk', shape: rectangle(20, 4), thicknessIn: 4 }),
  ];

  test('square feet per load are said for each', () => {
    const perLoad = streamOf(haul({ existing }), 'clean-concrete')['sq-ft-per-load'];
    expect(Object.entries(perLoad).map(([id, figure]) => [id, num(figure)])).toEqual([
      ['drive', 130],
      ['walk', 196],
    ]);
  });

  test('they are loaded in order, one split over two loads', () => {
    const loads = haul({ existing }).data.loads;
    // 15,000 lb of drive and 4,000 of walk in two loads.
    expect(loads.map((load) => [load.weightLb, load.pieces.map(({ existingId }) => existingId)])).toEqual([
      [9500, ['drive']],
      [9500, ['drive', 'walk']],
    ]);
    expect(loads[1]?.areaSqFt).toBeCloseTo(5500 / 75 + 4000 / 50, 6);
  });

  test('where one thing alone is looser than the box allows, there is a load more', () => {
    const result = haul({
      existing: [
        anExisting({ id: 'heavy', shape: rectangle(20, 10), thicknessIn: 4 }),
        anExisting({ id: 'light', shape: rectangle(25, 16), thicknessIn: 4, unitWeightLbPerCuFt: 60 }),
      ],
    });
    const { loads } = streamOf(result, 'clean-concrete');
    // 18,000 lb and 11.85 yd3 would be two loads; 9,000 lb with 8,000 of the light are 7.90 + 0.40 yd3.
    expect(num(loads)).toBe(3);
    expect(loads.formula).toHaveProperty('method');
  });
});

describe('the choice of trailer and place', () => {
  test('with a flat fee a load the larger trailer wins', () => {
    expect(haul({ trailers: [SHORT_BOX, LONG_BOX] }).data.choices['clean-concrete']?.trailer).toBe(
      'long-box',
    );
  });

  test('a nearer place with a higher fee can be the cheaper one', () => {
    const near = aPlace({ id: 'near', fee: rate('60', 'load'), distanceMi: 2, driveHr: 0.1 });
    expect(haul({ places: [aPlace(), near] }).data.choices['clean-concrete']?.place).toBe('near');
    const dear = aPlace({ id: 'near', fee: rate('90', 'load'), distanceMi: 2, driveHr: 0.1 });
    expect(haul({ places: [aPlace(), dear] }).data.choices['clean-concrete']?.place).toBe('yard');
  });

  test('equal cost: the first by name, whatever the order of the files', () => {
    const places = [aPlace({ id: 'b-yard' }), aPlace({ id: 'a-yard' })];
    expect(haul({ places }).data.choices['clean-concrete']?.place).toBe('a-yard');
  });

  test('equal cost: fewer trips go before the name', () => {
    // Next door and loaded in no time, only the tickets cost: 15,000 lb at $10 a ton, three loads or two.
    const place = aPlace({ fee: rate('10', 'ton'), distanceMi: 0, driveHr: 0, turnHr: 0 });
    const trailers = [{ ...SHORT_BOX, id: 'a-short' }, LONG_BOX];
    const existing = [anExisting({ shape: rectangle(30, 10) })];
    const choice = haul({ trailers, places: [place], existing, loadingHr: 0 }).data.choices['clean-concrete'];
    expect(choice?.trailer).toBe('long-box');
  });

  test('each stream goes to a place that takes it', () => {
    const places = [
      aPlace({ id: 'crusher', accepts: ['clean-concrete'] }),
      aPlace({ id: 'fill', accepts: ['soil'] }),
    ];
    const result = haul({ places, slabs: [aSlab({ digIn: 4 })] });
    expect(result.data.choices['clean-concrete']?.place).toBe('crusher');
    expect(result.data.choices.soil?.place).toBe('fill');
    expect(result.data.loads.flatMap(({ streams }) => streams)).toEqual([
      ...Array.from({ length: 3 }, () => 'clean-concrete'),
      ...Array.from({ length: 3 }, () => 'soil'),
    ]);
  });

  test('a stream that no place takes is a problem, the others are planned all the same', () => {
    const places = [aPlace({ accepts: ['clean-concrete'] })];
    const result = haul({ places, slabs: [aSlab({ digIn: 4 })] });
    expect(result.problems).toEqual([
      { code: 'no-place-for-stream', path: 'company.places', parts: { stream: 'soil' } },
    ]);
    expect(Object.keys(result.figures.streams)).toEqual(['clean-concrete']);
  });

  test('no trailer at all is a problem where something goes', () => {
    expect(haul({ trailers: [] }).problems).toEqual([
      { code: 'no-trailer', path: 'plan.trailers', parts: {} },
    ]);
    expect(haul({ trailers: [], existing: [] }).problems).toEqual([]);
  });
});

describe('base', () => {
  // 500 sq ft of 4 in: 11 tons ordered, 22,000 lb, three loads of the long box.
  const slabs = [aSlab({ baseIn: 4 })];

  test('rides back on debris trips to a yard that sells it', () => {
    const result = haul({ slabs });
    const { base, total } = result.figures;
    expect([base.loads, base.paired, base['own-trips'], base.delivered].map(num)).toEqual([3, 3, 0, 0]);
    expect(num(base.hours)).toBe(0.75);
    expect(num(base.cost)).toBe(22.5);
    expect(num(base['delivery-cost'])).toBe(0);
    expect(num(total.trips)).toBe(3);
    expect(num(total.cost)).toBe(351);
    expect(result.data.loads.map(({ returns }) => returns)).toEqual(['base', 'base', 'base']);
    expect(result.data.baseFrom).toEqual({ trailer: 'long-box', place: 'yard' });
  });

  test('rides back on the last debris trips where there are more of them', () => {
    const result = haul({ slabs, existing: [anExisting({ thicknessIn: 8 })] });
    expect(result.data.loads.map(({ returns }) => returns)).toEqual([
      'empty',
      'empty',
      'empty',
      'base',
      'base',
      'base',
    ]);
  });

  test('beyond the debris trips it takes trips of its own', () => {
    const result = haul({ slabs, existing: [anExisting({ shape: rectangle(10, 10) })] });
    const { base, total } = result.figures;
    expect([base.loads, base.paired, base['own-trips']].map(num)).toEqual([3, 1, 2]);
    // One turn in the yard more, and two trips of 1.25 h and 20 mi.
    expect(num(base.hours)).toBe(2.75);
    expect(num(base.miles)).toBe(40);
    expect(num(base.cost)).toBe(122.5);
    expect(num(total.trips)).toBe(3);
  });

  test('does not ride back from a place that does not sell it', () => {
    const places = [aPlace({ id: 'crusher', accepts: [] }), aPlace({ id: 'landfill', sellsBase: false })];
    const { base, total } = haul({ slabs, places }).figures;
    expect([base.paired, base['own-trips'], total.trips].map(num)).toEqual([0, 3, 6]);
  });

  test('is delivered where that costs less, by loads of the supplier', () => {
    const baseSupplier = aBaseSupplier({ deliveryUsd: new Usd('11.24'), deliveryTon: 5.5 });
    const { base, total } = haul({ slabs, baseSupplier }).figures;
    expect([base.delivered, base.loads, base.paired, base['own-trips']].map(num)).toEqual([1, 0, 0, 0]);
    expect(num(base['delivery-cost'])).toBe(22.48);
    expect(num(base.cost)).toBe(0);
    expect(num(total.cost)).toBe(328.5);
  });

  test('is fetched where both cost the same', () => {
    const baseSupplier = aBaseSupplier({ deliveryUsd: new Usd('22.50') });
    expect(num(haul({ slabs, baseSupplier }).figures.base.delivered)).toBe(0);
  });

  test('is delivered where no place sells it', () => {
    const { figures, data } = haul({ slabs, places: [aPlace({ sellsBase: false })] });
    expect(num(figures.base.delivered)).toBe(1);
    expect(num(figures.base['delivery-cost'])).toBe(400);
    expect(data.baseFrom).toBeNull();
    expect(data.loads.every(({ returns }) => returns === 'empty')).toBe(true);
  });

  test('none laid: no trips, no delivery', () => {
    const { base } = haul().figures;
    expect([base.loads, base.delivered, base.cost, base['delivery-cost']].map(num)).toEqual([0, 0, 0, 0]);
  });
});

describe('formulas give their values', () => {
  const slabs = [
    aSlab({ baseIn: 4, digIn: 3.3 }),
    aSlab({ id: 'walk-2', baseIn: 3, shape: rectangle(37, 4) }),
  ];
  const existing = [
    anExisting({ steel: 'mesh', shape: rectangle(31.7, 17.3) }),
    anExisting({ id: 'walk', material: 'brick', thicknessIn: 2.25, shape: rectangle(41, 3.5) }),
  ];

  test.each([
    { name: 'a fee by the load', fee: rate('45', 'load'), deliveryUsd: '400' },
    { name: 'a fee by the ton', fee: rate('38.91', 'ton'), deliveryUsd: '110' },
    { name: 'a fee by the yard, delivered', fee: rate('10', 'yd3'), deliveryUsd: '1' },
  ])('$name', ({ fee, deliveryUsd }) => {
    const figures = haul({
      slabs,
      existing,
      trailers: [LONG_BOX, SHORT_BOX],
      places: [aPlace({ fee, driveHr: 22 / 60, turnHr: 0.3 })],
      baseSupplier: aBaseSupplier({ deliveryUsd: new Usd(deliveryUsd) }),
      loadReserveLb: 250,
    }).figures satisfies FigureTree;
    expect(wrongFormulas(figures)).toEqual([]);
    expect(expressionCount(figures)).toBeGreaterThan(45);
  });
});
