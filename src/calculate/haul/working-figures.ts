import { COMPANY_FIGURE, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { DumpPlace } from '../job.ts';
import { thingNamed } from '../parts.ts';
import { type HaulRates, haulCostFigure } from './cost-figures.ts';
import type { HaulLoad } from './load-table.ts';
import { driverCount, type PlanProblem, swapSavesHr } from './plan/index.ts';

/** How the loader and the trucks share the day; of the loads that a job has. */
export type WorkingFigures = {
  /** Filling one load [h]. */
  readonly 'loader-cycle': Figure;
  /** From one load leaving to the next, if each found its trailer full: mean of all, over the trucks [h]. */
  readonly 'truck-cycle': Figure;
  readonly trucks: Figure;
  /** Only where trailers are swapped. */
  readonly swapped?: SwapFigures;
};

export type SwapFigures = {
  /** What a load saves that is filled while the truck is away [h]. */
  readonly spared: Figure;
  /** Loads that the truck waits for all the same. */
  readonly waits: Figure;
  /** Of the driver, for these [h]. */
  readonly hours: Figure;
  /** A truck that waits drives none. */
  readonly miles: Figure;
  /** Driver and truck [$]. */
  readonly cost: Figure;
};

export function workingFigures(made: {
  readonly problem: PlanProblem;
  readonly loads: readonly HaulLoad[];
  readonly places: Readonly<Record<string, DumpPlace>>;
  readonly rates: HaulRates;
}): WorkingFigures | null {
  const { problem, loads, rates } = made;
  if (loads.length === 0) return null;
  const trucks = figure({
    value: driverCount(problem),
    unit: 'each',
    decimals: 0,
    formula: 'min(drivers, trailers)',
    inputs: {
      drivers: given('plan.drivers', rates.driverCount, 'each'),
      trailers: given('plan.trailers', problem.trailers.length, 'each'),
    },
  });
  const swapped = swapSavesHr(problem) > 0 ? swapFigures(made) : null;
  return {
    'loader-cycle': figure({
      value: rates.loadingHr,
      unit: 'h',
      decimals: 2,
      formula: 'loadingHr',
      inputs: { loadingHr: given('company.loading-time', rates.loadingHr, 'h') },
      source: COMPANY_FIGURE,
    }),
    'truck-cycle': truckCycle(made, trucks),
    trucks,
    ...(swapped === null ? {} : { swapped }),
  };
}

/** Whether the loader is slower than the trucks that it fills. */
export function loaderSets(working: WorkingFigures): boolean {
  return num(working['loader-cycle']) > num(working['truck-cycle']);
}

/** Where trailers are swapped the truck is away and swaps; else it is loaded too. */
function truckCycle(
  { problem, loads, places, rates }: Parameters<typeof workingFigures>[0],
  trucks: Figure,
): Figure {
  const awayHr = loads.reduce((sum, load) => {
    const { driveHr, turnHr } = thingNamed(places, load.place, 'place');
    return sum + 2 * driveHr + turnHr * (load.returns === 'base' ? 2 : 1);
  }, 0);
  const isSwapped = swapSavesHr(problem) > 0;
  const betweenHr = isSwapped ? (rates.swapHr ?? 0) : rates.loadingHr;
  return figure({
    value: (awayHr / loads.length + betweenHr) / num(trucks),
    unit: 'h',
    decimals: 2,
    formula: {
      method: `mean over the loads of the time away, with ${isSwapped ? 'swapping trailers' : 'loading'}, over the trucks`,
    },
    inputs: {
      ...(isSwapped
        ? { swapHr: given('company.swap-time', betweenHr, 'h') }
        : { loadingHr: given('company.loading-time', betweenHr, 'h') }),
      trucks,
    },
    source: COMPANY_FIGURE,
  });
}

function swapFigures({ problem, loads, rates }: Parameters<typeof workingFigures>[0]): SwapFigures {
  const spared = sparedFigure(problem, rates);
  const waits = figure({
    value: waitedFor(loads),
    unit: 'each',
    decimals: 0,
    formula: { method: 'the first load, and each that follows one on the same trailer' },
    inputs: {},
  });
  const hours = figure({
    value: num(waits) * num(spared),
    unit: 'h',
    decimals: 2,
    formula: 'waits * sparedHr',
    inputs: { waits, sparedHr: spared },
  });
  const miles = figure({ value: 0, unit: 'mi', decimals: 0, formula: '0', inputs: {} });
  return { spared, waits, hours, miles, cost: haulCostFigure({ hours, miles, fee: null }, rates) };
}

/** Loads that do not come after one on another trailer. */
export function waitedFor(loads: readonly Pick<HaulLoad, 'trailer'>[]): number {
  return loads.filter(({ trailer }, index) => index === 0 || loads[index - 1]?.trailer === trailer).length;
}

function sparedFigure(problem: PlanProblem, rates: HaulRates): Figure {
  const shortest = problem.places.reduce((best, place) =>
    2 * place.driveHr + place.turnHr < 2 * best.driveHr + best.turnHr ? place : best,
  );
  const path = `company.places.${shortest.id}`;
  const inputs: Record<string, FigureInput> = {
    loadingHr: given('company.loading-time', rates.loadingHr, 'h'),
    driveHr: given(`${path}.drive`, shortest.driveHr, 'h'),
    turnHr: given(`${path}.turn`, shortest.turnHr, 'h'),
    swapHr: given('company.swap-time', rates.swapHr ?? 0, 'h'),
  };
  return figure({
    value: swapSavesHr(problem),
    unit: 'h',
    decimals: 2,
    formula: 'max(0, min(driveHr + driveHr + turnHr, loadingHr) - swapHr)',
    inputs,
    source: COMPANY_FIGURE,
  });
}
