import type { Page } from 'puppeteer';
import { pdfFacts } from './pdf-facts.ts';

const MOST_PASSES = 3;

/**
 * Print a document that names its own page numbers.
 *
 * Chromium cannot print "see page 7", so each `[data-page-of="some-id"]` holds the placeholder 000:
 * print once, read from that PDF on which page some-id begins, write the number, print again. If
 * the numbers changed the layout, once more.
 *
 * @throws {Error} If an id has no page (only ids that something links to have one), or if the
 *                 pages still move after three prints.
 */
export async function printWithPageNumbers(
  page: Page,
  prints: {
    /** For the page numbers only: without tags and bookmarks, which cost as much as the rest. */
    readonly draft: () => Promise<Uint8Array>;
    readonly final: () => Promise<Uint8Array>;
  },
): Promise<Uint8Array> {
  let bytes = await prints.draft();
  for (let pass = 2; pass <= MOST_PASSES; pass += 1) {
    const before = pdfFacts(bytes).destinations;
    await writePageNumbers(page, before);
    bytes = await prints.final();
    if (isSame(before, pdfFacts(bytes).destinations)) return bytes;
  }
  throw new Error(
    'its page numbers do not settle: writing them moves the pages. Give them a fixed width of three digits',
  );
}

/**
 * The program that runs in the page is text on purpose: a function would arrive with helpers that
 * the TypeScript loader adds and that do not exist there.
 */
async function writePageNumbers(page: Page, destinations: ReadonlyMap<string, number>): Promise<void> {
  const pageNumbers = [...destinations].map(([id, index]) => [id, String(index + 1)]);
  const missing = (await page.evaluate(`{
    const pageNumbers = new Map(${JSON.stringify(pageNumbers)});
    const marks = [...document.querySelectorAll('[data-page-of]')];
    for (const mark of marks) mark.textContent = pageNumbers.get(mark.dataset.pageOf) ?? mark.textContent;
    marks.map((mark) => mark.dataset.pageOf).filter((id) => !pageNumbers.has(id));
  }`)) as string[];
  if (missing.length > 0) {
    throw new Error(`no page is known for "${missing[0]}": no element has this id, or nothing links to it`);
  }
}

function isSame(left: ReadonlyMap<string, number>, right: ReadonlyMap<string, number>): boolean {
  return left.size === right.size && [...left].every(([id, index]) => right.get(id) === index);
}
