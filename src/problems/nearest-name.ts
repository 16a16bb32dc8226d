import { distance } from 'fastest-levenshtein';

/** Longer names are not compared: nobody mistypes one into another, and it costs time. */
const LONGEST_NAME = 60;

/**
 * The known name that a mistyped one was most likely meant to be, or null. Upper and lower
 * case and the choice of `-`, `_` or space do not count as typing mistakes.
 *
 * At most a third of the letters may differ, and always one; letters in the wrong order count once
 * (common practice, no source). Digits must be the same: a 2x8 is not a mistyped 2x4. Of two equally
 * near names the earlier is taken.
 *
 * @example nearestName('thicknes', ['label', 'thickness']) // 'thickness'
 * @example nearestName('colour', ['label', 'thickness']) // null
 */
export function nearestName(written: string, known: readonly string[]): string | null {
  if (written.length > LONGEST_NAME) return null;
  const plain = plainName(written);
  const most = Math.max(1, Math.floor(plain.length / 3));
  let nearest: string | null = null;
  let nearestDistance = most + 1;
  for (const name of known) {
    const between = mistakesBetween(plain, plainName(name));
    if (between < nearestDistance) {
      nearest = name;
      nearestDistance = between;
    }
  }
  return nearest;
}

function mistakesBetween(one: string, other: string): number {
  if (digitsOf(one) !== digitsOf(other)) return Number.POSITIVE_INFINITY;
  const changed = distance(one, other);
  return changed === 2 && sorted(one) === sorted(other) ? 1 : changed;
}

function plainName(name: string): string {
  return name.toLowerCase().replace(/[_ ]/g, '-');
}

function digitsOf(name: string): string {
  return name.replace(/\D/g, '');
}

function sorted(name: string): string {
  return [...name].sort().join('');
}
