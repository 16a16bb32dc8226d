import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Everything the choice of a browser depends on, so that the choice itself is a pure function. */
export type BrowserSearch = {
  /** What the user gave as `--browser`, or null. */
  explicitPath: string | null;
  env: Readonly<Record<string, string | undefined>>;
  platform: NodeJS.Platform;
  arch: string;
  /** Full path of a program on PATH, or null. */
  pathLookup: (name: string) => string | null;
};

export type ExplicitCandidate = {
  kind: 'explicit';
  path: string;
  saidBy: '--browser' | 'PUPPETEER_EXECUTABLE_PATH';
};

export type BrowserCandidate =
  | ExplicitCandidate
  /** The browser that comes with this project: the only one whose PDF bytes are reproducible. */
  | { kind: 'bundled'; name: string }
  /** Chrome where its own installer puts it; puppeteer knows these places. */
  | { kind: 'channel'; name: string; channel: 'chrome' }
  | { kind: 'file'; name: string; path: string | null };

/** How to get at each kind of candidate; the tests put their own in. */
export type BrowserTools = {
  unpackBundled: () => Promise<{ executablePath: string; env: Readonly<Record<string, string>> }>;
  /** Path of an installed Chrome; throws when there is none. */
  channelPath: (channel: 'chrome') => Promise<string>;
  fileExists: (path: string) => boolean;
};

export type BrowserFound = {
  kind: 'found';
  name: string;
  executablePath: string;
  /** Variables to add for the browser process only, never for our own. */
  env: Readonly<Record<string, string>>;
  isPinned: boolean;
};
export type ExplicitMissing = { kind: 'explicit-missing'; path: string; saidBy: ExplicitCandidate['saidBy'] };
export type NoBrowser = { kind: 'none'; tried: string[] };

const NAMES_ON_PATH = ['chromium', 'chromium-browser', 'google-chrome'] as const;

/**
 * The ways to get a browser, in the order to try them. Pure.
 *
 * A browser named by the user is the only candidate: falling back to another one would print with
 * a browser the user did not ask for. The bundled one is an x86-64 Linux program, so it is offered
 * there alone.
 */
export function browserCandidates(search: BrowserSearch): BrowserCandidate[] {
  const { explicitPath, env, platform, arch, pathLookup } = search;
  if (explicitPath !== null) return [{ kind: 'explicit', path: explicitPath, saidBy: '--browser' }];
  const fromEnv = env['PUPPETEER_EXECUTABLE_PATH'];
  if (fromEnv) return [{ kind: 'explicit', path: fromEnv, saidBy: 'PUPPETEER_EXECUTABLE_PATH' }];

  const bundled: BrowserCandidate[] =
    platform === 'linux' && arch === 'x64' ? [{ kind: 'bundled', name: 'the bundled browser' }] : [];
  return [
    ...bundled,
    { kind: 'channel', name: 'an installed Chrome', channel: 'chrome' },
    ...edgePaths(platform, env).map((path): BrowserCandidate => ({ kind: 'file', name: path, path })),
    ...NAMES_ON_PATH.map(
      (name): BrowserCandidate => ({ kind: 'file', name: `${name} on PATH`, path: pathLookup(name) }),
    ),
  ];
}

/** Where Edge's installers put it. Source: memory of both installers' defaults, not run here. */
function edgePaths(platform: NodeJS.Platform, env: BrowserSearch['env']): string[] {
  if (platform === 'darwin') return ['/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge'];
  if (platform !== 'win32') return [];
  return [env['ProgramFiles(x86)'], env['ProgramFiles']]
    .filter((folder) => folder !== undefined)
    .map((folder) => `${folder}\\Microsoft\\Edge\\Application\\msedge.exe`);
}

/** The first browser that is there. It is not started, so a broken one is still "found". */
export function findBrowser(
  search: BrowserSearch,
  tools: BrowserTools,
): Promise<BrowserFound | ExplicitMissing | NoBrowser> {
  return firstUsable(search, tools, async (found) => found);
}

/**
 * Walk the candidates; the first that is there and that `use` accepts wins.
 *
 * @param use Called with each browser found; what it throws is noted and the next one is tried.
 *            For a browser named by the user the error goes to the caller instead.
 */
export async function firstUsable<Result>(
  search: BrowserSearch,
  tools: BrowserTools,
  use: (found: BrowserFound) => Promise<Result>,
): Promise<Result | ExplicitMissing | NoBrowser> {
  const tried: string[] = [];
  for (const candidate of browserCandidates(search)) {
    if (candidate.kind === 'explicit') {
      const { path, saidBy } = candidate;
      if (!tools.fileExists(path)) return { kind: 'explicit-missing', path, saidBy };
      return use({ kind: 'found', name: path, executablePath: path, env: {}, isPinned: false });
    }
    try {
      const place = await locate(candidate, tools);
      if (place === null) tried.push(`${candidate.name}: not there`);
      else return await use({ kind: 'found', name: candidate.name, ...place });
    } catch (error) {
      tried.push(`${candidate.name}: ${firstLine(error)}`);
    }
  }
  return { kind: 'none', tried };
}

async function locate(
  candidate: Exclude<BrowserCandidate, ExplicitCandidate>,
  tools: BrowserTools,
): Promise<Pick<BrowserFound, 'executablePath' | 'env' | 'isPinned'> | null> {
  if (candidate.kind === 'bundled') return { ...(await tools.unpackBundled()), isPinned: true };
  const path = candidate.kind === 'channel' ? await tools.channelPath(candidate.channel) : candidate.path;
  return path !== null && tools.fileExists(path) ? { executablePath: path, env: {}, isPinned: false } : null;
}

function firstLine(error: unknown): string {
  const message = error instanceof Error ? error.message : String(error);
  return message.trim().split('\n', 1)[0] ?? '';
}

/** The search on this machine. */
export function searchOnThisMachine(explicitPath: string | null): BrowserSearch {
  const { env, platform, arch } = process;
  return { explicitPath, env, platform, arch, pathLookup: (name) => lookOnPath(name, env['PATH'] ?? '') };
}

function lookOnPath(name: string, path: string): string | null {
  const fileName = process.platform === 'win32' ? `${name}.exe` : name;
  const places = path
    .split(delimiter)
    .filter((folder) => folder !== '')
    .map((folder) => join(folder, fileName));
  return places.find(isProgram) ?? null;
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

export function toolsOnThisMachine(unpackBundled: BrowserTools['unpackBundled']): BrowserTools {
  return {
    unpackBundled,
    channelPath: async (channel) => (await import('puppeteer')).default.executablePath(channel),
    fileExists: existsSync,
  };
}
