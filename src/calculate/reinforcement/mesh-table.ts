import type { MeshStyle } from '../job.ts';

/*
 * Welded wire reinforcement, ASTM A1064 (formerly A185).
 *
 * Weights: table of stock styles, data of the Wire Reinforcement Institute, in Concrete
 * Construction, "New welded wire fabric numbering system explained" (seen). It has the old 6x6-W2.0
 * at 29 lb; the row 6x6-W2.1, which replaced it, is from memory.
 * Published weights assume rolls 60 in wide with 1 in of wire beyond the last one on each side.
 */

export type MeshRow = {
  /** Between wires, both ways alike [in]. */
  readonly wireSpacingIn: number;
  /** Wire area in hundredths of a square inch: W1.4 is 0.014 sq in. */
  readonly wireNumber: number;
  readonly lbPer100SqFt: number;
  readonly source: string;
};

const STOCK =
  'Concrete Construction, New welded wire fabric numbering system explained, data of the Wire Reinforcement Institute (seen)';
const RECALLED = 'Wire Reinforcement Institute, styles of welded wire reinforcement (memory)';

export const meshTable: Readonly<Record<MeshStyle, MeshRow>> = {
  '6x6-w1.4': { wireSpacingIn: 6, wireNumber: 1.4, lbPer100SqFt: 21, source: STOCK },
  '6x6-w2.1': { wireSpacingIn: 6, wireNumber: 2.1, lbPer100SqFt: 30, source: RECALLED },
  '6x6-w2.9': { wireSpacingIn: 6, wireNumber: 2.9, lbPer100SqFt: 42, source: STOCK },
  '6x6-w4.0': { wireSpacingIn: 6, wireNumber: 4.0, lbPer100SqFt: 58, source: STOCK },
  '4x4-w1.4': { wireSpacingIn: 4, wireNumber: 1.4, lbPer100SqFt: 31, source: STOCK },
  '4x4-w2.9': { wireSpacingIn: 4, wireNumber: 2.9, lbPer100SqFt: 62, source: STOCK },
};

/**
 * Diameter of a wire by its number [in].
 *
 * d = sqrt(4 (W / 100) / pi). Source: definition, W in hundredths of a square inch (ASTM A1064, memory).
 */
export function wireDiameterIn(wireNumber: number): number {
  if (!(wireNumber > 0 && wireNumber < Infinity))
    throw new RangeError(`a wire number is above 0, got ${wireNumber}`);
  return Math.sqrt((4 * wireNumber) / 100 / Math.PI);
}
