import {
  commonPieces,
  containsPoint,
  distanceToEdgeIn,
  lowered,
  type Outline,
  outlineAreaSqIn,
  type Point,
  piecesOutside,
  type Surface,
  surfaceThrough,
} from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import type { Existing } from '../job.ts';
import { rememberByValue } from '../remember.ts';
import { distinctPoints, type GradePoint } from './points.ts';

/** What is there now: the tops of things that go, and the ground, where points tell them. */
export type OldGround = {
  readonly things: readonly OldTop[];
  readonly dirt: Pick<OldTop, 'top' | 'points'> | null;
};

type OldTop = {
  readonly id: string;
  readonly outline: Outline;
  readonly top: Surface;
  readonly points: readonly GradePoint[];
  /** From its top to the bottom of what goes with it [in]. */
  readonly gone: Figure;
};

/** A part of what is there now under a slab. */
export type OldPart = {
  readonly pieces: readonly Outline[];
  readonly top: Surface;
  /** What is left when the old thing is gone. */
  readonly left: Surface;
  readonly points: readonly GradePoint[];
  /** Null on bare ground. */
  readonly gone: Figure | null;
};

/** Less of a slab may lie outside of what is known [sq in]: a square foot. */
const LEAST_PART_SQ_IN = 144;

/** The old tops through the existing points that were read on each; fewer than three make none. */
export function oldGround(made: {
  readonly existing: Readonly<Record<string, Existing>>;
  readonly plans: Readonly<Record<string, Outline>>;
  readonly points: readonly GradePoint[];
}): OldGround & { readonly problems: readonly CoreProblem[] } {
  const problems: CoreProblem[] = [];
  const topOf = (points: readonly GradePoint[]) => {
    const distinct = distinctPoints(points);
    problems.push(...distinct.problems);
    const top = surfaceThrough(distinct.points);
    return top === null ? null : { top, points: distinct.points };
  };
  const things = Object.values(made.existing).flatMap((thing): OldTop[] => {
    const on = made.points.filter(
      ({ point: { stoodOn } }) => stoodOn?.kind === 'existing' && stoodOn.id === thing.id,
    );
    const top = topOf(on);
    const outline = made.plans[thing.id];
    return top === null || outline === undefined
      ? []
      : [{ id: thing.id, outline, ...top, gone: goneFigure(thing) }];
  });
  const dirt = topOf(made.points.filter(({ point: { stoodOn } }) => stoodOn?.kind === 'dirt'));
  return { things, dirt, problems };
}

/** How deep the hole is that a thing leaves: its thickness, a layer on it, and the soil that comes with it. */
function goneFigure({ id, thicknessIn, coating, soilStuckIn }: Existing): Figure {
  const layerIn = coating !== null && 'thicknessIn' in coating ? coating.thicknessIn : null;
  const at = (key: string) => `site.existing.${id}.${key}`;
  return figure({
    value: thicknessIn + (layerIn ?? 0) + soilStuckIn,
    unit: 'in',
    decimals: 2,
    formula: layerIn === null ? 'thicknessIn + soilStuckIn' : 'thicknessIn + layerIn + soilStuckIn',
    inputs: {
      thicknessIn: given(at('thickness'), thicknessIn, 'in'),
      ...(layerIn === null ? {} : { layerIn: given(at('coating-thickness'), layerIn, 'in') }),
      soilStuckIn: given(at('soil-stuck'), soilStuckIn, 'in'),
    },
  });
}

/** What is there now under a slab, part by part; null where more than a square foot of it is not known. */
export function oldPartsUnder(
  slab: Outline,
  { things, dirt }: OldGround,
  allThings: readonly Outline[],
): readonly OldPart[] | null {
  const outlines = things.map(({ outline }) => outline);
  const { pieces, unknownSqIn, bare } = piecesUnder({ slab, outlines, allThings });
  if (unknownSqIn > LEAST_PART_SQ_IN) return null;
  const parts = things.map(
    ({ top, points, gone }, index): OldPart => ({
      pieces: pieces[index] ?? [],
      top,
      left: lowered(top, num(gone)),
      points,
      gone,
    }),
  );
  if (dirt === null) return areaOf(bare) > LEAST_PART_SQ_IN ? null : parts.filter(isSome);
  return [...parts, { pieces: bare, ...dirt, left: dirt.top, gone: null }].filter(isSome);
}

type Below = {
  readonly slab: Outline;
  /** Of what has a known top; what lies below two of them is of the first. */
  readonly outlines: readonly Outline[];
  readonly allThings: readonly Outline[];
};

/** More slabs than a job has. */
const KEPT_PIECES = 50;
const piecesUnder = rememberByValue('old pieces', cutPieces, KEPT_PIECES);

function cutPieces({ slab, outlines, allThings }: Below): {
  readonly pieces: readonly (readonly Outline[])[];
  readonly unknownSqIn: number;
  readonly bare: readonly Outline[];
} {
  return {
    pieces: outlines.map((outline, index) =>
      commonPieces(slab, outline).flatMap((piece) => piecesOutside(piece, outlines.slice(0, index))),
    ),
    unknownSqIn:
      areaOf(piecesOutside(slab, outlines)) - areaOf(piecesOutside(slab, [...outlines, ...allThings])),
    bare: piecesOutside(slab, allThings),
  };
}

/** The part that a place belongs to; at an edge between two, the first. */
export function partAt(parts: readonly OldPart[], at: Point): OldPart | null {
  const within = parts.find(({ pieces }) => pieces.some((piece) => containsPoint(piece, at)));
  if (within !== undefined) return within;
  const farIn = ({ pieces }: OldPart) => Math.min(...pieces.map((piece) => distanceToEdgeIn(piece, at)));
  return parts.toSorted((one, other) => farIn(one) - farIn(other))[0] ?? null;
}

function isSome({ pieces }: OldPart): boolean {
  return pieces.length > 0;
}

function areaOf(pieces: readonly Outline[]): number {
  return pieces.reduce((sum, piece) => sum + outlineAreaSqIn(piece), 0);
}
