/** What slow functions of plain data made, by the name of the function and then by the value of its input. */
export type KeptResults = ReadonlyMap<string, ReadonlyMap<string, unknown>>;

type Recording = {
  readonly known: KeptResults;
  readonly asked: Map<string, Map<string, unknown>>;
  isAnyNew: boolean;
};

let recording: Recording | null = null;

/**
 * Does a task for which results are known from before, of this same program and nothing else: an older one may
 * have made others of the same input.
 *
 * @returns What the task gave, all results it asked for, and whether any of them was not known.
 */
export function withKeptResults<R>(
  known: KeptResults,
  task: () => R,
): { readonly given: R; readonly asked: KeptResults; readonly isAnyNew: boolean } {
  const outer = recording;
  const own: Recording = { known, asked: new Map(), isAnyNew: false };
  recording = own;
  try {
    return { given: task(), asked: own.asked, isAnyNew: own.isAnyNew };
  } finally {
    recording = outer;
  }
}

/** The result known from before; undefined where there is none, or nothing is known. */
export function keptResult(name: string, key: string): unknown {
  return recording?.known.get(name)?.get(key);
}

/** Notes that a result was asked for, so that it may be kept. */
export function noteResult(name: string, key: string, result: unknown): void {
  if (recording === null) return;
  const asked = recording.asked.get(name) ?? new Map<string, unknown>();
  recording.asked.set(name, asked.set(key, result));
  if (recording.known.get(name)?.has(key) !== true) recording.isAnyNew = true;
}
