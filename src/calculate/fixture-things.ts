import type { TapedPoint } from './taped-shape.ts';
import type { PublicText } from './text.ts';

/** A lid in a slab that is set to the height of the new surface. */
export type Lid = {
  readonly id: string;
  readonly label: PublicText;
  readonly kind: 'lid' | 'cleanout' | 'valve-box' | 'meter-box';
  readonly at: TapedPoint;
  /** Of its rim now, against the datum. */
  readonly heightIn: number;
};

/** A pipe that lies under a new slab. */
export type UnderSlab = {
  readonly id: string;
  readonly label: PublicText;
  readonly kind: 'downspout' | 'sleeve' | 'irrigation' | 'wires';
  /** Two places or more. */
  readonly along: readonly TapedPoint[];
  readonly sizeIn: number;
  /** From the top of the new slab down to its top. */
  readonly depthIn: number;
};
