import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { arch, cpus, loadavg, platform, tmpdir, totalmem } from 'node:os';
import { join } from 'node:path';
import { bestPlan } from '../../src/calculate/haul/plan/index.ts';
import { calculateJob } from '../../src/calculate/index.ts';
import type { Job } from '../../src/calculate/job.ts';
import { calcJoints } from '../../src/calculate/joints/index.ts';
import { calcOutline } from '../../src/calculate/outline/index.ts';
import { calcReinforcement } from '../../src/calculate/reinforcement/index.ts';
import { describeAll } from '../../src/commands/describe-all.ts';
import { prepareJobs } from '../../src/commands/prepare.ts';
import { polygonRing, selfCrossing } from '../../src/geometry/index.ts';
import { renderOne } from '../../src/render/index.ts';
import { treeOf } from '../support/processes.ts';
import { HARD_HAUL, SWAPPED_HAUL } from './hard-haul.ts';
import { largeMat, largeSlab } from './large-slab.ts';

/**
 * Measures what DEVELOPERS.md tells under Measurements: medians of RUNS, in seconds of a clock on
 * the wall, on an otherwise idle machine or not at all.
 */
const RUNS = 5;
const JOB = 'maple-court';
const PROJECT = join(import.meta.dirname, '..', '..');
const SAMPLE_MS = 50;
/** A radius of its driveway: another one moves the joints, the water and what is hauled. */
const CHANGED = 'rounded: { 2: 3 ft';

type Line = readonly [what: string, measured: string, budget: string];

const folder = await mkdtemp(join(tmpdir(), 'bench-'));
try {
  const lines = [...(await checkLines()), ...(await inProcessLines()), ...(await buildLines())];
  console.log(machineLine());
  console.log(asTable([['what', `median of ${RUNS} (least to most)`, 'budget'], ...lines]));
} finally {
  await rm(folder, { recursive: true, force: true });
}

async function checkLines(): Promise<readonly Line[]> {
  const jobs = join(folder, 'jobs');
  await cp(join(PROJECT, 'jobs'), jobs, { recursive: true });
  const check = () => secondsOfProgram(PROJECT, ['check', JOB, '--jobs', jobs]);
  await check();
  const again = await times(RUNS, check);
  const first = await times(RUNS, async () => {
    await forget(PROJECT);
    return check();
  });
  const job = join(jobs, JOB, 'job.yaml');
  const text = await readFile(job, 'utf8');
  if (!text.includes(CHANGED)) throw new Error(`${job} does not say "${CHANGED}"`);
  let moreIn = 0;
  const changed = await times(RUNS, async () => {
    moreIn += 1;
    await writeFile(job, text.replace(CHANGED, `${CHANGED} ${moreIn} in`));
    return check();
  });
  return [
    ['check of one job, second run', shown(again, 's'), '0.6 s'],
    ['the same, a measure of its largest slab changed', shown(changed, 's'), ''],
    ['the same, nothing kept from an earlier run', shown(first, 's'), ''],
    ['  most memory', shown(await times(RUNS, () => peakMbOf(['check', JOB, '--jobs', jobs])), 'MB'), ''],
  ];
}

/** What the program keeps of the jobs it worked out is gone; the bundle stays. */
async function forget(projectDir: string): Promise<void> {
  const bundles = join(projectDir, 'node_modules', '.cache', 'flatwork-jobs', 'program');
  for (const name of await readdir(bundles)) {
    await rm(join(bundles, name, 'kept'), { recursive: true, force: true });
  }
}

