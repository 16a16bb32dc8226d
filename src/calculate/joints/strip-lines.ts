import {
  clipLineToOutline,
  type Line,
  linesAcross,
  linesAlong,
  type Outline,
  type StripLine,
} from '../../geometry/index.ts';
import type { TapedBase } from '../job.ts';
import { type Placing, placedPoint } from '../outline/index.ts';
import type { Box } from './lines.ts';
import type { Panels } from './panels.ts';

type StripBase = Extract<TapedBase, { kind: 'strip' }>;

/** A strip rolled out straight: as long as its centre line, as wide as its widest end. */
export function boxOfStrip(base: StripBase, lengthIn: number): Box {
  return { lengthIn, widthIn: Math.max(base.widthIn, base.endWidthIn ?? 0), runsAlong: 'x' };
}

/** The lines between equal panels along a strip, square to its centre line; and along it where it is wide. */
export function stripJointLines(
  base: StripBase,
  made: {
    readonly lengthIn: number;
    readonly panels: Panels;
    readonly outline: Outline;
    readonly placing: Placing;
  },
): readonly Line[] {
  const { lengthIn, panels, outline, placing } = made;
  const stations = sharesBetween(panels.alongCount).map((share) => share * lengthIn);
  const lines = [
    ...linesAcross(base, stations),
    ...sharesBetween(panels.acrossCount).flatMap((share) => linesAlong(base, share)),
  ];
  return lines.flatMap((line) => partsInside(placed(line, placing), outline));
}

function placed({ from, to }: StripLine, placing: Placing): Line {
  const start = placedPoint(from, placing);
  const end = placedPoint(to, placing);
  return { fromXIn: start.xIn, fromYIn: start.yIn, toXIn: end.xIn, toYIn: end.yIn };
}

/** Stretches are distances from the line's first point; what lies past its ends is another joint's. */
function partsInside(line: Line, outline: Outline): Line[] {
  const lengthIn = Math.hypot(line.toXIn - line.fromXIn, line.toYIn - line.fromYIn);
  const at = (alongIn: number) => ({
    xIn: line.fromXIn + ((line.toXIn - line.fromXIn) * alongIn) / lengthIn,
    yIn: line.fromYIn + ((line.toYIn - line.fromYIn) * alongIn) / lengthIn,
  });
  return clipLineToOutline(line, outline).flatMap(({ fromIn, toIn }) => {
    const start = at(Math.max(0, fromIn));
    const end = at(Math.min(lengthIn, toIn));
    const isInside = Math.min(lengthIn, toIn) - Math.max(0, fromIn) > NOISE_IN;
    return isInside ? [{ fromXIn: start.xIn, fromYIn: start.yIn, toXIn: end.xIn, toYIn: end.yIn }] : [];
  });
}

const NOISE_IN = 1e-6;

function sharesBetween(partCount: number): number[] {
  return Array.from({ length: partCount - 1 }, (_, index) => (index + 1) / partCount);
}
