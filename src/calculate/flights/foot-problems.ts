import type { CoreProblem } from '../../problems/index.ts';
import { formatInches } from '../../units/index.ts';
import type { Flight } from '../job.ts';
import { FOOT_SPOTS } from './foot-figures.ts';

/** Where the surface at the foot of a flight would lie as high as its lowest tread, or above it. */
export function footProblems({
  id,
  risersIn,
  foot,
}: Pick<Flight, 'id' | 'risersIn' | 'foot'>): CoreProblem[] {
  const [lowestIn = 0] = risersIn;
  return FOOT_SPOTS.filter((at) => !(lowestIn - foot[at] > 0)).map((at) => ({
    code: 'foot-above-tread',
    path: `site.flights.${id}.foot.${at}`,
    parts: { rise: formatInches(foot[at], 16), riser: formatInches(lowestIn, 16) },
  }));
}
