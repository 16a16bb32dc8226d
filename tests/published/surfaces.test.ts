import { num } from '../../src/calculate/figure.ts';
import { evaluateRules } from '../../src/calculate/findings/index.ts';
import { digVolumes } from '../../src/calculate/grades/dig-volume.ts';
import { jointFigures } from '../../src/calculate/grades/joint-figures.ts';
import { RULE_TAGS } from '../../src/calculate/rule.ts';
import {
  climbAlong,
  fallOf,
  type HeightPoint,
  heightAt,
  lowered,
  type Outline,
  planeAt,
  polygonRing,
  rectangleRing,
  surfaceThrough,
  volumeBetween,
} from '../../src/geometry/index.ts';
import { parseQuantity, rationalToNumber } from '../../src/units/index.ts';
import { fig } from '../calculate/crew/a-plan.ts';
import { shippedRules } from '../calculate/findings/shipped-rules.ts';
import { aSlab } from '../calculate/slabs.ts';
import { runChecks } from './load.ts';

type Triple = readonly [number, number, number];

/** So large that no three points count as one line. */
const SCALE = 12;

function through(points: readonly Triple[]) {
  const surface = surfaceThrough(
    points.map(([x, y, z]): HeightPoint => ({ xIn: x * SCALE, yIn: y * SCALE, heightIn: z * SCALE })),
  );
  if (surface === null) throw new Error('the points are in a line');
  return surface;
}

function zAt(points: readonly Triple[], x: number, y: number): number {
  return heightAt(through(points), { xIn: x * SCALE, yIn: y * SCALE }) / SCALE;
}

function ringOf(points: readonly (readonly [number, number])[]): Outline {
  return { rings: [polygonRing(points.map(([x, y]) => ({ xIn: x * SCALE, yIn: y * SCALE })))] };
}

/** Level across, from one height to another along. */
function gradeLine({ from, to, length }: { from: number; to: number; length: number }): readonly Triple[] {
  return [
    [0, 0, from],
    [length, 0, to],
    [0, 10, from],
  ];
}

const level = (z: number): readonly Triple[] => [
  [0, 0, z],
  [9, 0, z],
  [0, 9, z],
];

/** Above and below 0, within an outline. */
function volumes(points: readonly Triple[], outline: Outline): { cut: number; fill: number } {
  const surfaces = { upper: through(points), lower: through(level(0)) };
  const { aboveCuIn, belowCuIn } = volumeBetween(surfaces, outline);
  return { cut: aboveCuIn / SCALE ** 3, fill: belowCuIn / SCALE ** 3 };
}

