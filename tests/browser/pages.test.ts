import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Page } from 'puppeteer';
import { describe, expect, inject, test } from 'vitest';
import { PDFS, useBrowser } from './demo-pages.ts';

const OUTPUT = inject('demoOutput');
const PHONE = { width: 360, height: 740, isMobile: true, hasTouch: true };

const opened = useBrowser();

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

/** The binders but for one: their parts are looked at on pages of their own, and a hundred pages take seconds. */
function isOnlyJoined(name: string): boolean {
  return name.endsWith('binder') && rulesFor(name) === 'none';
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

describe.each(['index', ...PDFS])('%s as a page', (name) => {
  test('has no error, no request, no barrier, no broken link, and fits a phone', async () => {
    const { page, said, asked } = await opened(name, 1200);
    expect(await axeFaults(page, rulesFor(name))).toEqual([]);
    expect(await brokenLinks(page, name)).toEqual([]);

    if (!isOnlyJoined(name)) {
      await page.setViewport(PHONE);
      expect(await tooWide(page)).toEqual([]);
      expect(await axeFaults(page, 'scrolling')).toEqual([]);
    }
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
