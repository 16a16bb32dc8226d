import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COST_GROUPS } from '../../../src/calculate/cost/index.ts';
import type { Figure } from '../../../src/calculate/figure.ts';
import type { CrewText } from '../../../src/calculate/text.ts';
import { sumUsd } from '../../../src/units/index.ts';
import { crewOf, fig, row } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';
import { propertyRuns } from '../slabs.ts';
import {
  aCostInput,
  costOfJob,
  machine,
  machines,
  production,
  rate,
  steelBought,
  suppliers,
  usd,
} from './a-cost.ts';

const shown = (figures: Readonly<Record<string, Figure>>) =>
  Object.fromEntries(
    Object.entries(figures).map(([name, { value }]) => [name, new Decimal(value).toFixed(2)]),
  );
const amount = (made: Figure) => new Decimal(made.value);

describe('cost', () => {
  test('line by line, by hand', () => {
    expect(shown(costOfJob().figures.lines)).toEqual({
      'tear-out-labor': '600.00', // 15 h of set-up, cut and break-out at $40
      'base-and-forms-labor': '960.00', // 24 h
      'concrete-labor': '240.00', // 6 h
      'finish-and-clean-labor': '720.00', // 4 + 1 + 1 + 2 + 4 + 6 = 18 h
      'haul-labor': '240.00', // 6 h
      'machine-tear-out-cut-off-saw': '10.00', // 1 h at $10
      'machine-tear-out-jackhammer': '60.00', // 6 h
      'machine-pour-walk-behind-saw': '10.00', // 1 h
      'haul-fees': '184.36', // 184.355, half up
      'haul-truck': '53.13', // 62.5 mi at $0.85 = 53.125
      'base-stone': '416.50', // 17 tons at $24.50
      'form-boards-two-by-four': '19.60',
      stakes: '11.50',
      mesh: '279.00', // 9 sheets
      chairs: '35.00',
      'isolation-strips': '9.50', // 18 ft are 2 strips of 10 ft
      'ready-mix': '1850.00',
      'curing-compound': '112.00', // 720 sq ft / 200 = 3.6 gal, 4 packs
      'base-delivery': '90.00',
      'other-permit': '75.00',
    });
  });

  test('groups and total, by hand', () => {
    const { figures } = costOfJob();
    expect(shown(figures.groups)).toEqual({
      'tear-out-and-haul': '1147.49',
      'base-and-forms': '1821.10',
      concrete: '2090.00',
      'finish-and-clean': '842.00',
      other: '75.00',
    });
    expect(amount(figures.total).toFixed(2)).toBe('5975.59');
    // 416.50 + 19.60 + 11.50 + 279 + 35 + 9.50 + 1850 + 112 + 90
    expect(amount(figures.materials).toFixed(2)).toBe('2823.10');
  });

  test.each([
    { price: rate('140.00', 'roll'), cost: '280.00' },
    { price: rate('0.11', 'sq ft'), cost: '137.50' },
  ])('fabric: whole rolls, 2 of 625 sq ft at $price.text', ({ price, cost }) => {
    const supplier = { label: 'Fabric' as CrewText, phone: '555-0100' as CrewText };
    const geotextile = { ...supplier, rollWidthIn: 150, rollLengthIn: 600, lapIn: 12, price };
    const fabric = { total: { rolls: fig(2, 'each'), 'bought-area': fig(1250, 'sq ft') } };
    const base = { total: { 'order-tons': fig(17, 'ton') }, geotextile: fabric };
    const { figures, data, problems } = costOfJob({ base, suppliers: { ...suppliers, geotextile } });
    expect(problems).toEqual([]);
    expect(shown(figures.lines)).toMatchObject({ geotextile: cost });
    expect(data.lines.find(({ name }) => name === 'geotextile')).toMatchObject({
      group: 'base-and-forms',
      kind: 'material',
    });
  });

  test('form strips that are short are bought: 3 at $4.60', () => {
    const forms = {
      boards: {},
      strips: { hardboard: { shortage: fig(3, 'each') } },
      stakes: { shortage: fig(0, 'each') },
    };
    const { lines } = costOfJob({ forms }).figures;
    expect(shown(lines)).toMatchObject({ 'form-strips-hardboard': '13.80' });
    expect(Object.keys(lines)).not.toContain('stakes');
  });

  test('bags are paid as bags: 450 at $6.45, and their mixing is labor once', () => {
    const crew = crewOf({ supply: 'bags' });
    const { lines } = costOfJob({ supply: 'bags', crew: crew.figures }).figures;
    expect(amount(lines['bags'] ?? fig(0, '$')).toFixed(2)).toBe('2902.50');
    expect(amount(lines['concrete-labor'] ?? fig(0, '$')).toFixed(2)).toBe('1440.00'); // 36 h at $40
    expect(lines['ready-mix']).toBeUndefined();
  });

  test('base that is fetched has no delivery line, and a kind of line that is 0 is not there', () => {
    const haul = {
      base: { deliveries: fig(0, 'each'), 'delivery-cost': fig(usd('0'), '$') },
      total: { hours: fig(6, 'h'), miles: fig(10, 'mi'), fees: fig(usd('0'), '$') },
    };
    const { lines } = costOfJob({ haul }).figures;
    expect(Object.keys(lines)).not.toContain('base-delivery');
    expect(Object.keys(lines)).not.toContain('haul-fees');
    expect(Object.keys(lines)).not.toContain('bars');
  });

  test('bars are paid by the pound as bought: 213.6 lb at $0.92 are 196.51', () => {
    const total = steelBought({ 'bought-bars': fig(213.6, 'lb') });
    const { lines } = costOfJob({ reinforcement: { total } }).figures;
    expect(amount(lines['bars'] ?? fig(0, '$')).toFixed(2)).toBe('196.51'); // 196.512
    expect(Object.keys(lines)).not.toContain('mesh');
  });

  test('ties are bought in whole packs: 401 are 2 of 400 at $6.50, and none where the company names none', () => {
    const reinforcement = { total: steelBought({ ties: fig(401, 'each') }) };
    expect(shown(costOfJob({ reinforcement }).figures.lines)['bar-ties']).toBe('13.00');
    const full = costOfJob({ reinforcement: { total: steelBought({ ties: fig(400, 'each') }) } });
    expect(shown(full.figures.lines)['bar-ties']).toBe('6.50');
    const paths = Object.values(full.figures.lines['bar-ties']?.inputs ?? {}).map((input) =>
      'path' in input ? input.path : '',
    );
    expect(paths).toContain('company.suppliers.sundries.bar-ties.price');
    const all = aCostInput().suppliers;
    const sundries = { ...all.sundries, barTies: null };
    const none = costOfJob({ reinforcement, suppliers: { ...all, sundries } });
    expect(Object.keys(none.figures.lines)).not.toContain('bar-ties');
    expect(none.figures.packs).not.toHaveProperty('tie-packs');
  });

  test('a machine by the day is paid for the days of the phase, once for two tasks', () => {
    const byDay = { ...machines, jackhammer: machine('jackhammer', { cost: rate('95.00', 'day') }) };
    const dig = row('dig', '2 yd3 per h', 2, { machine: 'jackhammer' });
    const changed = production({ dig });
    const soil = { drive: { volume: fig(432, 'cu ft') } };
    const crew = crewOf({
      production: changed,
      tearOut: { hollow: {}, posts: {}, 'old-steps': {}, soil, total: { 'saw-cut': fig(40, 'ft') } },
    });
    // 21 h and 16 h of digging are 37 h: two days of 24 h.
    const { lines } = costOfJob({ machines: byDay, production: changed, crew: crew.figures }).figures;
    expect(amount(lines['machine-tear-out-jackhammer'] ?? fig(0, '$')).toFixed(2)).toBe('190.00');
  });

  test('a machine by the day on a day that two phases share is paid once', () => {
    const byDay = {
      ...machines,
      'loader-with-breaker': machine('loader-with-breaker', { cost: rate('400.00', 'day') }),
    };
    const changed = production({
      'break-out': row('break-out', '120 sq ft per h', 2, { machine: 'loader-with-breaker' }),
      base: row('base', '100 sq ft per h', 2, { machine: 'loader-with-breaker' }),
    });
    const crew = crewOf({
      production: changed,
      base: { slabs: { drive: { area: fig(50, 'sq ft') } } },
      forms: { slabs: { drive: { length: fig(14.5, 'ft') } } },
    });
    const names = (firstPhasesShareDay: boolean) =>
      Object.keys(
        costOfJob({ machines: byDay, production: changed, crew: crew.figures, firstPhasesShareDay }).figures
          .lines,
      );
    expect(crew.data.firstPhasesShareDay).toBe(true);
    expect(names(true)).not.toContain('machine-base-and-forms-loader-with-breaker');
    expect(names(false)).toContain('machine-base-and-forms-loader-with-breaker');
  });

  test('a rate for a unit that the line does not count is a problem at its path', () => {
    const byTheJob = { ...machines, jackhammer: machine('jackhammer', { cost: rate('95.00', 'job') }) };
    const stone = { ...suppliers, base: { ...suppliers.base, price: rate('40.00', 'yd3') } };
    const { problems } = costOfJob({
      machines: byTheJob,
      suppliers: stone,
      towVehicle: { cost: rate('80.00', 'day') },
    });
    expect(problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'rate-unit company.machines.jackhammer.cost',
      'rate-unit company.tow-vehicle.cost',
      'rate-unit company.suppliers.base.price',
    ]);
  });

  testExpressions('cost', costOfJob().figures, 25);
  testExpressions(
    'cost with bags',
    costOfJob({ supply: 'bags', crew: crewOf({ supply: 'bags' }).figures }).figures,
    25,
  );

  test('property: the lines shown add to the groups, and the groups to the total', () => {
    const hours = fc.double({ min: 0.01, max: 60, noNaN: true });
    const cents = fc.integer({ min: 1, max: 900_000 }).map((count) => new Decimal(count).dividedBy(100));
    fc.assert(
      fc.property(
        hours,
        cents,
        cents,
        fc.double({ min: 1, max: 4000, noNaN: true }),
        (hr, laborUsd, truckUsd, areaSqFt) => {
          const work = crewOf({
            shapes: { slabs: { drive: { area: fig(areaSqFt, 'sq ft') } }, existing: {} },
          });
          const { figures, data } = costOfJob({
            crew: work.figures,
            laborUsdPerHr: fig(laborUsd, '$/h'),
            concrete: { truck: { cost: fig(truckUsd, '$') }, bags: { count: fig(1, 'each') } },
            haul: {
              base: { deliveries: fig(0, 'each'), 'delivery-cost': fig(usd('0'), '$') },
              total: { hours: fig(hr, 'h'), miles: fig(hr * 31, 'mi'), fees: fig(laborUsd, '$') },
            },
            curing: { compound: fig(areaSqFt / 150, 'gal'), sheeting: fig(areaSqFt, 'sq ft') },
          });
          for (const group of COST_GROUPS) {
            const lines = data.lines.filter((line) => line.group === group);
            const amounts = lines.map(({ name }) => amount(figures.lines[name] ?? fig(Number.NaN, '$')));
            expect(sumUsd(amounts).eq(figures.groups[group].value)).toBe(true);
            for (const lineUsd of amounts) expect(lineUsd.decimalPlaces()).toBeLessThanOrEqual(2);
          }
          expect(
            sumUsd(COST_GROUPS.map((group) => amount(figures.groups[group]))).eq(figures.total.value),
          ).toBe(true);
        },
      ),
      propertyRuns,
    );
  });
});
