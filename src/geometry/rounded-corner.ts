import { arcOf } from './arc.ts';
import { ringAreaSqIn } from './measure.ts';
import { distanceIn, type Point, type Ring, type Vertex, vertexAt } from './outline.ts';
import type { RoundingLayout } from './rounding.ts';

/** One arc of a rounded corner, with what it takes to lay it out. */
export type CornerArc = {
  readonly radiusIn: number;
  /** Angle turned, always positive. */
  readonly sweepRad: number;
  readonly arcLengthIn: number;
  readonly chordIn: number;
  /** From the middle of the chord to the arc. */
  readonly riseIn: number;
  /** From the corner to the middle of the arc; null for one of two arcs. */
  readonly externalIn: number | null;
  readonly centre: Point;
  readonly from: Point;
  readonly to: Point;
};

export type RoundedCorner = {
  /** 1 for the first vertex of the ring as it was before rounding. */
  readonly corner: number;
  /** Back from the corner to the start of the rounding, on the edge before it. */
  readonly setbackBeforeIn: number;
  /** On from the corner to the end of the rounding, on the edge after it. */
  readonly setbackAfterIn: number;
  /** One arc, or two in a row. */
  readonly arcs: readonly CornerArc[];
  /** Change of direction at the corner, always positive. */
  readonly deflectionRad: number;
  /** Area the ring loses [in²]; negative at a re-entrant corner, where rounding adds. */
  readonly areaLostSqIn: number;
  /** Angle between arc and straight edge at each end, 0 where they meet smoothly. */
  readonly kinkRad: number;
};

/** A sweep this near the deflection is smooth: far below what a form shows, above the noise of a double. */
const SMOOTH_RAD = 1e-9;

/** The vertices that take the place of a corner, and its layout. */
export function roundedCorner(made: {
  readonly ring: Ring;
  readonly index: number;
  /** 1 for a ring that runs anticlockwise, -1 for the other. */
  readonly ringTurn: number;
  /** Change of direction at the corner [rad], left positive. */
  readonly turnRad: number;
  readonly layout: RoundingLayout;
}): { readonly vertices: readonly Vertex[]; readonly corner: RoundedCorner } {
  const { ring, index, ringTurn, turnRad, layout } = made;
  const before = vertexAt(ring, index - 1);
  const here = vertexAt(ring, index);
  const after = vertexAt(ring, index + 1);
  const hand = Math.sign(turnRad);
  const deflectionRad = Math.abs(turnRad);

  const start = towards(here, before, layout.setbackBeforeIn);
  const end = towards(here, after, layout.setbackAfterIn);
  const [first, second] = layout.arcs;
  const joints =
    second === undefined || first === undefined ? [] : [firstArcEnd(before, here, start, hand, first)];
  const points = [start, ...joints, end];
  // Rounded off, the corner stands free of what only one of its edges runs along: a form closes it.
  const kind = before.edge === here.edge ? here.edge : 'formed';
  const vertices: Vertex[] = points.map((point, place) => {
    const arc = layout.arcs[place];
    return arc === undefined
      ? { ...point, bulge: 0, edge: here.edge }
      : { ...point, bulge: hand * Math.tan(arc.sweepRad / 4), edge: kind };
  });

  const toChordIn = (distanceIn(start, end) / 2) * Math.tan(deflectionRad / 2);
  const arcs = layout.arcs.map(({ radiusIn, sweepRad }, place): CornerArc => {
    const from = vertexAt(vertices, place);
    const to = vertexAt(vertices, place + 1);
    const riseIn = radiusIn * (1 - Math.cos(sweepRad / 2));
    return {
      radiusIn,
      sweepRad,
      arcLengthIn: radiusIn * sweepRad,
      chordIn: 2 * radiusIn * Math.sin(sweepRad / 2),
      riseIn,
      externalIn: second === undefined ? toChordIn - riseIn : null,
      centre: arcOf(from, to).centre,
      from: { xIn: from.xIn, yIn: from.yIn },
      to: { xIn: to.xIn, yIn: to.yIn },
    };
  });

  const offRad = Math.abs(arcs.reduce((sumRad, arc) => sumRad + arc.sweepRad, 0) - deflectionRad) / 2;
  const cornered = [vertices[0], here, vertices.at(-1)].flatMap((vertex) =>
    vertex === undefined ? [] : [{ ...vertex, bulge: 0 }],
  );
  return {
    vertices,
    corner: {
      corner: index + 1,
      setbackBeforeIn: layout.setbackBeforeIn,
      setbackAfterIn: layout.setbackAfterIn,
      arcs,
      deflectionRad,
      areaLostSqIn: ringTurn * (ringAreaSqIn(cornered) - ringAreaSqIn(vertices)),
      kinkRad: offRad < SMOOTH_RAD ? 0 : offRad,
    },
  };
}

/** The end of the first of two arcs: from its start along its chord, half the sweep off the edge before. */
function firstArcEnd(
  before: Point,
  here: Point,
  start: Point,
  hand: number,
  arc: { readonly radiusIn: number; readonly sweepRad: number },
): Point {
  const edgeRad = Math.atan2(here.yIn - before.yIn, here.xIn - before.xIn);
  const chordRad = edgeRad + (hand * arc.sweepRad) / 2;
  const chordIn = 2 * arc.radiusIn * Math.sin(arc.sweepRad / 2);
  return {
    xIn: start.xIn + chordIn * Math.cos(chordRad),
    yIn: start.yIn + chordIn * Math.sin(chordRad),
  };
}

function towards(from: Point, to: Point, stepIn: number): Point {
  const share = stepIn / distanceIn(from, to);
  return { xIn: from.xIn + (to.xIn - from.xIn) * share, yIn: from.yIn + (to.yIn - from.yIn) * share };
}
