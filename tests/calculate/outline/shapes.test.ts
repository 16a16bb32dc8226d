import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { TapedShape } from '../../../src/calculate/job.ts';
import { calcOutline, type ShapeFigures } from '../../../src/calculate/outline/index.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { parseQuantity, rationalToNumber } from '../../../src/units/index.ts';
import { asTaped, rectangle, TAPE_LIMITS } from '../slabs.ts';

const label = (text: string) => text as PublicText;
const right = Math.PI / 2;

function measured(shape: TapedShape) {
  const slabs = { it: { id: 'it', label: label('It'), shape } };
  return calcOutline({ slabs, existing: {}, limits: TAPE_LIMITS });
}

function figuresOf(shape: TapedShape): ShapeFigures {
  const { figures, problems } = measured(shape);
  expect(problems).toEqual([]);
  const made = figures.slabs['it'];
  if (made === undefined) throw new Error('no figures');
  return made;
}

const areaOf = (shape: TapedShape) => num(figuresOf(shape).area);

describe('the ways to tape a shape', () => {
  // Exact: (20 + 16) / 2 x 10 ft.
  test('a trapezoid', () => {
    const base = { kind: 'trapezoid', baseIn: 240, topIn: 192, depthIn: 120, offsetIn: 24 } as const;
    expect(areaOf(asTaped(base))).toBeCloseTo(180, 9);
  });

  test('a circle and a sector: pi r², and its share', () => {
    expect(areaOf(asTaped({ kind: 'circle', diameterIn: 96 }))).toBeCloseTo(16 * Math.PI, 9);
    expect(areaOf(asTaped({ kind: 'sector', radiusIn: 120, angleRad: right }))).toBeCloseTo(25 * Math.PI, 9);
  });

  // Published (seen): F. A. Griffiths, The Artillerist's Manual: a sector of radius 30 and arc 36.6 has 549.
  test('a sector of radius 30 in and arc 36.6 in has 549 sq in', () => {
    expect(areaOf(asTaped({ kind: 'sector', radiusIn: 30, angleRad: 36.6 / 30 })) * 144).toBeCloseTo(549, 9);
  });

  test('walking round a square that closes, and one that misses by 1 in', () => {
    const side = (lengthIn: number, turnRad: number) => ({ lengthIn, turnRad });
    const closing = figuresOf(
      asTaped({ kind: 'sides', sides: [side(120, 0), side(120, right), side(120, right), side(120, right)] }),
    );
    expect(num(closing.area)).toBeCloseTo(100, 9);
    expect(num(closing.closure?.['error'] ?? closing.area)).toBeCloseTo(0, 9);
    const missing = figuresOf(
      asTaped({ kind: 'sides', sides: [side(120, 0), side(120, right), side(121, right), side(120, right)] }),
    );
    expect(num(missing.closure?.['error'] ?? missing.area)).toBeCloseTo(1, 9);
    expect(num(missing.closure?.['share'] ?? missing.area)).toBeCloseTo(1 / 481, 12);
  });

  // Exact: two 3-4-5 triangles back to back are the 30 x 40 rectangle.
  test('four sides and a diagonal, with the other diagonal as a check', () => {
    const base = {
      kind: 'four-sides',
      sidesIn: [360, 480, 360, 480],
      diagonalIn: 600,
      otherDiagonalIn: 599,
    } as const;
    const figures = figuresOf(asTaped(base));
    expect(num(figures.area)).toBeCloseTo(1200, 6);
    expect(num(figures.diagonals?.['miss'] ?? figures.area)).toBeCloseTo(-1, 6);
  });

  test('corners by triangles from a base', () => {
    const corners = [
      { from: [1, 2] as const, distancesIn: [600, 480] as const, side: 'left' as const },
      { from: [1, 3] as const, distancesIn: [480, 360] as const, side: 'left' as const },
    ];
    expect(areaOf(asTaped({ kind: 'triangles', baseIn: 360, corners }))).toBeCloseTo(1200, 6);
  });

  // Pappus: width times the length of the centre line, 10 ft + a quarter circle of radius 8 ft + 6 ft.
  test('a walk of one width along straights and an arc', () => {
    const walk = asTaped({
      kind: 'strip',
      widthIn: 48,
      endWidthIn: null,
      line: [
        { kind: 'straight', lengthIn: 120 },
        { kind: 'arc', radiusIn: 96, turnRad: right },
        { kind: 'straight', lengthIn: 72 },
      ],
      edges: { start: 'joint', end: 'formed', left: 'formed', right: 'house' },
    });
    const figures = figuresOf(walk);
    const lengthFt = 16 + 4 * Math.PI;
    expect(num(figures.area)).toBeCloseTo(4 * lengthFt, 9);
    expect(num(figures['along-joint'])).toBeCloseTo(4, 9);
    // The right side is the outer one of a left bend: radius 10 ft.
    expect(num(figures['along-house'])).toBeCloseTo(16 + 5 * Math.PI, 9);
    expect(num(figures['formed-curved'])).toBeCloseTo(3 * Math.PI, 9);
  });
});

