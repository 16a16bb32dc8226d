import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LevelNote } from '../../../src/calculate/job.ts';
import { reduceNotes } from '../../../src/calculate/levels/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { back, fore } from './a-book.ts';

const heightsIn = (notes: readonly LevelNote[], knownIn: Readonly<Record<string, number>>) =>
  reduceNotes(notes, knownIn).sights.map(({ heightIn }) => heightIn);

describe('reduceNotes, exact', () => {
  test('one set-up: height and backsight less foresight, and no miss is spread', () => {
    const { setUps, sights, runs } = reduceNotes([back('nail', 50), fore('walk', 60), fore('nail', 50.5)], {
      nail: 100,
    });
    expect(setUps).toEqual([{ note: 0, on: 'nail', from: null, instrumentIn: 150, run: 0, number: 1 }]);
    expect(sights).toEqual([
      { note: 1, on: 'walk', setUp: 0, readIn: 90, heightIn: 90, share: null },
      { note: 2, on: 'nail', setUp: 0, readIn: 99.5, heightIn: 99.5, share: null },
    ]);
    expect(runs).toEqual([{ from: 'nail', closing: { sight: 1, knownIn: 100, setUpCount: 1 } }]);
  });

  // Reads 1.5 in too high at the end of three set-ups: 0.5, 1 and 1.5 in are taken away.
  test('three set-ups: each takes the same more of the miss, what is sighted beside the run too', () => {
    const notes = [
      back('nail', 50),
      fore('a', 50),
      fore('tp-1', 40),
      back('tp-1', 40),
      fore('b', 30),
      fore('tp-2', 60),
      back('tp-2', 60),
      fore('c', 51),
      fore('nail', 48.5),
    ];
    expect(heightsIn(notes, { nail: 100 })).toEqual([99.5, 109.5, 119, 89, 97.5, 100]);
  });

  test('a run is closed by the last of its sights on a known height', () => {
    const { runs } = reduceNotes(
      [back('nail', 50), fore('nail', 50.1), fore('tp', 50), back('tp', 50), fore('step', 49), fore('d', 9)],
      { nail: 100, step: 101 },
    );
    expect(runs).toEqual([{ from: 'nail', closing: { sight: 2, knownIn: 101, setUpCount: 2 } }]);
  });

  test('a set-up after the closing sight gets what the sight it stands on got', () => {
    const closed = [back('nail', 50), fore('tp', 50), back('tp', 50), fore('nail', 49)];
    // On the turning point, which lies half an inch lower than read; then on what was sighted last.
    expect(heightsIn([...closed, back('tp', 10), fore('d', 10)], { nail: 100 })).toEqual([99.5, 100, 99.5]);
    const beyond = [back('nail', 50), fore('tp', 50), back('tp', 50), fore('e', 50), fore('nail', 49)];
    expect(heightsIn([...beyond, back('e', 10), fore('f', 10)], { nail: 100 })).toEqual([99.5, 99, 100, 99]);
  });

  test('a backsight on a known height starts a run, which is closed by itself or not', () => {
    const { runs, setUps } = reduceNotes(
      [back('nail', 50), fore('tp', 50), back('tp', 50), fore('step', 50), back('step', 10), fore('d', 10)],
      { nail: 100, step: 100.25 },
    );
    expect(setUps.map(({ run, number, from }) => [run, number, from])).toEqual([
      [0, 1, null],
      [0, 2, 0],
      [1, 1, null],
    ]);
    expect(runs).toEqual([
      { from: 'nail', closing: { sight: 1, knownIn: 100.25, setUpCount: 2 } },
      { from: 'step', closing: null },
    ]);
  });

  test('a station that is sighted twice is stood on as it was sighted last', () => {
    const notes = [back('nail', 50), fore('tp', 50), fore('tp', 49), back('tp', 5), fore('walk', 5)];
    expect(heightsIn(notes, { nail: 100 })).toEqual([100, 101, 101]);
  });

  test.each([
    ['a foresight before any backsight', [fore('walk', 50)]],
    ['a backsight on what has no height', [back('tp', 50)]],
    ['a backsight on what is sighted only later', [back('nail', 50), back('tp', 50), fore('tp', 50)]],
    ['the name of something every object has', [back('constructor', 50)]],
  ])('%s is refused', (_, notes) => {
    expect(() => reduceNotes(notes, { nail: 100 })).toThrow(RangeError);
  });
});

describe('reduceNotes, invariant', () => {
  const reading = fc.integer({ min: 0, max: 240 * 16 }).map((sixteenths) => sixteenths / 16);
  const loop = fc.array(fc.tuple(reading, reading, reading), { minLength: 2, maxLength: 6 });
  /** Back to the nail, with one sight beside the run from each set-up. */
  const notesOf = (readings: readonly (readonly [number, number, number])[]) =>
    readings.flatMap(([backIn, besideIn, foreIn], index) => [
      back(index === 0 ? 'nail' : `tp-${index}`, backIn),
      fore(`beside-${index}`, besideIn),
      fore(index === readings.length - 1 ? 'nail' : `tp-${index + 1}`, foreIn),
    ]);
  const run = { numRuns: runCount(50), seed: 20261125 };

  test('a closed run ends on the known height, and steps are even', () => {
    fc.assert(
      fc.property(loop, (readings) => {
        const { sights } = reduceNotes(notesOf(readings), { nail: 100 });
        expect(sights.at(-1)?.heightIn).toBeCloseTo(100, 9);
        const missIn = (sights.at(-1)?.readIn ?? 0) - 100;
        for (const { setUp, readIn, heightIn } of sights)
          expect(readIn - heightIn).toBeCloseTo((missIn * (setUp + 1)) / readings.length, 9);
      }),
      run,
    );
  });

  test('a higher datum lifts every height by as much; mirrored readings mirror it', () => {
    fc.assert(
      fc.property(loop, reading, (readings, upIn) => {
        const notes = notesOf(readings);
        const low = heightsIn(notes, { nail: 0 });
        for (const [index, heightIn] of heightsIn(notes, { nail: upIn }).entries())
          expect(heightIn).toBeCloseTo((low[index] ?? Number.NaN) + upIn, 8);
        const mirrored = notes.map((note) => ({ ...note, valueIn: -note.valueIn }));
        for (const [index, heightIn] of heightsIn(mirrored, { nail: 0 }).entries())
          expect(heightIn).toBeCloseTo(-(low[index] ?? Number.NaN), 8);
      }),
      run,
    );
  });
});
