import type { PaperPoint, PathPart } from '../describe/drawing/index.ts';

export type Polyline = {
  /** A bulge belongs to the piece that starts at its vertex: tan(sweep / 4), anticlockwise positive. */
  readonly vertices: readonly (PaperPoint & { readonly bulge: number })[];
  readonly isClosed: boolean;
};

/**
 * A path as one polyline a piece of it; a closed one does not repeat its first vertex.
 * @throws {RangeError} If a path does not begin with a move.
 */
export function polylinesOf(parts: readonly PathPart[]): Polyline[] {
  const pieces: { vertices: { xIn: number; yIn: number; bulge: number }[]; isClosed: boolean }[] = [];
  for (const part of parts) {
    if (part.kind === 'move') {
      pieces.push({ vertices: [{ xIn: part.xIn, yIn: part.yIn, bulge: 0 }], isClosed: false });
      continue;
    }
    const piece = pieces.at(-1);
    const before = piece?.vertices.at(-1);
    if (piece === undefined || before === undefined) throw new RangeError('a path begins with a move');
    if (part.kind === 'close') {
      piece.isClosed = true;
      continue;
    }
    if (part.kind === 'arc') before.bulge = part.bulge;
    piece.vertices.push({ xIn: part.xIn, yIn: part.yIn, bulge: 0 });
  }
  return pieces.map(withoutRepeat);
}

/** The last edge of an outline comes back to its start: that vertex is there already. */
function withoutRepeat({ vertices, isClosed }: Polyline): Polyline {
  const [first, last] = [vertices[0], vertices.at(-1)];
  const comesBack = isClosed && vertices.length > 2 && first?.xIn === last?.xIn && first?.yIn === last?.yIn;
  return { vertices: comesBack ? vertices.slice(0, -1) : vertices, isClosed };
}
