import { arcOf, pointOnArc } from './arc.ts';
import { distanceIn, edgesOf, type Ring, type Vertex } from './outline.ts';

/** An arc that rises less than this over its chord is the chord [in]. */
const FLAT_IN = 1e-7;

/** However small the circle, no chord turns more than this: sixteen to a half circle. */
const MOST_TURN_RAD = Math.PI / 16;

/**
 * The ring with chords in place of its arcs, of the same area to the last digits; each chord has the kind
 * of its arc, corners stay where they are.
 *
 * @param mostOffIn How far the middle of a chord may be from its arc [in], above 0; the corners between
 *                  chords stand outside the arc by about two thirds of that.
 *
 * n chords to a sweep t, f = t / n. The corners between them stand at r' from the centre such that the
 * fan of triangles has the area of the sector:
 * (n - 2) sin(f) r'² + 2 R sin(f) r' - R² t = 0. Derived: 2 triangles R r' sin(f) / 2, n - 2 of r'² sin(f) / 2.
 */
export function straightened(ring: Ring, mostOffIn: number): Ring {
  if (!(mostOffIn > 0 && mostOffIn < Infinity)) {
    throw new RangeError(`mostOffIn must be a length above 0, got ${mostOffIn}`);
  }
  return edgesOf(ring).flatMap(({ from, to }): Vertex[] => {
    const start = { ...from, bulge: 0 };
    if ((Math.abs(from.bulge) * distanceIn(from, to)) / 2 < FLAT_IN) return [start];
    const arc = arcOf(from, to);
    const sweepRad = Math.abs(arc.sweepRad);
    const chordTurnRad = Math.min(MOST_TURN_RAD, Math.sqrt((8 * mostOffIn) / arc.radiusIn));
    const count = Math.max(2, Math.ceil(sweepRad / chordTurnRad));
    const fan = { ...arc, radiusIn: arc.radiusIn * fanRatio(sweepRad, count) };
    const between = Array.from({ length: count - 1 }, (_, step): Vertex => {
      return { ...pointOnArc(fan, (step + 1) / count), bulge: 0, edge: from.edge };
    });
    return [start, ...between];
  });
}

/** r' / R of `straightened`: the positive root, in the form that also holds at n = 2. */
function fanRatio(sweepRad: number, count: number): number {
  const sine = Math.sin(sweepRad / count);
  return sweepRad / (sine + Math.sqrt(sine ** 2 + (count - 2) * sine * sweepRad));
}
