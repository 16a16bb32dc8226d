import { roundToCent, Usd } from '../../units/index.ts';
import { type Figure, figure, given } from '../figure.ts';
import type { TowVehicle, Trailer } from '../job.ts';
import { rememberByValue } from '../remember.ts';
import { bestPlan, nextPlan, type Plan, type PlanProblem } from './plan/index.ts';
import { limitsLb, payloadLb } from './trailer.ts';

/** What another plan takes and costs: fees, drivers and truck, base and its deliveries. */
export type OtherPlanFigures = { readonly cost: Figure; readonly trips: Figure };

export type HaulWhyFigures = {
  readonly plan: OtherPlanFigures;
  /** The cheapest other plan; only where there is one. */
  readonly 'second-best'?: OtherPlanFigures;
  /** With one of several trailers alone, where that can be done. */
  readonly only: Readonly<Record<string, OtherPlanFigures>>;
  /** If every load were filled to what the ratings allow, with nothing kept free. */
  readonly 'no-reserve'?: OtherPlanFigures;
};

/** What the plan of trips was made from, and the plan. */
export type Planned = { readonly problem: PlanProblem; readonly plan: Plan };

/** More than a job has. */
const KEPT_PLANS = 50;
const nextTrips = rememberByValue(
  'next trips',
  ({ problem, plan }: Planned) => nextPlan(problem, plan),
  KEPT_PLANS,
);
const otherTrips = rememberByValue('other trips', (problem: PlanProblem) => bestPlan(problem), KEPT_PLANS);

/** Why the plan is as it is: what the other ways would cost. */
export function haulWhy(
  { problem, plan }: Planned,
  fleet: {
    readonly trailers: Readonly<Record<string, Trailer>>;
    readonly towVehicle: TowVehicle;
    readonly loadReserveLb: number;
  },
): HaulWhyFigures {
  const second = nextTrips({ problem, plan });
  const only = problem.trailers.length < 2 ? [] : problem.trailers.map((trailer) => trailer.id);
  const noReserve = fleet.loadReserveLb === 0 ? null : otherTrips(withoutReserve(problem, fleet));
  return {
    plan: otherFigures(plan, 'the plan of trips that costs least'),
    ...(second === null ? {} : { 'second-best': otherFigures(second, 'the cheapest plan with other trips') }),
    only: Object.fromEntries(
      only.flatMap((id) => {
        const trailers = problem.trailers.filter((trailer) => trailer.id === id);
        const alone = otherTrips({ ...problem, trailers });
        return alone === null ? [] : [[id, otherFigures(alone, 'the cheapest plan with this trailer alone')]];
      }),
    ),
    ...(noReserve === null
      ? {}
      : {
          'no-reserve': otherFigures(noReserve, 'the cheapest plan if no reserve were kept on a load', {
            reserveLb: given('company.load-reserve', fleet.loadReserveLb, 'lb'),
          }),
        }),
  };
}

function withoutReserve(problem: PlanProblem, fleet: Parameters<typeof haulWhy>[1]): PlanProblem {
  const trailers = problem.trailers.map((planned) => {
    const trailer = fleet.trailers[planned.id];
    if (trailer === undefined) throw new RangeError(`no trailer called ${planned.id}`);
    return { ...planned, payloadLb: payloadLb(limitsLb(trailer, fleet.towVehicle), 0) };
  });
  return { ...problem, trailers };
}

function otherFigures(
  plan: Plan,
  what: string,
  inputs: Parameters<typeof figure>[0]['inputs'] = {},
): OtherPlanFigures {
  return {
    cost: figure({
      value: roundToCent(new Usd(plan.costUsd)),
      unit: '$',
      decimals: 2,
      formula: { method: `fees, drivers, trucks, base and its deliveries of ${what}` },
      inputs,
      rounding: 'cent',
    }),
    trips: figure({
      value: plan.tripCount,
      unit: 'each',
      decimals: 0,
      formula: { method: `trips of ${what}` },
      inputs,
    }),
  };
}
