import {
  type Arc,
  arcOf,
  chordOffsets,
  distanceIn,
  type Edge,
  edgesOf,
  type Offset,
  type Outline,
  type Point,
  pointOnArc,
  swingTies,
  tangentOffsets,
} from '../../geometry/index.ts';
import type { StringCorner } from '../outline/index.ts';

/** A tie from a numbered corner to a radius point. */
export type Tie = { readonly corner: number; readonly lengthIn: number };

/** Everything a crew needs to set out one arc. */
export type CurveLayout = {
  readonly arc: Arc;
  readonly from: Point;
  readonly to: Point;
  readonly middle: Point;
  /** Null for a whole circle, as is its rise. */
  readonly chordIn: number | null;
  readonly riseIn: number | null;
  readonly arcLengthIn: number;
  /** From where the straights beside it meet, back to its ends; null where it does not touch both smoothly. */
  readonly setbackIn: number | null;
  readonly ties: readonly Tie[];
  /** Between two offsets; null for a whole circle. */
  readonly stepIn: number | null;
  readonly chordOffsets: readonly Offset[];
  /** From both legs; empty where there is no setback. */
  readonly legOffsets: readonly Offset[];
};

/** More marks than this along one curve are no help. */
const MOST_OFFSETS = 8;
const SMOOTH_SINE = 1e-6;

/** The arcs of an outline in the order of its edges, outer ring first. */
export function curvesOf(
  outline: Outline,
  corners: readonly StringCorner[],
  stepIn: number,
): readonly CurveLayout[] {
  return outline.rings.flatMap((ring) => {
    const edges = edgesOf(ring);
    const circle = circleOf(edges, corners);
    if (circle !== null) return [circle];
    const edgeAt = (index: number) => edges[(index + edges.length) % edges.length];
    return edges.flatMap((edge, index) =>
      edge.from.bulge === 0 ? [] : [layoutOf(edge, edgeAt(index - 1), edgeAt(index + 1), corners, stepIn)],
    );
  });
}

/** A ring that is one circle is one curve, however many arcs it is made of. */
function circleOf(edges: readonly Edge[], corners: readonly StringCorner[]): CurveLayout | null {
  const [first] = edges;
  if (first === undefined || edges.some(({ from }) => from.bulge === 0)) return null;
  const arc = arcOf(first.from, first.to);
  const isOneCircle = edges.every(({ from, to }) => {
    const other = arcOf(from, to);
    return distanceIn(arc.centre, other.centre) < SMOOTH_SINE * arc.radiusIn;
  });
  if (!isOneCircle) return null;
  const sweepRad = Math.sign(arc.sweepRad) * 2 * Math.PI;
  return {
    arc: { ...arc, sweepRad },
    from: first.from,
    to: first.from,
    middle: pointOnArc(arc, 0.25),
    chordIn: null,
    riseIn: null,
    arcLengthIn: 2 * Math.PI * arc.radiusIn,
    setbackIn: null,
    ties: tiesOf(arc.centre, corners),
    stepIn: null,
    chordOffsets: [],
    legOffsets: [],
  };
}

function layoutOf(
  edge: Edge,
  before: Edge | undefined,
  after: Edge | undefined,
  corners: readonly StringCorner[],
  stepIn: number,
): CurveLayout {
  const arc = arcOf(edge.from, edge.to);
  const sweepRad = Math.abs(arc.sweepRad);
  const chordIn = distanceIn(edge.from, edge.to);
  const ownStepIn = stepFor(chordIn / 2, stepIn);
  const touchesBoth = [before, after].every((next) => next !== undefined && isTangent(arc, next));
  const setbackIn = touchesBoth && sweepRad < Math.PI * 0.99 ? arc.radiusIn * Math.tan(sweepRad / 2) : null;
  return {
    arc,
    from: edge.from,
    to: edge.to,
    middle: pointOnArc(arc, 0.5),
    chordIn,
    riseIn: arc.radiusIn * (1 - Math.cos(sweepRad / 2)),
    arcLengthIn: arc.radiusIn * sweepRad,
    setbackIn,
    ties: tiesOf(arc.centre, corners),
    stepIn: ownStepIn,
    // Past a half circle the chord no longer carries every point of the arc.
    chordOffsets:
      sweepRad > Math.PI ? [] : chordOffsets({ radiusIn: arc.radiusIn, chordIn, stepIn: ownStepIn }),
    // Half of the arc from each leg: at the end of a quarter circle an offset tells nothing any more.
    legOffsets:
      setbackIn === null
        ? []
        : tangentOffsets({
            radiusIn: arc.radiusIn,
            mostIn: chordIn / 2,
            stepIn: ownStepIn,
          }),
  };
}

/** The step, doubled until the marks are few enough. */
function stepFor(lengthIn: number, stepIn: number): number {
  return lengthIn / stepIn > MOST_OFFSETS ? stepFor(lengthIn, stepIn * 2) : stepIn;
}

function tiesOf(centre: Point, corners: readonly StringCorner[]): readonly Tie[] {
  if (corners.length < 2) return [];
  const points = corners.map(({ at }) => at);
  const ties = swingTies(centre, points);
  if (ties === null || ties.isWeak) return [];
  return ties.from.map((index, which) => ({
    corner: corners[index]?.number ?? 0,
    lengthIn: ties.distancesIn[which] ?? 0,
  }));
}

/** Whether a straight edge runs along the tangent of an arc it meets. */
function isTangent(arc: Arc, edge: Edge): boolean {
  if (edge.from.bulge !== 0) return false;
  const lengthIn = distanceIn(edge.from, edge.to);
  const toCentre =
    ((edge.to.xIn - edge.from.xIn) * (arc.centre.yIn - edge.from.yIn) -
      (edge.to.yIn - edge.from.yIn) * (arc.centre.xIn - edge.from.xIn)) /
    lengthIn;
  return Math.abs(Math.abs(toCentre) - arc.radiusIn) < SMOOTH_SINE * arc.radiusIn;
}
