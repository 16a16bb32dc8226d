import type { Finder } from './problems-found.ts';

/** What changes at the foot of a flight that stays is said, or where its foot is, and not both. */
export function checkFlight({ origins, add }: Finder, path: string): void {
  const isSaid = origins.has(`${path}.foot`);
  const ends = `${path}.foot-ends`;
  if (isSaid && origins.has(ends)) add(ends, 'foot-said-twice', {});
  if (!isSaid && !origins.has(ends)) add(path, 'foot-missing', {});
}
