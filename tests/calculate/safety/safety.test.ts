import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { TaskId } from '../../../src/calculate/job.ts';
import { HAZARD_ROWS } from '../../../src/calculate/safety/hazards.ts';
import { calcSafety } from '../../../src/calculate/safety/index.ts';
import { missingControls, respiratorApf } from '../../../src/calculate/safety/silica.ts';
import { SILICA_TABLE, silicaRow } from '../../../src/calculate/safety/silica-table.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { crewOf, existing, fig, machine, machines, production, row, someWork } from '../crew/a-plan.ts';
import { testExpressions } from '../evaluate.ts';
import { aSlab, propertyRuns, someBars } from '../slabs.ts';

type Input = Parameters<typeof calcSafety>[0];

function safety(changed: Partial<Input> = {}, work: Parameters<typeof crewOf>[0] = {}) {
  const rows = changed.production ?? production();
  const crew = crewOf({ production: rows, ...work });
  return calcSafety({
    existing,
    hollow: {},
    slabs: { drive: aSlab() },
    plan: { crew: ['ana', 'ben', 'cal'], startsOn: '2026-05-04' },
    production: rows,
    machines,
    tasks: crew.figures.tasks,
    days: crew.data.days,
    supply: 'truck',
    ...changed,
  });
}

const found = (result: ReturnType<typeof safety>, task: TaskId) => {
  const silica = result.data.silica.find((one) => one.task === task);
  if (silica === undefined) throw new Error(`no silica task ${task}`);
  return silica;
};
const hoursOf = (result: ReturnType<typeof safety>, task: TaskId) =>
  num(result.figures.silica[task]?.hours ?? fig(-1, 'h'));

