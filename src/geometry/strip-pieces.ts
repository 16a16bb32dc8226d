/** How a corner of a walk is rounded where its centre line turns at once. */
export type TurnRounding = {
  /**
   * `equal`: the same setback on the inner and the outer corner, which widens the walk there;
   * `parallel`: the outer arc keeps the width, its radius is the inner one plus the width;
   * `outer`, `inner`: only that corner, which pinches or widens.
   */
  readonly how: 'equal' | 'parallel' | 'outer' | 'inner';
  /** Back from the inner corner; from the outer corner with `outer`. */
  readonly setbackIn: number;
};

/** A piece of a centre line. Turns are to the left where positive. */
export type StripPiece =
  | { readonly kind: 'straight'; readonly lengthIn: number }
  | { readonly kind: 'arc'; readonly radiusIn: number; readonly turnRad: number }
  | { readonly kind: 'turn'; readonly turnRad: number; readonly rounding: TurnRounding | null };
