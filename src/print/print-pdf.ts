import { mkdir } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'puppeteer';
import { mendBookmarks } from './bookmarks.ts';
import { type ClosedPage, openClosedPage, type PageFaults } from './closed-page.ts';
import { printWithPageNumbers } from './page-numbers.ts';
import { pdfFacts } from './pdf-facts.ts';
import { pinPdf } from './pin.ts';
import { writeWhole } from './write-whole.ts';

/** Changes when the way of printing does (flags, options); part of the cache key. */
export const PRINT_VERSION = 3;

/** A binder of a hundred pages on a machine that has other work to do takes a minute. */
const PRINT_LIMIT_MS = 180_000;

export type PrintJob = {
  htmlPath: string;
  pdfPath: string;
  /** Date inside the PDF [s since 1970-01-01 UTC]. */
  epochSeconds: number;
  /** The page holds `[data-page-of]` elements to fill in. */
  twoPass?: boolean;
};

export type PrintOptions = {
  browser: Browser;
  /** Documents printed at the same time, 1 or more; each takes a tab. */
  concurrency?: number;
  /** Most time for one document [ms]. */
  limitMs?: number;
  onDone?: (pdfPath: string) => void;
};

/** Both lists in the order of the jobs. */
export type PrintReport = {
  printed: readonly { pdfPath: string; pageCount: number }[];
  failed: readonly PrintFailure[];
};
export type PrintFailure = { htmlPath: string; pdfPath: string; reason: string };

type Outcome = { isPrinted: true; pageCount: number } | { isPrinted: false; reason: string };

/**
 * Print pages to PDF files. A document that cannot be printed is reported with its reason, and the
 * others are still printed; nothing is written for it.
 *
 * @throws {RangeError} If concurrency is not a whole number above 0.
 * @throws {Error} If a PDF cannot be written: the disk refuses the others as well.
 */
export async function printPdfs(jobs: readonly PrintJob[], options: PrintOptions): Promise<PrintReport> {
  const { browser, concurrency = 2, limitMs = PRINT_LIMIT_MS, onDone } = options;
  if (!(Number.isInteger(concurrency) && concurrency > 0)) {
    throw new RangeError(`concurrency must be a whole number above 0, got ${concurrency}`);
  }
  const outcomes: Outcome[] = [];
  const queue = jobs.entries();
  const workers = await Promise.allSettled(
    Array.from({ length: Math.min(concurrency, jobs.length) }, async () => {
      const tab = reusableTab(browser);
      for (const [index, job] of queue) {
        const outcome = await outcomeOf(job, tab, limitMs);
        outcomes[index] = outcome;
        if (outcome.isPrinted) onDone?.(job.pdfPath);
      }
      await tab.discard();
    }),
  );
  for (const worker of workers) if (worker.status === 'rejected') throw worker.reason;
  return report(jobs, outcomes);
}

function report(jobs: readonly PrintJob[], outcomes: readonly Outcome[]): PrintReport {
  const printed: { pdfPath: string; pageCount: number }[] = [];
  const failed: PrintFailure[] = [];
  for (const [index, { htmlPath, pdfPath }] of jobs.entries()) {
    const outcome = outcomes[index];
    if (outcome === undefined) throw new Error(`no outcome for ${htmlPath}`);
    if (outcome.isPrinted) printed.push({ pdfPath, pageCount: outcome.pageCount });
    else failed.push({ htmlPath, pdfPath, reason: outcome.reason });
  }
  return { printed, failed };
}

async function outcomeOf(job: PrintJob, tab: ReusableTab, limitMs: number): Promise<Outcome> {
  let bytes: Uint8Array;
  let pageCount: number;
  try {
    bytes = await within(limitMs, async () => {
      const closedPage = await tab.get();
      return Promise.race([closedPage.crashed, printOne(closedPage, job)]);
    });
    pageCount = pdfFacts(bytes).pageCount;
  } catch (error) {
    await tab.discard();
    return { isPrinted: false, reason: error instanceof Error ? error.message : String(error) };
  }
  await mkdir(dirname(job.pdfPath), { recursive: true });
  await writeWhole(job.pdfPath, bytes);
  return { isPrinted: true, pageCount };
}

