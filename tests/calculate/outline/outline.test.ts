import { describe, expect, test } from 'vitest';
import type { TapedShape } from '../../../src/calculate/job.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { rectangle, TAPE_LIMITS } from '../slabs.ts';

const limits = TAPE_LIMITS;
const shaped = (id: string, shape: TapedShape) => ({ [id]: { id, label: id as PublicText, shape } });

describe('calcOutline', () => {
  // Exact: 36 x 18 ft is 648 sq ft; each corner rounded 3 ft loses R² (1 - pi/4) = 1.9314 sq ft
  // (E. W. Weisstein, "Circular Segment", MathWorld, gives the sector and chord this follows from).
  test('a drive of 36 x 18 ft with two corners rounded 3 ft', () => {
    const shape = rectangle(432, 216, {
      rounded: [
        { corner: 2, by: { kind: 'setback', setbackIn: 36 } },
        { corner: 3, by: { kind: 'setback', setbackIn: 36 } },
      ],
      edges: [
        { edge: 4, kind: 'house' },
        { edge: 2, kind: 'stays' },
      ],
    });
    const { figures, problems } = calcOutline({ slabs: shaped('drive', shape), existing: {}, limits });
    const drive = figures.slabs['drive'];
    expect(problems).toEqual([]);
    expect(drive?.area.value).toBeCloseTo(648 - 2 * 9 * (1 - Math.PI / 4), 9);
    expect(drive?.['along-house'].value).toBeCloseTo(18, 9);
    expect(drive?.perimeter.value).toBeCloseTo(108 - 2 * (6 - (3 * Math.PI) / 2), 9);
  });

  test('shapes without a place stand side by side and never on each other', () => {
    const { data } = calcOutline({
      slabs: { ...shaped('one', rectangle(120, 60)), ...shaped('two', rectangle(120, 60)) },
      existing: {},
      limits,
    });
    const first = data.slabs['one']?.rings[0]?.map(({ xIn }) => xIn) ?? [];
    const second = data.slabs['two']?.rings[0]?.map(({ xIn }) => xIn) ?? [];
    expect(Math.min(...second)).toBeGreaterThan(Math.max(...first));
  });

  // Regression: measured after the move, the noise of the coordinates made 499.9999999999998 of 500.
  test('where a shape stands changes no figure, to the last bit', () => {
    const shape = rectangle(300, 240);
    const here = calcOutline({ slabs: shaped('a', shape), existing: {}, limits }).figures.slabs['a'];
    const places = Array.from({ length: 40 }, (_, step) => ({ xIn: 0.1 + step * 37.3, yIn: step * 19.7 }));
    for (const at of places) {
      const there = calcOutline({ slabs: shaped('a', { ...shape, at }), existing: {}, limits }).figures.slabs[
        'a'
      ];
      expect(there?.area.value).toBe(here?.area.value);
      expect(there?.perimeter.value).toBe(here?.perimeter.value);
    }
  });

  test('every wrong shape shows at once, each with its own path', () => {
    const crossed: TapedShape = {
      ...rectangle(1, 1),
      base: {
        kind: 'corners',
        points: [
          { xIn: 0, yIn: 0 },
          { xIn: 100, yIn: 100 },
          { xIn: 100, yIn: 0 },
          { xIn: 0, yIn: 100 },
        ],
      },
    };
    const tooRound = rectangle(60, 60, { rounded: [{ corner: 1, by: { kind: 'setback', setbackIn: 72 } }] });
    const { problems } = calcOutline({
      slabs: shaped('bow', crossed),
      existing: shaped('dot', tooRound),
      limits,
    });
    expect(problems.map(({ code, path }) => [code, path])).toEqual([
      ['outline-crosses-itself', 'build.slabs.bow.corners'],
      ['corner-does-not-fit', 'site.existing.dot.rounded.1'],
    ]);
  });

  test('corners taped clockwise give the same area as anticlockwise', () => {
    const points = [
      { xIn: 0, yIn: 0 },
      { xIn: 240, yIn: 0 },
      { xIn: 240, yIn: 120 },
      { xIn: 0, yIn: 120 },
    ];
    const shape = (list: typeof points): TapedShape => ({
      ...rectangle(1, 1),
      base: { kind: 'corners', points: list },
    });
    const one = calcOutline({ slabs: shaped('a', shape(points)), existing: {}, limits });
    const other = calcOutline({ slabs: shaped('a', shape([...points].reverse())), existing: {}, limits });
    expect(other.figures.slabs['a']?.area.value).toBeCloseTo(Number(one.figures.slabs['a']?.area.value), 9);
    expect(one.figures.slabs['a']?.area.value).toBeCloseTo(200, 9);
  });
});
