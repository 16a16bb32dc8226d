/**
 * A drawing as data: primitives in inches on the paper, x right, y down from the top left corner.
 * An SVG writer and any other writer read the same primitives; tests run on them.
 */
export type Drawing = {
  /** Unique on a page: letters, digits and hyphens, starting with a letter. */
  readonly id: string;
  readonly title: string;
  readonly widthIn: number;
  readonly heightIn: number;
  readonly scale: Scale;
  /** Where the origin of the ground lies; it may be off the paper. */
  readonly origin: PaperPoint;
  readonly layers: readonly Layer[];
};

export type Scale = {
  /** Inches on the paper to one inch on the ground. */
  readonly paperInPerIn: number;
  readonly text: string;
};

export type LayerName =
  | 'existing-goes'
  | 'new-slab'
  | 'stays'
  | 'bars'
  | 'joints'
  | 'bays'
  | 'photos'
  | 'falls'
  | 'dimensions'
  | 'labels'
  | 'frame';

export type Layer = { readonly name: LayerName; readonly primitives: readonly Primitive[] };

export type PaperPoint = { readonly xIn: number; readonly yIn: number };

export type PathPart =
  | ({ readonly kind: 'move' | 'line' } & PaperPoint)
  | ({
      readonly kind: 'arc';
      readonly radiusIn: number;
      /** tan(sweep / 4), anticlockwise positive as seen on the paper. */
      readonly bulge: number;
    } & PaperPoint)
  | { readonly kind: 'close' };

export type Dash = 'solid' | 'dash-dot' | 'dashed';

export type PathPrimitive = {
  readonly kind: 'path';
  readonly parts: readonly PathPart[];
  readonly weightMm: number;
  readonly dash: Dash;
};

export type LinePrimitive = {
  readonly kind: 'line';
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  readonly weightMm: number;
  readonly dash: Dash;
};

export type TextPrimitive = {
  readonly kind: 'text';
  /** The anchor on the baseline. */
  readonly xIn: number;
  readonly yIn: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly sizePt: number;
  readonly weight: 400 | 700;
  /** Turned about the anchor, clockwise as seen on the paper. */
  readonly turnDeg: number;
};

/** Filled by the even-odd rule, so that a ring inside another stays free: a planter, a label. */
export type HatchPrimitive = {
  readonly kind: 'hatch';
  readonly parts: readonly PathPart[];
  readonly pattern: HatchPattern;
};

export type HatchPattern = 'goes' | 'new' | 'base' | 'none';

export type DotPrimitive = {
  readonly kind: 'dot';
  readonly xIn: number;
  readonly yIn: number;
  readonly radiusIn: number;
};

export type Primitive = PathPrimitive | LinePrimitive | TextPrimitive | HatchPrimitive | DotPrimitive;

/** Line weights of the whole drawing set. */
export const lineWeightsMm = { newEdge: 0.7, existing: 0.35, thin: 0.18 } as const;
