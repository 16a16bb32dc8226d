import type { CoreProblem } from '../../problems/index.ts';
import type { Company } from '../job.ts';
import { thingNamed } from '../parts.ts';
import type { HaulRates } from './cost-figures.ts';
import type { DrivenTrip } from './driven.ts';
import type { HaulLoad } from './load-table.ts';
import { type MachineFigures, machineFigures } from './machine-figures.ts';
import {
  type Carried,
  carriedMachines,
  legsToJob,
  legsToYard,
  type MachineLeg,
  type Riding,
  type Yard,
} from './machine-legs.ts';
import type { WorkingDay } from './schedule.ts';
import type { UsableTrailer } from './usable-trailer.ts';

/** The machines of a job on its trailers: who carries them, when, for what. */
export type Machines = {
  readonly carried: readonly Carried[];
  readonly legs: readonly MachineLeg[];
  readonly figures: Readonly<Record<string, MachineFigures>>;
  readonly problems: readonly CoreProblem[];
};

export function machinesOf(
  riding: readonly Riding[],
  made: {
    readonly yard: Yard | null;
    readonly day: WorkingDay;
    readonly rates: HaulRates;
    readonly production: Company['production'];
    readonly trailers: Readonly<Record<string, UsableTrailer>>;
    readonly loads: readonly HaulLoad[];
    readonly trips: readonly DrivenTrip[];
  },
): Machines {
  const { yard, day, rates, trailers } = made;
  if (yard === null) return { carried: [], legs: [], figures: {}, problems: [] };
  const first = made.loads[0]?.trailer ?? null;
  const { carried, problems } = carriedMachines(riding, { ...made, first });
  const last = made.trips.toSorted((one, other) => (whenBack(one) < whenBack(other) ? -1 : 1)).at(-1) ?? null;
  return {
    carried,
    legs: [...legsToJob(carried, yard, day), ...legsToYard(carried, { yard, day, last })],
    figures: machineFigures(carried, {
      yard,
      rates,
      payloadOf: (trailer) => thingNamed(trailers, trailer, 'trailer').figures.payload,
    }),
    problems,
  };
}

/** Sorts by day and hour. */
function whenBack({ on, backHr }: DrivenTrip): string {
  return `${on} ${backHr.toFixed(6).padStart(12, '0')}`;
}
