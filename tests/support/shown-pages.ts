import { expect } from 'vitest';
import { type Figure, walkFigures } from '../../src/calculate/figure.ts';
import { describeAll } from '../../src/commands/describe-all.ts';
import { jobsPageOf, summaryOf } from '../../src/commands/job-summary.ts';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import { describeCalculationOf } from '../../src/describe/index.ts';
import { describeMaterials } from '../../src/describe/materials/index.ts';
import { describeSafety } from '../../src/describe/safety/index.ts';
import { showFigure } from '../../src/describe/show/index.ts';
import type { DocumentToRender } from '../../src/render/index.ts';
import { en } from '../../src/words/index.ts';
import type { Renderer } from './render.ts';

type PageText = { readonly view: string; readonly html: () => string };
/**
 * What a job looks like, each part made once it is asked for: its figures, the views of the pages without a
 * drawing, and the views of the others with their HTML. The binder repeats the others.
 */
export type Shown = {
  readonly figures: ReadonlyMap<string, Figure>;
  readonly sheets: () => string;
  readonly others: () => ReadonlyMap<string, PageText>;
};

/** All documents of a job but the binder. */
export function documentsOf(prepared: PreparedJob): readonly DocumentToRender[] {
  const [described] = describeAll([prepared]);
  return (described?.documents ?? []).filter(({ kind }) => kind !== 'binder');
}

export function shownPages(prepared: PreparedJob, renderer: Renderer): Shown {
  const rows = Object.entries(prepared.results.figures).flatMap(([topic, tree]) => walkFigures(tree, topic));
  return {
    figures: new Map(rows.map(({ id, figure }) => [id, figure])),
    sheets: once(() =>
      JSON.stringify([
        describeCalculationOf(prepared, en),
        describeMaterials(prepared.job, prepared.results, en),
        describeSafety(prepared.job, prepared.results, en),
      ]),
    ),
    others: once(() => {
      const jobsPage = jobsPageOf([summaryOf(prepared)]);
      return new Map([
        ...documentsOf(prepared).map(
          (document) => [document.kind, pageText(document.view, () => renderer.document(document))] as const,
        ),
        ['jobs', pageText(jobsPage, () => renderer.jobsPage(jobsPage))] as const,
      ]);
    }),
  };
}

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
    if (twin === undefined || showFigure(twin) !== showFigure(figure)) return true;
  }
  // Another view of a sheet without drawings is taken for another sheet: HTML of each would take a minute.
  if (one.sheets() !== other.sheets()) return true;
  const others = other.others();
  expect([...others.keys()]).toEqual([...one.others().keys()]);
  return [...one.others()].some(([kind, page]) => isOther(page, others.get(kind)));
}

function isOther(page: PageText, twin: PageText | undefined): boolean {
  return twin !== undefined && page.view !== twin.view && page.html() !== twin.html();
}
