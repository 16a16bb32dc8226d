import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxesOverlap, boxMeetsSegment, textBox } from '../../../src/describe/drawing/boxes.ts';
import type { Drawing, LinePrimitive, TextPrimitive } from '../../../src/describe/drawing/drawing.ts';
import { drawProfile, type ProfileView } from '../../../src/describe/drawing/index.ts';
import { spreadApart } from '../../../src/describe/drawing/spread.ts';
import { showIn } from '../../../src/describe/show/index.ts';
import { en } from '../../../src/words/index.ts';
import { runCount } from '../../support/property-runs.ts';

type Break = { readonly alongIn: number; readonly heightIn: number };

/** A profile over one slab through some breaks, with the old top an inch below. */
function viewOf(
  breaks: readonly Break[],
  system: 'us' | 'metric' = 'us',
  past: readonly Break[] = [],
): ProfileView {
  const beyond = past.length === 0 ? [] : [...breaks.slice(-1), ...past];
  const show = showIn(system);
  const top = breaks.slice(1).map((to, index) => {
    const from = breaks[index] ?? to;
    return { fromIn: from.alongIn, toIn: to.alongIn, fromHeightIn: from.heightIn, toHeightIn: to.heightIn };
  });
  const old = top.map((piece) => ({
    top: { ...piece, fromHeightIn: piece.fromHeightIn - 1, toHeightIn: piece.toHeightIn - 1 },
    goneIn: 4,
  }));
  return {
    id: 'profile-middle',
    title: 'Middle of the drive',
    reaches: [{ top, thicknessIn: 5, baseIn: 4, old }],
    beyond,
    stations: [...breaks, ...past].map((one, index) => ({ letter: String.fromCharCode(65 + index), ...one })),
    slopes: top.map(({ fromIn, toIn, fromHeightIn, toHeightIn }) => ({
      text: show.slope(Math.abs(toHeightIn - fromHeightIn) / (toIn - fromIn)),
      fromIn,
      toIn,
    })),
    sheet: { widthIn: 7, heightIn: 6.4 },
    system,
    words: { ...en.common.drawing, lengthOf: show.length, heightOf: show.height },
  };
}

const DRIVE = [
  { alongIn: 0, heightIn: 1200 },
  { alongIn: 120, heightIn: 1197.6 },
  { alongIn: 432, heightIn: 1194 },
];

const allOf = (drawing: Drawing) => drawing.layers.flatMap(({ primitives }) => primitives);
const textsOf = (drawing: Drawing) =>
  allOf(drawing).filter((one): one is TextPrimitive => one.kind === 'text');
const linesOf = (drawing: Drawing) =>
  allOf(drawing).filter((one): one is LinePrimitive => one.kind === 'line');

/** @throws {Error} If a text lies over another, over a line, or off the paper. */
function expectClear(drawing: Drawing): void {
  const boxes = textsOf(drawing).map((text) => ({ text: text.text, box: textBox(text) }));
  for (const [index, one] of boxes.entries()) {
    for (const other of boxes.slice(index + 1)) {
      expect(boxesOverlap(one.box, other.box), `${one.text} over ${other.text}`).toBe(false);
    }
    for (const line of linesOf(drawing)) {
      expect(boxMeetsSegment(one.box, line), `${one.text} over a line`).toBe(false);
    }
    for (const { xIn, yIn } of one.box) {
      expect(xIn >= 0 && xIn <= drawing.widthIn && yIn >= 0 && yIn <= drawing.heightIn, one.text).toBe(true);
    }
  }
}