async function printOne({ page, faults }: ClosedPage, job: PrintJob): Promise<Uint8Array> {
  faults.requests.length = 0;
  faults.errors.length = 0;
  // No time limits of puppeteer's own: the one over the whole document is enough.
  await page.goto(pathToFileURL(resolve(job.htmlPath)).href, { waitUntil: 'load', timeout: 0 });
  await checkFonts(page);
  const print = (isFinal: boolean): Promise<Uint8Array> =>
    page.pdf({
      preferCSSPageSize: true,
      printBackground: true,
      tagged: isFinal,
      outline: isFinal,
      timeout: 0,
    });
  const bytes = job.twoPass
    ? await printWithPageNumbers(page, {
        draft: () => unseen(page, () => print(false)),
        final: () => print(true),
      })
    : await print(true);
  const headings = await headingsOf(page);
  checkFaults(faults);
  return pinPdf(mendBookmarks(bytes, headings), job.epochSeconds);
}

/** Where things stand on the pages does not depend on whether they are seen, and nothing is quicker to print. */
async function unseen<Result>(page: Page, print: () => Promise<Result>): Promise<Result> {
  await page.evaluate(`{
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('body, body * { visibility: hidden !important; }');
    document.adoptedStyleSheets.push(sheet);
  }`);
  const printed = await print();
  await page.evaluate('document.adoptedStyleSheets.pop(); 0');
  return printed;
}

async function headingsOf(page: Page): Promise<readonly string[]> {
  const texts = await page.evaluate(
    `[...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map((heading) => heading.textContent)`,
  );
  return texts as string[];
}

/**
 * A font that fails shows no exception and another font, or none, in its place. Loading each one
 * here tells a broken font from one that the page declares and does not use.
 */
async function checkFonts(page: Page): Promise<void> {
  const failed = (await page.evaluate(`
    Promise.allSettled([...document.fonts].map((font) => font.load()))
      .then(() => document.fonts.ready)
      .then(() => [...document.fonts].filter((font) => font.status !== 'loaded'))
      .then((fonts) => fonts.map(({ family, weight, style }) => [family, weight, style].join(' ')))
  `)) as string[];
  if (failed.length > 0) throw new Error(`a font did not load: ${failed.join(', ')}`);
}

function checkFaults({ requests, errors }: PageFaults): void {
  if (requests.length > 0) {
    throw new Error(`it asks for ${requests[0]}, but pages are printed without network`);
  }
  if (errors.length > 0) throw new Error(`it reports an error: ${errors[0]}`);
}

async function within<Result>(limitMs: number, task: () => Promise<Result>): Promise<Result> {
  let timer: NodeJS.Timeout | undefined;
  const limit = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(() => reject(new Error(`it was not printed within ${limitMs / 1000} s`)), limitMs);
  });
  try {
    return await Promise.race([limit, task()]);
  } finally {
    clearTimeout(timer);
  }
}

type ReusableTab = { get: () => Promise<ClosedPage>; discard: () => Promise<void> };

const CLOSE_LIMIT_MS = 2_000;

/** A tab serves many documents, since a new one costs more than printing a page; not after a failure. */
function reusableTab(browser: Browser): ReusableTab {
  let current: Promise<ClosedPage> | null = null;
  return {
    get: () => (current ??= openClosedPage(browser)),
    async discard() {
      const closing = current?.then(({ page }) => page.close());
      current = null;
      // A tab that hangs may not answer, and one that crashed is gone: closing the browser ends both.
      await within(CLOSE_LIMIT_MS, async () => closing).catch(() => undefined);
    },
  };
}
