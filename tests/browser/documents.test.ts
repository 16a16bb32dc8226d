import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { parse } from 'yaml';
import { type DocumentName, IDS, PDFS, SHEET, useBrowser } from './demo-pages.ts';
import { bodyOf, type PdfPage, type PdfRead, readPdf, squeezed, textOfPage } from './read-pdf.ts';

const OUTPUT = inject('demoOutput');
const JOBS = inject('demoJobs');

/** Pages each document may take: a demo job that needs more has lost its shape. */
const MOST_PAGES: Readonly<Record<DocumentName, number>> = {
  'homeowner/proposal': 9,
  'office/work-order': 28,
  'office/materials': 7,
  'office/safety': 4,
  'office/calculation': 62,
  'office/binder': 108,
};
const PAPERS_PT = { letter: { width: 612, height: 792 }, a4: { width: 595.28, height: 841.89 } } as const;
/** The others are on letter. */
const ON_A4 = 'garden-row';

const opened = useBrowser();
const pdfs = new Map<string, PdfRead>();
beforeAll(async () => {
  for (const name of PDFS) pdfs.set(name, await readPdf(join(OUTPUT, `${name}.pdf`)));
}, 120_000);

function pdfNamed(name: string): PdfRead {
  const pdf = pdfs.get(name);
  if (pdf === undefined) throw new RangeError(`no PDF is called ${name}`);
  return pdf;
}

describe.each(PDFS)('%s as a PDF', (name) => {
  const id = name.split('/')[0] ?? '';

  test('has the paper that the job says, on every page', () => {
    const paper = PAPERS_PT[id === ON_A4 ? 'a4' : 'letter'];
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

  // Regression: a page of the calculation sheet ended with the heading of a topic and the head of its table.
  test('has no heading and no head of a table alone at the end of a page', async () => {
    const { page } = await opened(name, 1200);
    const heads = (await page.evaluate(`
      [...document.querySelectorAll('h1, h2, h3, h4, thead tr, th[scope=rowgroup]')].map((head) => head.textContent)
    `)) as string[];
    const ends = [...new Set(heads.map(squeezed))].filter((head) => head !== '');
    const alone = pdfNamed(name).pages.flatMap((each, index) => {
      const body = squeezed(
        bodyOf(each)
          .map(({ text }) => text)
          .join(''),
      );
      return ends.filter((head) => body.endsWith(head)).map((head) => `page ${index + 1}: ${head}`);
    });
    expect(alone).toEqual([]);
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
