import type { LevelNote } from '../../src/calculate/job.ts';
import { reduceNotes } from '../../src/calculate/levels/index.ts';
import { runChecks } from './load.ts';

type Book = { readonly unit: 'ft' | 'm'; readonly book: readonly string[] };

const IN_A_UNIT = { ft: 12, m: 1000 / 25.4 } as const;
const KINDS = { '=': 'height', '+': 'backsight', '-': 'foresight' } as const;

/** @throws {Error} If a line is none of the three. */
function noteOf(line: string, inAUnit: number): LevelNote {
  const [, on = '', sign = '', reading = ''] = /^(\S+) ([=+-]) (\d+(?:\.\d+)?)$/.exec(line) ?? [];
  const kind = KINDS[sign as keyof typeof KINDS] as LevelNote['kind'] | undefined;
  if (kind === undefined) throw new Error(`not a line of a level book: ${line}`);
  return { on, kind, valueIn: Number(reading) * inAUnit };
}

function reduced({ unit, book }: Book) {
  const inAUnit = IN_A_UNIT[unit];
  const notes = book.map((line) => noteOf(line, inAUnit));
  const knownIn = Object.fromEntries(
    notes.filter(({ kind }) => kind === 'height').map(({ on, valueIn }) => [on, valueIn]),
  );
  return { ...reduceNotes(notes, knownIn), inAUnit };
}

runChecks('levels', {
  'heights of the instrument': (given: Book) => {
    const { setUps, inAUnit } = reduced(given);
    return setUps.map(({ instrumentIn }) => instrumentIn / inAUnit);
  },
  'heights as read': (given: Book) => {
    const { sights, inAUnit } = reduced(given);
    return sights.map(({ readIn }) => readIn / inAUnit);
  },
  'adjusted heights': (given: Book) => {
    const { sights, inAUnit } = reduced(given);
    return sights.map(({ heightIn }) => heightIn / inAUnit);
  },
  misses: (given: Book) => {
    const { sights, runs, inAUnit } = reduced(given);
    return runs.map(({ closing }) => {
      const readIn = closing === null ? undefined : sights[closing.sight]?.readIn;
      return closing === null || readIn === undefined ? -1 : Math.abs(closing.knownIn - readIn) / inAUnit;
    });
  },
});
