import { ceilCount } from '../../units/index.ts';

/**
 * Where a length is divided into as many equal parts as the limit asks for, or one more; and into as many as
 * make square panels, where that is known.
 */
export function shares(lengthIn: number, limitIn: number, squareCount = 1): readonly number[] {
  const count = ceilCount(lengthIn / limitIn);
  const found: number[] = [];
  for (const parts of new Set([squareCount, count, count + 1])) {
    for (const share of evenShares(parts)) {
      if (!found.some((known) => Math.abs(known - share) < 1e-9)) found.push(share);
    }
  }
  return found;
}

/** Where a length is divided into so many equal parts, its ends left out. */
export function evenShares(partCount: number): readonly number[] {
  return Array.from({ length: partCount - 1 }, (_, index) => (index + 1) / partCount);
}
