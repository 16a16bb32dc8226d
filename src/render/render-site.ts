import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import type { Eleventy } from '@11ty/eleventy';
import { type Environment, templateEnvironment } from './environment.ts';
import { PAGE_KINDS, type Page, pagesOf, type SiteToRender } from './pages.ts';

export type RenderOptions = {
  /** Folder that holds `.eleventy.js` and `templates/`. */
  readonly projectDir: string;
  readonly outputDir: string;
  readonly quiet: boolean;
};

/**
 * Render every document of every job, and the jobs page.
 *
 * @returns The files written, relative to outputDir, sorted.
 * @throws {Error} If a template fails, naming job and document; nothing is written then.
 */
export async function renderSite(site: SiteToRender, options: RenderOptions): Promise<readonly string[]> {
  const pages = pagesOf(site);
  const environment = templateEnvironment(join(options.projectDir, 'templates'), pages);
  const files = await htmlOf(pages, environment, options);
  for (const [path, html] of files) {
    const target = join(options.outputDir, path);
    await mkdir(dirname(target), { recursive: true });
    await writeFile(target, html);
  }
  return [...files.keys()].sort();
}

/** Eleventy hands the pages over instead of writing them, so that a failure leaves no half a site. */
async function htmlOf(
  pages: ReadonlyMap<string, Page>,
  environment: Environment,
  options: RenderOptions,
): Promise<ReadonlyMap<string, string>> {
  const { projectDir, outputDir, quiet } = options;
  // Eleventy takes paths relative to the working directory only.
  const fromHere = (path: string): string => relative(process.cwd(), resolve(path));
  // Its own watching, which nobody asks for, starts a thread that all modules would be looked up by from then on.
  process.env['ELEVENTY_SKIP_ESM_RESOLVER'] = '1';
  // It takes a quarter of a second to load: problems in the files are told without it.
  const { Eleventy } = await import('@11ty/eleventy');
  const eleventy = new Eleventy(fromHere(join(projectDir, 'templates')), fromHere(outputDir), {
    source: 'script',
    configPath: fromHere(join(projectDir, '.eleventy.js')),
    quietMode: quiet,
    config: (config) => {
      // What it reads it keeps for as long as the program runs: a page that is served would never show an edit of its template.
      config.setUseTemplateCache(false);
      config.setLibrary('njk', environment.nunjucks);
      config.addGlobalData('keys', keysByKind(pages));
    },
  });
  await eleventy.init();
  silence(eleventy);
  const results = await eleventy.toJSON().catch((error: unknown) => {
    throw failure(error, environment);
  });
  const inOutput = (path: string): string => relative(resolve(outputDir), resolve(path)).split(sep).join('/');
  const files = new Map(results.map(({ outputPath, content }) => [inOutput(outputPath), content]));
  for (const key of pages.keys()) {
    if (!files.has(`${key}.html`)) throw new Error(`no template made ${key}.html`);
  }
  return files;
}

function keysByKind(pages: ReadonlyMap<string, Page>): Record<string, readonly string[]> {
  const keysOf = (kind: Page['kind']): string[] =>
    [...pages].filter(([, page]) => page.kind === kind).map(([key]) => key);
  return Object.fromEntries(PAGE_KINDS.map((kind) => [kind, keysOf(kind)]));
}

/** The caller reports what went wrong, once. */
function silence(eleventy: Eleventy): void {
  eleventy.errorHandler.once = () => {};
}

function failure(error: unknown, environment: Environment): Error {
  const reason = innermost(error);
  const page = environment.lastKey === null ? 'the first page' : environment.lastKey;
  return new Error(`Cannot render ${page}: ${reason}`, { cause: error });
}

/** Eleventy wraps an error in errors that say where; the one at the bottom says why. */
export function innermost(error: unknown): string {
  const original = (error as { originalError?: unknown }).originalError;
  return original instanceof Error
    ? innermost(original)
    : error instanceof Error
      ? error.message
      : String(error);
}
