import type { Line } from '../../geometry/index.ts';
import type { Piece } from './split-panels.ts';

/** Ends this near are one place [in]. */
const SAME_IN = 1e-4;
/** Pieces that turn by less run straight on [rad]. */
const STRAIGHT_RAD = 1e-6;

/** Joints as they are cut: pieces that run straight on from one another are one line. In a fixed order. */
export function joinedLines(pieces: readonly Piece[], keepOrder: boolean): readonly Line[] {
  const lines: Line[] = [];
  for (const { from, to } of pieces) {
    let line: Line = { fromXIn: from.xIn, fromYIn: from.yIn, toXIn: to.xIn, toYIn: to.yIn };
    // A piece can close the gap between two lines.
    for (;;) {
      const index = lines.findIndex((one) => runsOn(one, line));
      const [other] = index < 0 ? [] : lines.splice(index, 1);
      if (other === undefined) break;
      line = oneLine(other, line);
    }
    lines.push(pointing(line));
  }
  return keepOrder ? lines : sorted(lines);
}

function runsOn(one: Line, other: Line): boolean {
  const turnRad = directionOf(one) - directionOf(other);
  if (Math.abs(Math.sin(turnRad)) > STRAIGHT_RAD) return false;
  return endsOf(one).some(([xIn, yIn]) =>
    endsOf(other).some(([otherXIn, otherYIn]) => Math.hypot(xIn - otherXIn, yIn - otherYIn) < SAME_IN),
  );
}

function oneLine(one: Line, other: Line): Line {
  const along = directionOf(one);
  const places = [...endsOf(one), ...endsOf(other)].toSorted(
    ([aX, aY], [bX, bY]) => (aX - bX) * Math.cos(along) + (aY - bY) * Math.sin(along),
  );
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined) throw new RangeError('two lines have four ends');
  return { fromXIn: first[0], fromYIn: first[1], toXIn: last[0], toYIn: last[1] };
}

function endsOf({ fromXIn, fromYIn, toXIn, toYIn }: Line): readonly (readonly [number, number])[] {
  return [
    [fromXIn, fromYIn],
    [toXIn, toYIn],
  ];
}

function directionOf({ fromXIn, fromYIn, toXIn, toYIn }: Line): number {
  return Math.atan2(toYIn - fromYIn, toXIn - fromXIn);
}

/** From left to right, an upright one upwards. */
function pointing(line: Line): Line {
  const dxIn = line.toXIn - line.fromXIn;
  const isForward = Math.abs(dxIn) > SAME_IN ? dxIn > 0 : line.toYIn > line.fromYIn;
  if (isForward) return line;
  return { fromXIn: line.toXIn, fromYIn: line.toYIn, toXIn: line.fromXIn, toYIn: line.fromYIn };
}

/** Upright ones from left to right, then the others from below. */
function sorted(lines: readonly Line[]): readonly Line[] {
  const key = (line: Line) => {
    const isUpright = Math.abs(Math.sin(directionOf(line))) > Math.SQRT1_2;
    const [acrossIn, alongIn] = isUpright
      ? [(line.fromXIn + line.toXIn) / 2, line.fromYIn]
      : [(line.fromYIn + line.toYIn) / 2, line.fromXIn];
    return [isUpright ? 0 : 1, Math.round(acrossIn * 100), Math.round(alongIn * 100)];
  };
  return lines
    .map((line) => ({ line, key: key(line) }))
    .toSorted(
      (one, other) =>
        one.key.map((value, place) => value - (other.key[place] ?? 0)).find((off) => off !== 0) ?? 0,
    )
    .map(({ line }) => line);
}
