import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { renderSite } from '../render/index.ts';
import { type BrowserOfBuild, withBrowser } from './browser-of-build.ts';
import { type DescribedJob, describeAll } from './describe-all.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { figuresJson } from './figures-json.ts';
import { jobsPageOf, readSummaries, summaryOf } from './job-summary.ts';
import type { Options } from './options.ts';
import { refuseForeign, swapIn, withOutputFolder } from './output-folder.ts';
import { type PreparedJob, prepareJobs } from './prepare.ts';
import { isEmptyCache, type PageToPrint, type PrintedAll, printAll } from './print-all.ts';
import { progressOn } from './progress.ts';
import { PROJECT_DIR } from './project-dir.ts';
import { showProblems } from './show-problems.ts';
import { epochOf, isWholeSeconds } from './stamp.ts';
import { writeExports } from './write-exports.ts';

/** Builds all documents of the jobs asked for: HTML, PDF, figures and exports, swapped in as a whole. */
export async function build(options: Options): Promise<ExitCode> {
  const stamp = process.env['SOURCE_DATE_EPOCH'];
  if (stamp !== undefined && !isWholeSeconds(stamp)) {
    console.error(
      `SOURCE_DATE_EPOCH is whole seconds since 1970-01-01, such as 1775433600; it is "${stamp}".`,
    );
    return EXIT.wrongUsage;
  }
  return withBrowser({ projectDir: PROJECT_DIR, browserPath: options.browserPath }, (browser) =>
    buildWith(browser, options),
  );
}

async function buildWith(browser: BrowserOfBuild, options: Options): Promise<ExitCode> {
  const cacheDir = join(options.outputDir, '.cache');
  // Where nothing is printed yet a browser will be needed: a packed one gets ready while the pages are made.
  if (await isEmptyCache(cacheDir)) await browser.unpackAhead();
  const prepared = prepareJobs(options);
  if (!prepared.ok) {
    console.error(showProblems(prepared.problems));
    return EXIT.problemsInInput;
  }
  return withOutputFolder(options.outputDir, async (nextDir) => {
    await refuseForeign(
      options.outputDir,
      prepared.jobs.map(({ job }) => job.id),
    );
    const described = describeAll(prepared.jobs);
    await writeFigures(nextDir, prepared.jobs);
    await writeExports(nextDir, described);
    // All jobs were built where none is named: what else stands in the output is of a job that is gone.
    const built = prepared.jobs.map(({ job }) => job.id);
    const others = options.names.length === 0 ? [] : await readSummaries(options.outputDir, built);
    const index = jobsPageOf([...prepared.jobs.map(summaryOf), ...others]);
    await renderSite(
      { jobs: described, index },
      { projectDir: PROJECT_DIR, outputDir: nextDir, quiet: true },
    );

    const printed = await printDescribed(described, prepared.jobs, { browser, cacheDir, nextDir });
    if (printed.kind === 'printed' && printed.failed.length > 0) {
      for (const { htmlPath, reason } of printed.failed)
        console.error(`${htmlPath} was not printed: ${reason}`);
      return EXIT.ourBug;
    }
    await swapIn(options.outputDir, nextDir, [...described.map(({ id }) => id), 'index.html']);
    return report(prepared.jobs.length, printed, options);
  });
}

async function writeFigures(nextDir: string, jobs: readonly PreparedJob[]): Promise<void> {
  for (const prepared of jobs) {
    const office = join(nextDir, prepared.job.id, 'office');
    await mkdir(office, { recursive: true });
    await writeFile(join(office, 'figures.json'), figuresJson(prepared));
    await writeFile(join(office, 'summary.json'), `${JSON.stringify(summaryOf(prepared), null, 2)}\n`);
  }
}

async function printDescribed(
  described: readonly DescribedJob[],
  jobs: readonly PreparedJob[],
  to: { readonly browser: BrowserOfBuild; readonly cacheDir: string; readonly nextDir: string },
): Promise<PrintedAll> {
  const progress = progressOn(process.stderr);
  const preparedOn = new Map(jobs.map(({ job }) => [job.id, job.preparedOn]));
  const pages = described.flatMap(({ id, documents }) =>
    documents.map(
      (document): PageToPrint => ({
        name: `${id}/${document.folder}/${document.name}`,
        epochSeconds: epochOf(preparedOn.get(id) ?? ''),
        hasPageNumbers: document.kind === 'binder',
      }),
    ),
  );
  const printed = await printAll({
    pages,
    folder: to.nextDir,
    cacheDir: to.cacheDir,
    browser: to.browser,
    onDone: (_name, done) => progress.step(`printed ${done} of ${pages.length}`),
  });
  progress.end();
  return printed;
}

function report(jobCount: number, printed: PrintedAll, options: Options): ExitCode {
  if (printed.kind === 'no-browser') {
    console.error(
      `The pages are built, but no browser was found to print PDFs. Name one with --browser FILE, or install Chrome or Edge. Looked for: ${printed.tried.join('; ')}.`,
    );
    return EXIT.builtWithoutPdfs;
  }
  const documents = printed.fresh + printed.cached;
  console.log(
    `Built ${jobCount} job${jobCount === 1 ? '' : 's'}: ${documents} documents (${printed.fresh} printed, ${printed.cached} unchanged) in ${options.outputDir}`,
  );
  return EXIT.built;
}