describe('a drawn profile', () => {
  test('exact: distances stand to scale and heights the stated times as large', () => {
    const drawing = drawProfile(viewOf(DRIVE));
    // 36 ft in some 5 in: 1/8 in to the foot. 15 in of heights at 1/96 are 0.156 in: ten times are 1.6, twenty 3.1.
    expect(drawing.scale.paperInPerIn).toBe(1 / 96);
    expect(drawing.scale.text).toBe('Scale 1/8″ = 1′; heights drawn 10 times as large');
    const [finish] = drawing.layers
      .flatMap(({ primitives }) => primitives)
      .flatMap((one) => (one.kind === 'path' && one.weightMm === 0.7 ? [one.parts] : []));
    const points = (finish ?? []).flatMap((part) => (part.kind === 'close' ? [] : [part]));
    const [first, ...others] = points;
    const last = others.at(-1);
    if (first === undefined || last === undefined) throw new Error('no top');
    expect(last.xIn - first.xIn).toBeCloseTo(432 / 96, 9);
    expect(last.yIn - first.yIn).toBeCloseTo((6 / 96) * 10, 9);
  });

  test('names its lines, stations, heights and slopes', () => {
    const texts = textsOf(drawProfile(viewOf(DRIVE))).map(({ text }) => text);
    expect(texts).toEqual(
      expect.arrayContaining([
        'A',
        'B',
        'C',
        '100.00 ft',
        '99.80 ft',
        '99.50 ft',
        '1/4″ / ft (2.0 %)',
        '1/8″ / ft (1.2 %)',
        'New top',
        'There now',
        'Underside of slab',
        'Left when it is gone',
        'Underside of base',
      ]),
    );
  });

  test('property: no text lies over another or over a line, in feet and in metres', () => {
    const steps = fc.array(
      fc.record({ runIn: fc.integer({ min: 3, max: 240 }), riseIn: fc.integer({ min: -24, max: 24 }) }),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(
        steps,
        fc.constantFrom('us' as const, 'metric' as const),
        fc.nat({ max: 3 }),
        (made, system, pastCount) => {
          const breaks: Break[] = [{ alongIn: 24, heightIn: 1200 }];
          for (const { runIn, riseIn } of made) {
            const { alongIn, heightIn } = breaks.at(-1) ?? { alongIn: 0, heightIn: 0 };
            breaks.push({ alongIn: alongIn + runIn, heightIn: heightIn + riseIn / 4 });
          }
          const slabCount = Math.max(2, breaks.length - pastCount);
          expectClear(drawProfile(viewOf(breaks.slice(0, slabCount), system, breaks.slice(slabCount))));
        },
      ),
      { seed: 20261126, numRuns: runCount(100) },
    );
  });

  test('the ground past the last slab goes on from its edge, named, with the names of the lines before the first slab', () => {
    const past = [
      { alongIn: 504, heightIn: 1188 },
      { alongIn: 672, heightIn: 1192 },
    ];
    const drawing = drawProfile(viewOf(DRIVE, 'us', past));
    const texts = textsOf(drawing);
    const xOf = (name: string) => texts.find(({ text }) => text === name)?.xIn ?? Number.NaN;
    expect(texts.map(({ text }) => text)).toEqual(
      expect.arrayContaining(['D', 'E', '99.00 ft', '99.33 ft', 'Ground']),
    );
    // The factor for heights has room for the gutter, 12 in below the garage.
    const paths = allOf(drawing).flatMap((one) => (one.kind === 'path' ? [one] : []));
    const ground = paths
      .flatMap(({ parts }) => [parts.flatMap((part) => (part.kind === 'close' ? [] : [part]))])
      .find((points) => points.length === 3 && Math.abs((points[1]?.xIn ?? 0) - xOf('D')) < 1e-6);
    const [edge, gutter, crown] = ground ?? [];
    if (edge === undefined || gutter === undefined || crown === undefined) throw new Error('no ground');
    const { paperInPerIn } = drawing.scale;
    expect(gutter.xIn - edge.xIn).toBeCloseTo(72 * paperInPerIn, 9);
    expect(crown.xIn - gutter.xIn).toBeCloseTo(168 * paperInPerIn, 9);
    const times = Number(/drawn (\d+) times/.exec(drawing.scale.text)?.[1]);
    expect(gutter.yIn - edge.yIn).toBeCloseTo(6 * paperInPerIn * times, 9);
    expect(xOf('New top')).toBeLessThan(xOf('A'));
    expect(xOf('Ground')).toBeGreaterThan(crown.xIn);
    expect(xOf('New top')).toBeLessThan(xOf('Ground'));
    expect(textsOf(drawProfile(viewOf(DRIVE))).map(({ text }) => text)).not.toContain('Ground');
  });

  test('a profile that meets nothing is refused', () => {
    expect(() => drawProfile({ ...viewOf(DRIVE), reaches: [] })).toThrow(RangeError);
  });
});

describe('what keeps apart', () => {
  test.each([
    { wanted: [0, 1, 2], placed: [0, 1, 2] },
    { wanted: [1, 1, 1], placed: [1, 1.5, 2] },
    { wanted: [2.9, 3], placed: [2.5, 3] },
    { wanted: [0, 2.8, 2.9, 3], placed: [0, 2, 2.5, 3] },
  ])('exact: $wanted by 0.5 up to 3', ({ wanted, placed }) => {
    expect(spreadApart(wanted, 0.5, 3)).toEqual(placed);
  });
});
