import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test } from 'vitest';
import { parse } from 'yaml';
import {
  type RunningBrowser,
  searchOnThisMachine,
  startBrowser,
  toolsOnThisMachine,
  unpackChromium,
} from '../../src/print/index.ts';
import { PROJECT_DIR } from '../support/run-program.ts';
import { bodyOf, type PdfPage, type PdfRead, readPdf, squeezed, textOfPage } from './read-pdf.ts';

const OUTPUT = inject('demoOutput');
const JOBS = inject('demoJobs');

/** Pages each document may take: a demo job that needs more has lost its shape. */
const MOST_PAGES = {
  'homeowner/proposal': 9,
  'office/work-order': 28,
  'office/materials': 7,
  'office/safety': 4,
  'office/calculation': 66,
  'office/binder': 110,
} as const;
type DocumentName = keyof typeof MOST_PAGES;

const DOCUMENTS = Object.keys(MOST_PAGES) as DocumentName[];
const PAPER_OF = {
  'corner-walk': 'letter',
  'garden-row': 'a4',
  'maple-court': 'letter',
} as const;
const PAPERS_PT = { letter: { width: 612, height: 792 }, a4: { width: 595.28, height: 841.89 } } as const;
const IDS = Object.keys(PAPER_OF) as (keyof typeof PAPER_OF)[];

const SHEET = 'site-walk';
const PDFS = [...IDS.flatMap((id) => DOCUMENTS.map((name) => `${id}/${name}`)), SHEET];
const PAGES = ['index', ...PDFS];

const PHONE = { width: 360, height: 740, isMobile: true, hasTouch: true };

let running: RunningBrowser;
const pdfs = new Map<string, PdfRead>();

beforeAll(async () => {
  const tools = toolsOnThisMachine(() =>
    unpackChromium(join(PROJECT_DIR, 'node_modules/.cache/flatwork-jobs')),
  );
  const started = await startBrowser(searchOnThisMachine(null), tools);
  if (started.kind !== 'running') throw new Error(JSON.stringify(started));
  running = started;
  for (const name of PDFS) pdfs.set(name, await readPdf(join(OUTPUT, `${name}.pdf`)));
}, 120_000);

afterAll(() => running?.close());

function pdfNamed(name: string): PdfRead {
  const pdf = pdfs.get(name);
  if (pdf === undefined) throw new RangeError(`no PDF is called ${name}`);
  return pdf;
}

type Opened = { readonly page: Page; readonly said: string[]; readonly asked: string[] };

