import { mkdir, mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'puppeteer';
import { launch, unpackChromium } from '../../src/print/index.ts';
import { runProgram } from '../support/run-program.ts';

/** Makes the pictures of README.md anew: the first page of each document of a demo job. */
const PROJECT = join(import.meta.dirname, '..', '..');
const FOLDER = join(PROJECT, 'tests', 'pictures');
const JOB = 'maple-court';
const MOST_BYTES = 60_000;
const WIDTH_PX = 384;
/** Letter paper [CSS px at 96 an inch]. */
const PAPER_PX = { width: 816, height: 1056 } as const;
/** The page as it prints, but on a screen: its margin stands round it, and the page ends where paper ends. */
const MARGIN_PX = 48;

const PAGES = [
  ['proposal', `${JOB}/homeowner/proposal.html`],
  ['work-order', `${JOB}/office/work-order.html`],
  ['materials', `${JOB}/office/materials.html`],
  ['safety', `${JOB}/office/safety.html`],
  ['calculation', `${JOB}/office/calculation.html`],
  ['binder', `${JOB}/office/binder.html`],
  ['site-walk', 'site-walk.html'],
  ['jobs', 'index.html'],
] as const;

await mkdir(FOLDER, { recursive: true });
const output = await mkdtemp(join(tmpdir(), 'pictures-'));
try {
  for (const command of ['build', 'sheet']) {
    const { code, err } = await runProgram([command, '--output', output]);
    if (code !== 0) throw new Error(`${command} ended with ${code}: ${err}`);
  }
  const { executablePath, env } = await unpackChromium(
    join(PROJECT, 'node_modules', '.cache', 'flatwork-jobs'),
  );
  const { browser, close } = await launch({
    kind: 'found',
    name: 'bundled',
    executablePath,
    env,
    isPinned: true,
  });
  try {
    for (const [name, page] of PAGES) await picture(browser, join(output, page), `${FOLDER}/${name}.png`);
  } finally {
    await close();
  }
} finally {
  await rm(output, { recursive: true, force: true });
}

/** @throws {Error} If the picture is larger than README.md should load. */
async function picture(browser: Browser, htmlPath: string, pngPath: `${string}.png`): Promise<void> {
  const page = await browser.newPage();
  // What scripts add depends on today.
  await page.setJavaScriptEnabled(false);
  await page.emulateMediaType('print');
  await page.setViewport({ ...PAPER_PX, deviceScaleFactor: WIDTH_PX / PAPER_PX.width });
  await page.goto(pathToFileURL(htmlPath).href);
  await page.addStyleTag({ content: `html { padding: ${MARGIN_PX}px; background: #fff }` });
  await page.screenshot({ path: pngPath, clip: { x: 0, y: 0, ...PAPER_PX } });
  await page.close();
  const { size } = await stat(pngPath);
  if (size > MOST_BYTES) throw new Error(`${pngPath} has ${size} bytes; at most ${MOST_BYTES} are wanted`);
  console.log(`${pngPath} ${Math.round(size / 1000)} kB`);
}
