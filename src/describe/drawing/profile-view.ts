import type { LinePiece } from '../../geometry/index.ts';
import type { UnitSystem } from './scales.ts';

/** A slab as a profile meets it; distances from the start of the profile, heights above the datum [in]. */
export type ProfileReach = {
  /** Its new top, from break to break. */
  readonly top: readonly LinePiece[];
  readonly thicknessIn: number;
  readonly baseIn: number;
  /** Tops of what is there now, and how far below each is what is left when it is gone. */
  readonly old: readonly { readonly top: LinePiece; readonly goneIn: number }[];
};

export type ProfileView = {
  readonly id: string;
  readonly title: string;
  readonly reaches: readonly ProfileReach[];
  /** How the ground goes on past the last slab, from its edge on; none or two points or more. */
  readonly beyond: readonly { readonly alongIn: number; readonly heightIn: number }[];
  /** Ends and breaks of the new top, and the points beyond it, in order. */
  readonly stations: readonly {
    readonly letter: string;
    readonly alongIn: number;
    readonly heightIn: number;
  }[];
  /** How each part between two stations falls, written above it where there is room. */
  readonly slopes: readonly { readonly text: string; readonly fromIn: number; readonly toIn: number }[];
  /** The most paper the drawing may take [in]; its height shrinks to what it shows. */
  readonly sheet: { readonly widthIn: number; readonly heightIn: number };
  readonly system: UnitSystem;
  readonly words: {
    /** A scale such as 1/4″ = 1′ or 1:50, and how many times as large heights are drawn. */
    readonly profileScale: (scale: string, times: string) => string;
    readonly lengthOf: (lengthIn: number) => string;
    readonly heightOf: (heightIn: number) => string;
    /** Names of the lines, from the new top down. */
    readonly profileLines: {
      readonly top: string;
      readonly now: string;
      readonly slabBottom: string;
      readonly left: string;
      readonly baseBottom: string;
      /** Past the last slab. */
      readonly beyond: string;
    };
  };
};
