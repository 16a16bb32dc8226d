import { distanceIn, type Ring, type Vertex } from './outline.ts';
import { turnBetweenRad } from './tangents.ts';

/** A vertex of a ring made of two; only at a joint is anything left out. */
export type Joined = { readonly vertex: Vertex; readonly isJoint: boolean };

/** Nearer than this, two corners are one [in]. */
const SAME_IN = 1e-6;

/** Less than this, a corner is none, and a fold lies on itself [rad]. */
const STRAIGHT_RAD = 1e-6;

/**
 * A ring without what joining leaves over at the joints: edges without length, corners between two
 * straight edges of one kind on one line, and edges that run out and back on the same line.
 */
export function tidied(joined: readonly Joined[]): Ring {
  let here = joined;
  for (;;) {
    const next = tidiedOnce(here);
    if (next === null) return here.map(({ vertex }) => vertex);
    here = next;
  }
}

/** With the first thing left over taken out; null if there is none. */
function tidiedOnce(joined: readonly Joined[]): readonly Joined[] | null {
  if (joined.length <= 3) return null;
  for (const [index, here] of joined.entries()) {
    const beforeIndex = (index + joined.length - 1) % joined.length;
    const afterIndex = (index + 1) % joined.length;
    const before = joined[beforeIndex];
    const after = joined[afterIndex];
    if (!here.isJoint || before === undefined || after === undefined) continue;
    if (here.vertex.bulge !== 0) continue;

    if (distanceIn(here.vertex, after.vertex) < SAME_IN) {
      const { xIn, yIn } = here.vertex;
      return without(joined, index, new Map([[afterIndex, { ...after.vertex, xIn, yIn }]]), [beforeIndex]);
    }
    if (before.vertex.bulge !== 0) continue;
    const turnRad = Math.abs(turnBetweenRad(before.vertex, here.vertex, after.vertex));
    if (turnRad < STRAIGHT_RAD && before.vertex.edge === here.vertex.edge) {
      return without(joined, index, new Map(), []);
    }
    if (turnRad > Math.PI - STRAIGHT_RAD) {
      const outIn = distanceIn(before.vertex, here.vertex);
      const backIn = distanceIn(here.vertex, after.vertex);
      const edge = outIn > backIn ? before.vertex.edge : here.vertex.edge;
      return without(joined, index, new Map([[beforeIndex, { ...before.vertex, edge }]]), [afterIndex]);
    }
  }
  return null;
}

/** Without one vertex; the changed and the named ones become joints themselves. */
function without(
  joined: readonly Joined[],
  index: number,
  changed: ReadonlyMap<number, Vertex>,
  jointsToo: readonly number[],
): readonly Joined[] {
  return joined
    .map((one, place): Joined => {
      const vertex = changed.get(place);
      if (vertex !== undefined) return { vertex, isJoint: true };
      return jointsToo.includes(place) ? { ...one, isJoint: true } : one;
    })
    .filter((_, place) => place !== index);
}
