import type { FrameView, Paper } from '../describe/views.ts';
import { cssString } from './css-string.ts';

/** Outer size of the papers [mm]. ISO 216 (A4); ANSI/ASME Y14.1 size A (letter); both from memory. */
const PAPER_MM: Record<Paper, { width: number; height: number }> = {
  letter: { width: 215.9, height: 279.4 },
  a4: { width: 210, height: 297 },
};

/** Free margin round the text [mm]; sheets for the crew carry larger type on more of the page. */
const MARGIN_MM: Record<FrameView['kind'], number> = {
  proposal: 18,
  'work-order': 15,
  materials: 18,
  safety: 15,
  calculation: 18,
  binder: 18,
  'site-walk': 15,
};

/**
 * The page box of one document: size, margins, running head and foot.
 *
 * The first page has no running head: its title block says the same. In a binder every part is a
 * named page; `:first` there is the cover only, so the parts keep their heads.
 *
 * @param frame What stands round the pages.
 * @param name  Name of the page, null for the pages of the whole file.
 */
export function pageRules(frame: FrameView, name: string | null): string {
  const { width, height } = PAPER_MM[frame.paper];
  const marginMm = MARGIN_MM[frame.kind];
  const { head, foot } = frame;
  const selector = name === null ? '@page' : `@page ${name}`;
  const first =
    name === null ? '@page :first { @top-left { content: none } @top-right { content: none } }\n' : '';
  const part = name === null ? ':root' : `.part--${name}`;
  return `${selector} {
  size: ${width}mm ${height}mm;
  margin: ${marginMm}mm;
  font: 8pt/1.2 'Noto Sans';
  color: #3d3d3d;
  @top-left { content: ${cssString(head.left)}; ${TOP} }
  @top-right { content: ${cssString(head.right)}; ${TOP} }
  @bottom-left { content: ${cssString(foot.left)}; ${BOTTOM} }
  @bottom-right { content: ${cssString(`${foot.page} `)} counter(page) ${cssString(` ${foot.of} `)} counter(pages); ${BOTTOM} }
}
${first}${part} { --text-height: ${(height - 2 * marginMm).toFixed(1)}mm; }
${name === null ? '' : `@media print { .part--${name} { page: ${name}; } }\n`}`;
}

const TOP = 'vertical-align: bottom; padding-bottom: 4mm; white-space: nowrap;';
const BOTTOM = 'vertical-align: top; padding-top: 4mm; white-space: nowrap;';
