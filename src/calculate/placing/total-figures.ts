import type { Decimal } from 'decimal.js';
import { roundToCent, Usd } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { Placing } from '../job.ts';
import { inputsByName, sumExpression, sumOf } from '../parts.ts';
import { usdPerCuYd } from '../usd-per-cu-yd.ts';
import type { CarriedBy } from './choose.ts';
import { cuYdPerHr } from './paces.ts';
import type { Part, PlacedFigures } from './thing-figures.ts';

export type PlacingTotals = {
  /** Placed straight from the chute [yd3]. */
  readonly chute: Figure;
  /** Of all ways, one after the other [h]. */
  readonly 'clock-hours': Figure;
  /** Of those who carry or hold the hose [h]. */
  readonly 'labor-hours': Figure;
  /** Hire of buggy and pump. */
  readonly hire: Figure;
  readonly 'labor-cost': Figure;
  /** Things that nothing gets to. */
  readonly unreached: Figure;
};

type Things = Readonly<Record<string, PlacedFigures>>;
type By = Readonly<Record<string, CarriedBy | null>>;

export function totalFigures(made: {
  readonly parts: readonly Part[];
  readonly things: Things;
  /** Of each thing that is carried, how; null where nothing gets there. */
  readonly by: By;
  readonly placing: Placing;
  readonly laborUsdPerHr: Figure;
}): PlacingTotals {
  const { parts, things, by, placing, laborUsdPerHr } = made;
  const chute = chuteFigure(parts, things);
  const clock = clockFigure(chute, things, placing);
  const labor = hoursOf(things, 'labor-hours', 'LaborHr');
  return {
    chute,
    'clock-hours': clock,
    'labor-hours': labor,
    hire: hireFigure(things, by, placing),
    'labor-cost': figure({
      value: roundToCent(new Usd(laborUsdPerHr.value).times(num(labor))),
      unit: '$',
      decimals: 2,
      formula: 'roundCent(laborHr * laborUsdPerHr)',
      inputs: { laborHr: labor, laborUsdPerHr },
      source: COMPANY_FIGURE,
      rounding: 'cent',
    }),
    unreached: figure({
      value: Object.values(by).filter((means) => means === null).length,
      unit: 'each',
      decimals: 0,
      formula: { method: 'slabs and steps that neither chute, wheelbarrow, buggy nor pump gets to' },
      inputs: {},
      source: COMPANY_FIGURE,
    }),
  };
}

function chuteFigure(parts: readonly Part[], things: Things): Figure {
  const volumes = inputsByName(Object.fromEntries(parts.map(({ id, volume }) => [id, volume])), 'CuYd');
  const carried = inputsByName(
    Object.fromEntries(Object.entries(things).map(([id, thing]) => [id, thing.carried])),
    'CarriedCuYd',
  );
  return figure({
    value: Math.max(0, sumOf(volumes) - sumOf(carried)),
    unit: 'yd3',
    decimals: 2,
    formula: `max(0, ${sumExpression(volumes)} - (${sumExpression(carried)}))`,
    inputs: { ...volumes, ...carried },
  });
}

function clockFigure(chute: Figure, things: Things, placing: Placing): Figure {
  const clocks = inputsByName(picked(things, 'clock-hours'), 'ClockHr');
  const isChuted = placing.chute !== null && num(chute) > 0;
  const chuteInputs: Readonly<Record<string, FigureInput>> =
    placing.chute === null || !isChuted
      ? {}
      : {
          chuteCuYd: chute,
          paceCuYdPerHr: given('company.placing.chute.pace', cuYdPerHr(placing.chute.pace), 'per h'),
        };
  const chuteHr = placing.chute !== null && isChuted ? num(chute) / cuYdPerHr(placing.chute.pace) : 0;
  const terms = [...(isChuted ? ['chuteCuYd / paceCuYdPerHr'] : []), ...Object.keys(clocks)];
  return figure({
    value: chuteHr + sumOf(clocks),
    unit: 'h',
    decimals: 2,
    formula: terms.join(' + ') || '0',
    inputs: { ...chuteInputs, ...clocks },
    source: COMPANY_FIGURE,
  });
}

function hoursOf(things: Things, key: 'labor-hours' | 'clock-hours', suffix: string): Figure {
  const inputs = inputsByName(picked(things, key), suffix);
  return figure({ value: sumOf(inputs), unit: 'h', decimals: 2, formula: sumExpression(inputs), inputs });
}

function picked(things: Things, key: 'labor-hours' | 'clock-hours'): Record<string, Figure> {
  return Object.fromEntries(
    Object.entries(things).flatMap(([id, thing]) => {
      const hours = thing[key];
      return hours === undefined ? [] : [[id, hours] as const];
    }),
  );
}

/** A buggy for a day, or for the hours it runs; a pump for its visit and what it pumps. */
function hireFigure(things: Things, by: By, placing: Placing): Figure {
  const of = (means: CarriedBy) => Object.keys(by).filter((id) => by[id] === means);
  const lines = [...buggyLine(of('buggy'), things, placing), ...pumpLine(of('pump'), things, placing)];
  return figure({
    value: roundToCent(lines.reduce<Decimal>((sumUsd, { usd }) => sumUsd.plus(usd), new Usd(0))),
    unit: '$',
    decimals: 2,
    formula: `roundCent(${lines.map(({ term }) => term).join(' + ') || '0'})`,
    inputs: Object.assign({}, ...lines.map(({ inputs }) => inputs)) as Record<string, FigureInput>,
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
}

type Line = {
  readonly usd: Decimal;
  readonly term: string;
  readonly inputs: Readonly<Record<string, FigureInput>>;
};

function buggyLine(ids: readonly string[], things: Things, { buggy }: Placing): readonly Line[] {
  if (buggy === null || ids.length === 0) return [];
  const isByDay = buggy.cost.perUnit === 'day';
  const buggyUsd = given('company.placing.buggy.cost', buggy.cost.amountUsd, isByDay ? '$/day' : '$/h');
  if (isByDay) return [{ usd: new Usd(buggy.cost.amountUsd), term: 'buggyUsd', inputs: { buggyUsd } }];
  const clocks = inputsByName(
    Object.fromEntries(Object.entries(picked(things, 'clock-hours')).filter(([id]) => ids.includes(id))),
    'BuggyHr',
  );
  return [
    {
      usd: new Usd(buggy.cost.amountUsd).times(sumOf(clocks)),
      term: `(${sumExpression(clocks)}) * buggyUsd`,
      inputs: { ...clocks, buggyUsd },
    },
  ];
}

function pumpLine(ids: readonly string[], things: Things, { pump }: Placing): readonly Line[] {
  if (pump === null || ids.length === 0) return [];
  const visitUsd = given('company.placing.pump.visit', pump.visitUsd, '$');
  const visit: Line = { usd: new Usd(pump.visitUsd), term: 'visitUsd', inputs: { visitUsd } };
  if (pump.byVolume === null) return [visit];
  const pumped = inputsByName(
    Object.fromEntries(
      ids.flatMap((id) => {
        const thing = things[id];
        return thing === undefined ? [] : [[id, thing.carried] as const];
      }),
    ),
    'PumpedCuYd',
  );
  const usdEach = usdPerCuYd(pump.byVolume);
  return [
    visit,
    {
      usd: usdEach.times(sumOf(pumped)),
      term: `(${sumExpression(pumped)}) * pumpUsdPerCuYd`,
      inputs: { ...pumped, pumpUsdPerCuYd: given('company.placing.pump.by-volume', usdEach, '$/yd3') },
    },
  ];
}
