import type { PaperPoint } from './drawing.ts';

export type Sides = {
  readonly leftIn: number;
  readonly topIn: number;
  readonly rightIn: number;
  readonly bottomIn: number;
};

type Offset = { readonly right: number; readonly down: number };

/** Grid steps by how far they reach each way, nearest first; the same for every point. */
const offsetsByReach = new Map<number, readonly Offset[]>();

/** Grid points within a box, nearest to a point first, made as they are asked for; the same box always gives the same order. */
export function* gridAround(point: PaperPoint, within: Sides, stepIn: number): Generator<PaperPoint> {
  const reachIn = Math.max(
    point.xIn - within.leftIn,
    within.rightIn - point.xIn,
    point.yIn - within.topIn,
    within.bottomIn - point.yIn,
  );
  for (const { right, down } of offsetsTo(Math.max(0, Math.ceil(reachIn / stepIn)))) {
    const xIn = point.xIn + right * stepIn;
    const yIn = point.yIn + down * stepIn;
    if (xIn < within.leftIn || xIn > within.rightIn || yIn < within.topIn || yIn > within.bottomIn) continue;
    yield { xIn, yIn };
  }
}

function offsetsTo(reach: number): readonly Offset[] {
  const known = offsetsByReach.get(reach);
  if (known !== undefined) return known;
  const offsets: Offset[] = [];
  for (let down = -reach; down <= reach; down += 1) {
    for (let right = -reach; right <= reach; right += 1) offsets.push({ right, down });
  }
  offsets.sort((one, other) => squareOf(one) - squareOf(other));
  offsetsByReach.set(reach, offsets);
  return offsets;
}

function squareOf({ right, down }: Offset): number {
  return right * right + down * down;
}