/** A page as a person opens it, with what it says on the console and what it asks the network for. */
async function opened(name: string, widthPx: number): Promise<Opened> {
  const page = await running.browser.newPage();
  onTestFinished(() => page.close());
  const said: string[] = [];
  const asked: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(String(error)));
  page.on('request', (request) => {
    if (!/^(file|data):/.test(request.url())) asked.push(request.url());
  });
  await page.setViewport({ width: widthPx, height: 740 });
  await page.goto(pathToFileURL(join(OUTPUT, `${name}.html`)).href);
  return { page, said, asked };
}

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Faults that axe finds, each as its rule and the first places; programs for the page are text. */
async function axeFaults(
  page: Page,
  rules: 'all' | 'all but contrast' | 'scrolling' | 'none',
): Promise<readonly string[]> {
  if (rules === 'none') return [];
  const tags = { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa'] };
  const options = {
    resultTypes: ['violations'],
    runOnly: rules === 'scrolling' ? { type: 'rule', values: ['scrollable-region-focusable'] } : tags,
    rules: rules === 'all but contrast' ? { 'color-contrast': { enabled: false } } : {},
  };
  if ((await page.evaluate('typeof axe')) === 'undefined') await page.evaluate(AXE);
  return (await page.evaluate(`
    axe.run(document, ${JSON.stringify(options)}).then(({ violations }) =>
      violations.map(({ id, nodes }) => id + ': ' + nodes.slice(0, 3).map(({ html }) => html.slice(0, 160)).join(' | ')))
  `)) as string[];
}

/**
 * Contrast takes most of the time and depends on the styles, not on the job: it is looked at in the
 * fullest job, and in the shortest where a document is long. A binder only joins its parts, and a calculation
 * sheet is rows of one kind, so one of each is enough.
 */
function rulesFor(name: string): Parameters<typeof axeFaults>[1] {
  const [id = '', , kind = ''] = name.split('/');
  if (kind === 'binder') return id === 'corner-walk' ? 'all but contrast' : 'none';
  if (kind === 'calculation') return id === 'corner-walk' ? 'all' : 'none';
  return ['corner-walk', 'garden-row'].includes(id) ? 'all but contrast' : 'all';
}

/** Links to files that are not there, and to places of the page that it does not have. */
async function brokenLinks(page: Page, name: string): Promise<readonly string[]> {
  const links = (await page.evaluate(`[...document.querySelectorAll('a[href]')]
    .map((link) => link.getAttribute('href'))
    .filter((href) => !/^(mailto|tel):/.test(href))
    .filter((href) => !(href.startsWith('#') && document.getElementById(href.slice(1))))`)) as string[];
  return links.filter((link) => link.startsWith('#') || !existsSync(join(OUTPUT, name, '..', link)));
}

/** What reaches past the right edge of the window, save inside parts that scroll by themselves. */
async function tooWide(page: Page): Promise<readonly string[]> {
  return (await page.evaluate(`(() => {
    const root = document.documentElement;
    const scrolls = (element) => ['auto', 'scroll', 'hidden'].includes(getComputedStyle(element).overflowX);
    const isInScrolling = (element) =>
      element !== null && element !== document.body && (scrolls(element) || isInScrolling(element.parentElement));
    const wide = [...document.body.querySelectorAll('*')].filter((element) => {
      const { right, width } = element.getBoundingClientRect();
      return width > 1 && right > root.clientWidth + 0.5 && !isInScrolling(element.parentElement);
    });
    const page = root.scrollWidth > root.clientWidth ? ['the page: ' + root.scrollWidth + ' px'] : [];
    return [...page, ...wide.map((element) => element.outerHTML.slice(0, 120))];
  })()`)) as string[];
}

describe.each(PAGES)('%s as a page', (name) => {
  test('has no error, no request, no barrier, no broken link, and fits a phone', async () => {
    const { page, said, asked } = await opened(name, 1200);
    expect(await axeFaults(page, rulesFor(name))).toEqual([]);
    expect(await brokenLinks(page, name)).toEqual([]);

    await page.setViewport(PHONE);
    expect(await tooWide(page)).toEqual([]);
    expect(await axeFaults(page, 'scrolling')).toEqual([]);
    expect(said).toEqual([]);
    expect(asked).toEqual([]);
  });
});

describe('what the checks of a page find', () => {
  test('a page with faults has them found, so that the tests above can fail', async () => {
    const { page } = await opened('index', 1200);
    await page.setViewport(PHONE);
    await page.evaluate(`document.body.insertAdjacentHTML('beforeend',
      '<p style="width: 400px; color: #bbb">Pale and wide</p><img src="data:image/gif;base64,R0lGODlhAQABAAAAACw=">')`);
    expect((await axeFaults(page, 'all')).map((fault) => fault.split(':')[0])).toEqual([
      'color-contrast',
      'image-alt',
    ]);
    expect(await tooWide(page)).toHaveLength(2);
  });
});

describe.each(PDFS)('%s as a PDF', (name) => {
  const id = name.split('/')[0] ?? '';

  test('has the paper that the job says, on every page', () => {
    const paper = PAPERS_PT[(PAPER_OF as Record<string, keyof typeof PAPERS_PT>)[id] ?? 'letter'];
    for (const { widthPt, heightPt } of pdfNamed(name).pages) {
      expect(widthPt).toBeCloseTo(paper.width, 0);
      expect(heightPt).toBeCloseTo(paper.height, 0);
    }
  });

  test('has as many pages as it needs, none of them blank', () => {
    const { pages } = pdfNamed(name);
    const kind = name.slice(id.length + 1) as DocumentName;
    if (name === SHEET) expect(pages).toHaveLength(2);
    else expect(pages.length).toBeLessThanOrEqual(MOST_PAGES[kind]);
    const lineCounts = pages.map((page) => new Set(bodyOf(page).map(({ yPt }) => Math.round(yPt))).size);
    expect(Math.min(...lineCounts)).toBeGreaterThanOrEqual(3);
  });

  test('says its title and language, is tagged and has bookmarks', () => {
    const { title, language, isTagged, bookmarks, pages } = pdfNamed(name);
    const html = readFileSync(join(OUTPUT, `${name}.html`), 'utf8');
    expect(html).toContain(`<title>${title.replaceAll('&', '&amp;').replaceAll("'", '&#39;')}</title>`);
    expect(title.length).toBeGreaterThan(5);
    expect(language).toBe('en');
    expect(isTagged).toBe(true);
    const roles = pages.flatMap((each) => each.roles);
    expect(roles.filter((role) => role === 'H1')).toHaveLength(1);
    expect(bookmarks).toHaveLength(html.match(/<h[1-6][ >]/g)?.length ?? 0);
    for (const bookmark of bookmarks) {
      const onPage = textOfPage(pages[bookmark.page - 1] as PdfPage);
      expect(onPage).toContain(squeezed(bookmark.title));
    }
  });

  test('brings one family of fonts', () => {
    const families = pdfNamed(name).fontNames.map((font) => font.replace(/^[A-Z]{6}\+/, ''));
    expect(families.toSorted()).toEqual(['NotoSans-Bold', 'NotoSans-Regular']);
  });

  test('has no text below 8 pt', () => {
    const small = pdfNamed(name).pages.flatMap(({ texts }, index) =>
      texts
        .filter(({ sizePt }) => sizePt < 7.95)
        .map(({ text, sizePt }) => `page ${index + 1}: ${sizePt.toFixed(2)} pt ${text}`),
    );
    expect(small).toEqual([]);
  });

  test('has nothing outside its paper', () => {
    const outside = pdfNamed(name).pages.flatMap(({ texts, widthPt, heightPt }, index) =>
      texts
        .filter(({ xPt, yPt }) => xPt < 20 || yPt < 20 || xPt > widthPt - 20 || yPt > heightPt - 20)
        .map(({ text }) => `page ${index + 1}: ${text}`),
    );
    expect(outside).toEqual([]);
  });

  test('counts its pages in the foot', () => {
    const { pages } = pdfNamed(name);
    for (const [index, { texts }] of pages.entries()) {
      const foot = squeezed(
        texts
          .filter(({ yPt }) => yPt < 45)
          .map(({ text }) => text)
          .join(''),
      );
      expect(foot).toContain(`Page${index + 1}of${pages.length}`);
    }
  });
});

/** The cells of each row of a table, a note below a row counted to it; head first. */
async function rowsOf(page: Page, table: string): Promise<readonly string[]> {
  return (await page.evaluate(`
    [...document.querySelectorAll(${JSON.stringify(`${table} thead tr, ${table} tbody tr`)})]
      .map((row) => [...row.children].map((cell) => cell.textContent).join(''))
  `)) as string[];
}

describe.each(IDS)('the loads of %s', (id) => {
  test('stand whole below their heads, in the plan and in the binder', async () => {
    const { page } = await opened(`${id}/office/materials`, 1200);
    const [head = '', ...rows] = (await rowsOf(page, '.load-table table')).map(squeezed);
    expect(rows.length).toBeGreaterThan(1);
    expect(head).toContain('Load');

    for (const document of ['office/materials', 'office/binder']) {
      const texts = pdfNamed(`${id}/${document}`).pages.map(textOfPage);
      const headAndMore = texts.filter((text) => text.includes(head));
      for (const row of rows) {
        // Another table may have a row of totals that begins like this one's.
        const within = row === rows.at(-1) ? headAndMore : texts;
        const carrying = within.filter((text) => text.includes(row));
        expect(carrying, `${row} on a page of ${document}`).not.toHaveLength(0);
        for (const text of carrying) {
          expect(headAndMore, `${row} below a head in ${document}`).toContain(text);
          expect(text.indexOf(head)).toBeLessThan(text.lastIndexOf(row));
        }
      }
      for (const text of headAndMore) {
        const below = text.slice(text.indexOf(head) + head.length);
        expect(
          rows.filter((row) => below.startsWith(row)),
          below.slice(0, 60),
        ).not.toHaveLength(0);
      }
    }
  });
});

type Figures = Readonly<Record<string, { readonly value: number | string; readonly unit: string }>>;

function figuresOf(id: string): Figures {
  return JSON.parse(readFileSync(join(OUTPUT, id, 'office/figures.json'), 'utf8')) as Figures;
}

/** $1,234.50 */
function dollars(value: number | string): string {
  const [whole = '', cents = ''] = Number(value).toFixed(2).split('.');
  return `$${whole.replace(/\B(?=(\d{3})+$)/g, ',')}.${cents}`;
}

describe.each(IDS)('the papers of %s', (id) => {
  const textOf = (document: DocumentName) => pdfNamed(`${id}/${document}`).pages.map(textOfPage).join('\n');

  test('the proposal names the price and every payment', () => {
    const figures = figuresOf(id);
    const money = Object.entries(figures).filter(([name]) => /^price\.(total|payments\.)/.test(name));
    expect(money.length).toBeGreaterThanOrEqual(2);
    for (const [, { value }] of money)
      expect(textOf('homeowner/proposal')).toContain(squeezed(dollars(value)));
  });

  test('the calculation sheet holds every line of the cost', () => {
    const lines = Object.entries(figuresOf(id)).filter(([name]) => name.startsWith('cost.lines.'));
    expect(lines.length).toBeGreaterThan(3);
    for (const [, { value }] of lines)
      expect(textOf('office/calculation')).toContain(squeezed(dollars(value)));
  });

  test('the contents of the binder name the pages on which its parts begin', async () => {
    const { pages, destinations } = pdfNamed(`${id}/office/binder`);
    const { page } = await opened(`${id}/office/binder`, 1200);
    const entries = (await page.evaluate(
      `[...document.querySelectorAll('.contents a')].map((a) => [a.textContent, a.getAttribute('href').slice(1)])`,
    )) as [string, string][];
    expect(entries).toHaveLength(5);
    const contents = textOfPage(pages[0] as PdfPage);
    const numbers = entries.map(([title, part]) => {
      const number = destinations.get(part) ?? Number.NaN;
      expect(contents).toContain(squeezed(`${title}${number}`));
      // The part begins there: its title stands larger than in a running head, and on no other page.
      const titled = pages.filter(({ texts }) =>
        squeezed(
          texts
            .filter(({ sizePt }) => sizePt > 16)
            .map(({ text }) => text)
            .join(''),
        ).includes(squeezed(title)),
      );
      expect(titled.map((each) => pages.indexOf(each) + 1)).toEqual([number]);
      return number;
    });
    expect(numbers).toEqual([...new Set(numbers)].toSorted((one, other) => one - other));
    expect(numbers[0]).toBeGreaterThan(1);
  });

  test("the homeowner's paper keeps what is the office's own", () => {
    const secrets = officeSecrets(id);
    expect(secrets.length).toBeGreaterThan(20);
    const { facts } = pdfNamed(`${id}/homeowner/proposal`);
    const html = readFileSync(join(OUTPUT, id, 'homeowner/proposal.html'), 'utf8').replace(
      /base64,[\w+/=]+/g,
      '',
    );
    const places = { text: textOf('homeowner/proposal'), facts: squeezed(facts), html: squeezed(html) };
    for (const [place, text] of Object.entries(places)) {
      expect(
        secrets.filter((secret) => isIn(text, squeezed(secret))),
        place,
      ).toEqual([]);
    }
    // The same strings are found in the papers of the office, so the search can find.
    const office = textOf('office/binder');
    expect(secrets.filter((secret) => isIn(office, squeezed(secret))).length).toBeGreaterThan(5);
  });
});

/** As a whole: $36 does not stand in $36.50, nor in $1,136. */
function isIn(text: string, secret: string): boolean {
  const escaped = secret.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(secret.startsWith('$') ? `${escaped}(?![\\d.,]*\\d)` : escaped).test(text);
}

/** What the homeowner must not read: notes to the crew, codes, wages, what things cost us. */
function officeSecrets(id: string): readonly string[] {
  const job = parse(readFileSync(join(JOBS, id, 'job.yaml'), 'utf8')) as unknown;
  const company = ['company', 'suppliers', 'equipment'].map(
    (file) => parse(readFileSync(join(JOBS, 'company', `${file}.yaml`), 'utf8')) as unknown,
  );
  const notes = leavesOf(job).filter(([key]) => key === 'crew-note' || key === 'gate-code');
  const rates = company
    .flatMap(leavesOf)
    .filter(([key, value]) => key === 'wage' || (key !== 'insurance' && value.includes('$')));
  const figures = Object.entries(figuresOf(id));
  const offered = figures
    .filter(([name]) => /^price\.(total|lines|payments|deposit)/.test(name))
    .map(([, { value }]) => Number(value));
  const costs = figures
    .filter(
      ([name, { unit, value }]) =>
        /^(cost\.|price\.(margin|overhead)$)/.test(name) && unit === '$' && Number(value) > 0,
    )
    .map(([, { value }]) => Number(value))
    .filter((value) => !offered.includes(value));
  const wages = rates.flatMap(([, value]) => /^\$[\d.,]+/.exec(value) ?? []);
  return [...new Set([...notes.map(([, value]) => value), ...wages, ...costs.map(dollars)])];
}

function leavesOf(tree: unknown): readonly (readonly [string, string])[] {
  if (typeof tree !== 'object' || tree === null) return [];
  return Object.entries(tree).flatMap(([key, value]) =>
    typeof value === 'object' ? leavesOf(value) : [[key, String(value)] as const],
  );
}
