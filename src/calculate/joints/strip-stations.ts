import { clipLineToOutline, linesAcross, type Outline, type StripLine } from '../../geometry/index.ts';
import { ceilCount } from '../../units/index.ts';
import type { TapedBase } from '../job.ts';
import { type Placing, placedPoint } from '../outline/index.ts';
import { panelAngleLimit, panelRatioLimit, panelSideLimit } from './limits.ts';
import { evenShares } from './shares.ts';

type StripBase = Extract<TapedBase, { kind: 'strip' }>;

/**
 * Joints across a strip, in order along it: square to its centre line, at turns along the line that halves
 * the corner, and evenly between those.
 *
 * At a sharp corner of 60 degrees or more, halving would leave panels with a sharp corner themselves; there a
 * joint runs square across either leg from the inside corner, so that the corner is a panel of its own.
 *
 * A strip wider than the limit has lanes as well: joints from one joint across to the next, at even shares of
 * both, so that they meet and follow a bend.
 *
 * @param laid.limitIn The farthest that two joints may be apart, at the edge where they are farthest [in].
 */
export function linesAcrossStrip(
  base: StripBase,
  laid: { readonly outline: Outline; readonly placing: Placing; readonly limitIn: number },
): readonly StripLine[] {
  const { outline, placing } = laid;
  const endWidthIn = base.endWidthIn ?? base.widthIn;
  const laneCount = ceilCount(Math.max(base.widthIn, endWidthIn) / laid.limitIn);
  const widthIn = Math.min(base.widthIn, endWidthIn) / laneCount;
  const squareIn = Math.max(panelSideLimit.lengthIn, panelRatioLimit.ratio * widthIn);
  const limitIn = Math.min(laid.limitIn, squareIn);
  const place: Place = (line) => partInside(line, outline, placing);
  const lines: StripLine[] = [];
  const lanes: StripLine[] = [];
  let startsAtIn = 0;
  let startLine: StripLine | null = null;
  for (const stop of [...stopsOf(base), null]) {
    const endsAtIn = stop === null ? lengthOf(base) : stop.fromIn;
    const stopLines = (stop?.lines ?? []).map(place);
    const endLine = stopLines[0] ?? null;
    const even = evenLines(base, { startsAtIn, endsAtIn, startLine, endLine }, limitIn, place);
    lines.push(...even.slice(1, -1));
    lanes.push(...even.slice(1).flatMap((line, index) => lanesBetween(even[index], line, laneCount)));
    if (stop === null) break;
    lines.push(...stopLines);
    startsAtIn = stop.toIn;
    startLine = stopLines.at(-1) ?? null;
  }
  return [...lines, ...lanes];
}

/** From one joint across to the next, at even shares of both. */
function lanesBetween(one: StripLine | undefined, other: StripLine, count: number): readonly StripLine[] {
  if (one === undefined) return [];
  const at = ({ from, to }: StripLine, share: number) => ({
    xIn: from.xIn + (to.xIn - from.xIn) * share,
    yIn: from.yIn + (to.yIn - from.yIn) * share,
  });
  return evenShares(count).map((share) => ({ from: at(one, share), to: at(other, share) }));
}

type Place = (line: StripLine) => StripLine;

/** Where a line lies on the plan, between the edges beside its middle. */
function partInside({ from, to }: StripLine, outline: Outline, placing: Placing): StripLine {
  const [start, end] = [placedPoint(from, placing), placedPoint(to, placing)];
  const line = { fromXIn: start.xIn, fromYIn: start.yIn, toXIn: end.xIn, toYIn: end.yIn };
  const wholeIn = Math.hypot(end.xIn - start.xIn, end.yIn - start.yIn);
  const stretch = clipLineToOutline(line, outline).find(
    ({ fromIn, toIn }) => fromIn < wholeIn / 2 && toIn > wholeIn / 2,
  );
  const at = (alongIn: number) => ({
    xIn: start.xIn + ((end.xIn - start.xIn) * alongIn) / wholeIn,
    yIn: start.yIn + ((end.yIn - start.yIn) * alongIn) / wholeIn,
  });
  return stretch === undefined
    ? { from: start, to: end }
    : { from: at(stretch.fromIn), to: at(stretch.toIn) };
}

/** A turn: the joints there, and how much of the centre line lies between them. */
type Stop = { readonly fromIn: number; readonly toIn: number; readonly lines: readonly StripLine[] };

