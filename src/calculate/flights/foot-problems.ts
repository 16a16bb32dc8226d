import type { CoreProblem } from '../../problems/index.ts';
import { formatInches } from '../../units/index.ts';
import { num } from '../figure.ts';
import type { Flight } from '../job.ts';
import type { FootChanges } from './foot-changes.ts';
import { FOOT_SPOTS } from './foot-figures.ts';

/** Where the surface at the foot of a flight would lie as high as its lowest tread, or above it. */
export function footProblems(
  { id, risersIn, foot }: Pick<Flight, 'id' | 'risersIn' | 'foot'>,
  changes: FootChanges,
): CoreProblem[] {
  const [lowestIn = 0] = risersIn;
  const path = `site.flights.${id}`;
  return FOOT_SPOTS.filter((at) => !(lowestIn - num(changes[at]) > 0)).map((at) => ({
    code: 'foot-above-tread',
    path: foot.kind === 'typed' ? `${path}.foot.${at}` : `${path}.foot-ends`,
    parts: { rise: formatInches(num(changes[at]), 16), riser: formatInches(lowestIn, 16) },
  }));
}
