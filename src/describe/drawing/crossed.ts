import type { Box, Segment } from './boxes.ts';
import type { Sides } from './grid-around.ts';

const CELL_IN = 0.04;
const SAMPLE_IN = 0.02;

/**
 * A quick yes for boxes that lines run through, from points of the lines counted on a grid: where a cell
 * that lies whole in an upright box has one, a line runs in the box. A no says nothing.
 */
export function crossedBy(segments: readonly Segment[], zone: Sides): (box: Box) => boolean {
  const columns = Math.ceil((zone.rightIn - zone.leftIn) / CELL_IN);
  const rows = Math.ceil((zone.bottomIn - zone.topIn) / CELL_IN);
  const sums = summed(counted(segments, zone, columns, rows), columns, rows);
  const sumTo = (column: number, row: number) => sums[row * (columns + 1) + column] ?? 0;
  return ([a, b, c]) => {
    if (a.yIn !== b.yIn || b.xIn !== c.xIn) return false;
    const first = Math.max(0, Math.ceil((Math.min(a.xIn, b.xIn) - zone.leftIn) / CELL_IN));
    const last = Math.min(columns, Math.floor((Math.max(a.xIn, b.xIn) - zone.leftIn) / CELL_IN));
    const top = Math.max(0, Math.ceil((Math.min(b.yIn, c.yIn) - zone.topIn) / CELL_IN));
    const bottom = Math.min(rows, Math.floor((Math.max(b.yIn, c.yIn) - zone.topIn) / CELL_IN));
    if (last <= first || bottom <= top) return false;
    return sumTo(last, bottom) - sumTo(first, bottom) - sumTo(last, top) + sumTo(first, top) > 0;
  };
}

/** How many points of the lines are in each cell. */
function counted(segments: readonly Segment[], zone: Sides, columns: number, rows: number): Int32Array {
  const counts = new Int32Array(columns * rows);
  for (const { from, to } of segments) {
    const stepCount = Math.max(1, Math.ceil(Math.hypot(to.xIn - from.xIn, to.yIn - from.yIn) / SAMPLE_IN));
    for (let step = 0; step <= stepCount; step += 1) {
      const along = step / stepCount;
      const column = Math.floor((from.xIn + (to.xIn - from.xIn) * along - zone.leftIn) / CELL_IN);
      const row = Math.floor((from.yIn + (to.yIn - from.yIn) * along - zone.topIn) / CELL_IN);
      const isIn = column >= 0 && column < columns && row >= 0 && row < rows;
      if (isIn) counts[row * columns + column] = (counts[row * columns + column] ?? 0) + 1;
    }
  }
  return counts;
}

/** Of each corner of the grid: what all cells above and left of it hold together. */
function summed(counts: Int32Array, columns: number, rows: number): Int32Array {
  const wide = columns + 1;
  const sums = new Int32Array(wide * (rows + 1));
  for (let row = 0; row < rows; row += 1) {
    let inRow = 0;
    for (let column = 0; column < columns; column += 1) {
      inRow += counts[row * columns + column] ?? 0;
      sums[(row + 1) * wide + column + 1] = (sums[row * wide + column + 1] ?? 0) + inRow;
    }
  }
  return sums;
}
