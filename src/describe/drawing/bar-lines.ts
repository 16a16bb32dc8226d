import type { Line } from '../../geometry/index.ts';
import { type Box, type Segment, sidesOf } from './boxes.ts';
import { type LinePrimitive, lineWeightsMm, type PaperPoint } from './drawing.ts';
import { type Placement, toPaper } from './paper.ts';
import type { PlanArea } from './plan-view.ts';

/** Bars of a mat as thin lines, their laps as heavy ones; none runs through letters. */
export function barPrimitives(
  bars: NonNullable<PlanArea['bars']>,
  placement: Placement,
  boxes: readonly Box[],
): readonly LinePrimitive[] {
  const drawn = (lines: readonly Line[], weightMm: number) =>
    lines
      .map((line) => onPaper(line, placement))
      .flatMap((segment) => outsideOf(segment, boxes))
      .map((segment): LinePrimitive => ({ kind: 'line', ...segment, weightMm, dash: 'solid' }));
  return [
    ...drawn(bars.lines, lineWeightsMm.thin),
    ...drawn(bars.extra, lineWeightsMm.existing),
    ...drawn(bars.laps, lineWeightsMm.newEdge),
  ];
}

function onPaper({ fromXIn, fromYIn, toXIn, toYIn }: Line, placement: Placement): Segment {
  return {
    from: toPaper(placement, { xIn: fromXIn, yIn: fromYIn }),
    to: toPaper(placement, { xIn: toXIn, yIn: toYIn }),
  };
}

/** What of a line lies in no box. */
function outsideOf(segment: Segment, boxes: readonly Box[]): readonly Segment[] {
  return boxes.reduce<readonly Segment[]>(
    (parts, box) => parts.flatMap((part) => outsideOfOne(part, box)),
    [segment],
  );
}

function outsideOfOne(segment: Segment, box: Box): readonly Segment[] {
  const inside = shareInside(segment, box);
  if (inside === null) return [segment];
  const before = { from: segment.from, to: pointAt(segment, inside.from) };
  const after = { from: pointAt(segment, inside.to), to: segment.to };
  return [...(inside.from > 0 ? [before] : []), ...(inside.to < 1 ? [after] : [])];
}

/** The share of a line that lies in a box, 0 to 1 along it; null where none does. */
function shareInside({ from, to }: Segment, box: Box): { readonly from: number; readonly to: number } | null {
  const middle = { xIn: (box[0].xIn + box[2].xIn) / 2, yIn: (box[0].yIn + box[2].yIn) / 2 };
  let share = { from: 0, to: 1 };
  for (const side of sidesOf(box)) {
    const inwards = Math.sign(beside(side, middle));
    const start = inwards * beside(side, from);
    const end = inwards * beside(side, to);
    if (start <= 0 && end <= 0) return null;
    const crossing = start / (start - end);
    if (start < 0) share = { ...share, from: Math.max(share.from, crossing) };
    else if (end < 0) share = { ...share, to: Math.min(share.to, crossing) };
  }
  return share.from < share.to ? share : null;
}

/** Above 0 on one side of a line, below 0 on the other. */
function beside({ from, to }: Segment, point: PaperPoint): number {
  return (to.xIn - from.xIn) * (point.yIn - from.yIn) - (to.yIn - from.yIn) * (point.xIn - from.xIn);
}

function pointAt({ from, to }: Segment, share: number): PaperPoint {
  return { xIn: from.xIn + (to.xIn - from.xIn) * share, yIn: from.yIn + (to.yIn - from.yIn) * share };
}
