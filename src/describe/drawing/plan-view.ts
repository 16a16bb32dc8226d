import type { Line, Outline, Point } from '../../geometry/index.ts';
import type { UnitSystem } from './scales.ts';

/** What stands in a bay; `at` lies in it. */
export type BayMark = { readonly number: string; readonly area: string; readonly at: Point };

export type PlanArea = {
  readonly label: string;
  readonly outline: Outline;
  /** Taped on a slope: from above its circles are ellipses, and no radius of them is written. */
  readonly isForeshortened?: boolean;
  readonly role: 'goes' | 'new' | 'stays';
  /** With its number where it has one. */
  readonly joints: readonly { readonly line: Line; readonly tag: string | null }[];
  /** What is written at a curve instead of its radius; `at` is the middle of its arc. */
  readonly tags: readonly { readonly text: string; readonly at: Point; readonly centre: Point }[];
  /** Numbers of corners, as the tables name them. */
  readonly corners: readonly { readonly text: string; readonly at: Point }[];
  /** Letters of panels: about the middle of each, and how far that is from its edges. */
  readonly panels?: readonly { readonly text: string; readonly at: Point; readonly clearanceIn: number }[];
  /** Names of what is left out; `at` lies in a hole of the outline. */
  readonly holes: readonly { readonly label: string; readonly at: Point }[];
  /** Bays to chalk, one a load: the lines between them, what stands in each, and where the tape is hooked. */
  readonly bays: {
    readonly lines: readonly Line[];
    readonly marks: readonly BayMark[];
    readonly hooks: readonly { readonly text: string; readonly at: Point }[];
  };
  /** Steel that lies in it, on a plan of steel: such an area has no hatch. Bars across corners are extra. */
  readonly bars?: {
    readonly lines: readonly Line[];
    readonly extra: readonly Line[];
    readonly laps: readonly Line[];
  };
  /** A length of this area as it is written on the drawing. */
  readonly dimension: (lengthIn: number) => string;
};

export type PhotoPoint = {
  readonly text: string;
  /** Where the photographer stands. */
  readonly at: Point;
  /** Clockwise from up the plan. */
  readonly lookingDeg: number;
};

/** An arrow that points where water runs. */
export type Fall = {
  /** Beside it; null leaves it alone. */
  readonly text: string | null;
  /** Its middle. */
  readonly at: Point;
  /** Anticlockwise from right on the plan. */
  readonly towardsRad: number;
};

export type PlanView = {
  readonly id: string;
  readonly title: string;
  readonly areas: readonly PlanArea[];
  readonly photoPoints: readonly PhotoPoint[];
  readonly falls: readonly Fall[];
  /** Without dimensions and radii: for those who only look. */
  readonly isPlain: boolean;
  /** Where north lies, clockwise from up the plan; null leaves the arrow out. */
  readonly northDeg: number | null;
  /** The most paper the drawing may take [in]; its height shrinks to what it shows. */
  readonly sheet: { readonly widthIn: number; readonly heightIn: number };
  readonly system: UnitSystem;
  readonly words: {
    /** A scale such as 1/4″ = 1′ or 1:50, in words. */
    readonly scale: (scale: string) => string;
    /** A radius, from its length as written. */
    readonly radius: (length: string) => string;
    /** The length of the scale bar. */
    readonly lengthOf: (lengthIn: number) => string;
    /** The letter at the tip of the north arrow. */
    readonly north: string;
  };
};

/** Whether bays are numbered on the plan. */
export function isMarked({ areas }: Pick<PlanView, 'areas'>): boolean {
  return areas.some(({ bays }) => bays.marks.length > 0);
}
