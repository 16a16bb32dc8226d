import type { CoreProblem } from '../problems/index.ts';
import { applyEdits } from './edits.ts';
import type { FigureTree } from './figure.ts';
import { calcChecks, evaluateRules, type Finding, ruleTags } from './findings/index.ts';
import { calcHidden, type HiddenResult } from './hidden/index.ts';
import type { Job } from './job.ts';
import { newTopics } from './topics.ts';
import { calcWork, type Work } from './work.ts';

/** Everything that follows from a job. */
export type JobResults = Work & {
  readonly hidden: HiddenResult;
  readonly findings: readonly Finding[];
  /** Every figure, by topic; a figure's id is its path in here. */
  readonly figures: Readonly<Record<string, FigureTree>>;
};

export type CalculatedJob =
  | { readonly results: JobResults; readonly problems: readonly CoreProblem[] }
  | { readonly results: null; readonly problems: readonly CoreProblem[] };

/**
 * Calculates a job. Pure: no files, no clock, nothing random; the same job gives the same results.
 *
 * @returns `results: null` where an outline cannot be closed, so that nothing follows from it.
 */
export function calculateJob(job: Job): CalculatedJob {
  const topics = newTopics();
  const { work, problems } = calcWork(job, topics);
  if (work === null) return { results: null, problems };

  const hidden = calcHidden({
    hidden: job.price.hidden,
    base: work.price.figures,
    recalculate: (edits) => calcWork(applyEdits(job, edits), topics),
  });
  const figures = figuresByTopic(job, work, hidden);
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
    results: { ...work, hidden, findings: rules.findings, figures },
    problems: [...problems, ...newIn(hidden.problems, problems), ...rules.problems],
  };
}

/** What is wrong with the job as it is is wrong with its scenarios too; it is told once. */
function newIn(problems: readonly CoreProblem[], known: readonly CoreProblem[]): readonly CoreProblem[] {
  const key = ({ code, parts }: CoreProblem) => JSON.stringify([code, parts]);
  const told = new Set(known.map(key));
  return problems.filter((problem) => !told.has(key(problem)));
}

function figuresByTopic(job: Job, work: Work, hidden: HiddenResult): Record<string, FigureTree> {
  return {
    outline: work.outline.figures,
    layout: work.layout.figures,
    'tear-out': work.tearOut.figures,
    base: work.base.figures,
    forms: work.forms.figures,
    joints: work.joints.figures,
    reinforcement: work.reinforcement.figures,
    concrete: work.concrete.figures,
    haul: work.haul.figures,
    crew: { rate: work.laborRate.figures, ...work.crew.figures },
    cost: work.cost.figures,
    price: work.price.figures,
    safety: work.safety.figures,
    hidden: hidden.figures,
    checks: calcChecks({
      slabs: job.build.slabs,
      mix: job.build.mix,
      strengthFloorPsi: work.concrete.figures['strength-floor'],
      streams: work.haul.figures.streams,
      trailers: work.haul.figures.trailers,
      loads: work.haul.data.loads,
    }),
  };
}
