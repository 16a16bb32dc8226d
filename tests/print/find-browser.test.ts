import { describe, expect, test } from 'vitest';
import {
  type BrowserCandidate,
  type BrowserSearch,
  type BrowserTools,
  browserCandidates,
  findBrowser,
  firstUsable,
} from '../../src/print/find-browser.ts';

function aSearch(changes: Partial<BrowserSearch> = {}): BrowserSearch {
  return { explicitPath: null, env: {}, platform: 'linux', arch: 'x64', pathLookup: () => null, ...changes };
}

function someTools(changes: Partial<BrowserTools> = {}): BrowserTools {
  return {
    unpackBundled: async () => ({ executablePath: '/cache/chromium', env: { FONTCONFIG_FILE: '/cache/f' } }),
    channelPath: async () => {
      throw new Error('Could not find Google Chrome\nsecond line');
    },
    fileExists: () => true,
    ...changes,
  };
}

const nameOf = (candidate: BrowserCandidate): string =>
  candidate.kind === 'file' ? candidate.name : candidate.kind;

const ON_PATH = ['chromium on PATH', 'chromium-browser on PATH', 'google-chrome on PATH'];
const MAC_EDGE = '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge';
const WINDOWS_EDGE = 'Microsoft\\Edge\\Application\\msedge.exe';

describe('browserCandidates', () => {
  test.each([
    { platform: 'linux', arch: 'x64', order: ['bundled', 'channel', ...ON_PATH] },
    { platform: 'linux', arch: 'arm64', order: ['channel', ...ON_PATH] },
    { platform: 'darwin', arch: 'arm64', order: ['channel', MAC_EDGE, ...ON_PATH] },
    {
      platform: 'win32',
      arch: 'x64',
      order: ['channel', `D:\\x86\\${WINDOWS_EDGE}`, `D:\\x64\\${WINDOWS_EDGE}`, ...ON_PATH],
    },
  ] as const)('order on $platform-$arch', ({ platform, arch, order }) => {
    const env = { 'ProgramFiles(x86)': 'D:\\x86', ProgramFiles: 'D:\\x64' };
    expect(browserCandidates(aSearch({ platform, arch, env })).map(nameOf)).toEqual(order);
  });

  test('a browser named by the user is the only candidate, and the option wins over the variable', () => {
    const env = { PUPPETEER_EXECUTABLE_PATH: '/from/env' };
    expect(browserCandidates(aSearch({ explicitPath: '/from/option', env }))).toEqual([
      { kind: 'explicit', path: '/from/option', saidBy: '--browser' },
    ]);
    expect(browserCandidates(aSearch({ env }))).toEqual([
      { kind: 'explicit', path: '/from/env', saidBy: 'PUPPETEER_EXECUTABLE_PATH' },
    ]);
  });

  test('an empty variable is no choice', () => {
    const [first] = browserCandidates(aSearch({ env: { PUPPETEER_EXECUTABLE_PATH: '' } }));
    expect(first?.kind).toBe('bundled');
  });
});

describe('findBrowser', () => {
  test('takes the bundled browser first, and says that it is the pinned one', async () => {
    expect(await findBrowser(aSearch(), someTools())).toEqual({
      kind: 'found',
      name: 'the bundled browser',
      executablePath: '/cache/chromium',
      env: { FONTCONFIG_FILE: '/cache/f' },
      isPinned: true,
    });
  });

  test('goes on when the bundled browser does not unpack', async () => {
    const search = aSearch({ pathLookup: (name) => (name === 'google-chrome' ? '/usr/bin/gc' : null) });
    const unpackBundled = async () => {
      throw new Error('no space left');
    };
    expect(await findBrowser(search, someTools({ unpackBundled }))).toMatchObject({
      kind: 'found',
      executablePath: '/usr/bin/gc',
      isPinned: false,
      env: {},
    });
  });

  test('with nothing there, says everything it tried and why, in order', async () => {
    const tools = someTools({ fileExists: () => false });
    expect(await findBrowser(aSearch({ platform: 'darwin', arch: 'arm64' }), tools)).toEqual({
      kind: 'none',
      tried: [
        'an installed Chrome: Could not find Google Chrome',
        `${MAC_EDGE}: not there`,
        ...ON_PATH.map((name) => `${name}: not there`),
      ],
    });
  });

  test('a missing browser of the user is an answer of its own, not a reason for another browser', async () => {
    const search = aSearch({ explicitPath: '/gone' });
    expect(await findBrowser(search, someTools({ fileExists: () => false }))).toEqual({
      kind: 'explicit-missing',
      path: '/gone',
      saidBy: '--browser',
    });
  });
});

describe('firstUsable', () => {
  test('a browser that is there but does not start is noted, and the next one is tried', async () => {
    const search = aSearch({ pathLookup: (name) => `/usr/bin/${name}` });
    const started = await firstUsable(search, someTools(), async ({ executablePath }) => {
      if (executablePath !== '/usr/bin/chromium-browser') throw new Error('exec format error');
      return executablePath;
    });
    expect(started).toBe('/usr/bin/chromium-browser');
  });

  test('a browser of the user that does not start is an error', async () => {
    const start = firstUsable(aSearch({ explicitPath: '/mine' }), someTools(), async () => {
      throw new Error('exec format error');
    });
    await expect(start).rejects.toThrow('exec format error');
  });
});
