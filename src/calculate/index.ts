import type { CoreProblem } from '../problems/index.ts';
import { type BaysResult, calcBays } from './bays/index.ts';
import { applyEdits } from './edits.ts';
import { type Figure, type FigureTree, num, walkFigures } from './figure.ts';
import { type CheckedFigures, calcChecks, evaluateRules, type Finding, ruleTags } from './findings/index.ts';
import { calcTieDowns, type HaulWhyFigures, haulWhy, type TieDownFigures } from './haul/index.ts';
import { calcHidden, type HiddenResult } from './hidden/index.ts';
import type { Job, JointCut } from './job.ts';
import { thingNamed } from './parts.ts';
import { calcPourDay, type PourDayResult } from './pour-day/index.ts';
import { calcPours, type PoursResult } from './pours/index.ts';
import { sameParts } from './same-parts.ts';
import { newTopics, type Topics } from './topics.ts';
import { calcWork, type Work } from './work.ts';

/** Everything that follows from a job. */
export type JobResults = Work & {
  readonly hidden: HiddenResult;
  readonly bays: BaysResult;
  /** Null where nothing is placed. */
  readonly pourDay: PourDayResult | null;
  /** Null where all of it is one pour. */
  readonly pours: PoursResult | null;
  readonly findings: readonly Finding[];
  readonly checks: CheckedFigures;
  /** By machine that works here and says what it weighs. */
  readonly tieDowns: Readonly<Record<string, TieDownFigures>>;
  /** Null where there is no plan of trips, or nobody asked. */
  readonly why: HaulWhyFigures | null;
  /** Every figure, by topic; a figure's id is its path in here. */
  readonly figures: Readonly<Record<string, FigureTree>>;
};

export type CalculatedJob =
  | { readonly results: JobResults; readonly problems: readonly CoreProblem[] }
  | { readonly results: null; readonly problems: readonly CoreProblem[] };

/**
 * What calculates a job. Pure: no files, no clock, nothing random; the same job gives the same results.
 *
 * @param asked.why Whether other plans of trips are looked for too; they take longer than all the rest.
 * @returns `results: null` where an outline cannot be closed, so that nothing follows from it.
 */
export type CalculateJob = (job: Job, asked?: { readonly why: boolean }) => CalculatedJob;

/** Calculates a job by itself. */
export const calculateJob: CalculateJob = (job, asked) => calculated(job, asked, newTopics());

/** One `calculateJob` for versions of a job, each read anew: what did not change since is not calculated again. */
export function aCalculator(): CalculateJob {
  const topics = newTopics();
  const known = sameParts();
  return (job, asked) => calculated(known(job), asked, topics);
}

function calculated(
  job: Job,
  asked: { readonly why: boolean } = { why: true },
  topics: Topics,
): CalculatedJob {
  const { work, problems } = calcWork(job, topics);
  if (work === null) return { results: null, problems };

  const hidden = calcHidden({
    hidden: job.price.hidden,
    base: work.price.figures,
    recalculate: (edits) => calcWork(applyEdits(job, edits), topics),
  });
  const { outline, haul } = work;
  const bays = calcBays({
    loads: haul.data.loads,
    outlines: outline.data.existing,
    lies: outline.data.existingLies,
    shapes: outline.figures,
  });
  const checks = checksOf(job, work);
  const tieDowns = calcTieDowns({
    machines: job.company.machines,
    production: job.company.production,
    tasks: work.crew.figures.tasks,
  });
  const pourDay = calcPourDay({
    pour: job.pour,
    slabs: job.build.slabs,
    cutFt: cutLengths(job.build.slabs, work.joints.figures.slabs),
    rules: job.rules,
    freeCancelHr: work.concrete.data.supply === 'truck' ? job.company.suppliers.concrete.freeCancelHr : null,
    lastEmptyHr:
      work.concrete.data.supply === 'truck' ? (work.concrete.figures.delivery['last-empty'] ?? null) : null,
    waits: work.strength.figures.waits,
    plan: job.plan,
    labor: job.company.labor,
    tasks: work.crew.figures.tasks,
    days: work.crew.data.days,
  });
  const pours = poursOf(job, work, pourDay);
  const { planned } = haul.data;
  const why = planned === null || !asked.why ? null : haulWhy(planned, job.company);
  const figures = figuresByTopic({ ...work, hidden, bays, pourDay, pours, checks, tieDowns, why });
  const rules = evaluateRules({
    rules: job.rules,
    figures,
    tags: ruleTags({
      slabs: job.build.slabs,
      steps: job.build.steps,
      mix: job.build.mix,
      loadCount: work.haul.data.loads.length,
    }),
    acknowledged: job.acknowledged,
  });
  return {
    results: {
      ...work,
      hidden,
      bays,
      pourDay,
      pours,
      checks,
      tieDowns,
      why,
      findings: rules.findings,
      figures,
    },
    problems: [...problems, ...newIn(hidden.problems, problems), ...rules.problems],
  };
}

