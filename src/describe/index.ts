import type { JobResults } from '../calculate/index.ts';
import type { Job } from '../calculate/job.ts';
import type { Origins } from '../problems/index.ts';
import type { Words } from '../words/index.ts';
import { describeCalculation } from './calculation/index.ts';
import { describeMaterials, materialsSpreadsheets } from './materials/index.ts';
import { findingsView } from './parts/findings-view.ts';
import { frameOf } from './parts/frame.ts';
import { frameFactsOf } from './parts/frame-facts.ts';
import { describeProposal } from './proposal/index.ts';
import { proposalFactsOf } from './proposal-facts.ts';
import { describeSafety } from './safety/index.ts';
import type { BinderView, CalculationView, DocumentKind, SpreadsheetView } from './views.ts';
import { describeWorkOrder } from './work-order/index.ts';

export { figureIds } from './calculation/index.ts';
export { describeJobsPage, type JobsPageFacts } from './jobs-page/index.ts';
export { describeSiteWalk } from './site-walk/index.ts';

type Described = Omit<BinderView, 'frame' | 'contents'> & {
  readonly binder: BinderView;
  /** What pages show as tables, for a spreadsheet: the loads, null without any; all of the materials plan. */
  readonly spreadsheets: {
    readonly loads: SpreadsheetView | null;
    readonly materials: readonly SpreadsheetView[];
  };
};

const PARTS = [
  'proposal',
  'work-order',
  'materials',
  'safety',
  'calculation',
] as const satisfies readonly DocumentKind[];

/** All documents of a job as view models; the binder holds the others, but for the spreadsheets. */
export function describeJob(made: Made, words: Words): Described {
  const { job, results } = made;
  const parts = {
    proposal: describeProposal(proposalFactsOf(job, results), words),
    workOrder: describeWorkOrder(job, results, words),
    materials: describeMaterials(job, results, words),
    safety: describeSafety(job, results, words),
    calculation: describeCalculationOf(made, words),
  };
  const { documents } = words.common;
  return {
    ...parts,
    binder: {
      frame: frameOf('binder', frameFactsOf(job), words),
      contents: {
        heading: words.common.contents,
        entries: PARTS.map((part) => ({ part, title: documents[part] })),
      },
      ...parts,
    },
    spreadsheets: materialsSpreadsheets(job, results, words),
  };
}

type Made = { readonly job: Job; readonly results: JobResults; readonly origins: Origins };

/** The calculation sheet alone: every figure, and no drawing to find room for. */
export function describeCalculationOf(made: Made, words: Words): CalculationView {
  const { job, results, origins } = made;
  const { price, cost } = results;
  return describeCalculation(
    {
      frame: frameFactsOf(job),
      topics: results.figures,
      origins,
      margin: {
        cost: cost.figures.total,
        others: Object.values(job.price.otherCosts).flatMap(({ id, label }) => {
          const line = cost.figures.lines[`other-${id}`];
          return line === undefined ? [] : [{ label, cost: line }];
        }),
        overhead: price.figures.overhead,
        margin: price.figures.margin,
        share: price.figures['margin-share'],
        total: price.figures.total,
      },
      findings: findingsView(job, results.findings, words),
      contact: [job.client.phone, job.client.email].filter((one) => one !== null),
    },
    words,
  );
}
