import type { Bend, EdgeKind, Rounding, StripPiece } from '../geometry/index.ts';
import type { PublicText } from './text.ts';

export type { Bend, Rounding, StripPiece, TurnRounding } from '../geometry/index.ts';

/** Along the first side, then across it to the left, from corner 1. */
export type TapedPoint = { readonly xIn: number; readonly yIn: number };

/** A shape as a tape gives it, before corners are rounded. Corners and edges are numbered from 1. */
export type TapedBase =
  | { readonly kind: 'rectangle'; readonly lengthIn: number; readonly widthIn: number }
  | {
      /** Corner 1 to 2 is the base; the top, corner 3 to 4, runs parallel to it at the depth. */
      readonly kind: 'trapezoid';
      readonly baseIn: number;
      readonly topIn: number;
      readonly depthIn: number;
      /** How far along the base corner 4 stands; may be below 0. */
      readonly offsetIn: number;
    }
  /** One edge, number 1; its centre is at half the diameter along and across. */
  | { readonly kind: 'circle'; readonly diameterIn: number }
  /** Corner 1 is the centre; edge 1 a radius along, edge 2 the arc, edge 3 the radius back. */
  | { readonly kind: 'sector'; readonly radiusIn: number; readonly angleRad: number }
  | { readonly kind: 'corners'; readonly points: readonly TapedPoint[] }
  | {
      /** Side after side, each turned from the one before; the first turn is 0. */
      readonly kind: 'sides';
      readonly sides: readonly { readonly lengthIn: number; readonly turnRad: number }[];
    }
  | {
      /** Edges 1 to 4 and the diagonal from corner 1 to corner 3; the other one is a check. */
      readonly kind: 'four-sides';
      readonly sidesIn: readonly [number, number, number, number];
      readonly diagonalIn: number;
      readonly otherDiagonalIn: number | null;
    }
  | {
      /** Corner 1 to 2 is the base; every other corner by its distances from two before it. */
      readonly kind: 'triangles';
      readonly baseIn: number;
      readonly corners: readonly {
        readonly from: readonly [number, number];
        readonly distancesIn: readonly [number, number];
        /** Seen from the first of the two towards the second. */
        readonly side: 'left' | 'right';
      }[];
    }
  | {
      /** Corner 1 is on the centre line at its start; the line starts along. */
      readonly kind: 'strip';
      readonly widthIn: number;
      /** The width at the far end, changing evenly along the line; null keeps the width. */
      readonly endWidthIn: number | null;
      readonly line: readonly StripPiece[];
      readonly edges: {
        readonly start: EdgeKind;
        readonly end: EdgeKind;
        readonly left: EdgeKind;
        readonly right: EdgeKind;
      };
    };

/** A shape with its place: corner 1 stands at `at`, and the shape is turned about it. */
export type PlacedBase = {
  readonly base: TapedBase;
  readonly at: TapedPoint;
  readonly turnedRad: number;
};

/** What is left out of a slab: a planter, a tree well, a column, a lid, a drain. */
export type CutOut = PlacedBase & {
  readonly id: string;
  readonly label: PublicText;
  /** What the concrete ends at there. */
  readonly around: EdgeKind;
};

/** A piece joined to a slab along a straight edge: a widening. */
export type AddedPiece = PlacedBase & { readonly id: string; readonly label: PublicText };

/** An outline as taped; `calculate/outline` closes it. */
export type TapedShape = {
  readonly base: TapedBase;
  readonly rounded: readonly { readonly corner: number; readonly by: Rounding }[];
  readonly bent: readonly { readonly edge: number; readonly by: Bend }[];
  /** Edge number to what it runs along; an edge not named is formed (new) or free (existing). */
  readonly edges: readonly { readonly edge: number; readonly kind: EdgeKind }[];
  /** Places are on this shape: along and across from its corner 1. */
  readonly cutOuts: Readonly<Record<string, CutOut>>;
  readonly added: Readonly<Record<string, AddedPiece>>;
  /**
   * How the tape lay where the ground is steep: lengths in the direction of the slope are those of
   * the surface (`on-slope`) or of the plan (`level`). Null where it makes no difference.
   */
  readonly taped: {
    readonly how: 'on-slope' | 'level';
    readonly slope: number;
    readonly runs: 'along' | 'across';
  } | null;
  /** Where corner 1 stands on the plan; null puts the shape beside the one before. */
  readonly at: TapedPoint | null;
  /** Turned about corner 1 on the plan, anticlockwise. */
  readonly turnedRad: number;
};
