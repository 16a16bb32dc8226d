import {
  bendEdges,
  type EdgeKind,
  isWithin,
  joinAlongEdge,
  kinksOf,
  moveOutline,
  type NumberedEdge,
  numberedEdges,
  type Outline,
  orient,
  overlapAreaSqIn,
  type Point,
  type Ring,
  type RoundedCorner,
  ringAreaSqIn,
  roundCorners,
  selfCrossing,
  turnOutline,
  withEdgeKinds,
} from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatNumber } from '../../units/index.ts';
import type { PlacedBase, TapedShape } from '../job.ts';
import { type BaseFacts, baseRing, type TapeLimits } from './base-ring.ts';
import { LEAST_OVERLAP_SQ_IN } from './join-slabs.ts';
import { told, toldLeast, toldMost } from './told.ts';

/** Every part of a shape that was closed; areas of the parts before they are put together. */
export type ClosedShape = {
  readonly outline: Outline;
  /** The base with its corners sharp and its edges straight, corner 1 first. */
  readonly base: Ring;
  readonly facts: BaseFacts;
  readonly corners: readonly RoundedCorner[];
  /** Area that bent edges add [in²]; below 0 where they bend in. */
  readonly bentSqIn: number;
  readonly added: Readonly<Record<string, { readonly areaSqIn: number; readonly missIn: number }>>;
  readonly cutOuts: Readonly<Record<string, { readonly areaSqIn: number; readonly at: Point }>>;
  readonly kinks: ReturnType<typeof kinksOf>;
  /** The edges of the outer ring by the numbers they were taped under. */
  readonly edges: readonly NumberedEdge[];
};

export type Closing =
  | ({ readonly ok: true } & ClosedShape)
  | { readonly ok: false; readonly problem: CoreProblem };

type Step<T> = ({ readonly ok: true } & T) | { readonly ok: false; readonly problem: CoreProblem };

/**
 * A taped shape as a closed outline: its base, edges bent, corners rounded, pieces added, parts
 * left out. Corner 1 of the base is at the origin.
 *
 * @param path Job path of the thing, for the problem where the shape cannot be closed.
 */
export function closeShape(shape: TapedShape, path: string, limits: TapeLimits): Closing {
  const base = baseRing(shape.base, path, limits);
  if (!base.ok) return base;
  const kinded = withKinds(base.ring, shape);
  const bent = bend(kinded, shape, path);
  if (!bent.ok) return bent;
  const rounded = round(bent.ring, shape, path);
  if (!rounded.ok) return rounded;
  const widened = addPieces(rounded.ring, shape, path, limits);
  if (!widened.ok) return widened;
  const cut = leaveOut(widened.ring, shape, path, limits);
  if (!cut.ok) return cut;
  return {
    ok: true,
    outline: cut.outline,
    base: base.ring,
    facts: base.facts,
    corners: rounded.corners,
    bentSqIn: Math.abs(ringAreaSqIn(bent.ring)) - Math.abs(ringAreaSqIn(base.ring)),
    added: widened.added,
    cutOuts: cut.cutOuts,
    kinks: kinksOf(cut.outline.rings[0] ?? []),
    edges: edgesByNumber(shape, cut.outline, bent.ring),
  };
}

/** Both half circles of a circle are its edge 1. */
function edgesByNumber(shape: TapedShape, { rings: [outer = []] }: Outline, taped: Ring) {
  const edges = numberedEdges(outer, taped);
  return shape.base.kind === 'circle' ? edges.map((edge) => ({ ...edge, number: 1 })) : edges;
}

/** A circle has one edge to the reader and two half circles in its ring. */
function withKinds(ring: Ring, shape: TapedShape): Ring {
  const kinds = new Map<number, EdgeKind>(shape.edges.map(({ edge, kind }) => [edge, kind]));
  const whole = kinds.get(1);
  if (shape.base.kind === 'circle' && whole !== undefined) kinds.set(2, whole);
  return withEdgeKinds(ring, kinds);
}

function bend(ring: Ring, shape: TapedShape, path: string): Step<{ readonly ring: Ring }> {
  if (shape.bent.length === 0) return { ok: true, ring };
  const made = bendEdges(ring, new Map(shape.bent.map(({ edge, by }) => [edge, by])));
  if (!made.ok) {
    const at = `${path}.bent.${made.edge}`;
    const edge = `${made.edge}`;
    if (made.reason !== 'radius-too-small') return wrong('bend-point-on-edge', `${at}.through`, { edge });
    const by = shape.bent.find((bent) => bent.edge === made.edge)?.by;
    const radius = by?.kind === 'radius' ? told(by.radiusIn) : '';
    const least = toldLeast(made.leastRadiusIn);
    return wrong('radius-too-small', `${at}.radius`, { edge, radius, least });
  }
  const crossed = selfCrossing(made.ring);
  if (crossed === null) return made;
  const [first, second] = crossed;
  return wrong('outline-crosses-itself', `${path}.bent`, { first: `${first}`, second: `${second}` });
}

