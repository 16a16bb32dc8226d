import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formedRuns, layForms } from '../../../src/calculate/forms/index.ts';
import type { EdgeKind } from '../../../src/geometry/index.ts';
import { propertyRuns, tapedIn } from '../slabs.ts';
import { aStrip, box, QUARTER, ring, roundedDrive } from './a-form.ts';

const board = { lengthIn: 192 };
const lay = (
  made: Partial<Parameters<typeof layForms>[0]> & Pick<Parameters<typeof layForms>[0], 'outline'>,
) => layForms({ board, strip: null, runPastIn: null, ...made });
/** Whole boards, then the piece or how far the last one runs past. */
const shown = (laid: ReturnType<typeof layForms>) =>
  laid.map(({ wholeCount, pieceIn, runsPast }) =>
    runsPast === null ? [wholeCount, pieceIn] : [wholeCount, `${runsPast.end} ${runsPast.byIn}`],
  );

describe('straights', () => {
  test('whole boards end to end, no piece where they come out even', () => {
    expect(shown(lay({ outline: box(384, 192) }))).toEqual([
      [2, null],
      [1, null],
      [2, null],
      [1, null],
    ]);
  });

  test('on a box each board runs past its own corner, so that none is cut', () => {
    expect(shown(lay({ outline: box(300, 100) }))).toEqual([
      [2, 'after 84'],
      [1, 'after 92'],
      [2, 'after 84'],
      [1, 'after 92'],
    ]);
  });

  test('between two ends a piece is cut', () => {
    const kinds = ['formed', 'stays', 'formed', 'house'] as const;
    expect(shown(lay({ outline: box(300, 100, kinds) }))).toEqual([
      [1, 108],
      [1, 108],
    ]);
  });

  test('two corners for three straights: the first takes its own, the last is cut', () => {
    const kinds = ['formed', 'formed', 'formed', 'house'] as const;
    expect(shown(lay({ outline: box(300, 100, kinds) }))).toEqual([
      [2, 'after 84'],
      [1, 'after 92'],
      [1, 108],
    ]);
  });

  test('a corner that the first cannot use is left to the next', () => {
    // 384 in comes out even: its corner is free for the straight behind it, and that one's for the last.
    const kinds = ['formed', 'formed', 'formed', 'house'] as const;
    expect(shown(lay({ outline: box(384, 100, kinds) }))).toEqual([
      [2, null],
      [1, 'before 92'],
      [2, null],
    ]);
  });

  test('a board sticks out no further than the company lets it', () => {
    expect(shown(lay({ outline: box(300, 100), runPastIn: 84 }))).toEqual([
      [2, 'after 84'],
      [0, 100],
      [2, 'before 84'],
      [0, 100],
    ]);
    expect(shown(lay({ outline: box(300, 100), runPastIn: 83 })).map(([, past]) => past)).toEqual([
      108, 100, 108, 100,
    ]);
  });

  test('no board runs past a re-entrant corner or into an arc', () => {
    const ell = {
      rings: [ring([0, 0, 'house'], [200, 0], [200, 80], [80, 80], [80, 200], [0, 200, 'house'])],
    };
    // 80 up, 120 back to the inner corner, 120 up, 80 over: three outside corners, one inside.
    expect(shown(lay({ outline: ell }))).toEqual([
      [1, 'after 112'],
      [0, 120],
      [1, 'after 72'],
      [0, 80],
    ]);
    expect(shown(lay({ outline: roundedDrive }))).toEqual([
      [0, 156],
      [0, 94.25],
      [3, 'after 156'],
      [1, 24],
    ]);
  });

  test('a board that would meet the slab itself on the other side of a gap is cut', () => {
    // A U of legs 60 in wide; its tips are on one line. A board is as long as its inner sides.
    const tipBeside = (gapIn: number) => {
      const letterU = {
        rings: [
          ring(
            [0, 0, 'house'],
            [120 + gapIn, 0, 'house'],
            [120 + gapIn, 150, 'house'],
            [60 + gapIn, 150, 'stays'],
            [60 + gapIn, 40, 'stays'],
            [60, 40],
            [60, 150],
            [0, 150, 'house'],
          ),
        ],
      };
      return lay({ outline: letterU, board: { lengthIn: 110 } })[1];
    };
    // 110 - 60 = 50 in run past the tip.
    expect(tipBeside(49)).toMatchObject({ pieceIn: 60, runsPast: null });
    expect(tipBeside(51)).toMatchObject({ pieceIn: null, runsPast: { end: 'before', byIn: 50 } });
  });

  test('a sixteenth more than a board takes a piece of a sixteenth, less does not', () => {
    const kinds = ['formed', 'stays', 'stays', 'house'] as const;
    expect(shown(lay({ outline: box(192.01, 50, kinds) }))).toEqual([[1, 1 / 16]]);
    expect(shown(lay({ outline: box(192 + 1e-9, 50, kinds) }))).toEqual([[1, null]]);
  });
});

