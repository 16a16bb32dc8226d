import { sumUsd } from '../../units/index.ts';
import {
  COMPANY_FIGURE,
  type Figure,
  type FigureInput,
  type FigureUnit,
  figure,
  type Given,
  given,
  num,
} from '../figure.ts';
import type { DumpPlace } from '../job.ts';
import { type HaulRates, haulCostFigure, placeInputs } from './cost-figures.ts';
import type { HaulLoad } from './load-table.ts';
import { tripHr } from './trip.ts';
import type { WorkingFigures } from './working-figures.ts';

/** All trips of one trailer to one place. */
export type WayFigures = {
  readonly trips: Figure;
  /** Of them, those that come back with base. */
  readonly 'with-base': Figure;
  /** From the start of loading to the return, without base [h]. */
  readonly cycle: Figure;
  /** Of the driver [h]. */
  readonly hours: Figure;
  /** [mi] */
  readonly miles: Figure;
  /** All tickets [$]. */
  readonly fees: Figure;
  /** Fees, driver and truck [$]. */
  readonly cost: Figure;
};

/** What the trips of one trailer to one place take and cost. */
export function wayFigures(
  loads: readonly HaulLoad[],
  place: DumpPlace,
  { rates, working }: { readonly rates: HaulRates; readonly working: WorkingFigures | null },
): WayFigures {
  const { driveHr, turnHr, distanceMi } = placeInputs(place);
  const loadingHr = given('company.loading-time', rates.loadingHr, 'h');
  const trips = planned(loads.length, 'trips of this trailer to this place, of the plan that costs least');
  const withBase = planned(
    loads.filter(({ returns }) => returns === 'base').length,
    'trips of these on which base rides back, of the plan that costs least',
  );
  const spared = working?.swapped?.spared;
  const cycleHr = tripHr({
    loadingHr: rates.loadingHr,
    outHr: place.driveHr,
    turnHr: place.turnHr,
    backHr: place.driveHr,
  });
  const cycle = figure({
    value: spared === undefined ? cycleHr : cycleHr - num(spared),
    unit: 'h',
    decimals: 2,
    formula: `loadingHr + driveHr + turnHr + driveHr${spared === undefined ? '' : ' - sparedHr'}`,
    inputs: { loadingHr, driveHr, turnHr, ...(spared === undefined ? {} : { sparedHr: spared }) },
    source: COMPANY_FIGURE,
  });
  const hours = hoursFigure({ trips, withBase, cycle, turnHr, loadingHr }, working);
  const miles = figure({
    value: num(trips) * 2 * place.distanceMi,
    unit: 'mi',
    decimals: 0,
    formula: 'trips * 2 * distanceMi',
    inputs: { trips, distanceMi },
    source: COMPANY_FIGURE,
  });
  const fees = feesFigure(loads, place, trips);
  return {
    trips,
    'with-base': withBase,
    cycle,
    hours,
    miles,
    fees,
    cost: haulCostFigure({ hours, miles, fee: fees }, rates),
  };
}

/** Where several trucks wait for one loader, none has a load sooner than it has filled one for each. */
function hoursFigure(
  made: {
    readonly trips: Figure;
    readonly withBase: Figure;
    readonly cycle: Figure;
    readonly turnHr: Given;
    readonly loadingHr: Given;
  },
  working: WorkingFigures | null,
): Figure {
  const { trips, withBase, cycle, turnHr, loadingHr } = made;
  const shown = { unit: 'h', decimals: 1, source: COMPANY_FIGURE } as const;
  const inputs = { trips, cycleHr: cycle, withBase, turnHr };
  if (working === null || num(working.trucks) === 1)
    return figure({
      ...shown,
      value: num(trips) * num(cycle) + num(withBase) * Number(turnHr.value),
      formula: 'trips * cycleHr + withBase * turnHr',
      inputs,
    });
  const { trucks } = working;
  const turnsHr = num(trucks) * Number(loadingHr.value);
  return figure({
    ...shown,
    value:
      (num(trips) - num(withBase)) * Math.max(num(cycle), turnsHr) +
      num(withBase) * Math.max(num(cycle) + Number(turnHr.value), turnsHr),
    formula:
      '(trips - withBase) * max(cycleHr, trucks * loadingHr) + withBase * max(cycleHr + turnHr, trucks * loadingHr)',
    inputs: { ...inputs, trucks, loadingHr },
  });
}

function planned(value: number, method: string): Figure {
  return figure({ value, unit: 'each', decimals: 0, formula: { method }, inputs: {} });
}

const FEE_UNITS: Readonly<Record<string, FigureUnit>> = { load: '$/load', ton: '$/ton', yd3: '$/yd3' };

function feesFigure(loads: readonly HaulLoad[], place: DumpPlace, trips: Figure): Figure {
  const path = `company.places.${place.id}`;
  const per = place.fee.perUnit;
  const minimumUsd = given(`${path}.minimum`, place.minimumUsd, '$/visit');
  const feeUsd = given(`${path}.fee`, place.fee.amountUsd, FEE_UNITS[per] ?? '$');
  const made = {
    value: sumUsd(loads.map((load) => load.feeUsd)),
    unit: '$',
    decimals: 2,
    source: COMPANY_FIGURE,
    rounding: 'cent',
  } as const;
  const added = addedInputs(loads, place);
  if (per === 'load' && Object.keys(added).length === 0) {
    const formula = 'trips * roundCent(max(minimumUsd, feeUsd))';
    return figure({ ...made, formula, inputs: { trips, minimumUsd, feeUsd } });
  }
  const method =
    'sum over the loads, each to the cent: the fee and what is added for what is on it, times loads, tons or loose yards, and no less than the minimum';
  return figure({ ...made, formula: { method }, inputs: { trips, minimumUsd, feeUsd, ...added } });
}

/** Surcharges that some of the loads pay, and the fee of those that go back with base. */
function addedInputs(loads: readonly HaulLoad[], place: DumpPlace): Record<string, FigureInput> {
  const path = `company.places.${place.id}`;
  const streams = [...new Set(loads.flatMap((load) => load.streams))];
  const surcharges = streams.flatMap((stream) => {
    const rate = place.surcharges[stream];
    const name = `${stream.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase())}Usd`;
    return rate === undefined
      ? []
      : [
          [
            name,
            given(`${path}.surcharges.${stream}`, rate.amountUsd, FEE_UNITS[rate.perUnit] ?? '$'),
          ] as const,
        ];
  });
  const { feeWithBase } = place;
  const withBase = loads.some(({ returns }) => returns === 'base') ? feeWithBase : null;
  return {
    ...Object.fromEntries(surcharges),
    ...(withBase === null
      ? {}
      : {
          feeWithBaseUsd: given(
            `${path}.fee-with-base`,
            withBase.amountUsd,
            FEE_UNITS[withBase.perUnit] ?? '$',
          ),
        }),
  };
}
