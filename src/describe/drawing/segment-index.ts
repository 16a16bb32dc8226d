import type { Box, Segment } from './boxes.ts';

const CELL_IN = 0.25;
/** Cells a row: no sheet is so wide that two cells would share a number. */
const ROW = 1 << 15;

/**
 * Lines of a sheet by the cells of a grid that their bounds touch, so that a box is held only against
 * those near it.
 *
 * @returns Of a box: every line that may meet it, and some that do not; a line may come more than once.
 */
export function segmentsNear(segments: readonly Segment[]): (box: Box) => readonly Segment[] {
  const cells = new Map<number, Segment[]>();
  for (const segment of segments) {
    const { from, to } = segment;
    forEachCell([from, to], (cell) => {
      const known = cells.get(cell);
      if (known === undefined) cells.set(cell, [segment]);
      else known.push(segment);
    });
  }
  return (box) => {
    const near: Segment[] = [];
    forEachCell(box, (cell) => {
      const known = cells.get(cell);
      if (known !== undefined) near.push(...known);
    });
    return near;
  };
}

function forEachCell(points: readonly Segment['from'][], visit: (cell: number) => void): void {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { xIn, yIn } of points) {
    left = Math.min(left, Math.floor(xIn / CELL_IN));
    right = Math.max(right, Math.floor(xIn / CELL_IN));
    top = Math.min(top, Math.floor(yIn / CELL_IN));
    bottom = Math.max(bottom, Math.floor(yIn / CELL_IN));
  }
  for (let row = top; row <= bottom; row += 1) {
    for (let column = left; column <= right; column += 1) visit(row * ROW + column);
  }
}
