import type { Browser, ConsoleMessage, HTTPRequest, Page } from 'puppeteer';

/** What went wrong in the document that is open; emptied before the next one is loaded. */
export type PageFaults = { requests: string[]; errors: string[] };

export type ClosedPage = {
  page: Page;
  faults: PageFaults;
  /** Rejects when the tab's process dies; never resolves. */
  crashed: Promise<never>;
};

/** Nobody looks at the page on a screen, and laying out a binder for one takes longer than a draft of it. */
const NOTHING_ON_SCREEN = `{
  const sheet = new CSSStyleSheet();
  sheet.replaceSync('@media screen { body { display: none !important; } }');
  document.adoptedStyleSheets = [sheet];
}`;

/**
 * A tab that may read this machine's files and nothing else, and that notes what it was refused. It
 * shows nothing: what it opens is laid out only where it is printed.
 */
export async function openClosedPage(browser: Browser): Promise<ClosedPage> {
  const page = await browser.newPage();
  const faults: PageFaults = { requests: [], errors: [] };
  const crashed = new Promise<never>((_resolve, reject) => {
    page.on('error', () => reject(new Error('the browser tab crashed')));
  });
  crashed.catch(() => undefined); // it may happen while nobody is waiting
  await page.evaluateOnNewDocument(NOTHING_ON_SCREEN);
  await page.setOfflineMode(true);
  await page.setRequestInterception(true);
  page.on('request', (request) => void answer(request, faults));
  page.on('console', (message) => noteError(message, faults));
  page.on('pageerror', (error) => faults.errors.push(error instanceof Error ? error.message : String(error)));
  return { page, faults, crashed };
}

async function answer(request: HTTPRequest, faults: PageFaults): Promise<void> {
  const url = request.url();
  const isAllowed = isLocal(url);
  if (!isAllowed) faults.requests.push(url);
  // The tab may be gone by the time it is answered.
  await (isAllowed ? request.continue() : request.abort()).catch(() => undefined);
}

/** `file://server/share` is a network address on Windows, so a file has no host here. */
export function isLocal(url: string): boolean {
  const { protocol, host } = new URL(url);
  return protocol === 'data:' || (protocol === 'file:' && host === '');
}

function noteError(message: ConsoleMessage, faults: PageFaults): void {
  if (message.type() !== 'error') return;
  const { url } = message.location();
  faults.errors.push(url ? `${message.text()} (${url})` : message.text());
}