describe('strips', () => {
  const strip = aStrip();

  test('a quarter of 60 in between two straights: its arc and a lap at each end', () => {
    const curve = lay({ outline: roundedDrive, strip })[1];
    // 94.2478 + 2 x 12 = 118.2478, up to 118 1/4; ceil((118 1/4 - 12) / (96 - 12)) = 2 strips.
    expect(curve).toMatchObject({ stock: 'strip', endLapCount: 2, lapCount: 3, wholeCount: 1 });
    expect(curve?.pieceIn).toBe(118.25 - 84);
  });

  test('no lap at an end where nothing is formed', () => {
    const outline = {
      rings: [ring([0, 0, 'formed', QUARTER], [36, 36, 'stays'], [0, 36, 'house'])],
    };
    // 36 in radius: 56.5487 in, up to 56 9/16.
    expect(lay({ outline, strip })).toMatchObject([
      { endLapCount: 0, lapCount: 0, wholeCount: 0, pieceIn: 56.5625 },
    ]);
  });

  test('a circle laps itself once a strip', () => {
    const outline = { rings: [ring([0, 0, 'formed', 1], [96, 0, 'formed', 1])] };
    // 301.593 in: ceil(301.593 / 84) = 4 strips, the last 301.593 + 12 - 252 = 61.593, up to 61 5/8.
    expect(lay({ outline, strip })).toMatchObject([{ lapCount: 4, wholeCount: 3, pieceIn: 61.625 }]);
  });

  test('refused: a strip no longer than its lap', () => {
    expect(() => lay({ outline: roundedDrive, strip: aStrip({ lapIn: 96 }) })).toThrow(RangeError);
    expect(() => lay({ outline: roundedDrive, board: { lengthIn: 0.01 } })).toThrow(RangeError);
  });
});

/** A rectangle with any edges formed, a corner rounded or not. */
const anyOutline = fc
  .record({
    lengthIn: tapedIn(80, 700),
    widthIn: tapedIn(80, 400),
    kinds: fc.array(fc.constantFrom<EdgeKind[]>('formed', 'formed', 'house', 'stays', 'joint'), {
      minLength: 5,
      maxLength: 5,
    }),
    radiusIn: tapedIn(12, 70),
  })
  .map(({ lengthIn, widthIn, kinds, radiusIn }) => {
    const [a = 'formed', b = 'formed', c = 'formed', d = 'formed', e = 'formed'] = kinds;
    return {
      rings: [
        ring(
          [0, 0, a],
          [lengthIn, 0, b],
          [lengthIn, widthIn - radiusIn, c, QUARTER],
          [lengthIn - radiusIn, widthIn, d],
          [0, widthIn, e],
        ),
      ],
    };
  });

describe('invariants', () => {
  test('boards, pieces and strips cover their form, and none is more than is needed', () => {
    fc.assert(
      fc.property(anyOutline, tapedIn(96, 240), fc.boolean(), (outline, boardIn, hasStrip) => {
        const strip = hasStrip ? aStrip() : null;
        for (const one of layForms({ outline, board: { lengthIn: boardIn }, strip, runPastIn: null })) {
          const { form, wholeCount, pieceIn, runsPast, lapCount, sectionsIn, stock } = one;
          const stockIn = stock === 'board' ? boardIn : 96;
          const laidIn = wholeCount * stockIn + (pieceIn ?? 0) - (runsPast?.byIn ?? 0) - lapCount * 12;
          expect(laidIn).toBeGreaterThanOrEqual(form.lengthIn - 1e-6);
          expect(laidIn).toBeLessThan(form.lengthIn + 2 / 16);
          expect(pieceIn ?? 1).toBeGreaterThan(0);
          expect(pieceIn ?? 1).toBeLessThan(stockIn);
          const sectionIn = sectionsIn.reduce((sumIn, part) => sumIn + part.count * part.lengthIn, 0);
          expect(Math.abs(sectionIn - form.lengthIn)).toBeLessThan(1 / 16);
        }
      }),
      propertyRuns,
    );
  });

  test('past a corner at most one board runs on, and only straights do', () => {
    fc.assert(
      fc.property(anyOutline, tapedIn(96, 240), (outline, boardIn) => {
        const laid = layForms({ outline, board: { lengthIn: boardIn }, strip: null, runPastIn: null });
        const corners = laid.flatMap(({ form, runsPast }) => {
          if (runsPast === null) return [];
          expect(form.kind).toBe('straight');
          expect(form[runsPast.end]).toBe('outside');
          const { xIn, yIn } = runsPast.end === 'after' ? form.to : form.from;
          return [`${xIn} ${yIn}`];
        });
        expect(new Set(corners).size).toBe(corners.length);
      }),
      propertyRuns,
    );
  });

  test('no other choice of corners cuts fewer straights', () => {
    fc.assert(
      fc.property(anyOutline, tapedIn(96, 240), (outline, boardIn) => {
        const laid = layForms({ outline, board: { lengthIn: boardIn }, strip: null, runPastIn: 90 });
        const cut = laid.filter(({ form, pieceIn }) => form.kind === 'straight' && pieceIn !== null).length;
        expect(cut).toBe(fewestCut(outline, boardIn, 90));
      }),
      propertyRuns,
    );
  });
});

/** Tries every choice of a corner, or none, for every straight with a rest. */
function fewestCut(outline: Parameters<typeof formedRuns>[0], boardIn: number, mostIn: number): number {
  const choices = formedRuns(outline).flatMap(({ forms }) =>
    forms.flatMap((form) => {
      const restIn = form.lengthIn % boardIn;
      if (form.kind === 'curve' || restIn === 0) return [];
      const isNear = boardIn - restIn <= mostIn;
      const at = ({ xIn, yIn }: { xIn: number; yIn: number }) => `${xIn} ${yIn}`;
      return [
        [
          ...(isNear && form.before === 'outside' ? [at(form.from)] : []),
          ...(isNear && form.after === 'outside' ? [at(form.to)] : []),
        ],
      ];
    }),
  );
  const fewest = (index: number, taken: readonly string[]): number => {
    const corners = choices[index];
    if (corners === undefined) return 0;
    const free = corners.filter((corner) => !taken.includes(corner));
    return Math.min(
      1 + fewest(index + 1, taken),
      ...free.map((corner) => fewest(index + 1, [...taken, corner])),
    );
  };
  return fewest(0, []);
}
