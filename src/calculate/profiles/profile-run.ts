import {
  clipSegmentToOutline,
  distanceIn,
  type LinePiece,
  type Outline,
  type Point,
  pointAlong,
  surfaceAlong,
} from '../../geometry/index.ts';
import { num } from '../figure.ts';
import type { GradedSlab } from '../grades/index.ts';

/** Where a profile enters, leaves or breaks on a slab. */
export type Station = {
  readonly letter: string;
  readonly slab: GradedSlab;
  readonly at: Point;
  /** From the start of the profile [in]. */
  readonly alongIn: number;
};

/** A profile over one slab; distances from the start of the profile [in]. */
export type Reach = {
  readonly slab: GradedSlab;
  /** Its new top, from break to break. */
  readonly pieces: readonly LinePiece[];
  /** Of the stations at the ends of its pieces, in order. */
  readonly letters: readonly string[];
  /** Tops of what is there now, and what is left when that is gone; empty where it is not known. */
  readonly old: readonly { readonly top: LinePiece; readonly goneIn: number }[];
};

export type ProfileRun = {
  readonly reaches: readonly Reach[];
  readonly stations: readonly Station[];
};

type Segment = { readonly from: Point; readonly to: Point; readonly startIn: number };
/** On a slab; distances from the start of its segment [in]. */
type Part = {
  readonly slab: GradedSlab;
  readonly segment: Segment;
  readonly fromIn: number;
  readonly toIn: number;
};

/** A slab that a profile meets for less than this is only touched [in]. */
const LEAST_REACH_IN = 1;
/** The noise of adding up lengths [in]. */
const NOISE_IN = 1e-6;

/** What a profile through some points meets, in order along it. */
export function profileRun(along: readonly Point[], slabs: readonly GradedSlab[]): ProfileRun {
  const segments = segmentsOf(along);
  const parts = segments.flatMap((segment) =>
    slabs
      .flatMap((slab) =>
        clipped(segment, slab.outline).map((stretch): Part => ({ slab, segment, ...stretch })),
      )
      .toSorted((one, other) => one.fromIn - other.fromIn),
  );
  const stations: Station[] = [];
  const reaches = runsOn(parts).map((own): Reach => {
    const [{ slab }] = own;
    const pieces = own.flatMap((part) => piecesOn(part, slab.surface));
    const ends = [...pieces.map(({ fromIn }) => fromIn), pieces.at(-1)?.toIn ?? 0];
    const letters = ends.map((alongIn) => {
      const letter = stationLetter(stations.length);
      stations.push({ letter, slab, alongIn, at: placeOn(segments, alongIn) });
      return letter;
    });
    return { slab, pieces, letters, old: own.flatMap(oldOf) };
  });
  return { reaches, stations };
}

type Run = [Part, ...Part[]];

/** Parts that follow one another on one slab, where the line only bends, are one. */
function runsOn(parts: readonly Part[]): readonly Run[] {
  const runs: Run[] = [];
  for (const part of parts) {
    const last = runs.at(-1);
    const before = last?.at(-1);
    const runsOnHere =
      before !== undefined && before.slab === part.slab && Math.abs(endIn(before) - startIn(part)) < NOISE_IN;
    if (runsOnHere) last?.push(part);
    else runs.push([part]);
  }
  return runs;
}

const startIn = ({ segment, fromIn }: Part) => segment.startIn + fromIn;
const endIn = ({ segment, toIn }: Part) => segment.startIn + toIn;

/** @throws {RangeError} If there is no segment. */
function placeOn(segments: readonly Segment[], alongIn: number): Point {
  const segment = segments.findLast(({ startIn: from }) => from <= alongIn + NOISE_IN) ?? segments[0];
  if (segment === undefined) throw new RangeError('a profile without a line');
  return pointAlong(segment, alongIn - segment.startIn);
}

function segmentsOf(along: readonly Point[]): readonly Segment[] {
  const segments: Segment[] = [];
  for (const [index, to] of along.slice(1).entries()) {
    const from = along[index] ?? to;
    const last = segments.at(-1);
    if (distanceIn(from, to) > 0) segments.push({ from, to, startIn: (last?.startIn ?? 0) + lengthOf(last) });
  }
  return segments;
}

function lengthOf(segment: Segment | undefined): number {
  return segment === undefined ? 0 : distanceIn(segment.from, segment.to);
}

function clipped({ from, to }: Segment, outline: Outline) {
  const line = { fromXIn: from.xIn, fromYIn: from.yIn, toXIn: to.xIn, toYIn: to.yIn };
  return clipSegmentToOutline(line, outline).filter(({ fromIn, toIn }) => toIn - fromIn >= LEAST_REACH_IN);
}

/** A surface along a part, measured from the start of the profile. */
function piecesOn({ segment, fromIn, toIn }: Part, surface: GradedSlab['surface']): readonly LinePiece[] {
  const line = { from: pointAlong(segment, fromIn), to: pointAlong(segment, toIn) };
  const shiftIn = segment.startIn + fromIn;
  return surfaceAlong(surface, line).map((piece) => ({
    ...piece,
    fromIn: piece.fromIn + shiftIn,
    toIn: piece.toIn + shiftIn,
  }));
}

function oldOf(part: Part): Reach['old'] {
  const found = (part.slab.parts ?? []).flatMap(({ pieces, top, gone }) =>
    pieces.flatMap((piece) =>
      clipped(part.segment, piece).flatMap(({ fromIn, toIn }) => {
        const own = { ...part, fromIn: Math.max(fromIn, part.fromIn), toIn: Math.min(toIn, part.toIn) };
        if (own.toIn - own.fromIn < LEAST_REACH_IN) return [];
        return piecesOn(own, top).map((one) => ({ top: one, goneIn: gone === null ? 0 : num(gone) }));
      }),
    ),
  );
  return found.toSorted((one, other) => one.top.fromIn - other.top.fromIn);
}

/** a, b … z, aa, ab … */
/** The letter of a station by its place: a to z, then aa; points past the last slab go on after it. */
export function stationLetter(index: number): string {
  const letter = String.fromCharCode('a'.charCodeAt(0) + (index % 26));
  return index < 26 ? letter : `${stationLetter(Math.floor(index / 26) - 1)}${letter}`;
}
