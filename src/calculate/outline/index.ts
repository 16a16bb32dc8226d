import { edgesOf, type NumberedEdge, type Outline, type Point, type Ring } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import type { TapedShape } from '../job.ts';
import type { PublicText } from '../text.ts';
import type { TopicResult } from '../topic.ts';
import type { TapeLimits } from './base-ring.ts';
import { type ClosedShape, closeShape } from './close-shape.ts';
import { joinShapes } from './join-slabs.ts';
import { type Placing, placedOutline, placedPoint, placer, stretches } from './place.ts';
import { type ShapeFigures, shapeFigures } from './shape-figures.ts';

export type { ShapeFigures } from './shape-figures.ts';

/** What is left out of a shape, where it is labelled on the plan. */
export type CutOutOnPlan = { readonly label: PublicText; readonly at: Point };

export type { TapeLimits } from './base-ring.ts';
export { type Placing, placedPoint, surfaceToPlan } from './place.ts';

type Outlines = Readonly<Record<string, Outline>>;

/** Where a shape lies: its surface, and its level plan. */
export type Lies = { readonly surface: Placing; readonly plan: Placing };

/** A corner between two straight edges, corners not yet rounded. */
export type StringCorner = { readonly number: number; readonly at: Point };

type Measured = {
  readonly figures: Record<string, ShapeFigures>;
  readonly surfaces: Record<string, Outline>;
  readonly plans: Outlines;
  readonly lies: Record<string, Lies>;
  readonly corners: Record<string, readonly StringCorner[]>;
  readonly cutOuts: Record<string, readonly CutOutOnPlan[]>;
  readonly edges: Record<string, readonly NumberedEdge[]>;
};

export type OutlineResult = TopicResult<
  { readonly slabs: Record<string, ShapeFigures>; readonly existing: Record<string, ShapeFigures> },
  {
    /** Of the surface: what material follows. */
    readonly slabs: Outlines;
    readonly existing: Outlines;
    /** Level, as drawn. */
    readonly plans: { readonly slabs: Outlines; readonly existing: Outlines };
    /** Of each slab. */
    readonly lies: Readonly<Record<string, Lies>>;
    readonly existingLies: Readonly<Record<string, Lies>>;
    /** Sharp corners of each slab on its surface, those a string can be stretched to, by their number. */
    readonly corners: Readonly<Record<string, readonly StringCorner[]>>;
    /** The edges of the outer ring of each slab, on its surface, in their order. */
    readonly edges: Readonly<Record<string, readonly NumberedEdge[]>>;
    readonly cutOuts: Record<'slabs' | 'existing', Readonly<Record<string, readonly CutOutOnPlan[]>>>;
  }
>;

type Shaped = { readonly id: string; readonly label: PublicText; readonly shape: TapedShape };

/**
 * Closes every taped shape of a job, puts it on the plan and measures it.
 *
 * A shape that cannot be closed gives a problem and no figures; the others are measured all the
 * same, so that every wrong shape shows at once.
 */
export function calcOutline(input: {
  readonly slabs: Readonly<Record<string, Shaped>>;
  readonly existing: Readonly<Record<string, Shaped>>;
  readonly limits: TapeLimits;
}): OutlineResult {
  const slabs = measureAll(input.slabs, 'build.slabs', input.limits);
  const existing = measureAll(input.existing, 'site.existing', input.limits);
  return {
    figures: { slabs: slabs.figures, existing: existing.figures },
    data: {
      slabs: slabs.surfaces,
      existing: existing.surfaces,
      plans: { slabs: slabs.plans, existing: existing.plans },
      lies: slabs.lies,
      existingLies: existing.lies,
      corners: slabs.corners,
      edges: slabs.edges,
      cutOuts: { slabs: slabs.cutOuts, existing: existing.cutOuts },
    },
    problems: [...slabs.problems, ...existing.problems],
  };
}

function measureAll(things: Readonly<Record<string, Shaped>>, section: string, limits: TapeLimits) {
  const closed: { readonly thing: Shaped; readonly shape: ClosedShape; readonly path: string }[] = [];
  const problems: CoreProblem[] = [];
  for (const thing of Object.values(things)) {
    const path = `${section}.${thing.id}`;
    const closing = closeShape(thing.shape, path, limits);
    if (closing.ok) closed.push({ thing, shape: closing, path });
    else problems.push(closing.problem);
  }

  const placeOf = placer();
  const laid = closed.map(({ thing, shape }) => {
    const { turnedRad, taped, at } = thing.shape;
    const { surface, plan } = stretches(taped);
    const planAt = placeOf(shape.outline, thing.shape);
    const lies: Lies = {
      surface: { ...surface, turnedRad, at: planAt },
      plan: { ...plan, turnedRad, at: planAt },
    };
    const { id, label } = thing;
    return {
      lies,
      onPlan: { id, label, outline: placedOutline(shape.outline, lies.plan), isPlaced: at !== null },
    };
  });
  const joined = joinShapes(
    laid.map(({ onPlan }) => onPlan),
    section,
    limits.joiningGapIn,
  );
  problems.push(...joined.problems);

  const made: Measured = {
    figures: {},
    surfaces: {},
    plans: joined.outlines,
    lies: {},
    corners: {},
    cutOuts: {},
    edges: {},
  };
  for (const [index, { thing, shape, path }] of closed.entries()) {
    const { id } = thing;
    const lies = movedBy(laid[index]?.lies, joined.moves[id]);
    made.lies[id] = lies;
    made.surfaces[id] = placedOutline(shape.outline, lies.surface);
    // Measured where it was closed: a move would add the noise of its coordinates.
    const surface = placedOutline(shape.outline, { ...lies.surface, turnedRad: 0, at: { xIn: 0, yIn: 0 } });
    const miss = joined.misses[id] ?? null;
    made.figures[id] = shapeFigures({ shape: thing.shape, closed: shape, surface, path, miss, limits });
    made.corners[id] = stringCorners(shape.base).map(({ number, at }) => ({
      number,
      at: placedPoint(at, lies.surface),
    }));
    made.edges[id] = shape.edges.map(({ number, points }) => ({
      number,
      points: points.map((point) => placedPoint(point, lies.surface)),
    }));
    made.cutOuts[id] = Object.values(thing.shape.cutOuts).flatMap((cutOut) => {
      const left = shape.cutOuts[cutOut.id];
      return left === undefined ? [] : [{ label: cutOut.label, at: placedPoint(left.at, lies.plan) }];
    });
  }
  return { ...made, problems };
}

function movedBy(lies: Lies | undefined, move: { dxIn: number; dyIn: number } | undefined): Lies {
  if (lies === undefined) throw new Error('every closed shape was laid out');
  if (move === undefined) return lies;
  const moved = (placing: Lies['plan']) => ({
    ...placing,
    at: { xIn: placing.at.xIn + move.dxIn, yIn: placing.at.yIn + move.dyIn },
  });
  return { surface: moved(lies.surface), plan: moved(lies.plan) };
}

/** Corners between two straight edges: a string can be stretched to them. */
function stringCorners(ring: Ring): readonly StringCorner[] {
  const edges = edgesOf(ring);
  return edges.flatMap(({ number, from }, index) => {
    const before = edges[(index + edges.length - 1) % edges.length];
    const isSharp = from.bulge === 0 && before?.from.bulge === 0;
    return isSharp ? [{ number, at: { xIn: from.xIn, yIn: from.yIn } }] : [];
  });
}