const KEY_OF_ROUNDING = {
  setback: 'rounded',
  radius: 'rounded-to-radius',
  chord: 'rounded-by-chord',
  'two-arcs': 'rounded-by-two-arcs',
} as const;

function round(
  ring: Ring,
  shape: TapedShape,
  path: string,
): Step<{ readonly ring: Ring; readonly corners: readonly RoundedCorner[] }> {
  const by = new Map(shape.rounded.map((one) => [one.corner, one.by]));
  const made = roundCorners(ring, by);
  if (made.ok) return made;
  const at = `${path}.${KEY_OF_ROUNDING[by.get(made.corner)?.kind ?? 'setback']}.${made.corner}`;
  const corner = `${made.corner}`;
  const rounding = by.get(made.corner);
  if (made.reason === 'not-a-corner') return wrong('corner-runs-straight-on', at, { corner });
  if (made.reason === 'first-turn-too-large' && rounding?.kind === 'two-arcs') {
    return wrong('first-turn-too-large', `${at}.first-turn`, {
      corner,
      turn: formatNumber((rounding.firstTurnRad * 180) / Math.PI, 1),
      most: formatNumber((made.deflectionRad * 180) / Math.PI, 1),
    });
  }
  return wrong('corner-does-not-fit', at, {
    corner,
    wanted: told(made.wantedIn),
    available: toldMost(made.availableIn),
    mostRadius: toldMost(made.mostRadiusIn),
  });
}

function addPieces(ring: Ring, shape: TapedShape, path: string, limits: TapeLimits) {
  let joined = orientedOut(ring);
  const added: Record<string, { areaSqIn: number; missIn: number }> = {};
  for (const piece of Object.values(shape.added)) {
    const at = `${path}.added.${piece.id}`;
    const placed = placedRing(piece, at, limits);
    if (!placed.ok) return placed;
    const made = joinAlongEdge(joined, orientedOut(placed.ring), limits.joiningGapIn);
    if (!made.ok) {
      return wrong('added-does-not-touch', at, {
        piece: piece.label,
        miss: made.missIn === null ? '' : told(made.missIn),
        allowed: toldMost(limits.joiningGapIn),
      });
    }
    joined = made.ring;
    added[piece.id] = { areaSqIn: Math.abs(ringAreaSqIn(placed.ring)), missIn: made.missIn };
  }
  return { ok: true as const, ring: joined, added };
}

function leaveOut(ring: Ring, shape: TapedShape, path: string, limits: TapeLimits) {
  const outer = orient({ rings: [ring] });
  const holes: { readonly label: string; readonly ring: Ring }[] = [];
  const cutOuts: Record<string, { areaSqIn: number; at: Point }> = {};
  for (const cutOut of Object.values(shape.cutOuts)) {
    const at = `${path}.cut-outs.${cutOut.id}`;
    const placed = placedRing(cutOut, at, limits);
    if (!placed.ok) return placed;
    const hole = placed.ring.map((vertex) => ({ ...vertex, edge: cutOut.around }));
    const within = isWithin(outer, hole);
    if (!within.ok) {
      return wrong('cut-out-outside', at, { cutOut: cutOut.label, by: toldLeast(within.byIn) });
    }
    const meets = holes.find(
      (other) =>
        overlapAreaSqIn(orient({ rings: [other.ring] }), orient({ rings: [hole] })) > LEAST_OVERLAP_SQ_IN,
    );
    if (meets !== undefined) {
      return wrong('cut-outs-overlap', at, { first: meets.label, second: cutOut.label });
    }
    holes.push({ label: cutOut.label, ring: hole });
    cutOuts[cutOut.id] = { areaSqIn: Math.abs(ringAreaSqIn(hole)), at: middleOf(hole) };
  }
  return {
    ok: true as const,
    outline: orient({ rings: [ring, ...holes.map((hole) => hole.ring)] }),
    cutOuts,
  };
}

/** The ring of a placed base, turned about its corner 1 and moved to its place. */
function placedRing(piece: PlacedBase, path: string, limits: TapeLimits): Step<{ readonly ring: Ring }> {
  const base = baseRing(piece.base, path, limits);
  if (!base.ok) return base;
  const turned = turnOutline({ rings: [base.ring] }, (piece.turnedRad * 180) / Math.PI);
  const [ring] = moveOutline(turned, { dxIn: piece.at.xIn, dyIn: piece.at.yIn }).rings;
  if (ring === undefined) throw new Error('a base has a ring');
  return { ok: true, ring };
}

function orientedOut(ring: Ring): Ring {
  const [out] = orient({ rings: [ring] }).rings;
  if (out === undefined) throw new Error('a ring stays a ring');
  return out;
}

/** Of the corners; a place for a label, not for a measure. */
function middleOf(ring: Ring): Point {
  const sum = ring.reduce((at, { xIn, yIn }) => ({ xIn: at.xIn + xIn, yIn: at.yIn + yIn }), {
    xIn: 0,
    yIn: 0,
  });
  return { xIn: sum.xIn / ring.length, yIn: sum.yIn / ring.length };
}

function wrong(code: string, path: string, parts: Readonly<Record<string, string>>) {
  return { ok: false as const, problem: { code, path, parts } };
}
