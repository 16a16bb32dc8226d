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

function wayOf(result: ReturnType<typeof haul>, id: string) {
  const figures = result.figures.ways[id];
  if (figures === undefined) throw new Error(`no figures of ${id}`);
  return figures;
}

/** Of a stream: the trailer and the place of each of its loads, each pair once. */
function choicesOf(result: ReturnType<typeof haul>, stream: Stream) {
  const loads = result.data.loads.filter(({ streams }) => streams.includes(stream));
  return [...new Set(loads.map(({ trailer, place }) => `${trailer} ${place}`))];
}

describe('one stream', () => {
  // Worked by hand: 25,000 lb in 9,800 lb loads; a trip of 0.4 + 0.5 + 0.25 + 0.5 h and 20 mi;
  // $30 an hour, $1 a mile, $40 a load.
  test('500 sq ft of 4 in concrete', () => {
    const result = haul();
    const concrete = streamOf(result, 'clean-concrete');
    expect(num(concrete.loads)).toBe(3);
    expect(num(concrete['heaviest-load'])).toBe(8334);
    expect(num(concrete['full-loads']['long-box'] ?? concrete.loads)).toBeCloseTo(25_000 / 9_800, 9);
    expect(num(concrete['sq-ft-per-load']['drive']?.['long-box'] ?? concrete.loads)).toBe(196);
    const way = wayOf(result, 'long-box-to-yard');
    expect([way.trips, way['with-base'], way.fees, way.miles, way.cost].map(num)).toEqual([
      3, 0, 120, 60, 328.5,
    ]);
    expect(num(way.cycle)).toBeCloseTo(1.65, 9);
    expect(num(way.hours)).toBeCloseTo(4.95, 9);
    expect(result.data.limitedBy).toEqual({ 'clean-concrete': { 'long-box': 'weight' } });
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
    expect(result.data.limitedBy['clean-concrete']).toEqual({ 'long-box': 'box' });
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
    expect(num(wayOf(haul({ places: [place] }), 'long-box-to-yard').fees)).toBeCloseTo(486.38, 9);
    const dear = aPlace({ fee: rate('38.91', 'ton'), minimumUsd: new Usd(200) });
    expect(num(wayOf(haul({ places: [dear] }), 'long-box-to-yard').fees)).toBe(600);
  });

  test('a truck may cost by the hour', () => {
    const result = haul({ towVehicle: aTruck({ cost: rate('20', 'h') }) });
    expect(num(wayOf(result, 'long-box-to-yard').cost)).toBe(120 + 4.95 * 50);
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
    expect(
      Object.entries(perLoad).flatMap(([id, on]) => Object.values(on).map((one) => [id, num(one)])),
    ).toEqual([
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

  test('where one thing alone is looser than the box allows, each load takes its share of both', () => {
    const { data } = haul({
      existing: [
        anExisting({ id: 'heavy', shape: rectangle(20, 10), thicknessIn: 4 }),
        anExisting({ id: 'light', shape: rectangle(25, 16), thicknessIn: 4, unitWeightLbPerCuFt: 60 }),
      ],
    });
    // One after the other, 9,000 lb with 8,000 of the light would be 7.90 + 0.40 yd3 in a box of 7.26.
    expect(
      data.loads.map(({ pieces }) => pieces.map(({ weightLb }) => Math.round(weightLb * 1e6) / 1e6)),
    ).toEqual([
      [5000, 4000],
      [5000, 4000],
    ]);
    expect(data.loads[0]?.looseCuYd).toBeCloseTo(5000 / 2531.25 + 4000 / 1012.5, 6);
  });
});

describe('the choice of trailer and place', () => {
  test('with a flat fee a load the larger trailer wins', () => {
    expect(choicesOf(haul({ trailers: [SHORT_BOX, LONG_BOX] }), 'clean-concrete')).toEqual(['long-box yard']);
  });

  test('a nearer place with a higher fee can be the cheaper one', () => {
    const near = aPlace({ id: 'near', fee: rate('60', 'load'), distanceMi: 2, driveHr: 0.1 });
    expect(choicesOf(haul({ places: [aPlace(), near] }), 'clean-concrete')).toEqual(['long-box near']);
    const dear = aPlace({ id: 'near', fee: rate('90', 'load'), distanceMi: 2, driveHr: 0.1 });
    expect(choicesOf(haul({ places: [aPlace(), dear] }), 'clean-concrete')).toEqual(['long-box yard']);
  });

  test('equal cost: the first by name, whatever the order of the files', () => {
    const places = [aPlace({ id: 'b-yard' }), aPlace({ id: 'a-yard' })];
    expect(choicesOf(haul({ places }), 'clean-concrete')).toEqual(['long-box a-yard']);
  });

  test('equal cost: fewer trips go before the name', () => {
    // Next door and loaded in no time, only the tickets cost: 15,000 lb at $10 a ton, three loads or two.
    const place = aPlace({ fee: rate('10', 'ton'), distanceMi: 0, driveHr: 0, turnHr: 0 });
    const trailers = [{ ...SHORT_BOX, id: 'a-short' }, LONG_BOX];
    const existing = [anExisting({ shape: rectangle(30, 10) })];
    const result = haul({ trailers, places: [place], existing, loadingHr: 0 });
    expect(choicesOf(result, 'clean-concrete')).toEqual(['long-box yard']);
  });

  test('each stream goes to a place that takes it', () => {
    const places = [
      aPlace({ id: 'crusher', accepts: ['clean-concrete'] }),
      aPlace({ id: 'fill', accepts: ['soil'] }),
    ];
    const result = haul({ places, slabs: [aSlab({ digIn: 4 })] });
    expect(choicesOf(result, 'clean-concrete')).toEqual(['long-box crusher']);
    expect(choicesOf(result, 'soil')).toEqual(['long-box fill']);
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
    expect([base.loads, base.paired, base['own-trips'], base.deliveries].map(num)).toEqual([3, 3, 0, 0]);
    // One turn in the yard more for each.
    expect(num(wayOf(result, 'long-box-to-yard').hours)).toBeCloseTo(4.95 + 0.75, 9);
    for (const { baseLb } of result.data.loads) expect(baseLb).toBeCloseTo(22_000 / 3, 9);
    expect(num(base.cost)).toBe(0);
    expect(num(base['delivery-cost'])).toBe(0);
    expect(num(total.trips)).toBe(3);
    expect(num(total.cost)).toBe(351);
    expect(result.data.loads.map(({ returns }) => returns)).toEqual(['base', 'base', 'base']);
    expect(result.data.baseFrom).toEqual([{ trailer: 'long-box', place: 'yard' }]);
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
    // Two trips of 1.25 h and 20 mi; one turn in the yard more on the trip with rubble.
    expect(num(base.hours)).toBe(2.5);
    expect(num(base.miles)).toBe(40);
    expect(num(base.cost)).toBe(115);
    expect(num(wayOf(result, 'long-box-to-yard').hours)).toBeCloseTo(1.65 + 0.25, 9);
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
    expect([base.deliveries, base.loads, base.paired, base['own-trips']].map(num)).toEqual([2, 0, 0, 0]);
    expect(num(base['delivery-cost'])).toBe(22.48);
    expect(num(base.cost)).toBe(0);
    expect(num(total.cost)).toBe(328.5);
  });

  test('is fetched where both cost the same', () => {
    const baseSupplier = aBaseSupplier({ deliveryUsd: new Usd('22.50') });
    expect(num(haul({ slabs, baseSupplier }).figures.base.deliveries)).toBe(0);
  });

  test('is delivered where no place sells it', () => {
    const { figures, data } = haul({ slabs, places: [aPlace({ sellsBase: false })] });
    expect(num(figures.base.deliveries)).toBe(1);
    expect(num(figures.base['delivery-cost'])).toBe(400);
    expect(data.deliveredLb).toBe(22_000);
    expect(data.baseFrom).toEqual([]);
    expect(data.loads.every(({ returns }) => returns === 'empty')).toBe(true);
  });

  test('none laid: no trips, no delivery', () => {
    const { base } = haul().figures;
    expect([base.loads, base.deliveries, base.cost, base['delivery-cost']].map(num)).toEqual([0, 0, 0, 0]);
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