runChecks('surfaces', {
  'grade line': ({ at, ...line }: { from: number; to: number; length: number; at: readonly number[] }) =>
    at.map((x) => zAt(gradeLine({ from: line.from, to: line.to, length: line.length }), x, 3)),

  'grade percent': ({ from, to, length }: { from: number; to: number; length: number }) => {
    const ends = { from: { xIn: 0, yIn: 0 }, to: { xIn: length * SCALE, yIn: 0 } };
    return 100 * climbAlong(through(gradeLine({ from, to, length })), ends);
  },

  'fall of a width': ({ width, inPerFt }: { width: number; inPerFt: number }) =>
    -12 * zAt(gradeLine({ from: 0, to: -inPerFt / 12, length: 1 }), width, 0),

  'plane through three points': (given: {
    points: readonly Triple[];
    at: [number, number];
    answer: string;
  }) => {
    const { points, at, answer } = given;
    const [x, y] = at;
    if (answer === 'height') return zAt(points, x, y);
    return 100 * fallOf(planeAt(through(points), { xIn: x * SCALE, yIn: y * SCALE })).slope;
  },

  /** The mean of the two ways to fold it, each by the three corners that hold its middle. */
  'middle of a warped cell': ({ corners }: { corners: readonly [number, number, number, number] }) => {
    const [z00, z10, z01, z11] = corners;
    const folds: readonly (readonly Triple[])[] = [
      [
        [0, 0, z00],
        [1, 1, z11],
        [1, 0, z10],
      ],
      [
        [1, 0, z10],
        [0, 1, z01],
        [0, 0, z00],
      ],
    ];
    return folds.reduce((sum, points) => sum + zAt(points, 0.5, 0.5) / folds.length, 0);
  },

  'grade break percent': ({ into, outOf }: { into: number; outOf: number }) => {
    const slab = (id: string, fromIn: number, slope: number) => ({
      slab: aSlab({ id }),
      outline: ringOf([
        [fromIn, 0],
        [fromIn + 10, 0],
        [fromIn + 10, 10],
        [fromIn, 10],
      ]),
      points: [],
      surface: through([
        [10, 0, 0],
        [11, 0, slope / 100],
        [10, 10, 0],
      ]),
    });
    const figures = jointFigures(slab('gutter', 0, into), slab('apron', 10, outOf));
    return figures === null ? Number.NaN : 100 * num(figures.break);
  },

  'is found': ({ rule, slope }: { rule: string; slope: string }) => {
    const rules = shippedRules('general').filter(({ code }) => code === rule);
    const [, topic = '', use = '', leaf = ''] =
      /^(\w+)\.([\w*]+)\.\*\.([\w-]+)$/.exec(rules[0]?.figure ?? '') ?? [];
    const parsed = parseQuantity('slope', slope);
    if (!parsed.ok || topic === '') throw new Error(`${rule}, ${slope}`);
    const figure = fig(rationalToNumber(parsed.value.value), 'ratio');
    const figures = { [topic]: { [use.replace('*', 'patio')]: { one: { [leaf]: figure } } } };
    return evaluateRules({ rules, figures, tags: RULE_TAGS, acknowledged: [] }).findings.length > 0;
  },

  /** Widths and depths change evenly from end to end. */
  'volume between end sections': (given: {
    widths: readonly [number, number];
    depths: readonly [number, number];
    length: number;
    per: number;
  }) => {
    const { length, per } = given;
    const [firstWide, lastWide] = given.widths;
    const [firstDeep, lastDeep] = given.depths;
    const corners = [
      [0, 0],
      [length, 0],
      [length, lastWide],
      [0, firstWide],
    ] as const;
    const outline = ringOf(lastWide === 0 ? [corners[0], corners[1], corners[3]] : corners);
    return volumes(gradeLine({ from: firstDeep, to: lastDeep, length }), outline).cut / per;
  },

  /** Rows of depths from the near side on; the middle of each cell is the mean of its corners. */
  'volume of a grid': (given: {
    length: number;
    width: number;
    depths: readonly (readonly number[])[];
    answer: 'cut' | 'fill';
    per: number;
  }) => {
    const { length, width, depths, answer, per } = given;
    const rows = depths.length - 1;
    const columns = (depths[0]?.length ?? 0) - 1;
    const depthAt = (row: number, column: number) => depths[row]?.[column] ?? Number.NaN;
    const at = (row: number, column: number, z: number): Triple => [
      (column * length) / columns,
      (row * width) / rows,
      z,
    ];
    const points: Triple[] = [];
    for (let row = 0; row <= rows; row += 1) {
      for (let column = 0; column <= columns; column += 1) {
        points.push(at(row, column, depthAt(row, column)));
        if (row === rows || column === columns) continue;
        const four = [0, 1].flatMap((up) => [0, 1].map((on) => depthAt(row + up, column + on)));
        points.push(at(row + 0.5, column + 0.5, four.reduce((sum, z) => sum + z, 0) / 4));
      }
    }
    const outline = ringOf([
      [0, 0],
      [length, 0],
      [length, width],
      [0, width],
    ]);
    return volumes(points, outline)[answer] / per;
  },

  /** The new slab level with the top of the old one. */
  'soil below an old slab': (given: {
    areaSqFt: number;
    oldIn: number;
    slabIn: number;
    baseIn: number;
    per: number;
  }) => {
    const { areaSqFt, oldIn, slabIn, baseIn, per } = given;
    const outline: Outline = { rings: [rectangleRing({ lengthIn: areaSqFt * 12, widthIn: 12 })] };
    const top = through(level(8));
    const slab = aSlab({ thicknessIn: slabIn, baseIn });
    const part = { pieces: [outline], top, left: lowered(top, oldIn), points: [], gone: null };
    return num(digVolumes({ slab, outline, points: [], surface: top }, [part])['dig-volume']) / per;
  },
});
