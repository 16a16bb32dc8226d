import type { LinePiece } from '../../geometry/index.ts';
import { type Dash, lineWeightsMm, type PaperPoint, type PathPart, type Primitive } from './drawing.ts';
import type { ProfileFrame } from './profile-frame.ts';
import type { ProfileReach, ProfileView } from './profile-view.ts';

/** The slab with its dots, the base with its gravel, and the top as the heaviest line. */
export function newLines(
  { top, thicknessIn, baseIn }: ProfileReach,
  placed: ProfileFrame,
): readonly Primitive[] {
  const finish = lineBelow(top, 0, placed);
  const slabBottom = lineBelow(top, thicknessIn, placed);
  const baseBottom = lineBelow(top, thicknessIn + baseIn, placed);
  const { existing, newEdge } = lineWeightsMm;
  return [
    { kind: 'hatch', parts: between(finish, slabBottom), pattern: 'new' },
    ...(baseIn > 0
      ? [{ kind: 'hatch' as const, parts: between(slabBottom, baseBottom), pattern: 'base' as const }]
      : []),
    { kind: 'path', parts: between(finish, baseBottom), weightMm: existing, dash: 'solid' },
    { kind: 'path', parts: along(slabBottom), weightMm: existing, dash: 'solid' },
    { kind: 'path', parts: along(finish), weightMm: newEdge, dash: 'solid' },
  ];
}

/** What is there now, and dashed what is left when that is gone. */
export function oldLines({ old }: ProfileReach, placed: ProfileFrame): readonly Primitive[] {
  return old.flatMap(({ top, goneIn }) => [
    oldLine(top, 0, placed, 'solid'),
    ...(goneIn > 0 ? [oldLine(top, goneIn, placed, 'dashed')] : []),
  ]);
}

/** The ground past the last slab, which nobody touches. */
export function beyondLine(points: ProfileView['beyond'], { at }: ProfileFrame): readonly Primitive[] {
  if (points.length === 0) return [];
  const line = points.map(({ alongIn, heightIn }) => at(alongIn, heightIn));
  return [
    { kind: 'path', parts: along(line), weightMm: lineWeightsMm.existing, dash: 'solid' },
    ...line.slice(1).map(markOf),
  ];
}

/** A small cross where its height is known. */
function markOf({ xIn, yIn }: PaperPoint): Primitive {
  const from = { xIn, yIn: yIn - MARK_IN };
  return {
    kind: 'line',
    from,
    to: { xIn, yIn: yIn + MARK_IN },
    weightMm: lineWeightsMm.newEdge,
    dash: 'solid',
  };
}

const MARK_IN = 0.05;

function oldLine(top: LinePiece, downIn: number, placed: ProfileFrame, dash: Dash): Primitive {
  return {
    kind: 'path',
    parts: along(lineBelow([top], downIn, placed)),
    weightMm: lineWeightsMm.existing,
    dash,
  };
}

function lineBelow(top: readonly LinePiece[], downIn: number, { at }: ProfileFrame): readonly PaperPoint[] {
  return top.flatMap(({ fromIn, toIn, fromHeightIn, toHeightIn }) => [
    at(fromIn, fromHeightIn - downIn),
    at(toIn, toHeightIn - downIn),
  ]);
}

function along([first, ...rest]: readonly PaperPoint[]): readonly PathPart[] {
  if (first === undefined) return [];
  return [{ kind: 'move', ...first }, ...rest.map((point): PathPart => ({ kind: 'line', ...point }))];
}

function between(upper: readonly PaperPoint[], lower: readonly PaperPoint[]): readonly PathPart[] {
  return [...along([...upper, ...lower.toReversed()]), { kind: 'close' }];
}