async function inProcessLines(): Promise<readonly Line[]> {
  const prepared = prepareJobs({ jobsDir: join(PROJECT, 'jobs'), names: [JOB] });
  if (!prepared.ok) throw new Error(`${JOB} has problems; check it first`);
  const [only] = prepared.jobs;
  if (only === undefined) throw new Error(`there is no job ${JOB}`);
  const calculation = await times(RUNS, async () => secondsOf(() => calculateJob(only.job)));
  const description = await times(RUNS, async () => secondsOf(() => describeAll([only])));
  const outlines = await times(RUNS, async () => secondsOf(() => outlinesOf(only.job)));
  const growth = [];
  for (const edgeCount of [100, 1_000, 10_000]) {
    const seconds = await times(RUNS, async () => secondsOf(() => selfCrossing(gear(edgeCount))));
    growth.push([`looking for crossings, ${edgeCount} edges`, shown(seconds.map(inMs), 'ms'), ''] as Line);
  }
  const [described] = describeAll([only]);
  const documents = described?.documents ?? [];
  const html = await times(RUNS, async () => {
    const startedMs = performance.now();
    for (const document of documents) await renderOne(document, { projectDir: PROJECT });
    return (performance.now() - startedMs) / 1000 / documents.length;
  });
  const mix = { slumpIn: 4, aggregateIn: 0.75 };
  // A layout is kept by what it was made of: each run has another spacing.
  let spacingIn = 150;
  const joints = await times(RUNS, async () => {
    spacingIn += 0.01;
    const input = { ...largeSlab(spacingIn), mix };
    return secondsOf(() => calcJoints(input));
  });
  const slabInput = { ...largeSlab(null), mix };
  const barInput = largeMat(slabInput);
  const bars = await times(RUNS, async () => secondsOf(() => calcReinforcement(barInput)));
  const hardHaul = await times(RUNS, async () => secondsOf(() => bestPlan(HARD_HAUL)));
  const swapped = await times(RUNS, async () => secondsOf(() => bestPlan(SWAPPED_HAUL)));
  return [
    ['calculation of one job, in process', shown(calculation.map(inMs), 'ms'), ''],
    ['outlines of one job, in process', shown(outlines.map(inMs), 'ms'), '20 ms'],
    ['bars of a slab of 2,500 sq ft, with the cutting plan', shown(bars.map(inMs), 'ms'), '200 ms'],
    [
      'trips of a hard haul: 3 trailers, 5 streams, 4 places, 120 tons',
      shown(hardHaul.map(inMs), 'ms'),
      '1,000 ms',
    ],
    ['  the same, trailers swapped', shown(swapped.map(inMs), 'ms'), '1,000 ms'],
    ['  memory of the process after it', `${Math.round(process.memoryUsage().rss / 1e6)} MB`, ''],
    ['joints of a slab of 2,500 sq ft', shown(joints.map(inMs), 'ms'), '200 ms'],
    ...growth,
    ['view models of its documents', shown(description.map(inMs), 'ms'), ''],
    ['HTML of one document alone', shown(html.map(inMs), 'ms'), ''],
  ];
}

function outlinesOf({ build, site, company }: Job) {
  const { closingErrorIn, joiningGapIn } = company.allowances;
  return calcOutline({
    slabs: build.slabs,
    existing: site.existing,
    limits: { closingErrorIn, joiningGapIn },
  });
}

/** A round shape with teeth: no edge crosses another, and many are near. */
function gear(edgeCount: number) {
  return polygonRing(
    Array.from({ length: edgeCount }, (_, index) => {
      const angleRad = (2 * Math.PI * index) / edgeCount;
      const radiusIn = 1_000 + (index % 2) * 20;
      return { xIn: radiusIn * Math.cos(angleRad), yIn: radiusIn * Math.sin(angleRad) };
    }),
  );
}

async function buildLines(): Promise<readonly Line[]> {
  const seconds = { unpacked: [] as number[], cached: [] as number[], first: [] as number[] };
  const peakMb: number[] = [];
  let documentCount = 0;
  for (let run = 0; run < RUNS; run += 1) {
    const output = join(folder, `output-${run}`);
    const asked = ['build', JOB, '--output', output];
    const startAnew = async () => {
      await rm(output, { recursive: true, force: true });
      await forget(PROJECT);
    };
    await startAnew();
    seconds.unpacked.push(await secondsOfProgram(PROJECT, asked));
    documentCount = await pdfCount(output);
    seconds.cached.push(await secondsOfProgram(PROJECT, asked));
    await startAnew();
    peakMb.push(await peakMbOf(asked));
    await startAnew();
    const copy = await projectWithPackedBrowser(run);
    seconds.first.push(await secondsOfProgram(copy, asked));
    await rm(copy, { recursive: true });
  }
  const perSecond = seconds.unpacked.map((each) => documentCount / each);
  return [
    ['build of one job, nothing cached', shown(seconds.unpacked, 's'), '4 s'],
    ['  most memory, all processes', shown(peakMb, 'MB'), ''],
    [`  PDFs a second (${documentCount}, start-up counted)`, shown(perSecond, ''), ''],
    ['the same, nothing changed', shown(seconds.cached, 's'), ''],
    ['first build ever, browser packed', shown(seconds.first, 's'), '6 s'],
  ];
}

