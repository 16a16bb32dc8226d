import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';
import { showDate } from '../show/index.ts';
import type { DocumentKind, FrameView, Paper } from '../views.ts';

/** What the frame of every document of a job needs; all of it public. */
export type FrameFacts = {
  readonly paper: Paper;
  readonly company: {
    readonly name: PublicText;
    readonly address: PublicText;
    readonly phone: PublicText;
    readonly email: PublicText;
  };
  readonly job: {
    readonly number: PublicText;
    readonly label: PublicText;
    readonly client: PublicText;
    readonly address: PublicText;
    readonly preparedOn: string;
    readonly revision: number;
  };
};

/** Running head, foot and title block of one document. */
export function frameOf(kind: DocumentKind, facts: FrameFacts, words: Words): FrameView<PublicText> {
  const { common } = words;
  const { company, job, paper } = facts;
  const document = common.documents[kind];
  const date = showDate(job.preparedOn, common);
  return {
    kind,
    language: common.language,
    title: common.headJob(document, job.label),
    paper,
    head: { left: company.name, right: common.headJob(document, job.label) },
    foot: { left: common.footJob(job.number, job.revision, date), page: common.page, of: common.of },
    block: {
      company: company.name,
      companyLines: [company.address, company.phone, company.email],
      documentName: document,
      jobLabel: job.label,
      cells: [
        { label: common.client, value: job.client },
        { label: common.place, value: job.address },
        { label: common.job, value: job.number },
        { label: common.revision, value: String(job.revision) as PublicText },
        { label: common.prepared, value: date },
      ],
    },
  };
}
