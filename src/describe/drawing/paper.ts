import { arcOf, type Bounds, chordsOf, edgesOf, type Outline, type Point } from '../../geometry/index.ts';
import type { Segment } from './boxes.ts';
import type { PaperPoint, PathPart } from './drawing.ts';

/** From inches on the ground, y up, to inches on the paper, y down. */
export type Placement = {
  readonly paperInPerIn: number;
  /** Where the upper left corner of the bounds lies on the paper. */
  readonly corner: PaperPoint;
  readonly bounds: Bounds;
};

export function toPaper(placement: Placement, point: Point): PaperPoint {
  const { bounds, corner, paperInPerIn } = placement;
  return {
    xIn: corner.xIn + (point.xIn - bounds.minXIn) * paperInPerIn,
    yIn: corner.yIn + (bounds.maxYIn - point.yIn) * paperInPerIn,
  };
}

export function toGround(placement: Placement, point: PaperPoint): Point {
  const { bounds, corner, paperInPerIn } = placement;
  return {
    xIn: bounds.minXIn + (point.xIn - corner.xIn) / paperInPerIn,
    yIn: bounds.maxYIn - (point.yIn - corner.yIn) / paperInPerIn,
  };
}

export function outlineParts(placement: Placement, outline: Outline): PathPart[] {
  return outline.rings.flatMap((ring): PathPart[] => {
    const [first] = ring;
    if (first === undefined) return [];
    const edges = edgesOf(ring).map(({ from, to }): PathPart => {
      const end = toPaper(placement, to);
      if (from.bulge === 0) return { kind: 'line', ...end };
      return {
        kind: 'arc',
        radiusIn: arcOf(from, to).radiusIn * placement.paperInPerIn,
        bulge: from.bulge,
        ...end,
      };
    });
    return [{ kind: 'move', ...toPaper(placement, first) }, ...edges, { kind: 'close' }];
  });
}

/** The edges as straight pieces on the paper, to keep labels clear of them. */
export function outlineSegments(placement: Placement, outline: Outline): Segment[] {
  return outline.rings.flatMap((ring) =>
    chordsOf(ring).map(({ from, to }) => ({ from: toPaper(placement, from), to: toPaper(placement, to) })),
  );
}
