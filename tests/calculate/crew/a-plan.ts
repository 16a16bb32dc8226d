import { Decimal } from 'decimal.js';
import { calcCrew } from '../../../src/calculate/crew/index.ts';
import { type Figure, type FigureUnit, type FigureValue, figure } from '../../../src/calculate/figure.ts';
import type { Company, Existing, Machine, ProductionRow, TaskId } from '../../../src/calculate/job.ts';
import type { CrewText, PublicText } from '../../../src/calculate/text.ts';
import { type PaceUnit, parsePace, type Rate, type RateUnit } from '../../../src/units/index.ts';
import { anOldSlab, aSlab } from '../slabs.ts';

/** A figure as another topic would hand it over. */
export function fig(value: FigureValue, unit: FigureUnit): Figure {
  return figure({ value, unit, decimals: 2, formula: { method: 'made for a test' }, inputs: {} });
}

export function usd(amount: string): Decimal {
  return new Decimal(amount);
}

export function rate(amount: string, perUnit: RateUnit): Rate {
  return { amountUsd: usd(amount), perUnit, text: `$${amount} per ${perUnit}` };
}

const PACE_UNITS: readonly PaceUnit[] = ['sq ft', 'm2', 'ft', 'm', 'yd3', 'm3', 'ton', 'load', 'each'];

export function row(
  task: TaskId,
  paceText: string,
  people: number,
  changed: Partial<ProductionRow> = {},
): ProductionRow {
  const pace = parsePace(paceText, PACE_UNITS);
  if (!pace.ok) throw new Error(`not a pace: ${paceText}`);
  return { task, pace: pace.value, people, machine: null, operator: null, ...changed };
}

/** Paces at which the quantities of `someWork` come out in round hours. */
export function production(changed: Partial<Record<TaskId, ProductionRow>> = {}): Company['production'] {
  return {
    'set-up': row('set-up', '1 each per h', 2),
    'saw-cut': row('saw-cut', '40 ft per h', 1, { machine: 'cut-off-saw' }),
    'break-out': row('break-out', '120 sq ft per h', 2, { machine: 'jackhammer' }),
    dig: row('dig', '2 yd3 per h', 2),
    base: row('base', '100 sq ft per h', 2),
    form: row('form', '29 ft per h', 2),
    reinforce: row('reinforce', '360 sq ft per h', 2),
    place: row('place', '5 yd3 per h', 3),
    finish: row('finish', '360 sq ft per h', 2),
    cure: row('cure', '720 sq ft per h', 1),
    'saw-joints': row('saw-joints', '100 ft per h', 1, { machine: 'walk-behind-saw' }),
    strip: row('strip', '116 ft per h', 2),
    backfill: row('backfill', '58 ft per h', 2),
    clean: row('clean', '0.5 each per h', 3),
    ...changed,
  };
}

export const existing: Record<string, Existing> = {
  'old-drive': anOldSlab({ id: 'old-drive', label: 'Old drive' as PublicText }),
};

/** A driveway of 40 by 18 ft in place of the old one. */
export function someWork() {
  return {
    existing,
    hollow: {},
    oldSteps: {},
    chip: {},
    slabs: { drive: aSlab() },
    steps: {},
    shapes: {
      slabs: { drive: { area: fig(720, 'sq ft') } },
      existing: { 'old-drive': { area: fig(720, 'sq ft') } },
    },
    tearOut: { hollow: {}, posts: {}, 'old-steps': {}, soil: {}, total: { 'saw-cut': fig(40, 'ft') } },
    breaking: { total: { 'cut-length': fig(0, 'ft') } },
    base: { slabs: { drive: { area: fig(800, 'sq ft') } } },
    forms: { slabs: { drive: { length: fig(116, 'ft') } } },
    joints: { total: { sawn: fig(100, 'ft') } },
    edges: { total: { holes: fig(0, 'each') } },
    concrete: { total: { needed: fig(10, 'yd3') }, bags: { 'mixing-hours': fig(36, 'h') } },
    haul: { trips: fig(4, 'each'), hours: fig(6, 'h') },
  };
}

export type Work = ReturnType<typeof someWork>;

const after = (days: number) => ({ days: fig(days, 'days') });

/** Three people of 8 h days, from Monday 2026-05-04. */
export function aCrew(changed: Partial<Parameters<typeof calcCrew>[0]> = {}): Parameters<typeof calcCrew>[0] {
  return {
    ...someWork(),
    plan: { poursOn: null, startsOn: '2026-05-04', crew: ['ana', 'ben', 'cal'] },
    labor: { dayHr: 8 },
    production: production(),
    supply: 'truck',
    waits: { strip: after(1), walk: after(2), drive: after(7) },
    ...changed,
  };
}

export function crewOf(changed: Partial<Parameters<typeof calcCrew>[0]> = {}) {
  return calcCrew(aCrew(changed));
}

export function machine(kind: Machine['kind'], changed: Partial<Machine> = {}): Machine {
  const cab = kind === 'loader-with-breaker' ? 'enclosed' : 'none';
  return {
    id: kind,
    label: kind as string as CrewText,
    kind,
    cost: rate('10.00', 'h'),
    cab,
    wet: true,
    liftsLb: null,
    plate: { widthIn: null, travelFtPerHr: null, liftIn: null, passesEachWay: null },
    tiedDown: null,
    ...changed,
  };
}

export const machines: Record<string, Machine> = {
  'cut-off-saw': machine('cut-off-saw'),
  'walk-behind-saw': machine('walk-behind-saw'),
  jackhammer: machine('jackhammer'),
  'loader-with-breaker': machine('loader-with-breaker'),
};