describe('what is done to a shape', () => {
  test('a corner by its setback is the same corner by its radius, where the setback is the radius', () => {
    const corner = (by: TapedShape['rounded'][number]['by']) =>
      rectangle(240, 120, { rounded: [{ corner: 3, by }] });
    const bySetback = figuresOf(corner({ kind: 'setback', setbackIn: 36 }));
    const byRadius = figuresOf(corner({ kind: 'radius', radiusIn: 36 }));
    expect(num(byRadius.area)).toBeCloseTo(num(bySetback.area), 9);
    expect(num(byRadius.area)).toBeCloseTo(200 - 9 * (1 - Math.PI / 4), 9);
  });

  // Published (seen): matheass.eu, "Circular Sections": chord 21, rise 6 has a segment of 89.254148.
  test('an edge of 21 ft that rises 6 ft adds 89.254148 sq ft', () => {
    const bent = [{ edge: 1, by: { kind: 'rise' as const, riseIn: 72, bends: 'out' as const } }];
    expect(areaOf(rectangle(252, 120, { bent }))).toBeCloseTo(210 + 89.254148, 5);
  });

  test('a widening is joined without a sliver, a tree well left out', () => {
    const figures = figuresOf(
      rectangle(240, 120, {
        added: {
          wide: {
            id: 'wide',
            label: label('Widening'),
            base: { kind: 'rectangle', lengthIn: 120, widthIn: 36 },
            at: { xIn: 60, yIn: 120.5 },
            turnedRad: 0,
          },
        },
        cutOuts: {
          well: {
            id: 'well',
            label: label('Tree well'),
            base: { kind: 'circle', diameterIn: 48 },
            at: { xIn: 100, yIn: 40 },
            turnedRad: 0,
            around: 'stays',
          },
        },
      }),
    );
    expect(num(figures.area)).toBeCloseTo(200 + 30 - 4 * Math.PI, 9);
    expect(num(figures.joined?.['wide'] ?? figures.area)).toBeCloseTo(0.5, 9);
    expect(num(figures['along-stays'])).toBeCloseTo(4 * Math.PI, 9);
    // Outside: 60 ft round the drive and two sides of 3 ft that the widening adds.
    expect(num(figures['formed-straight'])).toBeCloseTo(66, 9);
  });

  // Exact: at 75 % the surface is 1.25 times the plan (3-4-5).
  test.each([
    ['on-slope', 200, 200 / 1.25],
    ['level', 250, 200],
  ] as const)('taped %s: material has %d sq ft, the plan %d', (how, surfaceSqFt, planSqFt) => {
    const { figures, data } = measured(rectangle(240, 120, { taped: { how, slope: 0.75, runs: 'along' } }));
    expect(num(figures.slabs['it']?.area ?? figuresOf(rectangle(1, 1)).area)).toBeCloseTo(surfaceSqFt, 9);
    const xs = data.plans.slabs['it']?.rings[0]?.map(({ xIn }) => xIn) ?? [];
    expect(((Math.max(...xs) - Math.min(...xs)) * 120) / 144).toBeCloseTo(planSqFt, 9);
  });
});

describe('shapes that cannot be', () => {
  const cutOut = (atIn: number) => ({
    id: 'well',
    label: label('Tree well'),
    base: { kind: 'circle', diameterIn: 48 } as const,
    at: { xIn: atIn, yIn: 40 },
    turnedRad: 0,
    around: 'formed' as const,
  });
  const side = (lengthIn: number, turnRad: number) => ({ lengthIn, turnRad });
  const strip = (line: Extract<TapedShape['base'], { kind: 'strip' }>['line']) =>
    asTaped({
      kind: 'strip',
      widthIn: 48,
      endWidthIn: null,
      line,
      edges: { start: 'formed', end: 'formed', left: 'formed', right: 'formed' },
    });
  const cases: readonly (readonly [string, string, TapedShape, Readonly<Record<string, string>>])[] = [
    [
      'sides-do-not-close',
      'build.slabs.it.sides',
      asTaped({ kind: 'sides', sides: [side(120, 0), side(120, right), side(126, right), side(120, right)] }),
      { error: '6″', allowed: '2″' },
    ],
    [
      'four-sides-impossible',
      'build.slabs.it.four-sides.sides.0',
      asTaped({ kind: 'four-sides', sidesIn: [900, 120, 200, 200], diagonalIn: 240, otherDiagonalIn: null }),
      { edge: '1', least: '10′ 0″', most: '30′ 0″' },
    ],
    [
      'triangle-impossible',
      'build.slabs.it.triangles.corners.0.distances.0',
      asTaped({
        kind: 'triangles',
        baseIn: 120,
        corners: [{ from: [1, 2], distancesIn: [400, 60], side: 'left' }],
      }),
      { corner: '3', least: '5′ 0″', most: '15′ 0″' },
    ],
    [
      'strip-too-tight',
      'build.slabs.it.strip.line.0.radius',
      strip([{ kind: 'arc', radiusIn: 20, turnRad: right }]),
      { piece: '1', radius: '1′ 8″', least: '2′ 0″' },
    ],
    [
      'radius-too-small',
      'build.slabs.it.bent.1.radius',
      rectangle(240, 120, { bent: [{ edge: 1, by: { kind: 'radius', radiusIn: 60, bends: 'out' } }] }),
      { edge: '1', radius: '5′ 0″', least: '10′ 0″' },
    ],
    [
      'cut-out-outside',
      'build.slabs.it.cut-outs.well',
      rectangle(240, 120, { cutOuts: { well: cutOut(216) } }),
      { cutOut: 'Tree well' },
    ],
    [
      'corner-does-not-fit',
      'build.slabs.it.rounded-to-radius.2',
      rectangle(60, 60, { rounded: [{ corner: 2, by: { kind: 'radius', radiusIn: 72 } }] }),
      { corner: '2', mostRadius: '5′ 0″' },
    ],
  ];
  test.each(cases)('%s at %s', (code, path, shape, parts) => {
    const { problems } = measured(shape);
    expect(problems).toMatchObject([{ code, path, parts }]);
  });
});

