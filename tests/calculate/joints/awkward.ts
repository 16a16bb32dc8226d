import type { TapedBase, TapedShape } from '../../../src/calculate/job.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { asTaped, rectangle } from '../slabs.ts';

type Line = Extract<TapedBase, { kind: 'strip' }>['line'];
type CutOut = TapedShape['cutOuts'][string];

/** Corners in feet, as they are taped. */
export function corners(...placesFt: readonly (readonly [number, number])[]): TapedBase {
  return { kind: 'corners', points: placesFt.map(([x, y]) => ({ xIn: x * 12, yIn: y * 12 })) };
}

export function strip(widthFt: number, line: Line): TapedBase {
  return {
    kind: 'strip',
    widthIn: widthFt * 12,
    endWidthIn: null,
    line,
    edges: { start: 'formed', end: 'formed', left: 'formed', right: 'formed' },
  };
}

export const roundedTurn = (turnDeg: number, backFt: number) =>
  ({
    kind: 'turn',
    turnRad: (turnDeg * Math.PI) / 180,
    rounding: { how: 'parallel', setbackIn: backFt * 12 },
  }) as const;
export const straight = (feet: number) => ({ kind: 'straight', lengthIn: feet * 12 }) as const;
export const bend = (turnDeg: number, radiusFt: number) =>
  ({ kind: 'arc', turnRad: (turnDeg * Math.PI) / 180, radiusIn: radiusFt * 12 }) as const;
export const turn = (turnDeg: number) =>
  ({ kind: 'turn', turnRad: (turnDeg * Math.PI) / 180, rounding: null }) as const;

export function cutOut(
  base: TapedBase,
  atFt: readonly [number, number],
  changed: Partial<CutOut> = {},
): CutOut {
  return {
    id: 'hole',
    label: 'Hole' as PublicText,
    base,
    at: { xIn: atFt[0] * 12, yIn: atFt[1] * 12 },
    turnedRad: 0,
    around: 'stays',
    ...changed,
  };
}

const square = (sideFt: number): TapedBase => ({
  kind: 'rectangle',
  lengthIn: sideFt * 12,
  widthIn: sideFt * 12,
});

export type Awkward = { readonly shape: TapedShape; readonly limitFt: number; readonly use?: 'walk' };

/** Outlines that a grid of equal panels does not fit. */
export const AWKWARD: Readonly<Record<string, Awkward>> = {
  drive: { shape: rectangle(432, 216), limitFt: 12.5 },
  'l-patio': { shape: asTaped(corners([0, 0], [24, 0], [24, 10], [11, 10], [11, 22], [0, 22])), limitFt: 10 },
  'l-walk': {
    shape: asTaped(corners([0, 0], [24, 0], [24, 4], [4, 4], [4, 18], [0, 18])),
    limitFt: 5,
    use: 'walk',
  },
  't-patio': {
    shape: asTaped(corners([0, 12], [9, 12], [9, 0], [17, 0], [17, 12], [26, 12], [26, 22], [0, 22])),
    limitFt: 10,
  },
  's-walk': {
    shape: asTaped(strip(4, [straight(8), bend(50, 10), bend(-50, 10), straight(8)])),
    limitFt: 5,
    use: 'walk',
  },
  'turned-walk': {
    shape: asTaped(strip(4, [straight(14), turn(90), straight(12), turn(-45), straight(12)])),
    limitFt: 5,
    use: 'walk',
  },
  'round-turns': {
    shape: asTaped(
      strip(4, [straight(11), roundedTurn(90, 2), straight(12), roundedTurn(-60, 2), straight(10)]),
    ),
    limitFt: 5,
    use: 'walk',
  },
  'wide-bend': { shape: asTaped(strip(16, [straight(14), bend(60, 24), straight(6)])), limitFt: 10 },
  'flared-drive': {
    shape: asTaped(corners([0, 0], [26, 0], [30, -4], [30, 20], [26, 16], [0, 16])),
    limitFt: 10,
  },
  'flared-by-arcs': {
    shape: asTaped(corners([0, 0], [26, 0], [31, -4], [31, 20], [26, 16], [0, 16]), {
      bent: [
        { edge: 2, by: { kind: 'rise', riseIn: 9, bends: 'in' } },
        { edge: 4, by: { kind: 'rise', riseIn: 9, bends: 'in' } },
      ],
    }),
    limitFt: 10,
  },
  'column-and-well': {
    shape: rectangle(288, 240, {
      cutOuts: {
        column: cutOut(square(1.5), [7, 5.94], { id: 'column', turnedRad: Math.PI / 4 }),
        well: cutOut({ kind: 'circle', diameterIn: 48 }, [15, 11], { id: 'well', around: 'formed' }),
      },
    }),
    limitFt: 10,
  },
  'square-column': {
    shape: rectangle(240, 192, {
      cutOuts: { column: cutOut(square(1), [9.5, 7.5], { id: 'column' }) },
    }),
    limitFt: 10,
  },
  'square-well': {
    shape: rectangle(216, 192, { cutOuts: { well: cutOut(square(4), [4, 6], { id: 'well' }) } }),
    limitFt: 10,
  },
  pie: {
    shape: asTaped({ kind: 'sector', radiusIn: 168, angleRad: Math.PI / 2 }),
    limitFt: 8,
  },
  'thin-pie': {
    shape: asTaped({ kind: 'sector', radiusIn: 240, angleRad: Math.PI / 3 }),
    limitFt: 10,
  },
  round: { shape: asTaped({ kind: 'circle', diameterIn: 192 }), limitFt: 10 },
  triangle: { shape: asTaped(corners([0, 0], [18, 0], [5, 14])), limitFt: 8 },
  tapered: { shape: asTaped(corners([0, 0], [40, 0], [40, 12], [0, 22])), limitFt: 10 },
  'big-drive': {
    shape: asTaped(corners([0, 0], [60, 0], [60, 24], [44, 24], [44, 52], [24, 52], [24, 24], [0, 24])),
    limitFt: 10,
  },
};
