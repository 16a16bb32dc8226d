import { type Figure, walkFigures } from '../../src/calculate/figure.ts';
import { describeAll } from '../../src/commands/describe-all.ts';
import { jobsPageOf, summaryOf } from '../../src/commands/job-summary.ts';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import { describeCalculationOf } from '../../src/describe/index.ts';
import { describeMaterials } from '../../src/describe/materials/index.ts';
import { describeProposal } from '../../src/describe/proposal/index.ts';
import { proposalFactsOf } from '../../src/describe/proposal-facts.ts';
import { describeSafety } from '../../src/describe/safety/index.ts';
import { showFigure } from '../../src/describe/show/index.ts';
import { describeWorkOrder } from '../../src/describe/work-order/index.ts';
import type { DocumentToRender } from '../../src/render/index.ts';
import { en } from '../../src/words/index.ts';
import type { Renderer } from './render.ts';

type PageText = { readonly view: string; readonly html: () => string };
/**
 * What a job looks like, each part made once it is asked for: its figures, and the views of the pages with
 * their HTML, those that are quick to make first. The binder repeats the others.
 */
export type Shown = {
  readonly figures: ReadonlyMap<string, Figure>;
  readonly pages: readonly (() => PageText)[];
};

/** All documents of a job but the binder. */
export function documentsOf(prepared: PreparedJob): readonly DocumentToRender[] {
  const [described] = describeAll([prepared]);
  return (described?.documents ?? []).filter(({ kind }) => kind !== 'binder');
}

export function shownPages(prepared: PreparedJob, renderer: Renderer): Shown {
  const { job, results } = prepared;
  const office = (kind: 'safety' | 'materials' | 'work-order' | 'calculation', viewOf: () => OfficeView) =>
    once(() => {
      const view = viewOf();
      return pageText(view, () => renderer.document({ kind, folder: 'office', name: kind, view }));
    });
  const rows = Object.entries(results.figures).flatMap(([topic, tree]) => walkFigures(tree, topic));
  return {
    figures: new Map(rows.map(({ id, figure }) => [id, figure])),
    pages: [
      office('safety', () => describeSafety(job, results, en)),
      office('materials', () => describeMaterials(job, results, en)),
      once(() => {
        const view = describeProposal(proposalFactsOf(job, results), en);
        const page = { kind: 'proposal', folder: 'homeowner', name: 'proposal', view } as const;
        return pageText(view, () => renderer.document(page));
      }),
      office('work-order', () => describeWorkOrder(job, results, en)),
      once(() => {
        const view = jobsPageOf([summaryOf(prepared)]);
        return pageText(view, () => renderer.jobsPage(view));
      }),
      office('calculation', () => describeCalculationOf(prepared, en)),
    ],
  };
}

type OfficeView = DocumentToRender['view'];

function once<T extends object | string>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}

function pageText(view: object, render: () => string): PageText {
  return { view: JSON.stringify(view), html: once(render) };
}

/**
 * Whether a page of one is another page of the other. What is quick is looked at first: a figure that is printed
 * otherwise is another line of the calculation sheet, and HTML is asked for only where the views differ.
 */
export function differs(one: Shown, other: Shown): boolean {
  if (one.figures.size !== other.figures.size) return true;
  for (const [id, figure] of one.figures) {
    const twin = other.figures.get(id);
    if (twin === figure) continue;
    if (twin === undefined || showFigure(twin) !== showFigure(figure)) return true;
  }
  return one.pages.some((page, index) => {
    const [mine, theirs] = [page(), other.pages[index]?.()];
    return theirs !== undefined && mine.view !== theirs.view && mine.html() !== theirs.html();
  });
}
