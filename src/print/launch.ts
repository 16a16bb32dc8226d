import type { Browser } from 'puppeteer';
import {
  type BrowserFound,
  type BrowserSearch,
  type BrowserTools,
  type ExplicitMissing,
  firstUsable,
  type NoBrowser,
} from './find-browser.ts';
import { PINNED_CHROMIUM } from './unpack.ts';

export type RunningBrowser = {
  kind: 'running';
  browser: Browser;
  /** As the browser states it, `HeadlessChrome/147.0.7727.0`. */
  versionText: string;
  /** What the look of a PDF depends on; part of the cache key. */
  identity: string;
  isPinned: boolean;
  close: () => Promise<void>;
};

/** `identity` of the bundled browser, known without starting it. */
export const PINNED_IDENTITY = `bundled-chromium-${PINNED_CHROMIUM}`;

const LAUNCH_LIMIT_MS = 30_000;
const CLOSE_LIMIT_MS = 5_000;

/**
 * Names do not resolve and the only way out is a proxy at a port nobody listens on (9, "discard";
 * the bypass rule takes away the exception for this machine itself). The bundled browser ages, so
 * this is a matter of safety as well as of reproducible pages.
 */
const NO_NETWORK = [
  '--host-resolver-rules=MAP * ~NOTFOUND',
  '--proxy-server=http://127.0.0.1:9',
  '--proxy-bypass-list=<-loopback>',
  '--force-webrtc-ip-handling-policy=disable_non_proxied_udp',
  '--no-pings',
];

const SAME_EVERYWHERE = [
  '--font-render-hinting=none',
  '--force-color-profile=srgb',
  '--force-device-scale-factor=1',
  '--lang=en-US',
  '--disable-gpu',
];

/**
 * Start the first browser that is there and does start.
 *
 * @throws {Error} If a browser named by the user is there but does not start.
 */
export function startBrowser(
  search: BrowserSearch,
  tools: BrowserTools,
): Promise<RunningBrowser | ExplicitMissing | NoBrowser> {
  return firstUsable(search, tools, launch);
}

/**
 * Start a browser without network, with a profile folder that puppeteer makes and removes again.
 *
 * @throws {Error} If it does not start.
 */
export async function launch(found: BrowserFound): Promise<RunningBrowser> {
  const isRoot = process.getuid?.() === 0;
  const browser = await launchOnce(found, isRoot).catch((error: unknown) => {
    // Containers and hardened kernels refuse the sandbox; Chromium then stops and says so.
    if (!isRoot && /sandbox/i.test(String(error))) return launchOnce(found, true);
    throw error;
  });
  const versionText = await browser.version();
  const { isPinned } = found;
  const identity = isPinned ? PINNED_IDENTITY : versionText;
  return { kind: 'running', browser, versionText, identity, isPinned, close: () => close(browser) };
}

async function launchOnce(found: BrowserFound, withoutSandbox: boolean): Promise<Browser> {
  const { default: puppeteer } = await import('puppeteer');
  return puppeteer.launch({
    executablePath: found.executablePath,
    // The bundled one is a headless shell; an installed Chrome no longer has that mode.
    headless: found.isPinned ? 'shell' : true,
    // A pipe instead of a debugging port, which any program on this machine could use.
    pipe: true,
    timeout: LAUNCH_LIMIT_MS,
    env: { ...process.env, TZ: 'UTC', ...found.env },
    args: [...NO_NETWORK, ...SAME_EVERYWHERE, ...(withoutSandbox ? ['--no-sandbox'] : [])],
  });
}

async function close(browser: Browser): Promise<void> {
  const killer = setTimeout(() => browser.process()?.kill('SIGKILL'), CLOSE_LIMIT_MS);
  try {
    await browser.close();
  } finally {
    clearTimeout(killer);
  }
}