/** @param pourDay Null where nothing is placed. */
function poursOf(job: Job, work: Work, pourDay: PourDayResult | null): PoursResult | null {
  const finish = work.crew.figures.tasks.finish;
  const time = pourDay?.figures.finishers?.['time-to-finish'];
  return calcPours({
    joints: work.joints.data,
    areas: work.outline.figures.slabs,
    net: work.concrete.figures.slabs,
    slabs: job.build.slabs,
    finishPeople: job.company.production.finish.people,
    rules: job.rules,
    inTime:
      finish === undefined || time === undefined
        ? null
        : { timeToFinishHr: time, crewCount: job.plan.crew.length, finishLaborHr: finish['labor-hours'] },
  });
}

/** The ways in which joints are cut, each with the lengths that are, by slab. */
function cutLengths(
  slabs: Job['build']['slabs'],
  joints: Work['joints']['figures']['slabs'],
): ReadonlyMap<JointCut, Readonly<Record<string, Figure>>> {
  const lengths = new Map<JointCut, Record<string, Figure>>();
  for (const slab of Object.values(slabs)) {
    const { length } = thingNamed(joints, slab.id, 'slab');
    const { cut } = slab.joints;
    if (num(length) > 0) lengths.set(cut, { ...lengths.get(cut), [slab.id]: length });
  }
  return lengths;
}

/**
 * What is wrong with the job as it is is wrong with its scenarios too; it is told once. That more is hauled
 * than the days are for is no problem of a scenario: who finds more takes longer.
 */
function newIn(problems: readonly CoreProblem[], known: readonly CoreProblem[]): readonly CoreProblem[] {
  const key = ({ code, parts }: CoreProblem) => JSON.stringify([code, parts]);
  const told = new Set(known.map(key));
  return problems.filter((problem) => problem.code !== 'haul-not-in-time' && !told.has(key(problem)));
}

function figuresByTopic(
  work: Omit<JobResults, 'findings' | 'figures'>,
): Readonly<Record<string, FigureTree>> {
  return {
    outline: work.outline.figures,
    layout: work.layout.figures,
    ...(work.levels.figures.points === undefined ? {} : { levels: work.levels.figures }),
    ...(walkFigures(work.tieIns.figures).length === 0 ? {} : { 'tie-ins': work.tieIns.figures }),
    ...(walkFigures(work.grades.figures).length === 0 ? {} : { grades: work.grades.figures }),
    ...(walkFigures(work.thickened.figures).length === 0 ? {} : { thickened: work.thickened.figures }),
    'tear-out': work.tearOut.figures,
    breaking: work.breaking.figures,
    ...(walkFigures(work.flights.figures).length === 0 ? {} : { flights: work.flights.figures }),
    ...(walkFigures(work.clearances.figures).length === 0 ? {} : { clearances: work.clearances.figures }),
    ...(walkFigures(work.profiles.figures).length === 0 ? {} : { profiles: work.profiles.figures }),
    ...(walkFigures(work.fixtures.figures).length === 0 ? {} : { fixtures: work.fixtures.figures }),
    base: work.base.figures,
    forms: work.forms.figures,
    joints: work.joints.figures,
    edges: work.edges.figures,
    reinforcement: work.reinforcement.figures,
    concrete: work.concrete.figures,
    haul: {
      ...work.haul.figures,
      ...(work.why === null ? {} : { why: work.why }),
      'tie-downs': work.tieDowns,
    },
    bays: work.bays.figures,
    strength: work.strength.figures,
    curing: work.curing.figures,
    ...(work.pourDay === null ? {} : { 'pour-day': work.pourDay.figures }),
    ...(work.pours === null ? {} : { pours: work.pours.figures }),
    crew: { rate: work.laborRate.figures, ...work.crew.figures },
    cost: work.cost.figures,
    price: work.price.figures,
    safety: work.safety.figures,
    hidden: work.hidden.figures,
    checks: work.checks,
  };
}

function checksOf(job: Job, { haul, concrete }: Work): CheckedFigures {
  const { loads, baseFrom } = haul.data;
  const hauling = new Set([
    ...loads.map(({ trailer }) => trailer),
    ...baseFrom.map(({ trailer }) => trailer),
  ]);
  return calcChecks({
    slabs: job.build.slabs,
    mix: job.build.mix,
    mixFigures: concrete.figures.mix,
    strengthFloorPsi: concrete.figures['strength-floor'],
    trailers: haul.figures.trailers,
    loads,
    fleet: {
      towVehicle: job.company.towVehicle,
      trailers: job.company.trailers,
      hauling: job.plan.trailers.filter((id) => hauling.has(id)),
    },
  });
}