function stopsOf(base: StripBase): readonly Stop[] {
  const totalIn = lengthOf(base);
  let alongIn = 0;
  return base.line.flatMap((piece): Stop[] => {
    if (piece.kind !== 'turn') {
      alongIn += piece.kind === 'straight' ? piece.lengthIn : piece.radiusIn * Math.abs(piece.turnRad);
      return [];
    }
    const isSharp = Math.PI - Math.abs(piece.turnRad) < 2 * ((panelAngleLimit.deg * Math.PI) / 180) + 1e-9;
    if (piece.rounding !== null || !isSharp) {
      return [{ fromIn: alongIn, toIn: alongIn, lines: [halvingLine(base, alongIn, piece.turnRad)] }];
    }
    const [across] = linesAcross(base, [alongIn]);
    const halfIn = across === undefined ? 0 : lengthIn(across) / 2;
    const backIn = halfIn * Math.tan(Math.abs(piece.turnRad) / 2);
    const [fromIn, toIn] = [alongIn - backIn, alongIn + backIn];
    if (!(fromIn > 0 && toIn < totalIn)) return [];
    return [{ fromIn, toIn, lines: linesAcross(base, [fromIn, toIn]) }];
  });
}

/** Through the inside and the outside corner of a turn. */
function halvingLine(base: StripBase, alongIn: number, turnRad: number): StripLine {
  // A hair before the turn, where the line across is still that of the leg before.
  const [across] = linesAcross(base, [alongIn * (1 - 1e-9)]);
  if (across === undefined) throw new RangeError(`no line across a strip at ${alongIn} in`);
  const middle = {
    xIn: (across.from.xIn + across.to.xIn) / 2,
    yIn: (across.from.yIn + across.to.yIn) / 2,
  };
  const longer = 1 / Math.cos(turnRad / 2);
  const [cosine, sine] = [Math.cos(turnRad / 2) * longer, Math.sin(turnRad / 2) * longer];
  const turned = ({ xIn, yIn }: StripLine['from']) => ({
    xIn: middle.xIn + (xIn - middle.xIn) * cosine - (yIn - middle.yIn) * sine,
    yIn: middle.yIn + (xIn - middle.xIn) * sine + (yIn - middle.yIn) * cosine,
  });
  return { from: turned(across.from), to: turned(across.to) };
}

type Section = {
  readonly startsAtIn: number;
  readonly endsAtIn: number;
  readonly startLine: StripLine | null;
  readonly endLine: StripLine | null;
};

/** As few even parts as the limit allows, at the outside of bends too: the joints between them, and both ends. */
function evenLines(base: StripBase, section: Section, limitIn: number, place: Place): readonly StripLine[] {
  const { startsAtIn, endsAtIn } = section;
  const sectionIn = endsAtIn - startsAtIn;
  if (!(sectionIn > 0)) return [];
  const ends = linesAcross(base, [startsAtIn, endsAtIn]).map(place);
  const [start, end] = [section.startLine ?? ends[0], section.endLine ?? ends[1]];
  for (let count = Math.max(1, ceilCount(sectionIn / limitIn)); ; count += 1) {
    const stationsIn = Array.from(
      { length: count - 1 },
      (_, index) => startsAtIn + (sectionIn * (index + 1)) / count,
    );
    const lines = linesAcross(base, stationsIn).map(place);
    const all = [start, ...lines, end].filter((line) => line !== undefined);
    // Twice as many is enough for any bend a strip can make: its inside radius is above 0.
    if (
      sectionIn / count < limitIn / 2 ||
      all.every((line, index) => isNear(line, all[index + 1], limitIn))
    ) {
      return all;
    }
  }
}

function isNear(one: StripLine | undefined, other: StripLine | undefined, limitIn: number): boolean {
  if (one === undefined || other === undefined) return true;
  const apartIn = Math.max(
    Math.hypot(other.from.xIn - one.from.xIn, other.from.yIn - one.from.yIn),
    Math.hypot(other.to.xIn - one.to.xIn, other.to.yIn - one.to.yIn),
  );
  return apartIn <= limitIn * (1 + 1e-9);
}

function lengthIn({ from, to }: StripLine): number {
  return Math.hypot(to.xIn - from.xIn, to.yIn - from.yIn);
}

function lengthOf(base: StripBase): number {
  return base.line.reduce((sumIn, piece) => {
    if (piece.kind === 'turn') return sumIn;
    return sumIn + (piece.kind === 'straight' ? piece.lengthIn : piece.radiusIn * Math.abs(piece.turnRad));
  }, 0);
}