describe('the number a message gives', () => {
  // Angles at which the largest radius and the least width are no sixteenths.
  test.each([70, 77, 95, 103, 121])('as the largest radius at a corner of %d degrees, works', (angleDeg) => {
    const angleRad = (angleDeg * Math.PI) / 180;
    const points = [
      { xIn: 0, yIn: 0 },
      { xIn: 100, yIn: 0 },
      { xIn: 100 - 90 * Math.cos(angleRad), yIn: 90 * Math.sin(angleRad) },
      { xIn: -20, yIn: 100 },
    ];
    const rounded = (radiusIn: number) =>
      measured(
        asTaped({ kind: 'corners', points }, { rounded: [{ corner: 2, by: { kind: 'radius', radiusIn } }] }),
      ).problems;
    const most = parseQuantity('length', rounded(600)[0]?.parts['mostRadius'] ?? '');
    if (!most.ok) throw new Error('the message gives no length');
    const mostIn = rationalToNumber(most.value.value);
    expect(rounded(mostIn)).toEqual([]);
    expect(rounded(mostIn + 1 / 16)).toMatchObject([{ code: 'corner-does-not-fit' }]);
  });

  test.each([100, 101.3, 110.77])('as the least radius of an edge of %d in, works', (lengthIn) => {
    const bent = (radiusIn: number) =>
      measured(
        rectangle(lengthIn, 120, { bent: [{ edge: 1, by: { kind: 'radius', radiusIn, bends: 'out' } }] }),
      ).problems;
    const least = parseQuantity('length', bent(10)[0]?.parts['least'] ?? '');
    if (!least.ok) throw new Error('the message gives no length');
    expect(bent(rationalToNumber(least.value.value))).toEqual([]);
  });
});

describe('slabs beside each other', () => {
  const two = (gapIn: number) => {
    const one = rectangle(120, 60, { at: { xIn: 0, yIn: 0 }, edges: [{ edge: 2, kind: 'joint' }] });
    const other = rectangle(120, 60, {
      at: { xIn: 120 + gapIn, yIn: 0 },
      edges: [{ edge: 4, kind: 'joint' }],
    });
    return calcOutline({
      slabs: {
        one: { id: 'one', label: label('One'), shape: one },
        other: { id: 'other', label: label('Other'), shape: other },
      },
      existing: {},
      limits: TAPE_LIMITS,
    });
  };

  test.each([0.5, -0.5])('a miss of %d in at a joint is closed and told', (gapIn) => {
    const { data, figures, problems } = two(gapIn);
    expect(problems).toEqual([]);
    expect(num(figures.slabs['other']?.joined?.['one'] ?? figuresOf(rectangle(1, 1)).area)).toBeCloseTo(
      0.5,
      9,
    );
    const xs = data.slabs['other']?.rings[0]?.map(({ xIn }) => xIn) ?? [];
    expect(Math.min(...xs)).toBeCloseTo(120, 9);
  });

  test('a miss of inches is a mistake, with both numbers', () => {
    expect(two(3).problems).toMatchObject([
      { code: 'slabs-miss', path: 'build.slabs.other.at', parts: { miss: '3″', allowed: '1″' } },
    ]);
  });

  test('slabs that lie on each other are refused', () => {
    expect(two(-12).problems.map(({ code }) => code)).toEqual(['slabs-miss', 'slabs-overlap']);
  });
});
