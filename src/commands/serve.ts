import { existsSync } from 'node:fs';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { type FSWatcher, watch } from 'chokidar';
import { aCalculator, type CalculateJob } from '../calculate/index.ts';
import { renderSite } from '../render/index.ts';
import { describeAll } from './describe-all.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { jobsPageOf, summaryOf } from './job-summary.ts';
import type { Options } from './options.ts';
import { prepareJobs } from './prepare.ts';
import { PROJECT_DIR } from './project-dir.ts';
import { servedPage } from './served-page.ts';
import { showProblems } from './show-problems.ts';

/** Pages by their path in the site; with them the problems of the last try, or null. */
type Site = { readonly pages: ReadonlyMap<string, string>; readonly trouble: string | null };

const SETTLE_MS = 120;
/** How often a folder that went away is looked for. */
const COMES_BACK_MS = 500;

/**
 * Builds the pages and serves them on this machine only; rebuilds when a job, a template or a
 * style changes. With a problem the last good pages stay and show it. Runs until it is stopped.
 */
export async function serve(options: Options): Promise<ExitCode> {
  const calculatorOf = calculators();
  const rebuild = (last: Site) => rebuilt(last, { ...options, calculatorOf });
  let site = await rebuild({ pages: new Map(), trouble: null });
  // The problem is told by now; a folder that is not there cannot be watched.
  if (!existsSync(options.jobsDir)) return EXIT.problemsInInput;
  const listeners = new Set<ServerResponse>();
  const server = createServer((request, response) => {
    const path = decodedPath(request.url ?? '/');
    if (path === '.changes') {
      response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
      response.write('retry: 500\n\n');
      listeners.add(response);
      request.on('close', () => listeners.delete(response));
      return;
    }
    const html = site.pages.get(path === '' ? 'index.html' : path);
    // Before the first good build there are no pages at all; after it an unknown path stays unknown.
    const status = html !== undefined ? 200 : site.pages.size === 0 ? 503 : 404;
    if (html === undefined && site.trouble === null) {
      response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' }).end('No such page.');
      return;
    }
    response.writeHead(status, { 'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-store' });
    response.end(servedPage(html ?? null, site.trouble));
  });

  let timer: NodeJS.Timeout | null = null;
  let building = Promise.resolve();
  const changed = () => {
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => {
      building = building.then(async () => {
        site = await rebuild(site);
        for (const listener of listeners) listener.write('data: changed\n\n');
      });
    }, SETTLE_MS);
  };
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(options.port, '127.0.0.1', resolve);
  });
  const { port } = server.address() as AddressInfo;
  const watcher = await watched([options.jobsDir, join(PROJECT_DIR, 'templates')], changed);
  console.log(`Pages on http://127.0.0.1:${port}/ (PDF links need a build). Stop with Ctrl-C.`);
  await new Promise<void>((resolve) => {
    process.once('SIGINT', resolve);
    process.once('SIGTERM', resolve);
  });
  await watcher.close();
  for (const listener of listeners) listener.end();
  server.close();
  return EXIT.built;
}

/**
 * Watches folders with all that is in them, but for what is hidden. Node's own watching of a whole folder loses a
 * file on Linux once another one is put in its place, which is how many editors save.
 */
async function watched(folders: readonly string[], changed: () => void): Promise<FSWatcher> {
  const watcher = watch([...folders], {
    ignoreInitial: true,
    ignored: (path) => basename(path).startsWith('.') && !folders.includes(path),
  });
  watcher.on('all', changed);
  // A drive that comes and goes takes the watching of its folder with it.
  watcher.on('unlinkDir', (path) => {
    if (!folders.includes(path)) return;
    const look = setInterval(() => {
      if (watcher.closed) clearInterval(look);
      if (watcher.closed || !existsSync(path)) return;
      clearInterval(look);
      watcher.add(path);
      changed();
    }, COMES_BACK_MS).unref();
  });
  watcher.on('error', (error) => console.error(`Some changes may not be seen: ${String(error)}`));
  await new Promise<void>((resolve) => void watcher.on('ready', resolve));
  return watcher;
}

/** One calculator a job, so that a change of one value is not a whole job to calculate. */
function calculators(): (id: string) => CalculateJob {
  const made = new Map<string, CalculateJob>();
  return (id) => {
    const one = made.get(id) ?? aCalculator();
    made.set(id, one);
    return one;
  };
}

async function rebuilt(last: Site, options: Parameters<typeof prepareJobs>[0]): Promise<Site> {
  const startedMs = performance.now();
  const folder = await mkdtemp(join(tmpdir(), 'flatwork-pages-'));
  try {
    const prepared = prepareJobs(options);
    if (!prepared.ok) return troubled(last, showProblems(prepared.problems));
    const index = jobsPageOf(prepared.jobs.map(summaryOf));
    const files = await renderSite(
      { jobs: describeAll(prepared.jobs), index },
      { projectDir: PROJECT_DIR, outputDir: folder, quiet: true },
    );
    const pages = await Promise.all(
      files.map(async (file) => [file, await readFile(join(folder, file), 'utf8')] as const),
    );
    console.log(`Built ${pages.length} pages in ${((performance.now() - startedMs) / 1000).toFixed(1)} s`);
    return { pages: new Map(pages), trouble: null };
  } catch (error) {
    return troubled(last, error instanceof Error ? error.message : String(error));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function troubled(last: Site, trouble: string): Site {
  console.error(trouble);
  return { pages: last.pages, trouble };
}

/** The path without its leading slash and query; what cannot be decoded names no page. */
function decodedPath(url: string): string {
  try {
    return decodeURIComponent(new URL(url, 'http://localhost').pathname).replace(/^\//, '');
  } catch {
    return '?';
  }
}
