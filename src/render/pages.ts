import type {
  BinderView,
  CalculationView,
  DocumentKind,
  FrameView,
  JobsPageView,
  MaterialsView,
  ProposalView,
  SafetyView,
  SiteWalkView,
  WorkOrderView,
} from '../describe/views.ts';
import { pageRules } from './page-rules.ts';
import { plainView, strictView } from './strict-view.ts';

export type DocumentView =
  | ProposalView
  | WorkOrderView
  | MaterialsView
  | SafetyView
  | CalculationView
  | BinderView
  | SiteWalkView;

export type DocumentToRender = {
  readonly kind: DocumentKind;
  readonly folder: 'homeowner' | 'office';
  /** File name without ending. */
  readonly name: string;
  readonly view: DocumentView;
};

export type SiteToRender = {
  readonly jobs: readonly { readonly id: string; readonly documents: readonly DocumentToRender[] }[];
  readonly index: JobsPageView;
};

/** One HTML file: the template that makes it and the view it may read. */
export type Page = {
  readonly kind: DocumentKind | 'jobs';
  readonly template: string;
  readonly language: string;
  readonly title: string;
  readonly view: DocumentView | JobsPageView;
};

export const PAGE_KINDS: readonly Page['kind'][] = [
  'proposal',
  'work-order',
  'materials',
  'safety',
  'calculation',
  'binder',
  'site-walk',
  'jobs',
];

/** All pages of a site by key; a key is the path of the file without its ending. */
export function pagesOf(site: SiteToRender): ReadonlyMap<string, Page> {
  const pages = new Map<string, Page>([['index', jobsPage(site.index)]]);
  for (const job of site.jobs) {
    for (const document of job.documents) {
      const key = `${job.id}/${document.folder}/${document.name}`;
      if (pages.has(key)) throw new Error(`two documents would be written to ${key}.html`);
      pages.set(key, documentPage(document, job.id));
    }
  }
  return pages;
}

export function documentPage(document: DocumentToRender, job: string): Page {
  const { kind, folder, name, view } = document;
  const { language, title } = view.frame;
  const place = `job ${job}, document ${folder}/${name}`;
  return { kind, template: templateOf(kind), language, title, view: strictView(view, place) };
}

function jobsPage(view: JobsPageView): Page {
  const { language, title } = view;
  return {
    kind: 'jobs',
    template: templateOf('jobs'),
    language,
    title,
    view: strictView(view, 'the jobs page'),
  };
}

function templateOf(kind: Page['kind']): string {
  return `documents/${kind}.njk`;
}

/** Page boxes of a document; a binder has one more for each of its parts. */
export function pageStyle(page: Page): string {
  const view = plainView(page.view);
  if (!('frame' in view)) return '';
  const rules = [pageRules(view.frame, null)];
  if ('contents' in view) {
    const { paper } = view.frame;
    const parts = [view.proposal, view.workOrder, view.materials, view.safety, view.calculation];
    // One paper for the whole binder, whatever a part was described for.
    const frames: FrameView[] = parts.map((part) => ({ ...part.frame, paper }));
    rules.push(...frames.map((frame) => pageRules(frame, frame.kind)));
  }
  return rules.join('\n');
}
