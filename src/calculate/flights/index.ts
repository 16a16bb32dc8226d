import type { CoreProblem } from '../../problems/index.ts';
import { given, num } from '../figure.ts';
import type { GradedSlab } from '../grades/index.ts';
import type { Flight, Steps } from '../job.ts';
import type { LevelsResult } from '../levels/index.ts';
import type { TopicResult } from '../topic.ts';
import { type Foot, type FootHeights, footOf } from './foot-changes.ts';
import { FOOT_SPOTS, type FootFigures, footFigures } from './foot-figures.ts';
import { footProblems } from './foot-problems.ts';
import { isEven } from './limits.ts';
import { type BuiltSteps, riseFigures } from './rise.ts';
import { type SplitFigures, splitFigures } from './split-figures.ts';
import { bodyProblem, roomProblem, type StepsFigures, stepsFigures, treadProblem } from './steps-figures.ts';

export { FOOT_SPOTS, type FootFigures } from './foot-figures.ts';
export { isEven, RISER_SPREAD_IN } from './limits.ts';
export { type BuiltSteps, tapedRisen } from './rise.ts';
export { equalRisers, formedRiserIn, strideIn } from './split.ts';
export type { SplitFigures } from './split-figures.ts';
export type { StepsFigures } from './steps-figures.ts';
export { type TreadWork, treadWork } from './tread-work.ts';

export type StayFigures = FootFigures & {
  /** Only where heights tell what changes at the foot. */
  readonly foot?: FootHeights;
  /** Equal risers with the landing as it is. */
  readonly kept: SplitFigures;
  /** Equal risers with the landing raised; only where something may be laid on it. */
  readonly raised?: SplitFigures;
};

export type FlightsResult = TopicResult<
  {
    readonly stays: Readonly<Record<string, StayFigures>>;
    readonly steps: Readonly<Record<string, StepsFigures>>;
  },
  {
    /** Ids of flights that stay and whose steps are then too uneven or too high. */
    readonly uneven: readonly string[];
    /** The flights to build, every riser known. */
    readonly steps: Readonly<Record<string, BuiltSteps>>;
  }
>;

/**
 * Flights of steps: what the new surface at the foot of one that stays does to it and what can be done, and
 * what one that is built is formed at.
 *
 * @param input.points Heights by point; none where the job says nothing of heights.
 * @param input.graded The slabs whose surface is known from them.
 */
export function calcFlights(input: {
  readonly flights: Readonly<Record<string, Flight>>;
  readonly steps: Readonly<Record<string, Steps>>;
  readonly points: LevelsResult['figures']['points'];
  readonly graded: Readonly<Record<string, GradedSlab>>;
}): FlightsResult {
  const slabs = Object.values(input.graded);
  const stays = Object.values(input.flights).map((flight) => ({ flight, foot: footOf(flight, slabs) }));
  const built = Object.values(input.steps).map((steps) => builtOf(steps, input.points ?? {}));
  return {
    figures: {
      stays: Object.fromEntries(stays.map((one) => [one.flight.id, stayFigures(one)])),
      steps: Object.fromEntries(built.map(({ steps, figures }) => [steps.id, figures])),
    },
    data: {
      uneven: stays.filter(isUneven).map(({ flight }) => flight.id),
      steps: Object.fromEntries(built.map(({ steps }) => [steps.id, steps])),
    },
    problems: [
      ...stays.flatMap(({ flight, foot }) => [...foot.problems, ...footProblems(flight, foot.changes)]),
      ...built.flatMap(({ problems }) => problems),
    ],
  };
}

type Stay = { readonly flight: Flight; readonly foot: Foot };

function isUneven({ flight, foot }: Stay): boolean {
  const [lowestIn = 0, ...othersIn] = flight.risersIn;
  return !isEven([...othersIn, ...FOOT_SPOTS.map((spot) => lowestIn - num(foot.changes[spot]))]);
}

function stayFigures({ flight, foot }: Stay): StayFigures {
  const { id, topping } = flight;
  const { changes, heights } = foot;
  const made = {
    ...(heights === null ? {} : { foot: heights }),
    ...footFigures(flight, changes),
    kept: splitFigures(flight, changes.middle, null),
  };
  if (topping === null || topping.landingIn === 0) return made;
  const landing = given(`site.flights.${id}.topping.landing`, topping.landingIn, 'in');
  return { ...made, raised: splitFigures(flight, changes.middle, landing) };
}

type Points = NonNullable<LevelsResult['figures']['points']>;

function builtOf(
  steps: Steps,
  points: Points,
): { readonly steps: BuiltSteps; readonly figures: StepsFigures; readonly problems: readonly CoreProblem[] } {
  const { id, label, widthIn, treadIn, landingIn } = steps;
  const { figures: rise, risen, problem } = riseFigures(steps, points);
  const tooSteep = treadProblem(steps, rise);
  const figures = stepsFigures(tooSteep === null ? steps : { ...steps, treadSlope: 0 }, rise);
  const [riserCount, riserIn] = [num(risen.risers), num(risen.riser)];
  const problems = [problem, tooSteep, bodyProblem(steps, rise), roomProblem(steps, figures)].filter(
    (one) => one !== null,
  );
  return {
    steps: { id, label, widthIn, treadIn, landingIn, riserCount, riserIn, risen },
    figures,
    problems,
  };
}