describe('silica', () => {
  test('18 rows, one of them in two ways; more hours or indoors never ask for less', () => {
    expect(new Set(SILICA_TABLE.map(({ row: name }) => name.split(',')[0])).size).toBe(18);
    for (const { outdoors, indoors } of SILICA_TABLE) {
      for (const place of [outdoors, indoors]) {
        if (place.to4Hr !== null && place.over4Hr !== null)
          expect(place.over4Hr).toBeGreaterThanOrEqual(place.to4Hr);
        expect(place.to4Hr === null).toBe(place.over4Hr === null);
      }
    }
  });

  test('exactly 4 h is the first column, also with the noise of adding; a minute more is the second', () => {
    const handheld = silicaRow('ii');
    expect(respiratorApf(handheld, { hours: 4, place: 'outdoors' })).toBe(0);
    expect(respiratorApf(handheld, { hours: 0.1 + 0.2 + 3.7, place: 'outdoors' })).toBe(0);
    expect(respiratorApf(handheld, { hours: 4 + 1 / 60, place: 'outdoors' })).toBe(10);
    expect(() => respiratorApf(handheld, { hours: -1, place: 'outdoors' })).toThrow(RangeError);
    expect(() => respiratorApf(handheld, { hours: Number.NaN, place: 'outdoors' })).toThrow(RangeError);
  });

  test('one way that is complete is enough', () => {
    expect(missingControls(silicaRow('x'), new Set(['shroud-and-collector']))).toEqual([]);
    expect(missingControls(silicaRow('x'), new Set())).toEqual(['water-at-point']);
    expect(missingControls(silicaRow('xvii'), new Set(['water-or-suppressant-as-needed']))).toEqual([
      'enclosed-cab',
    ]);
  });

  describe('by what things are taken out with', () => {
    const old = existing['old-drive'];
    if (old === undefined) throw new Error('no old drive');
    const goneBy = (breakOut: 'jackhammer' | 'saw-and-lift', changed: Parameters<typeof production>[0]) => {
      const things = { 'old-drive': { ...old, breakOut } };
      return safety({ production: production(changed), existing: things }, { existing: things });
    };
    const hammer = row('break-out-by-hand', '120 sq ft per h', 2, { machine: 'jackhammer' });
    const lift = row('saw-and-lift', '120 sq ft per h', 2, { machine: 'loader-with-breaker' });

    test('a jackhammer is row x, and nothing is said of the breaker', () => {
      const result = goneBy('jackhammer', { 'break-out-by-hand': hammer });
      expect(found(result, 'break-out-by-hand')).toMatchObject({
        row: { name: 'x' },
        onTable: true,
        apf: 10,
      });
      expect(result.data.silica.some(({ task }) => task === 'break-out')).toBe(false);
      expect(result.data.hazards.map(({ code }) => code)).toContain('underground-lines');
    });

    test('by a loader it is row xvii, and by hand tools there is no row', () => {
      const loader = goneBy('jackhammer', {
        'break-out-by-hand': { ...hammer, machine: 'loader-with-breaker' },
      });
      expect(found(loader, 'break-out-by-hand').row).toEqual({ name: 'xvii', seen: false });
      const hand = goneBy('jackhammer', { 'break-out-by-hand': { ...hammer, machine: null } });
      expect(found(hand, 'break-out-by-hand')).toMatchObject({ row: null, onTable: false });
    });

    test('lifting what was sawn is demolition too, row xvii, beside the saw; without a machine it is not dusty', () => {
      const result = goneBy('saw-and-lift', { 'saw-and-lift': lift });
      expect(found(result, 'saw-and-lift').row).toEqual({ name: 'xvii', seen: false });
      expect(found(result, 'saw-cut').row?.name).toBe('ii');
      expect(result.data.hazards.find(({ code }) => code === 'lifting')?.phases).toEqual(['tear-out']);
      const bare = goneBy('saw-and-lift', { 'saw-and-lift': { ...lift, machine: null } });
      expect(bare.data.silica.some(({ task }) => task === 'saw-and-lift')).toBe(false);
    });
  });

  describe('by what a coating is chipped off with', () => {
    const chip = { lip: { id: 'lip', label: 'Lip' as PublicText, areaSqFt: 6, thicknessIn: 0.25 } };
    const tools = {
      ...machines,
      'hand-grinder': machine('hand-grinder'),
      'dry-grinder': machine('hand-grinder', { id: 'dry-grinder', wet: false }),
    };
    const by = (name: string | null) => {
      const rows = production({ chip: row('chip', '6 sq ft per h', 1, { machine: name }) });
      return safety({ production: rows, machines: tools }, { chip });
    };

    // Rows x and xii of Table 1: from memory.
    test.each([
      { name: 'jackhammer', onRow: 'x', onTable: true, missing: [] },
      { name: 'hand-grinder', onRow: 'xii, water', onTable: true, missing: [] },
      { name: 'dry-grinder', onRow: 'xii, collector', onTable: false, missing: ['shroud-and-collector'] },
    ])('$name: row $onRow', ({ name, onRow, onTable, missing }) => {
      const result = by(name);
      expect(found(result, 'chip')).toMatchObject({
        phase: 'tear-out',
        row: { name: onRow, seen: false },
        onTable,
        missing,
      });
      expect(result.data.hazards.find(({ code }) => code === 'noise')?.phases).toContain('tear-out');
    });

    test('a grinder with water asks for no respirator outdoors, at any hours', () => {
      expect(found(by('hand-grinder'), 'chip')).toMatchObject({
        apf: 0,
        controls: ['outdoors-only', 'water-feed-to-blade'],
      });
    });

    test('hammer and chisel stand on no row', () => {
      expect(found(by(null), 'chip')).toMatchObject({ row: null, onTable: false, apf: null });
    });
  });

  test('hours of tools that nobody in particular runs are one person: 1 h of sawing and 6 h of breaking', () => {
    const result = safety();
    expect(hoursOf(result, 'saw-cut')).toBe(7);
    expect(hoursOf(result, 'break-out')).toBe(7);
    expect(found(result, 'saw-cut')).toMatchObject({
      onTable: true,
      apf: 10,
      missing: [],
      controls: ['water-feed-to-blade'],
    });
    expect(found(result, 'break-out')).toMatchObject({
      onTable: true,
      apf: 10,
      controls: ['water-at-point'],
    });
    // The joints are sawn on another day, and a walk-behind saw asks for nothing outdoors.
    expect(hoursOf(result, 'saw-joints')).toBe(1);
    expect(found(result, 'saw-joints')).toMatchObject({ onTable: true, apf: 0 });
  });

  test('two named operators are two people: the saw of 1 h asks for nothing', () => {
    const named = production({
      'saw-cut': row('saw-cut', '40 ft per h', 1, { machine: 'cut-off-saw', operator: 'ana' }),
      'break-out': row('break-out', '120 sq ft per h', 2, { machine: 'jackhammer', operator: 'ben' }),
    });
    const result = safety({ production: named });
    expect(hoursOf(result, 'saw-cut')).toBe(1);
    expect(found(result, 'saw-cut').apf).toBe(0);
    expect(hoursOf(result, 'break-out')).toBe(6);
    expect(found(result, 'break-out').apf).toBe(10);
  });

  test('a tool of nobody in particular is counted to the named operator who is worst off', () => {
    const half = production({
      'saw-cut': row('saw-cut', '40 ft per h', 1, { machine: 'cut-off-saw' }),
      'break-out': row('break-out', '120 sq ft per h', 2, { machine: 'jackhammer', operator: 'ben' }),
    });
    const result = safety({ production: half });
    expect([hoursOf(result, 'saw-cut'), hoursOf(result, 'break-out')]).toEqual([7, 7]);
  });

  test('over several days it is the worst day that counts', () => {
    const slow = production({
      'break-out': row('break-out', '60 sq ft per h', 2, { machine: 'jackhammer' }),
    });
    // 12 h at the breaker in two days of 8 h: never more than a day.
    const result = safety({ production: slow });
    expect(hoursOf(result, 'break-out')).toBeGreaterThan(6);
    expect(hoursOf(result, 'break-out')).toBeLessThanOrEqual(9);
  });

  test('a dry saw, a dry breaker and an open cab are not on the table', () => {
    const dry = {
      ...machines,
      'cut-off-saw': machine('cut-off-saw', { wet: false }),
      jackhammer: machine('jackhammer', { wet: false }),
    };
    const result = safety({ machines: dry });
    expect(found(result, 'saw-cut')).toMatchObject({
      onTable: false,
      missing: ['water-feed-to-blade'],
      apf: null,
    });
    expect(found(result, 'break-out')).toMatchObject({
      onTable: false,
      missing: ['water-at-point'],
      apf: null,
    });
    expect(result.figures.silica['saw-cut']?.['respirator-apf']).toBeUndefined();

    const loader = production({
      'break-out': row('break-out', '200 sq ft per h', 1, { machine: 'loader-with-breaker' }),
    });
    const open = { ...machines, 'loader-with-breaker': machine('loader-with-breaker', { cab: 'open' }) };
    expect(found(safety({ production: loader, machines: open }), 'break-out')).toMatchObject({
      onTable: false,
      missing: ['enclosed-cab'],
    });
    expect(found(safety({ production: loader }), 'break-out')).toMatchObject({ onTable: true, apf: 0 });
  });

  test('bags and breaking by hand have no row', () => {
    const result = safety({
      supply: 'bags',
      production: production({ 'break-out': row('break-out', '20 sq ft per h', 1) }),
    });
    expect(found(result, 'place')).toMatchObject({ row: null, onTable: false, machine: null });
    expect(found(result, 'break-out')).toMatchObject({ row: null, onTable: false, machine: null });
  });

  test('a citation says what was read and what is from memory', () => {
    const { silica } = safety().figures;
    expect(found(safety(), 'break-out').row).toEqual({ name: 'x', seen: false });
    expect(silica['break-out']?.['respirator-apf']?.source).toBe(
      '29 CFR 1926.1153(c)(1), Table 1 (x); columns from memory; controls read in OSHA fact sheet FS-3629',
    );
    expect(found(safety(), 'saw-cut').row).toEqual({ name: 'ii', seen: true });
    expect(silica['saw-cut']?.['respirator-apf']?.source).toContain(
      'Table 1 (ii); columns read in California Code of Regulations',
    );
  });

  test('property: more hours never ask for a lower factor', () => {
    const hours = fc.double({ min: 0, max: 16, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...SILICA_TABLE),
        fc.constantFrom('outdoors' as const, 'indoors' as const),
        hours,
        hours,
        (of, place, one, other) => {
          const [fewer, more] = one < other ? [one, other] : [other, one];
          expect(respiratorApf(of, { hours: more, place }) ?? -1).toBeGreaterThanOrEqual(
            respiratorApf(of, { hours: fewer, place }) ?? -1,
          );
        },
      ),
      propertyRuns,
    );
  });

  test('property: a larger slab never asks a task for a lower factor', () => {
    const area = fc.double({ min: 50, max: 1500, noNaN: true });
    const drive = (areaSqFt: number) => ({
      slabs: { drive: { area: fig(720, 'sq ft') } },
      existing: { 'old-drive': { area: fig(areaSqFt, 'sq ft') } },
    });
    fc.assert(
      fc.property(area, area, (one, other) => {
        const apf = (areaSqFt: number) =>
          found(
            safety(
              {},
              {
                shapes: drive(areaSqFt),
                plan: {
                  poursOn: null,
                  startsOn: '2026-05-04',
                  crew: ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j'],
                },
              },
            ),
            'break-out',
          ).apf ?? -1;
        const small = Math.min(one, other);
        // In one day; over two days each is shorter.
        if (Math.max(one, other) <= 960) expect(apf(Math.max(one, other))).toBeGreaterThanOrEqual(apf(small));
      }),
      propertyRuns,
    );
  });
});

