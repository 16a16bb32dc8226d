import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import {
  browserCandidates,
  type RunningBrowser,
  searchOnThisMachine,
  startBrowser,
  toolsOnThisMachine,
  type UnpackedBrowser,
  unpackChromium,
} from '../print/index.ts';

/** The browser that prints the pages of a command: started once, when it is asked for, and closed with the command. */
export type BrowserOfBuild = {
  /** Whether the bundled one is the first to be tried, whose identity is known before it runs. */
  readonly isPinnedFirst: boolean;
  /** Has the bundled one unpack in a process of its own; comes back before it is done. */
  readonly unpackAhead: () => Promise<void>;
  /** The same each time it is asked; never throws. */
  readonly start: () => Promise<Started>;
  /** Stops what still unpacks, and the browser. */
  readonly close: () => Promise<void>;
};

/** The browser, or why there is none, with all that was tried. */
export type Started = RunningBrowser | NotStarted;
type NotStarted =
  | { readonly kind: 'none'; readonly tried: readonly string[] }
  | { readonly kind: 'explicit-missing'; readonly path: string; readonly saidBy: string };

/** Long enough for the unpacking process to begin, before calculating takes the processor [ms]. */
const TO_BEGIN_MS = 25;

type Asked = {
  readonly projectDir: string;
  /** As the user names it; null where the program looks for one. */
  readonly browserPath: string | null;
};

/** Does something with a browser at hand, and closes it. */
export async function withBrowser<R>(
  asked: Asked,
  task: (browser: BrowserOfBuild) => Promise<R>,
): Promise<R> {
  const browser = browserOfBuild(asked);
  try {
    return await task(browser);
  } finally {
    await browser.close();
  }
}

function browserOfBuild(made: Asked): BrowserOfBuild {
  const search = searchOnThisMachine(made.browserPath);
  const isPinnedFirst = browserCandidates(search)[0]?.kind === 'bundled';
  const stop = new AbortController();
  let unpacked: Promise<UnpackedBrowser> | null = null;
  const unpack = () =>
    (unpacked ??= unpackChromium(
      join(made.projectDir, 'node_modules', '.cache', 'flatwork-jobs'),
      stop.signal,
    ));
  let started: Promise<Started> | null = null;
  return {
    isPinnedFirst,
    unpackAhead: async () => {
      if (!isPinnedFirst) return;
      // What keeps it from being unpacked is told where it is started.
      const begun = unpack().then(
        () => undefined,
        () => undefined,
      );
      await Promise.race([begun, sleep(TO_BEGIN_MS)]);
    },
    start: () => (started ??= startBrowser(search, toolsOnThisMachine(unpack)).catch(notStarted)),
    close: async () => {
      stop.abort();
      await unpacked?.catch(() => undefined);
      const running = await started;
      if (running?.kind === 'running') await running.close();
    },
  };
}

/** Only a browser that the user named throws here. */
function notStarted(error: unknown): NotStarted {
  const reason = error instanceof Error ? error.message : String(error);
  return {
    kind: 'none',
    tried: [`the browser you named does not start: ${reason.trim().split('\n', 1)[0]}`],
  };
}
