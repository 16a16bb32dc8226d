import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';
import type { Paper, SiteWalkView } from '../views.ts';

/** The blank two-page sheet for the clipboard, in the order of the job file. */
export function describeSiteWalk(
  facts: {
    readonly company: PublicText;
    readonly companyLines: readonly PublicText[];
    readonly paper: Paper;
  },
  words: Words,
): SiteWalkView {
  const say = words.siteWalk;
  const { sections } = say;
  const lines = (section: { heading: string; lines: readonly string[] }) => ({
    heading: section.heading,
    hint: null,
    lines: section.lines,
    table: null,
    sketch: false,
  });
  const table = (
    section: { heading: string; hint?: string; columns: readonly string[] },
    emptyRows: number,
  ) => ({
    heading: section.heading,
    hint: section.hint ?? null,
    lines: [],
    table: { columns: section.columns, emptyRows },
    sketch: false,
  });
  return {
    frame: {
      kind: 'site-walk',
      language: words.common.language,
      title: say.title,
      paper: facts.paper,
      head: { left: facts.company, right: say.title },
      foot: { left: say.title, page: words.common.page, of: words.common.of },
      block: {
        company: facts.company,
        companyLines: facts.companyLines,
        documentName: words.common.documents['site-walk'],
        jobLabel: '',
        cells: [
          { label: say.blocks.who, value: '' },
          { label: say.blocks.where, value: '' },
          { label: say.blocks.when, value: '' },
        ],
      },
    },
    intro: say.intro,
    sections: [
      lines(sections.job),
      lines(sections.access),
      table(sections.existing, 4),
      lines(sections.stays),
      lines(sections.ground),
      lines(sections.heights),
      table(sections.build, 4),
      table(sections.steps, 1),
      { heading: sections.sketch.heading, hint: null, lines: [], table: null, sketch: true },
      lines(sections.plan),
      lines(sections.price),
    ],
  };
}
