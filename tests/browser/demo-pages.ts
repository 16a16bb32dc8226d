import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'puppeteer';
import { afterAll, beforeAll, inject, onTestFinished } from 'vitest';
import {
  type RunningBrowser,
  searchOnThisMachine,
  startBrowser,
  toolsOnThisMachine,
  unpackChromium,
} from '../../src/print/index.ts';
import { PROJECT_DIR } from '../support/run-program.ts';

export const IDS = ['corner-walk', 'garden-row', 'maple-court'] as const;
export const DOCUMENTS = [
  'homeowner/proposal',
  'office/work-order',
  'office/materials',
  'office/safety',
  'office/calculation',
  'office/binder',
] as const;
export type DocumentName = (typeof DOCUMENTS)[number];
export const SHEET = 'site-walk';
/** All that is printed of the demo jobs, by its path without an ending. */
export const PDFS = [...IDS.flatMap((id) => DOCUMENTS.map((name) => `${id}/${name}`)), SHEET];

export type Opened = { readonly page: Page; readonly said: string[]; readonly asked: string[] };

/**
 * A browser for the tests of one file. Gives a page as a person opens it, with what it says on the console and
 * what it asks the network for.
 */
export function useBrowser(): (name: string, widthPx: number) => Promise<Opened> {
  let running: RunningBrowser;
  beforeAll(async () => {
    const tools = toolsOnThisMachine(() =>
      unpackChromium(join(PROJECT_DIR, 'node_modules/.cache/flatwork-jobs')),
    );
    const started = await startBrowser(searchOnThisMachine(null), tools);
    if (started.kind !== 'running') throw new Error(JSON.stringify(started));
    running = started;
  }, 120_000);
  afterAll(() => running?.close());
  return (name, widthPx) => openedIn(running, name, widthPx);
}

async function openedIn({ browser }: RunningBrowser, name: string, widthPx: number): Promise<Opened> {
  const page = await browser.newPage();
  onTestFinished(() => page.close());
  const said: string[] = [];
  const asked: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(String(error)));
  page.on('request', (request) => {
    if (!/^(file|data):/.test(request.url())) asked.push(request.url());
  });
  await page.setViewport({ width: widthPx, height: 740 });
  await page.goto(pathToFileURL(join(inject('demoOutput'), `${name}.html`)).href);
  return { page, said, asked };
}
