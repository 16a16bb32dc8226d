import type { LevelNote } from '../job.ts';

/** The instrument at one place: its line of sight lies level at one height. */
export type SetUp = {
  /** Which note its backsight is, from 0. */
  readonly note: number;
  readonly on: string;
  /** Which sight gave the height of its station; null where that is known. */
  readonly from: number | null;
  readonly instrumentIn: number;
  /** Which run it belongs to, from 0, and its number in there, from 1. */
  readonly run: number;
  readonly number: number;
};

export type Sight = {
  readonly note: number;
  readonly on: string;
  /** Which set-up it was taken from, from 0. */
  readonly setUp: number;
  /** Height of the station as read, above the datum [in]. */
  readonly readIn: number;
  /** With its share of what its run misses [in]; as read where nothing is spread. */
  readonly heightIn: number;
  /** Its share of the miss, so many of the set-ups of its run; null where nothing is spread. */
  readonly share: { readonly count: number; readonly of: number } | null;
};

/** Set-ups one after the other, each on what the one before sighted, from one known height on. */
export type Run = {
  readonly from: string;
  /** The last sight on a known height; null where there is none, so that nothing shows a slip. */
  readonly closing: {
    readonly sight: number;
    readonly knownIn: number;
    /** Set-ups up to that sight. */
    readonly setUpCount: number;
  } | null;
};

export type ReducedNotes = {
  readonly setUps: readonly SetUp[];
  readonly sights: readonly Sight[];
  readonly runs: readonly Run[];
};

/**
 * Reduces level notes by the height of the instrument.
 *
 * A backsight on a known height starts a run; one on what was sighted before goes on with it. A run
 * is closed by its last sight on a known height, and what it misses that by is spread over its
 * set-ups, to each the same, so that the sights of set-up i of n get i/n of it. A set-up after the last of
 * these gets what the sight it stands on got. Within a single set-up nothing is spread: backsight and
 * foresight on one rod cannot tell which of them is off.
 *
 * @param notes In the order taken [in].
 * @param knownIn Heights of stations that are known [in].
 * @throws {RangeError} If a foresight stands before any backsight, or a backsight is on a station without
 *   a height: both are refused where files are read.
 *
 * HI = H + BS; H = HI - FS; correction = (known - read) i / n.
 * Source: R. Rode, "Collimation method to reduce a leveling field book page" (seen); that nothing is spread
 * within a single set-up: level-online.net, "Line and area levelling", example 2 (seen in a copy).
 */
export function reduceNotes(
  notes: readonly LevelNote[],
  knownIn: Readonly<Record<string, number>>,
): ReducedNotes {
  const { setUps, sights } = readNotes(notes, knownIn);
  const runCount = (setUps.at(-1)?.run ?? -1) + 1;
  const runs = Array.from({ length: runCount }, (_, run) => runOf(run, { setUps, sights, knownIn }));
  const spread = sights.map((sight) => {
    const setUp = itemAt(setUps, sight.setUp);
    const { closing } = itemAt(runs, setUp.run);
    if (closing === null || closing.setUpCount === 1)
      return { ...sight, heightIn: sight.readIn, share: null };
    const of = closing.setUpCount;
    const count = shareCount(setUp, of, { setUps, sights });
    const missingIn = closing.knownIn - itemAt(sights, closing.sight).readIn;
    return { ...sight, heightIn: sight.readIn + (missingIn * count) / of, share: { count, of } };
  });
  return { setUps, sights: spread, runs };
}

function shareCount({ number, from }: SetUp, of: number, read: Read): number {
  if (number <= of || from === null) return Math.min(number, of);
  return shareCount(itemAt(read.setUps, itemAt(read.sights, from).setUp), of, read);
}

type ReadSight = Omit<Sight, 'heightIn' | 'share'>;
type Read = { readonly setUps: readonly SetUp[]; readonly sights: readonly ReadSight[] };

/** Heights as read, before anything is spread. */
function readNotes(notes: readonly LevelNote[], knownIn: Readonly<Record<string, number>>): Read {
  const setUps: SetUp[] = [];
  const sights: ReadSight[] = [];
  for (const [note, { on, kind, valueIn }] of notes.entries()) {
    if (kind === 'height') continue;
    const standing = setUps.at(-1);
    if (kind === 'foresight') {
      if (standing === undefined) throw new RangeError(`a foresight on ${on} before any backsight`);
      sights.push({ note, on, setUp: setUps.length - 1, readIn: standing.instrumentIn - valueIn });
      continue;
    }
    const known = Object.hasOwn(knownIn, on) ? knownIn[on] : undefined;
    const from = known === undefined ? sights.findLastIndex((sight) => sight.on === on) : null;
    const stationIn = known ?? sights[from ?? -1]?.readIn;
    if (stationIn === undefined) throw new RangeError(`a backsight on ${on}, which has no height`);
    const startsRun = known !== undefined;
    setUps.push({
      note,
      on,
      from,
      instrumentIn: stationIn + valueIn,
      run: (standing?.run ?? -1) + (startsRun ? 1 : 0),
      number: startsRun ? 1 : (standing?.number ?? 0) + 1,
    });
  }
  return { setUps, sights };
}

function runOf(run: number, read: Read & { readonly knownIn: Readonly<Record<string, number>> }): Run {
  const { setUps, sights, knownIn } = read;
  const first = setUps.find((setUp) => setUp.run === run);
  if (first === undefined) throw new RangeError(`no set-up in run ${run}`);
  const sight = sights.findLastIndex(
    ({ setUp, on }) => itemAt(setUps, setUp).run === run && Object.hasOwn(knownIn, on),
  );
  const closing = sights[sight];
  const known = closing === undefined ? undefined : knownIn[closing.on];
  if (closing === undefined || known === undefined) return { from: first.on, closing: null };
  return {
    from: first.on,
    closing: { sight, knownIn: known, setUpCount: itemAt(setUps, closing.setUp).number },
  };
}

/** @throws {RangeError} If there is none. */
export function itemAt<T>(items: readonly T[], index: number): T {
  const item = items[index];
  if (item === undefined) throw new RangeError(`nothing stands at ${index} of ${items.length}`);
  return item;
}
