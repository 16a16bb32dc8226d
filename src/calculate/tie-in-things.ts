import type { Decimal } from 'decimal.js';
import type { TapedPoint } from './taped-shape.ts';
import type { PublicText } from './text.ts';

/** What is done where a new slab meets a public walk that is not where it should be. */
export type PublicWalkWay = 'match' | 'transition' | 'replace' | 'grind' | 'hold-back' | 'leave-edge';

export const WALK_ENDS = ['left', 'right'] as const;
export type WalkEnd = (typeof WALK_ENDS)[number];

/** A public walk that has settled or heaved where a new slab meets it. */
export type PublicWalk = {
  readonly id: string;
  readonly label: PublicText;
  /** Id of the slab that meets it. */
  readonly slab: string;
  /** Ends of the joint, seen from the walk. */
  readonly ends: Readonly<
    Record<
      WalkEnd,
      {
        /** Id of the fixed point on its edge. */
        readonly now: string;
        /** Against the datum. */
        readonly shouldIn: number;
        /** Id of the point the slab comes down from. */
        readonly up: string;
      }
    >
  >;
  readonly widthIn: number;
  /** How steep the last of the slab would fall to it as it is [rise over run]. */
  readonly transitionSlope: number;
  readonly lastPanelIn: number;
  /** Null where nobody has chosen. */
  readonly way: PublicWalkWay | null;
  readonly authority: PublicText;
  /** What the authority said; null where it said nothing. */
  readonly word: PublicText | null;
  /** What replacing or grinding its panel costs, and what part of it the homeowner pays. */
  readonly panel: { readonly priceUsd: Decimal; readonly ownerRatio: number } | null;
};

/** A drain in a new slab. */
export type Drain = {
  readonly id: string;
  readonly label: PublicText;
  /** One place, or those a channel runs through; never none. */
  readonly at: readonly TapedPoint[];
  /** Of its rim, against the datum. */
  readonly rimIn: number;
  /** Null where nothing leads the water off. */
  readonly pipe: {
    readonly sizeIn: number;
    /** The bottom inside, against the datum, where it leaves the drain and where it ends. */
    readonly invertIn: number;
    readonly outletIn: number;
    readonly lengthIn: number;
    readonly to: PublicText;
  } | null;
};

/** A garage floor that a new slab comes up to. */
export type GarageFloor = {
  readonly id: string;
  readonly label: PublicText;
  /** Id of the slab that meets it. */
  readonly slab: string;
  /** Ids of fixed points on the floor, at the joint; never none. */
  readonly points: readonly string[];
  /** How far the slab stays below the floor there. */
  readonly lipIn: number;
  /** From the joint in to where the seal of the door closes. */
  readonly sealIn: number;
};

/** A line that no water of a new slab may run to. */
export type KeptDry = {
  readonly id: string;
  readonly label: PublicText;
  readonly kind: 'neighbor' | 'window-well' | 'building';
  /** Two points or more. */
  readonly along: readonly TapedPoint[];
};

/** Where new slabs meet what does not move; nothing of it without heights. */
export type TieIns = {
  readonly publicWalks: Readonly<Record<string, PublicWalk>>;
  readonly drains: Readonly<Record<string, Drain>>;
  readonly garages: Readonly<Record<string, GarageFloor>>;
  readonly keepDry: Readonly<Record<string, KeptDry>>;
  /** Ids of points in lines at which a surface may bend. */
  readonly bends: readonly (readonly string[])[];
};
