import { readdir, readFile, writeFile } from 'node:fs/promises';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { cacheKey, openCache, PINNED_IDENTITY, type PrintFailure, printPdfs } from '../print/index.ts';
import type { BrowserOfBuild, Started } from './browser-of-build.ts';

/** One page to print, by its place in the output folder and without its ending. */
export type PageToPrint = {
  /** `maple-court/homeowner/proposal` */
  readonly name: string;
  readonly epochSeconds: number;
  readonly hasPageNumbers: boolean;
};

export type PrintedAll =
  | {
      readonly kind: 'printed';
      readonly fresh: number;
      readonly cached: number;
      readonly failed: readonly PrintFailure[];
    }
  | { readonly kind: 'no-browser'; readonly tried: readonly string[] };

/**
 * Prints HTML files of a folder to PDFs beside them, from the cache where nothing changed; the
 * browser starts only for what is new.
 */
export async function printAll(made: {
  readonly pages: readonly PageToPrint[];
  readonly folder: string;
  readonly cacheDir: string;
  readonly browser: BrowserOfBuild;
  readonly onDone: (name: string, done: number) => void;
}): Promise<PrintedAll> {
  const { pages, folder, cacheDir, browser, onDone } = made;
  const cache = openCache(cacheDir);
  let identity = PINNED_IDENTITY;
  if (!browser.isPinnedFirst) {
    const started = await browser.start();
    if (started.kind !== 'running') return noBrowser(started);
    identity = started.identity;
  }
  const missing = await takeCached({ pages, folder, cache, identity, onDone });
  if (missing.length === 0) return { kind: 'printed', fresh: 0, cached: pages.length, failed: [] };

  const started = await browser.start();
  if (started.kind !== 'running') return noBrowser(started);
  let done = pages.length - missing.length;
  const report = await printPdfs(
    missing.map(({ page }) => ({
      htmlPath: join(folder, `${page.name}.html`),
      pdfPath: join(folder, `${page.name}.pdf`),
      epochSeconds: page.epochSeconds,
      twoPass: page.hasPageNumbers,
    })),
    {
      browser: started.browser,
      concurrency: Math.min(cpus().length, 4),
      onDone: (path) => {
        done += 1;
        onDone(path, done);
      },
    },
  );
  await keep({ missing, folder, cache, identity: started.identity, failed: report.failed });
  return {
    kind: 'printed',
    fresh: report.printed.length,
    cached: pages.length - missing.length,
    failed: report.failed,
  };
}

/** Whether there is no PDF in a cache, so that all pages will be printed. */
export async function isEmptyCache(cacheDir: string): Promise<boolean> {
  return (await readdir(cacheDir).catch(() => [])).length === 0;
}

type Missing = { readonly page: PageToPrint; readonly html: Uint8Array };

async function takeCached(made: {
  readonly pages: readonly PageToPrint[];
  readonly folder: string;
  readonly cache: ReturnType<typeof openCache>;
  readonly identity: string;
  readonly onDone: (name: string, done: number) => void;
}): Promise<readonly Missing[]> {
  const missing: Missing[] = [];
  let done = 0;
  for (const page of made.pages) {
    const html = await readFile(join(made.folder, `${page.name}.html`));
    const pdf = await made.cache.get(keyOf(page, html, made.identity));
    if (pdf === null) {
      missing.push({ page, html });
      continue;
    }
    await writeFile(join(made.folder, `${page.name}.pdf`), pdf);
    done += 1;
    made.onDone(page.name, done);
  }
  // The longest first: a binder that is begun last is printed alone, while one processor waits.
  return missing.toSorted((one, other) => other.html.length - one.html.length);
}

/** Puts what was printed into the cache; a browser other than the expected one gets its own keys. */
async function keep(made: {
  readonly missing: readonly Missing[];
  readonly folder: string;
  readonly cache: ReturnType<typeof openCache>;
  readonly identity: string;
  readonly failed: readonly PrintFailure[];
}): Promise<void> {
  const failed = new Set(made.failed.map(({ pdfPath }) => pdfPath));
  for (const { page, html } of made.missing) {
    const pdfPath = join(made.folder, `${page.name}.pdf`);
    if (failed.has(pdfPath)) continue;
    await made.cache.put(keyOf(page, html, made.identity), await readFile(pdfPath));
  }
}

function keyOf(page: PageToPrint, html: Uint8Array, browserIdentity: string): string {
  return cacheKey({ html, browserIdentity, epochSeconds: page.epochSeconds, twoPass: page.hasPageNumbers });
}

function noBrowser(found: Exclude<Started, { readonly kind: 'running' }>): PrintedAll {
  return {
    kind: 'no-browser',
    tried: found.kind === 'none' ? found.tried : [`${found.path} (${found.saidBy}): not there`],
  };
}
