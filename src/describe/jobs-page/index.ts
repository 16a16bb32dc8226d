import type { Stage } from '../../calculate/job.ts';
import type { Words } from '../../words/index.ts';
import { showDate } from '../show/index.ts';
import type { DocumentKind, JobsPageView } from '../views.ts';

export type JobsPageFacts = {
  readonly id: string;
  readonly number: string;
  readonly label: string;
  readonly stage: Stage;
  readonly place: string;
  /** The next date of the job at its stage; null where nothing is due. */
  readonly nextOn: string | null;
  readonly findings: { readonly stop: number; readonly fix: number; readonly note: number };
  readonly documents: readonly {
    readonly kind: DocumentKind;
    readonly html: string;
    readonly pdf: string | null;
  }[];
};

/** The jobs page: next date first, then by number; what is past is marked by the reader's own clock. */
export function describeJobsPage(jobs: readonly JobsPageFacts[], words: Words): JobsPageView {
  const say = words.jobsPage;
  const orderKey = (job: JobsPageFacts) => `${job.nextOn ?? '9999'} ${job.id}`;
  const inOrder = [...jobs].sort((one, other) => (orderKey(one) < orderKey(other) ? -1 : 1));
  return {
    language: words.common.language,
    title: say.title,
    intro: say.intro,
    headings: say.headings,
    overdue: say.overdue,
    jobs: inOrder.map((job) => ({
      id: job.id,
      number: job.number,
      label: job.label,
      stage: say.stages[job.stage],
      place: job.place,
      next: nextView(job, words),
      findings: findingsText(job.findings, words),
      documents: job.documents.map(({ kind, html, pdf }) => ({
        text: words.common.documents[kind],
        html,
        pdf,
      })),
    })),
  };
}

function nextView(job: JobsPageFacts, words: Words): JobsPageView['jobs'][number]['next'] {
  if (job.nextOn === null || job.stage === 'paid') return null;
  return {
    text: words.jobsPage.next[job.stage],
    date: job.nextOn,
    shown: showDate(job.nextOn, words.common),
  };
}

function findingsText(count: JobsPageFacts['findings'], words: Words): string {
  const { stop, fix, note } = count;
  return stop + fix + note === 0 ? words.jobsPage.noFindings : words.jobsPage.findings(stop, fix, note);
}
