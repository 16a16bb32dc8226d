import { ceilToStep, floorToStep, formatFeetInches } from '../../units/index.ts';

/** What a tape is read to, and the fraction it is written in. */
const STEP_IN = 1 / 16;

/** A length as it was taped or found. */
export function told(lengthIn: number): string {
  return formatFeetInches(lengthIn, 16);
}

/** The most that would work: rounded down, so that what is told works. */
export function toldMost(lengthIn: number): string {
  return told(Math.max(0, floorToStep(lengthIn, STEP_IN)));
}

/** The least that would work: rounded up. */
export function toldLeast(lengthIn: number): string {
  return told(ceilToStep(lengthIn, STEP_IN));
}