describe('hazards', () => {
  test('ranks are highest first, every phase named has the thing, and none is listed twice', () => {
    const { hazards } = safety().data;
    const ranks = hazards.map(({ rank }) => rank);
    expect(ranks).toEqual(ranks.toSorted((one, other) => other - one));
    expect(new Set(hazards.map(({ code }) => code)).size).toBe(hazards.length);
    expect(hazards.length).toBeGreaterThanOrEqual(5);
    expect(hazards.find(({ code }) => code === 'wet-cement')?.phases).toEqual(['pour']);
    expect(hazards.find(({ code }) => code === 'backing-vehicles')?.phases).toEqual(['tear-out', 'pour']);
    expect(hazards.find(({ code }) => code === 'saw-kickback')?.phases).toEqual(['tear-out']);
  });

  test('a hazard is there only where its thing is', () => {
    const codes = (result: ReturnType<typeof safety>) => result.data.hazards.map(({ code }) => code);
    expect(codes(safety())).not.toContain('rebar-ends');
    expect(codes(safety({ slabs: { drive: aSlab({ reinforcement: someBars() }) } }))).toContain('rebar-ends');
    expect(codes(safety())).not.toContain('standing-masonry');
    expect(codes(safety({ existing: { wall: { material: 'brick' } } }))).toContain('standing-masonry');
    expect(codes(safety())).toContain('heat');
    expect(codes(safety({ plan: { crew: ['ana'], startsOn: '2026-01-12' } }))).not.toContain('heat');
    const work = someWork();
    const nothingHauled = { ...work, haul: { trips: fig(0, 'each'), hours: fig(0, 'h') } };
    expect(codes(safety({}, nothingHauled))).not.toContain('trailer-load');
  });

  test('silica climbs when a task is off the table', () => {
    const rank = (result: ReturnType<typeof safety>) =>
      result.data.hazards.find(({ code }) => code === 'silica')?.rank ?? 0;
    const dry = { ...machines, 'cut-off-saw': machine('cut-off-saw', { wet: false }) };
    expect(rank(safety({ machines: dry }))).toBeGreaterThan(rank(safety()));
  });

  test('the table names every hazard once', () => {
    expect(new Set(HAZARD_ROWS.map(({ code }) => code)).size).toBe(13);
    expect(HAZARD_ROWS).toHaveLength(13);
  });
});

testExpressions('safety', safety().figures, 5);
