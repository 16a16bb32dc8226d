import { orient } from './build.ts';
import { keptIn } from './half-plane.ts';
import { containsPoint, distanceToLineIn, distanceToOneEdgeIn } from './measure.ts';
import { distanceIn, type EdgeKind, edgesOf, type Outline, type Point, type Ring } from './outline.ts';
import { planeHeightIn, type Surface } from './surface.ts';
import { cellsOf } from './surface-cells.ts';
import { straightened } from './tessellate.ts';
import { triangulate } from './triangulate.ts';

/** Chords this near their arcs [in]: finer than water on concrete can tell. */
const OFF_ARC_IN = 1;
/** Points nearer than this are one [in]. */
const ONE_POINT_IN = 1e-3;
/** That near to a drain water runs into it [in]. */
const AT_OUTLET_IN = 1;
/** A hollow of less is noise [in]. */
const NO_DEPTH_IN = 1e-6;

/** The deepest point of a hollow, and how deep water stands there before it finds a way out [in]. */
export type LowPoint = Point & { readonly depthIn: number };

type Node = { readonly at: Point; heightIn: number; readonly next: Set<number> };

/**
 * Where water stands on a surface within an outline: the hollows that have no way out at an edge.
 *
 * @param waysOut Kinds of edge that water runs off over; at the others it stands. Where there is none it
 *                stands until it is level with the highest point.
 * @param outlets Lines of points of the surface at which water is led off, such as drains.
 *
 * The surface is cut into convex pieces of one plane each. On such a piece water that can sink finds a
 * way along its edges, so the level at which a corner is left is the least, over all ways along edges, of
 * the highest corner on the way.
 */
export function lowPoints(
  surface: Surface,
  outline: Outline,
  waysOut: readonly EdgeKind[],
  outlets: readonly (readonly Point[])[] = [],
): readonly LowPoint[] {
  const rings = orient(outline).rings.map((ring) => straightened(ring, OFF_ARC_IN));
  const nodes = nodesOf(surface, rings);
  const exits = rings.flatMap((ring) => edgesOf(ring).filter(({ from }) => waysOut.includes(from.edge)));
  const isExit = nodes.map(
    ({ at }) =>
      exits.some((edge) => distanceToOneEdgeIn(edge, at) < ONE_POINT_IN) ||
      outlets.some((line) => distanceToLineIn(line, at) < AT_OUTLET_IN),
  );
  const levelsIn = levelsOf(nodes, isExit);
  const wet = nodes.map((node, index) => (levelsIn[index] ?? 0) - node.heightIn > NO_DEPTH_IN);
  return hollowsOf(nodes, wet).flatMap((hollow): LowPoint[] => {
    const lowest = hollow.reduce((low, index) =>
      heightOf(nodes, index) < heightOf(nodes, low) ? index : low,
    );
    const node = nodes[lowest];
    return node === undefined ? [] : [{ ...node.at, depthIn: (levelsIn[lowest] ?? 0) - node.heightIn }];
  });
}

/** Corners of the pieces, each with its neighbours along their edges. */
function nodesOf(surface: Surface, rings: readonly Ring[]): readonly Node[] {
  const cells = cellsOf(surface);
  const nodes: Node[] = [];
  for (const triangle of trianglesOf(rings)) {
    for (const { sides, plane } of cells) {
      const piece = keptIn(triangle, sides);
      const indexes = piece.map((at) => nodeAt(nodes, at, planeHeightIn(plane, at)));
      for (const [step, index] of indexes.entries()) {
        const other = indexes[(step + 1) % indexes.length] ?? index;
        if (other === index) continue;
        nodes[index]?.next.add(other);
        nodes[other]?.next.add(index);
      }
    }
  }
  return nodes;
}

/** Where the surface is not continuous, outside its points, water takes the lower side. */
function nodeAt(nodes: Node[], at: Point, heightIn: number): number {
  const known = nodes.findIndex((node) => distanceIn(node.at, at) < ONE_POINT_IN);
  const node = nodes[known];
  if (node === undefined) return nodes.push({ at, heightIn, next: new Set() }) - 1;
  node.heightIn = Math.min(node.heightIn, heightIn);
  return known;
}

/** Triangles that fill the rings. */
function trianglesOf(rings: readonly Ring[]): readonly (readonly Point[])[] {
  const points: Point[] = [];
  const edges = rings.flatMap((ring) => {
    const indexes = ring.map((corner) => {
      const known = points.findIndex((point) => distanceIn(point, corner) < ONE_POINT_IN);
      return known >= 0 ? known : points.push(corner) - 1;
    });
    return indexes.map((index, step) => [index, indexes[(step + 1) % indexes.length] ?? index] as const);
  });
  return triangulate(
    points,
    edges.filter(([from, to]) => from !== to),
  ).flatMap((triple) => {
    const corners = triple.flatMap((index) => points[index] ?? []);
    const middle = {
      xIn: corners.reduce((sum, { xIn }) => sum + xIn, 0) / 3,
      yIn: corners.reduce((sum, { yIn }) => sum + yIn, 0) / 3,
    };
    return containsPoint({ rings }, middle) ? [corners] : [];
  });
}

/** How high water stands at each node before it runs off. */
function levelsOf(nodes: readonly Node[], isExit: readonly boolean[]): readonly number[] {
  const levels = nodes.map((node, index) => (isExit[index] === true ? node.heightIn : Infinity));
  const open = new Set(nodes.keys());
  while (open.size > 0) {
    const least = [...open].reduce((low, index) => ((levels[index] ?? 0) < (levels[low] ?? 0) ? index : low));
    open.delete(least);
    const level = levels[least] ?? Infinity;
    if (level === Infinity) {
      const highestIn = Math.max(...nodes.map(({ heightIn }) => heightIn));
      return levels.map((known) => Math.min(known, highestIn));
    }
    for (const index of nodes[least]?.next ?? []) {
      levels[index] = Math.min(levels[index] ?? Infinity, Math.max(level, heightOf(nodes, index)));
    }
  }
  return levels;
}

/** The wet nodes in groups that hang together. */
function hollowsOf(nodes: readonly Node[], wet: readonly boolean[]): readonly (readonly number[])[] {
  const seen = new Set<number>();
  return [...nodes.keys()].flatMap((first) => {
    if (wet[first] !== true || seen.has(first)) return [];
    const hollow: number[] = [];
    const toSee = [first];
    seen.add(first);
    for (let index = toSee.pop(); index !== undefined; index = toSee.pop()) {
      hollow.push(index);
      for (const next of nodes[index]?.next ?? []) {
        if (wet[next] !== true || seen.has(next)) continue;
        seen.add(next);
        toSee.push(next);
      }
    }
    return [hollow];
  });
}

function heightOf(nodes: readonly Node[], index: number): number {
  return nodes[index]?.heightIn ?? Infinity;
}
