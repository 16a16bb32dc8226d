import type { Company } from '../job.ts';
import { thingNamed } from '../parts.ts';
import type { HaulRates } from './cost-figures.ts';
import type { DrivenTrip } from './driven.ts';
import type { HaulLoad } from './load-table.ts';
import { type MachineFigures, machineFigures } from './machine-figures.ts';
import { type MachineLeg, machineLegs, type Rides, type Yard } from './machine-legs.ts';
import type { WorkingDay } from './schedule.ts';
import type { UsableTrailer } from './usable-trailer.ts';

/** The machines of a job on its trailers: which ride together, when, for what. */
export type Machines = {
  readonly legs: readonly MachineLeg[];
  readonly figures: Readonly<Record<string, MachineFigures>>;
};

export function machinesOf(
  rides: Rides,
  made: {
    readonly yard: Yard | null;
    readonly day: WorkingDay;
    readonly rates: HaulRates;
    readonly machines: Company['machines'];
    readonly trailers: Readonly<Record<string, UsableTrailer>>;
    readonly loads: readonly HaulLoad[];
    readonly trips: readonly DrivenTrip[];
  },
): Machines {
  const { yard, day, rates, machines, trailers, loads, trips } = made;
  if (yard === null) return { legs: [], figures: {} };
  const last = trips.toSorted((one, other) => (whenBack(one) < whenBack(other) ? -1 : 1)).at(-1) ?? null;
  const first = loads[0]?.trailer ?? null;
  const legs = machineLegs(rides, { yard, day, trailers: Object.values(trailers), first, last });
  const payloadOf = (trailer: string) => thingNamed(trailers, trailer, 'trailer').figures.payload;
  return { legs, figures: machineFigures(legs, { yard, machines, rates, payloadOf }) };
}

/** Sorts by day and hour. */
function whenBack({ on, backHr }: DrivenTrip): string {
  return `${on} ${backHr.toFixed(6).padStart(12, '0')}`;
}
