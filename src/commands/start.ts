import { existsSync } from 'node:fs';
import { cp, mkdir, readFile, writeFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { isJobName } from '../read/index.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { type Answers, jobScaffold } from './job-scaffold.ts';
import type { Options } from './options.ts';
import { prepareJobs } from './prepare.ts';
import { PROJECT_DIR } from './project-dir.ts';
import { showProblems } from './show-problems.ts';

const SCHEMA_DIR = join(PROJECT_DIR, 'src', 'read', 'schema');

/**
 * Makes a new job folder with one job file that teaches, from a few answers on a terminal and from
 * defaults elsewhere. An empty jobs folder also gets a company folder to change. Overwrites nothing.
 */
export async function start(options: Options): Promise<ExitCode> {
  const [name, ...more] = options.names;
  // The same names that a build takes: a folder that it refuses would keep all jobs from being built.
  if (name === undefined || more.length > 0 || !isJobName(name)) {
    console.error('Say one name for the job: lower-case words joined by hyphens, such as maple-court.');
    return EXIT.wrongUsage;
  }
  const folder = join(options.jobsDir, name);
  if (existsSync(folder)) {
    console.error(`${folder} is there already; nothing was changed.`);
    return EXIT.wrongUsage;
  }
  const answers = await ask(name);
  const hasCompany = existsSync(join(options.jobsDir, 'company'));
  if (!hasCompany) await copyCompany(options.jobsDir);
  await mkdir(folder, { recursive: true });
  const file = join(folder, 'job.yaml');
  await writeFile(file, jobScaffold(answers, schemaPath(folder, 'job')));
  console.log(`Made ${file}. Fill it in; check it with: npm run check -- ${name}${placeOf(options.jobsDir)}`);
  if (!hasCompany)
    console.log(`Made ${join(options.jobsDir, 'company')} with invented figures: put in your own.`);

  const prepared = prepareJobs({ jobsDir: options.jobsDir, names: [name] });
  if (prepared.ok) return EXIT.built;
  console.error(showProblems(prepared.problems));
  return EXIT.problemsInInput;
}

/** What a command has to be told of a folder that it does not look for by itself. */
function placeOf(jobsDir: string): string {
  if (jobsDir === join(PROJECT_DIR, 'jobs')) return '';
  return ` --jobs ${/[^\w./:\\-]/.test(jobsDir) ? `"${jobsDir}"` : jobsDir}`;
}

async function ask(name: string): Promise<Answers> {
  const today = new Date().toISOString().slice(0, 10);
  const defaults: Answers = {
    label: 'Driveway replaced',
    number: name,
    client: 'Name of the owner',
    address: 'Street and town',
    length: '40 ft',
    width: '18 ft',
    preparedOn: today,
  };
  if (!process.stdin.isTTY) return defaults;
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  const asked = async (question: string, otherwise: string) =>
    (await terminal.question(`${question} [${otherwise}] `)).trim() || otherwise;
  try {
    return {
      label: await asked('What is the job, in the words of the owner?', defaults.label),
      number: await asked('Job number?', defaults.number),
      client: await asked('Owner?', defaults.client),
      address: await asked('Address?', defaults.address),
      length: await asked('Length of the main slab, with its unit?', defaults.length),
      width: await asked('Width?', defaults.width),
      preparedOn: defaults.preparedOn,
    };
  } finally {
    terminal.close();
  }
}

/** The company folder of this project as a start; its schema comments point where they must from there. */
async function copyCompany(jobsDir: string): Promise<void> {
  const target = join(jobsDir, 'company');
  await cp(join(PROJECT_DIR, 'jobs', 'company'), target, { recursive: true, errorOnExist: true });
  for (const file of ['company.yaml', 'equipment.yaml', 'suppliers.yaml', 'terms.yaml']) {
    const path = join(target, file);
    const text = await readFile(path, 'utf8');
    await writeFile(
      path,
      text.replace(/\$schema=\S+/, () => `$schema=${schemaPath(target, 'company')}`),
    );
  }
}

function schemaPath(fromFolder: string, kind: 'job' | 'company'): string {
  return relative(fromFolder, join(SCHEMA_DIR, `${kind}.schema.json`))
    .split('\\')
    .join('/');
}
