import { type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { LevelNote } from '../job.ts';
import { itemAt, type ReducedNotes, type Run } from './reduce.ts';

/** Of a foresight. */
export type SightFigures = {
  /** Height of the station as read [in]. */
  readonly height: Figure;
  /** With its share of the miss [in]; only where a miss is spread. */
  readonly adjusted?: Figure;
};

/** A line of level notes: what a backsight or a foresight gives. */
export type NoteFigures = { readonly instrument: Figure } | SightFigures;

export type RunFigures = {
  /** How far the run ends from a known height, up or down [in]. */
  readonly miss: Figure;
  /** The most it may be [in]. */
  readonly allowed: Figure;
};

/** Heights that are known, each with where it is written. */
export type Known = Readonly<Record<string, FigureInput>>;

export type NotesFigures = {
  /** By the number of the note and its station: `note-2-nail`. */
  readonly notes: Readonly<Record<string, NoteFigures>>;
  /** Closed runs alone: `run-1`. */
  readonly runs: Readonly<Record<string, RunFigures>>;
  readonly total: { readonly 'open-runs': Figure };
};

const HEIGHT_IN = { unit: 'in', decimals: 3 } as const;

const SPREAD_SOURCE =
  'R. Rode, “Collimation method to reduce a leveling field book page”, issuu.com/landsurveyor (seen): the miss over the number of set-ups, added up from set-up to set-up';

/**
 * Every backsight, foresight and closed run of level notes, and the height each sight gives.
 *
 * @param made.closingErrorIn What a run may miss by [in].
 */
export function noteFigures(made: {
  readonly notes: readonly LevelNote[];
  readonly reduced: ReducedNotes;
  readonly known: Known;
  readonly closingErrorIn: number;
}): { readonly figures: NotesFigures; readonly sights: readonly Figure[] } {
  const { notes, reduced, known, closingErrorIn } = made;
  const read = readFigures(notes, reduced, known);
  const runOfSight = (setUp: number) => itemAt(reduced.runs, itemAt(reduced.setUps, setUp).run);
  const adjusted = reduced.sights.map(({ setUp, share, heightIn }, index) =>
    share === null
      ? null
      : adjustedFigure(itemAt(read.sights, index), {
          heightIn,
          share,
          closing: closingInputs(runOfSight(setUp), reduced, read.sights, known),
        }),
  );
  const shown = reduced.sights.map(({ note, on }, index) => {
    const spread = itemAt(adjusted, index);
    const height = itemAt(read.sights, index);
    return [keyOf(note, on), spread === null ? { height } : { height, adjusted: spread }] as const;
  });
  const instruments = reduced.setUps.map(
    ({ note, on }, index) => [keyOf(note, on), { instrument: itemAt(read.instruments, index) }] as const,
  );
  const inOrder = [...shown, ...instruments].toSorted(([one], [other]) => numberIn(one) - numberIn(other));
  const allowed = given('heights.closing-error', closingErrorIn, 'in');
  return {
    figures: {
      notes: Object.fromEntries(inOrder),
      runs: Object.fromEntries(
        reduced.runs.flatMap((run, index) =>
          run.closing === null
            ? []
            : [[`run-${index + 1}`, runFigures(closingInputs(run, reduced, read.sights, known), allowed)]],
        ),
      ),
      total: { 'open-runs': openRuns(reduced.runs) },
    },
    sights: adjusted.map((spread, index) => spread ?? itemAt(read.sights, index)),
  };
}

const keyOf = (note: number, on: string) => `note-${note + 1}-${on}`;
const numberIn = (key: string) => Number(key.split('-')[1]);

/** HI = H + BS and H = HI - FS, in the order of the notes: each follows from the ones before. */
function readFigures(notes: readonly LevelNote[], { setUps, sights }: ReducedNotes, known: Known) {
  const instruments: Figure[] = [];
  const sightFigures: Figure[] = [];
  const reading = (note: number, kind: 'backsight' | 'foresight') =>
    given(`heights.notes.${note}.${kind}`, itemAt(notes, note).valueIn, 'in');
  const upTo = (count: number, setUp: number) => {
    while (instruments.length <= setUp) {
      const { note, on, from, instrumentIn } = itemAt(setUps, instruments.length);
      if (from !== null && from >= count) throw new RangeError(`${on} is sighted after it is stood on`);
      const stationIn = from === null ? knownOn(known, on) : itemAt(sightFigures, from);
      instruments.push(
        figure({
          ...HEIGHT_IN,
          value: instrumentIn,
          formula: 'stationIn + backsightIn',
          inputs: { stationIn, backsightIn: reading(note, 'backsight') },
        }),
      );
    }
  };
  for (const [index, { note, setUp, readIn }] of sights.entries()) {
    upTo(index, setUp);
    sightFigures.push(
      figure({
        ...HEIGHT_IN,
        value: readIn,
        formula: 'instrumentIn - foresightIn',
        inputs: { instrumentIn: itemAt(instruments, setUp), foresightIn: reading(note, 'foresight') },
      }),
    );
  }
  upTo(sights.length, setUps.length - 1);
  return { instruments, sights: sightFigures };
}

type Closing = { readonly knownIn: FigureInput; readonly readIn: Figure };

/** @throws {RangeError} If the run is not closed. */
function closingInputs(
  { closing }: Run,
  reduced: ReducedNotes,
  sights: readonly Figure[],
  known: Known,
): Closing {
  if (closing === null) throw new RangeError('an open run has no closing sight');
  return {
    knownIn: knownOn(known, itemAt(reduced.sights, closing.sight).on),
    readIn: itemAt(sights, closing.sight),
  };
}

function adjustedFigure(
  heightIn: Figure,
  to: {
    readonly heightIn: number;
    readonly share: { readonly count: number; readonly of: number };
    readonly closing: Closing;
  },
): Figure {
  return figure({
    ...HEIGHT_IN,
    value: to.heightIn,
    formula: `heightIn + (knownIn - readIn) * ${to.share.count} / ${to.share.of}`,
    inputs: { heightIn, ...to.closing },
    source: SPREAD_SOURCE,
  });
}

function runFigures(closing: Closing, closingErrorIn: FigureInput): RunFigures {
  return {
    miss: figure({
      ...HEIGHT_IN,
      value: Math.abs(num(closing.readIn) - num(closing.knownIn)),
      formula: 'max(readIn - knownIn, knownIn - readIn)',
      inputs: closing,
    }),
    allowed: figure({
      ...HEIGHT_IN,
      value: num(closingErrorIn),
      formula: 'closingErrorIn',
      inputs: { closingErrorIn },
    }),
  };
}

function openRuns(runs: readonly Run[]): Figure {
  return figure({
    value: runs.filter(({ closing }) => closing === null).length,
    unit: 'each',
    decimals: 0,
    formula: { method: 'runs of level notes without a sight on a known height' },
    inputs: {},
  });
}

/** @throws {RangeError} If the station has no known height. */
function knownOn(known: Known, on: string): FigureInput {
  const input = Object.hasOwn(known, on) ? known[on] : undefined;
  if (input === undefined) throw new RangeError(`no known height on ${on}`);
  return input;
}
