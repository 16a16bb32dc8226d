import { execFile, spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdir, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import {
  launch,
  type PrintJob,
  type PrintOptions,
  type PrintReport,
  pdfFacts,
  printPdfs,
  type RunningBrowser,
  searchOnThisMachine,
  startBrowser,
  toolsOnThisMachine,
  unpackChromium,
} from '../../src/print/index.ts';

const PROJECT = fileURLToPath(new URL('../..', import.meta.url));
const BROWSER_CACHE = join(PROJECT, 'node_modules/.cache/flatwork-jobs');
const EPOCH_SECONDS = 1_777_852_800; // 2026-05-04

let folder = '';
let running: RunningBrowser;
let fontFace = '';

async function aBrowser(): Promise<RunningBrowser> {
  const tools = toolsOnThisMachine(() => unpackChromium(BROWSER_CACHE));
  const started = await startBrowser(searchOnThisMachine(null), tools);
  if (started.kind !== 'running') throw new Error(JSON.stringify(started));
  return started;
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'print-test-'));
  const font = await readFile(
    join(PROJECT, 'node_modules/@fontsource/noto-sans/files/noto-sans-latin-400-normal.woff2'),
  );
  fontFace = `@font-face { font-family: Noto; src: url(data:font/woff2;base64,${font.toString('base64')}) }`;
  running = await aBrowser();
}, 120_000);

afterAll(async () => {
  await running?.close();
  await rm(folder, { recursive: true });
});

type PageParts = { head?: string; body: string };

function aPage({ head = '', body }: PageParts): string {
  return `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Front walk ½</title>
    <style>${fontFace} body { font-family: Noto } @page { size: letter; margin: 0.75in }
    @page wide { size: 11in 8.5in } .wide { page: wide } .next { break-before: page }</style>${head}</head>
    <body>${body}</body></html>`;
}

function aTable(rowCount: number): string {
  const row = (index: number) => `<tr><th scope="row">Load ${index}</th><td>${index}</td><td>yes</td></tr>`;
  return `<table><thead><tr><th>Load</th><th>Trip</th><th>Done</th></tr></thead>
    <tbody>${Array.from({ length: rowCount }, (_, index) => row(index)).join('')}</tbody></table>`;
}

async function aJob(name: string, parts: PageParts, changes: Partial<PrintJob> = {}): Promise<PrintJob> {
  const htmlPath = join(folder, `${name}.html`);
  await writeFile(htmlPath, aPage(parts));
  return { htmlPath, pdfPath: join(folder, `${name}.pdf`), epochSeconds: EPOCH_SECONDS, ...changes };
}

const print = (jobs: PrintJob[], options: Partial<PrintOptions> = {}): Promise<PrintReport> =>
  printPdfs(jobs, { browser: running.browser, ...options });

const goodBody = `<h1>Front walk</h1>${aTable(70)}<div class="wide"><h2>Plan</h2></div>`;

async function reasonFor(
  name: string,
  parts: PageParts,
  options: Partial<PrintOptions> = {},
): Promise<string> {
  const good = await aJob(`${name}-neighbour`, { body: goodBody });
  const bad = await aJob(name, parts);
  const { printed, failed } = await print([bad, good, good], options);
  expect(printed.map(({ pdfPath }) => pdfPath)).toEqual([good.pdfPath, good.pdfPath]);
  expect(failed.map(({ htmlPath }) => htmlPath)).toEqual([bad.htmlPath]);
  await expect(stat(bad.pdfPath)).rejects.toThrow('ENOENT');
  return failed[0]?.reason ?? '';
}

