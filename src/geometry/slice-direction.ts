import { edgeLengthIn } from './arc.ts';
import { turnOutline } from './build.ts';
import { boundsOf } from './measure.ts';
import { distanceIn, type EdgeKind, edgesOf, type Outline } from './outline.ts';
import { cutLengthIn } from './slice-outline.ts';
import { straightened } from './tessellate.ts';

/** Of the longest straight edge: shorter ones give no direction. */
const LEAST_EDGE_RATIO = 1 / 3;
/** Directions this near each other are one [deg]. */
const SAME_DEG = 0.5;
const NOISE_DEG = 1e-6;
/** Lines must be so much shorter in all to be worth a less plain direction. Common practice, no source. */
const SHORTER_RATIO = 0.9;
/** Chords this near their arcs give the axis to far below a degree [in]. */
const AXIS_OFF_ARC_IN = 0.05;

/** Second moments that differ by less, of their sum, are those of a round thing. */
const ROUND_RATIO = 1e-3;

/**
 * In which direction slices of given areas should follow each other: the one whose lines across are
 * shortest in all, so that the slices are compact. For a rectangle that is its long side, for a bent strip
 * mostly the line from end to end. Tried are the directions of the longer straight edges, longest first,
 * then the principal axis.
 *
 * The first slice lies at the end that is farther from the edges of the given kinds; where there are none,
 * or they are in the middle, at the end to the left, or of an upright shape the lower one.
 *
 * @returns Direction, anticlockwise from x [deg].
 * @throws {RangeError} As `sliceOutline`.
 */
export function sliceDirectionDeg(cut: {
  readonly outline: Outline;
  readonly areasSqIn: readonly number[];
  readonly awayFrom: readonly EdgeKind[];
}): number {
  const { outline, areasSqIn, awayFrom } = cut;
  let best: { readonly towardsDeg: number; readonly lengthIn: number } | null = null;
  for (const axisDeg of axesDeg(outline)) {
    const towardsDeg = startsFar(outline, axisDeg, awayFrom) ? axisDeg : axisDeg + 180;
    const lengthIn = cutLengthIn({ outline, towardsDeg, areasSqIn });
    if (best === null || lengthIn < best.lengthIn * SHORTER_RATIO) best = { towardsDeg, lengthIn };
  }
  if (best === null) throw new RangeError('an outline has at least its principal axis');
  return best.towardsDeg;
}

/** Directions to try, above -90 to 90 degrees. */
function axesDeg(outline: Outline): readonly number[] {
  const straights = outline.rings
    .flatMap((ring) => edgesOf(ring))
    .filter(({ from }) => from.bulge === 0)
    .map(({ from, to }) => ({
      lengthIn: distanceIn(from, to),
      deg: withinHalfDeg((Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn) * 180) / Math.PI),
    }))
    .sort((one, other) => other.lengthIn - one.lengthIn);
  const leastIn = (straights[0]?.lengthIn ?? 0) * LEAST_EDGE_RATIO;
  const found: number[] = [];
  for (const deg of [
    ...straights.filter(({ lengthIn }) => lengthIn >= leastIn).map((straight) => straight.deg),
    principalAxisDeg(outline),
  ]) {
    if (!found.some((known) => Math.abs(withinHalfDeg(known - deg)) < SAME_DEG)) found.push(deg);
  }
  return found;
}

/** The same axis above -90 to 90 degrees; upright is up, whatever the noise. */
function withinHalfDeg(deg: number): number {
  const withinDeg = deg - 180 * Math.round(deg / 180);
  return withinDeg <= -90 + NOISE_DEG ? withinDeg + 180 : withinDeg;
}

/** Whether the end at which the axis starts is the farther one from the edges of the given kinds. */
function startsFar(outline: Outline, axisDeg: number, awayFrom: readonly EdgeKind[]): boolean {
  const turned = turnOutline(outline, -axisDeg);
  const { minXIn, maxXIn } = boundsOf(turned);
  let lengthIn = 0;
  let momentSqIn = 0;
  for (const edge of turned.rings.flatMap((ring) => edgesOf(ring))) {
    if (!awayFrom.includes(edge.from.edge)) continue;
    const edgeIn = edgeLengthIn(edge);
    lengthIn += edgeIn;
    momentSqIn += (edgeIn * (edge.from.xIn + edge.to.xIn - minXIn - maxXIn)) / 2;
  }
  // A hair of noise must not turn a shape round whose edges are in the middle.
  return momentSqIn >= -1e-6 * lengthIn;
}

/**
 * The axis about which the area lies closest: half of atan2(2 Sxy, Sxx - Syy) with the second moments
 * about the centroid, each a sum over the triangles from one corner to every chord. Derived.
 */
function principalAxisDeg(outline: Outline): number {
  const rings = outline.rings.map((ring) => straightened(ring, AXIS_OFF_ARC_IN));
  const { minXIn, minYIn } = boundsOf(outline);
  let [area, x, y, xx, yy, xy] = [0, 0, 0, 0, 0, 0];
  for (const { from, to } of rings.flatMap((ring) => edgesOf(ring))) {
    const [ax, ay, bx, by] = [from.xIn - minXIn, from.yIn - minYIn, to.xIn - minXIn, to.yIn - minYIn];
    const twice = ax * by - bx * ay;
    area += twice / 2;
    x += (twice * (ax + bx)) / 6;
    y += (twice * (ay + by)) / 6;
    xx += (twice * (ax * ax + ax * bx + bx * bx)) / 12;
    yy += (twice * (ay * ay + ay * by + by * by)) / 12;
    xy += (twice * (2 * ax * ay + ax * by + bx * ay + 2 * bx * by)) / 24;
  }
  const [wide, high] = [xx - (x * x) / area, yy - (y * y) / area];
  const [skew, longer] = [2 * (xy - (x * y) / area), wide - high];
  // A disc has no axis but that of its noise.
  if (Math.hypot(skew, longer) < ROUND_RATIO * (wide + high)) return 0;
  return withinHalfDeg((Math.atan2(skew, longer) * 90) / Math.PI);
}