/** The project again, its packages linked one by one so that it has a cache folder of its own. */
async function projectWithPackedBrowser(run: number): Promise<string> {
  const copy = join(folder, `project-${run}`);
  await mkdir(join(copy, 'node_modules'), { recursive: true });
  for (const name of ['src', 'templates', 'jobs', 'package.json', '.eleventy.js', 'tsconfig.json']) {
    await cp(join(PROJECT, name), join(copy, name), { recursive: true });
  }
  for (const name of await readdir(join(PROJECT, 'node_modules'))) {
    if (name !== '.cache')
      await symlink(join(PROJECT, 'node_modules', name), join(copy, 'node_modules', name));
  }
  return copy;
}

async function pdfCount(output: string): Promise<number> {
  const names = await readdir(join(output, JOB), { recursive: true });
  return names.filter((name) => name.endsWith('.pdf')).length;
}

/** One run of the program by the clock [s]. @throws {Error} If it does not end well. */
async function secondsOfProgram(projectDir: string, args: readonly string[]): Promise<number> {
  const startedMs = performance.now();
  await startedProgram(projectDir, args).ended;
  return (performance.now() - startedMs) / 1000;
}

/** The most memory of one run and its children [MB]; looking at it takes time, which is not counted. */
async function peakMbOf(args: readonly string[]): Promise<number> {
  const { pid, ended } = startedProgram(PROJECT, args);
  let peakMb = 0;
  const watch = { isOn: true };
  const sampling = (async () => {
    while (watch.isOn) {
      peakMb = Math.max(peakMb, await treeMb(pid));
      await new Promise((resolve) => setTimeout(resolve, SAMPLE_MS));
    }
  })();
  await ended;
  watch.isOn = false;
  await sampling;
  return peakMb;
}

function startedProgram(projectDir: string, args: readonly string[]): { pid: number; ended: Promise<void> } {
  const child = spawn(process.execPath, ['src/commands/bin.js', ...args], {
    cwd: projectDir,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let err = '';
  child.stderr.on('data', (bytes: Buffer) => (err += bytes.toString()));
  const ended = once(child, 'exit').then(() => {
    if (child.exitCode !== 0) throw new Error(`${args.join(' ')} ended with ${child.exitCode}: ${err}`);
  });
  return { pid: child.pid ?? 0, ended };
}

/**
 * Memory of a process and all its children, each shared page counted in parts [MB]; 0 where the
 * system has no /proc.
 */
async function treeMb(rootPid: number): Promise<number> {
  const pids = treeOf(rootPid);
  const sizes = await Promise.all(
    pids.map(async (pid) => {
      const text = await readFile(`/proc/${pid}/smaps_rollup`, 'utf8').catch(() => '');
      return Number(/^Pss:\s+(\d+) kB/m.exec(text)?.[1] ?? 0);
    }),
  );
  return sizes.reduce((sum, kb) => sum + kb, 0) / 1024;
}

async function times<T>(count: number, run: () => Promise<T>): Promise<T[]> {
  const results: T[] = [];
  for (let index = 0; index < count; index += 1) results.push(await run());
  return results;
}

function secondsOf(run: () => unknown): number {
  const startedMs = performance.now();
  run();
  return (performance.now() - startedMs) / 1000;
}

function inMs(seconds: number): number {
  return seconds * 1000;
}

function shown(values: readonly number[], unit: string): string {
  const sorted = values.toSorted((one, other) => one - other);
  const digits = unit === 's' || unit === '' ? 2 : 0;
  const [least, middle, most] = [0, Math.floor(sorted.length / 2), sorted.length - 1].map((index) =>
    (sorted[index] ?? Number.NaN).toFixed(digits),
  );
  return `${middle} ${unit} (${least} to ${most})`;
}

function machineLine(): string {
  const [processor] = cpus();
  const load = loadavg()
    .map((value) => value.toFixed(1))
    .join(', ');
  return `Node ${process.version}, ${platform()} ${arch()}, ${cpus().length} x ${processor?.model.trim()}, ${Math.round(totalmem() / 2 ** 30)} GB, load ${load}`;
}

function asTable(rows: readonly (readonly string[])[]): string {
  const widths = [0, 1, 2].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