describe('printPdfs', () => {
  test('prints pages of mixed sizes, with title, and tells of each when it is done', async () => {
    const job = await aJob('plain', { body: goodBody }, { pdfPath: join(folder, 'new-folder/plain.pdf') });
    const done: string[] = [];
    const { printed, failed } = await print([job], { onDone: (pdfPath) => done.push(pdfPath) });
    expect(failed).toEqual([]);
    expect(done).toEqual([job.pdfPath]);
    const facts = pdfFacts(await readFile(job.pdfPath));
    expect(facts.title).toBe('Front walk ½');
    expect(printed).toEqual([{ pdfPath: job.pdfPath, pageCount: facts.pageCount }]);
    expect(facts.pageSizesPt[0]).toEqual({ widthPt: 612, heightPt: 792 });
    expect(facts.pageSizesPt.at(-1)).toEqual({ widthPt: 792, heightPt: 612 });
    expect(await readdir(join(folder, 'new-folder'))).toEqual(['plain.pdf']);
  });

  test('invariant: order and concurrency do not change the bytes', async () => {
    const jobs = await Promise.all(
      [5, 40, 90].map((rows) =>
        aJob(`same-${rows}`, { body: `<h1>Rows</h1>${aTable(rows)}${aTable(rows)}` }),
      ),
    );
    const bytesOf = () => Promise.all(jobs.map(({ pdfPath }) => readFile(pdfPath, 'latin1')));
    await print(jobs, { concurrency: 1 });
    const first = await bytesOf();
    for (const bytes of first) expect(bytes).toContain("/CreationDate (D:20260504000000+00'00')");
    await print(jobs.toReversed(), { concurrency: 3 });
    expect(await bytesOf()).toEqual(first);

    const other = await aBrowser();
    onTestFinished(other.close);
    await print([...jobs, ...jobs], { browser: other.browser });
    expect(await bytesOf()).toEqual(first);
  });

  test('text in a font that the page does not bring is in the bundled one, not in one of this machine', async () => {
    const job = await aJob('fonts', { body: '<p>ours</p><p style="font-family: monospace">theirs</p>' });
    await print([job]);
    const names = (await readFile(job.pdfPath, 'latin1')).matchAll(/\/BaseFont \/[A-Z]{6}\+([\w-]+)/g);
    expect([...new Set([...names].map(([, name]) => name ?? ''))].toSorted()).toEqual([
      'NotoSans-Regular',
      'OpenSans-Regular',
    ]);
  });

  test('fills in page numbers, and they agree with another reader of the PDF', async () => {
    const body = `<h1>Contents</h1>
      ${['plan', 'haul', 'end'].map((id) => `<p><a href="#${id}">${id}</a> <span data-page-of="${id}">000</span></p>`).join('')}
      <h2 class="next" id="plan">Plan</h2>${aTable(60)}<h2 class="next" id="haul">Haul</h2>
      <div class="wide" id="end">End</div>`;
    const job = await aJob('binder', { body }, { twoPass: true });
    expect((await print([job])).failed).toEqual([]);

    const bytes = new Uint8Array(await readFile(job.pdfPath));
    const facts = pdfFacts(bytes);
    const pdf = await getDocument({ data: bytes, verbosity: 0 }).promise;
    onTestFinished(() => pdf.destroy());
    expect(pdf.numPages).toBe(facts.pageCount);
    const destinations = Object.entries(await pdf.getDestinations());
    const pageIndexes = destinations.map(async ([id, [page]]) => [id, await pdf.getPageIndex(page)] as const);
    expect(new Map(await Promise.all(pageIndexes))).toEqual(facts.destinations);

    const content = await (await pdf.getPage(1)).getTextContent();
    const text = content.items.map((item) => ('str' in item ? item.str : '')).join('');
    const numbers = ['plan', 'haul', 'end'].map((id) => `${id} ${(facts.destinations.get(id) ?? NaN) + 1}`);
    expect(text).toBe(`Contents${numbers.join('')}`);
    expect(new Set(facts.destinations.values()).size).toBe(3);
  });

  test('a page number of nothing is an error', async () => {
    const job = await aJob('lost', { body: '<span data-page-of="nowhere">000</span>' }, { twoPass: true });
    expect((await print([job])).failed[0]?.reason).toContain('no page is known for "nowhere"');
  });

  test('page numbers that push the pages about are an error, not a wrong number', async () => {
    // Told that it is on page 1 it moves to page 2, told that it is on page 2 it moves back.
    const head = `<script>
      new MutationObserver(() => {
        const pushed = document.querySelector('span').textContent === '1';
        document.querySelector('#x').style.breakBefore = pushed ? 'page' : 'auto';
      }).observe(document, { subtree: true, childList: true });</script>`;
    const body = '<p><a href="#x">x</a> <span data-page-of="x">000</span></p><p id="x">here</p>';
    const job = await aJob('restless', { head, body }, { twoPass: true });
    expect((await print([job])).failed[0]?.reason).toContain('do not settle');
  });

  test('a document that asks for the network fails, and the server never hears of it', async () => {
    let heard = 0;
    const server = createServer((_request, response) => {
      heard += 1;
      response.end();
    });
    await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
    onTestFinished(() => void server.close());
    const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/logo.png`;
    expect(await reasonFor('outbound', { body: `<img src="${url}" alt="logo">` })).toBe(
      `it asks for ${url}, but pages are printed without network`,
    );
    expect(heard).toBe(0);
    // The same without our interception: the flags of the browser alone must hold.
    for (const address of [url, 'http://crew.invalid/']) {
      const page = await running.browser.newPage();
      await expect(page.goto(address)).rejects.toThrow('net::ERR_PROXY_CONNECTION_FAILED');
      await page.close();
    }
    expect(heard).toBe(0);
  });

  test.each([
    {
      fault: 'console',
      head: '<script>console.error("no scale")</script>',
      reason: 'it reports an error: no scale',
    },
    { fault: 'thrown', head: '<script>throw new Error("no plan")</script>', reason: /an error: .*no plan/ },
    {
      fault: 'style sheet',
      head: '<link rel="stylesheet" href="gone.css">',
      reason: /ERR_FILE_NOT_FOUND.*gone\.css/,
    },
    {
      fault: 'font',
      head: '<style>@font-face { font-family: Torn; src: url(data:font/woff2;base64,d09GMgAB) }</style>',
      reason: 'a font did not load: Torn normal normal',
    },
  ])('a document with a fault fails alone: $fault', async ({ fault, head, reason }) => {
    expect(await reasonFor(fault, { head, body: '<p>text</p>' })).toMatch(reason);
  });

  test('a missing document fails alone', async () => {
    const good = await aJob('present', { body: goodBody });
    const { printed, failed } = await print([{ ...good, htmlPath: join(folder, 'absent.html') }, good]);
    expect(printed).toHaveLength(1);
    expect(failed[0]?.reason).toContain('ERR_FILE_NOT_FOUND');
  });

  test('a document that never ends is given up in time', async () => {
    const head = '<script>for (;;) {}</script>';
    expect(await reasonFor('endless', { head, body: '' }, { limitMs: 3000 })).toBe(
      'it was not printed within 3 s',
    );
  });

  test('a crash of its tab fails one document, and the next one gets a new tab', async () => {
    const other = await aBrowser();
    onTestFinished(other.close);
    const bad = await aJob('crashing', { head: '<script>for (;;) {}</script>', body: '' });
    const good = await aJob('after-crash', { body: goodBody });
    const printing = print([bad, good], { browser: other.browser, concurrency: 1 });
    await sleep(1500);
    const renderers = await childrenOf(other.browser.process()?.pid ?? 0, '--type=renderer');
    expect(renderers.length).toBeGreaterThan(0);
    for (const pid of renderers) process.kill(pid, 'SIGKILL');
    const { printed, failed } = await printing;
    expect(failed).toEqual([
      { htmlPath: bad.htmlPath, pdfPath: bad.pdfPath, reason: 'the browser tab crashed' },
    ]);
    expect(printed.map(({ pdfPath }) => pdfPath)).toEqual([good.pdfPath]);
  });

  test('when the whole browser dies every document left has a reason, at once', async () => {
    const other = await aBrowser();
    onTestFinished(other.close);
    const jobs = await Promise.all([1, 2, 3].map((n) => aJob(`orphan-${n}`, { body: goodBody })));
    const startedMs = performance.now();
    const printing = print(jobs, { browser: other.browser });
    other.browser.process()?.kill('SIGKILL');
    const { printed, failed } = await printing;
    expect(printed).toEqual([]);
    expect(failed.map(({ reason }) => reason)).toEqual(jobs.map(() => expect.stringMatching(/\S/)));
    expect(performance.now() - startedMs).toBeLessThan(10_000);
  });

  test.each([0, 1.5, Number.NaN])('a concurrency of %s is a programming error', async (concurrency) => {
    await expect(print([], { concurrency })).rejects.toThrow(RangeError);
  });
});

describe('the bundled browser', () => {
  test('says what it is, and leaves no variables of its own in this process', () => {
    expect(running.versionText).toMatch(/^HeadlessChrome\/147\./);
    expect(running.isPinned).toBe(true);
    expect(process.env['FONTCONFIG_FILE']).toBeUndefined();
    expect(process.env['AWS_EXECUTION_ENV']).toBeUndefined();
  });

  test("started as somebody else's it prints too, but does not pass for the pinned one", async () => {
    const { executablePath, env } = await unpackChromium(BROWSER_CACHE);
    const other = await launch({ kind: 'found', name: 'mine', executablePath, env, isPinned: false });
    onTestFinished(other.close);
    expect(other.isPinned).toBe(false);
    expect(other.identity).toBe(other.versionText);
    const job = await aJob('other-browser', { body: goodBody });
    expect((await print([job], { browser: other.browser })).failed).toEqual([]);
  });

  test('its font list names no folder of the system', async () => {
    const { env } = await unpackChromium(BROWSER_CACHE);
    const fontsConf = await readFile(env['FONTCONFIG_FILE'] ?? '', 'utf8');
    const folders = [...fontsConf.matchAll(/<dir>(.*?)<\/dir>/g)].map(([, path]) => path);
    expect(folders).toEqual([join(BROWSER_CACHE, 'chromium-147.0.0/fonts')]);
    expect(fontsConf).not.toContain('<include');
  });

  test('leaves no profile folder behind', async () => {
    const profiles = async () => (await readdir(tmpdir())).filter((name) => name.startsWith('puppeteer_'));
    const before = await profiles();
    const other = await aBrowser();
    const [own] = (await profiles()).filter((name) => !before.includes(name));
    expect(own).toBeDefined();
    await other.close();
    expect(await profiles()).not.toContain(own);
  });

  test('three processes unpack into a fresh folder at once, and each can run it', async () => {
    const fresh = join(folder, 'fresh & new');
    onTestFinished(() => rm(fresh, { recursive: true, force: true }));
    const child = fileURLToPath(new URL('./unpack-child.ts', import.meta.url));
    const run = () =>
      promisify(execFile)(process.execPath, ['--import', 'tsx', child, fresh], { cwd: PROJECT });
    const said = await Promise.all([run(), run(), run()]);
    for (const { stdout } of said) expect(stdout).toMatch(/ 147\.\d+\.\d+\.\d+/);
    expect(await readdir(fresh)).toEqual(['chromium-147.0.0']);
    expect((await stat(join(fresh, 'chromium-147.0.0'))).mode & 0o777).toBe(0o700);
  }, 120_000);

  test('stopped while it unpacks, it leaves nothing behind and no process', async () => {
    const stopped = join(folder, 'stopped');
    onTestFinished(() => rm(stopped, { recursive: true, force: true }));
    const stop = new AbortController();
    const unpacked = unpackChromium(stopped, stop.signal);
    const isUnpacking = async () => (await childrenOf(process.pid, 'executablePath()')).length > 0;
    while (!(await isUnpacking())) await sleep(5);
    stop.abort();
    await expect(unpacked).rejects.toThrow('aborted');
    expect(await readdir(stopped)).toEqual([]);
    expect(await isUnpacking()).toBe(false);
  });

  test('a folder with a cut browser is unpacked again, and leftovers of killed processes go', async () => {
    const torn = join(folder, 'torn');
    onTestFinished(() => rm(torn, { recursive: true, force: true }));
    await mkdir(join(torn, 'chromium-147.0.0'), { recursive: true });
    await writeFile(join(torn, 'chromium-147.0.0/chromium'), 'half a program');
    const { pid } = spawnSync(process.execPath, ['-e', '']);
    await mkdir(join(torn, `chromium-147.0.0.${pid}.${randomUUID()}.tmp`));
    const { executablePath } = await unpackChromium(torn);
    expect((await stat(executablePath)).size).toBeGreaterThan(100_000_000);
    expect(await readdir(torn)).toEqual(['chromium-147.0.0']);
  }, 120_000);
});

/** Processes below another one whose command line holds a word (Linux). */
async function childrenOf(ancestorPid: number, word: string): Promise<number[]> {
  const pids = (await readdir('/proc')).filter((name) => /^\d+$/.test(name)).map(Number);
  const read = (pid: number, file: string) => readFile(`/proc/${pid}/${file}`, 'utf8').catch(() => '');
  const parents = new Map(
    await Promise.all(
      pids.map(
        async (pid) => [pid, Number((await read(pid, 'stat')).split(') ')[1]?.split(' ')[1])] as const,
      ),
    ),
  );
  const isBelow = (pid: number | undefined): boolean =>
    pid === ancestorPid || (pid !== undefined && pid > 1 && isBelow(parents.get(pid)));
  const isWanted = await Promise.all(
    pids.map(async (pid) => isBelow(parents.get(pid)) && (await read(pid, 'cmdline')).includes(word)),
  );
  return pids.filter((_, index) => isWanted[index]);
}
