import type { Box, Segment } from './boxes.ts';

const CELL_IN = 0.25;

/**
 * Lines of a sheet by the cells of a grid that their bounds touch, so that a box is held only against
 * those near it.
 *
 * @returns Of a box: every line that may meet it, and some that do not; a line may come more than once.
 */
export function segmentsNear(segments: readonly Segment[]): (box: Box) => readonly Segment[] {
  const cells = new Map<string, Segment[]>();
  for (const segment of segments) {
    const { from, to } = segment;
    for (const key of keysOf([from.xIn, to.xIn], [from.yIn, to.yIn])) {
      const cell = cells.get(key);
      if (cell === undefined) cells.set(key, [segment]);
      else cell.push(segment);
    }
  }
  return (box) =>
    keysOf(
      box.map(({ xIn }) => xIn),
      box.map(({ yIn }) => yIn),
    ).flatMap((key) => cells.get(key) ?? []);
}

function keysOf(xsIn: readonly number[], ysIn: readonly number[]): string[] {
  const cellOf = (valueIn: number) => Math.floor(valueIn / CELL_IN);
  const keys: string[] = [];
  for (let x = cellOf(Math.min(...xsIn)); x <= cellOf(Math.max(...xsIn)); x += 1) {
    for (let y = cellOf(Math.min(...ysIn)); y <= cellOf(Math.max(...ysIn)); y += 1) keys.push(`${x} ${y}`);
  }
  return keys;
}
