import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describeSiteWalk } from '../describe/index.ts';
import { COMPANY_FOLDER, readCompany } from '../read/index.ts';
import { renderOne } from '../render/index.ts';
import { en } from '../words/index.ts';
import { withBrowser } from './browser-of-build.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import type { Options } from './options.ts';
import { refuseForeignPage } from './output-folder.ts';
import { shownPath } from './prepare.ts';
import { printAll } from './print-all.ts';
import { PROJECT_DIR } from './project-dir.ts';
import { showProblems } from './show-problems.ts';

const NAME = 'site-walk';

/**
 * Prints the blank site-walk sheet, with the company's name on it, to the output folder.
 *
 * @throws {ForeignError} If another page has its name there.
 */
export async function sheet(options: Options): Promise<ExitCode> {
  const company = readCompany(join(shownPath(options.jobsDir), COMPANY_FOLDER));
  const own = company.sections.company;
  if (company.problems.length > 0 || own === undefined) {
    console.error(showProblems(company.problems));
    return EXIT.problemsInInput;
  }
  const view = describeSiteWalk(
    { company: own.name, companyLines: [own.address, own.phone, own.email], paper: own.paper ?? 'letter' },
    en,
  );
  const html = await renderOne(
    { kind: NAME, folder: 'office', name: NAME, view },
    { projectDir: PROJECT_DIR },
  );
  await mkdir(options.outputDir, { recursive: true });
  await refuseForeignPage(options.outputDir, `${NAME}.html`, NAME);
  await writeFile(join(options.outputDir, `${NAME}.html`), html);
  const { browserPath } = options;
  const printed = await withBrowser({ projectDir: PROJECT_DIR, browserPath }, (browser) =>
    printAll({
      pages: [{ name: NAME, epochSeconds: 0, hasPageNumbers: false }],
      folder: options.outputDir,
      cacheDir: join(options.outputDir, '.cache'),
      browser,
      onDone: () => undefined,
    }),
  );
  if (printed.kind === 'no-browser') {
    await rm(join(options.outputDir, `${NAME}.pdf`), { force: true });
    console.error(
      `The sheet is there as HTML, but no browser was found to print it; open it and print it yourself. Looked for: ${printed.tried.join('; ')}.`,
    );
    return EXIT.builtWithoutPdfs;
  }
  for (const { htmlPath, reason } of printed.failed) {
    console.error(`${htmlPath} was not printed: ${reason}`);
    return EXIT.ourBug;
  }
  console.log(`The sheet is ${join(options.outputDir, `${NAME}.pdf`)}`);
  return EXIT.built;
}
