import type { Decimal } from 'decimal.js';
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

/** Where new slabs meet what does not move; nothing of it without heights. */
export type TieIns = {
  readonly publicWalks: Readonly<Record<string, PublicWalk>>;
};
