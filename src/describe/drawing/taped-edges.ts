import {
  arcOf,
  distanceIn,
  type Edge,
  edgesOf,
  type Point,
  type Ring,
  type Vertex,
} from '../../geometry/index.ts';

/** How far a direction may miss the tangent of an arc and still be one with it, as a sine. */
const TANGENT_NOISE = 1e-6;

/**
 * The straight edges of a ring as a tape measures them: where a corner is rounded, on to the point
 * where the two strings meet, not only to the start of the curve.
 *
 * An arc counts as a rounded corner where it turns less than a half circle and leaves both straight
 * edges along their tangent; the edge grows by R tan(sweep / 2) there.
 */
export function tapedEdges(ring: Ring): readonly Edge[] {
  const edges = edgesOf(ring);
  const edgeAt = (index: number): Edge | undefined => edges[(index + edges.length) % edges.length];
  return edges.flatMap((edge, index) => {
    if (edge.from.bulge !== 0) return [];
    return [
      {
        number: edge.number,
        from: movedTo(edge.from, beyond(edge, edge.to, edge.from, edgeAt(index - 1), edgeAt(index - 2))),
        to: movedTo(edge.to, beyond(edge, edge.from, edge.to, edgeAt(index + 1), edgeAt(index + 2))),
      },
    ];
  });
}

/** The end of an edge, pushed on to the corner that an arc beside it rounds. */
function beyond(
  edge: Edge,
  start: Point,
  end: Point,
  arcEdge: Edge | undefined,
  after: Edge | undefined,
): Point {
  if (arcEdge === undefined || after === undefined || after === edge) return end;
  if (arcEdge.from.bulge === 0 || after.from.bulge !== 0) return end;
  const arc = arcOf(arcEdge.from, arcEdge.to);
  const isCorner = Math.abs(arc.sweepRad) < Math.PI * (1 - TANGENT_NOISE);
  const meetsBoth = isTangent(arc.centre, edge) && isTangent(arc.centre, after);
  if (!isCorner || !meetsBoth) return end;
  const growthIn = arc.radiusIn * Math.tan(Math.abs(arc.sweepRad) / 2);
  const share = growthIn / distanceIn(start, end);
  return { xIn: end.xIn + (end.xIn - start.xIn) * share, yIn: end.yIn + (end.yIn - start.yIn) * share };
}

/** A line is tangent to an arc where its nearer end lies square under the centre. */
function isTangent(centre: Point, line: Edge): boolean {
  const foot = distanceIn(centre, line.from) < distanceIn(centre, line.to) ? line.from : line.to;
  const along = { xIn: line.to.xIn - line.from.xIn, yIn: line.to.yIn - line.from.yIn };
  const radial = { xIn: foot.xIn - centre.xIn, yIn: foot.yIn - centre.yIn };
  const cosine =
    (along.xIn * radial.xIn + along.yIn * radial.yIn) /
    (distanceIn(line.from, line.to) * distanceIn(centre, foot));
  return Math.abs(cosine) < TANGENT_NOISE;
}

function movedTo(vertex: Vertex, point: Point): Vertex {
  return { ...vertex, xIn: point.xIn, yIn: point.yIn };
}
