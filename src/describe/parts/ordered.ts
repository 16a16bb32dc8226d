import type { PublicText } from '../../calculate/text.ts';
import type { Made } from '../made.ts';
import { showIn } from '../show/index.ts';

type For = Pick<Made, 'job' | 'show'>;

/** Concrete in the unit it is sold in, as it stands on the ticket: rounded in another one its loads would not add up. */
export function soldVolume(volumeCuYd: number, { job }: For): PublicText {
  const { perUnit } = job.company.suppliers.concrete.price;
  return showIn(perUnit === 'm3' ? 'metric' : 'us').volume(volumeCuYd);
}

/** The same, and beside it in the unit of the job where that is another. */
export function orderedVolume(volumeCuYd: number, made: For): PublicText {
  return beside(soldVolume(volumeCuYd, made), made.show.volume(volumeCuYd));
}

/** Base, which is sold by the short ton. */
export function orderedTons(weightLb: number, { show }: For): PublicText {
  return beside(showIn('us').tons(weightLb), show.tons(weightLb));
}

function beside(sold: PublicText, own: PublicText): PublicText {
  return sold === own ? sold : (`${sold} (${own})` as PublicText);
}
