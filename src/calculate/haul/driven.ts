import type { CoreProblem } from '../../problems/index.ts';
import { clockFace } from '../../units/index.ts';
import type { DumpPlace } from '../job.ts';
import { thingNamed } from '../parts.ts';
import type { HaulLoad } from './load-table.ts';
import type { Plan } from './plan/index.ts';
import { type ScheduledTrip, type TripTimes, type Trucks, tripTimes, type WorkingDay } from './schedule.ts';

/** A trip with its times; `load` is null for base alone. */
export type DrivenTrip = TripTimes & {
  readonly load: string | null;
  readonly trailer: string;
  readonly place: string;
};

type Trip = ScheduledTrip & { readonly load: string | null };

/** Every trip in driving order, debris first; with a problem where a place never lets one in. */
export function drivenTrips(
  loads: readonly HaulLoad[],
  plan: Plan,
  input: {
    readonly places: Readonly<Record<string, DumpPlace>>;
    readonly loadingHr: number;
    readonly day: WorkingDay;
    readonly trucks: Trucks;
  },
): { readonly trips: readonly DrivenTrip[]; readonly problems: readonly CoreProblem[] } {
  const placeOf = (id: string) => thingNamed(input.places, id, 'place');
  const trips: readonly Trip[] = [
    ...loads.map(({ name, trailer, place, returns }) => ({
      load: name,
      trailer,
      place: placeOf(place),
      loadingHr: input.loadingHr,
      withBase: returns === 'base',
    })),
    ...plan.baseTrips.flatMap(({ trailer, place, count }) =>
      Array.from({ length: count }, () => ({
        load: null,
        trailer,
        place: placeOf(place),
        loadingHr: 0,
        withBase: true,
      })),
    ),
  ];
  const times = tripTimes(trips, input.day, input.trucks);
  const shut = new Set(trips.filter((_, index) => times[index] === null).map(({ place }) => place.id));
  return {
    trips: trips.flatMap(({ load, trailer, place }, index) => {
      const driven = times[index];
      return driven === null || driven === undefined ? [] : [{ ...driven, load, trailer, place: place.id }];
    }),
    problems: [...shut].map((id) => neverIn(placeOf(id), input)),
  };
}

function neverIn(
  place: DumpPlace,
  { day, loadingHr }: { readonly day: WorkingDay; readonly loadingHr: number },
): CoreProblem {
  const clock = (hour: number) => clockFace(hour % 24, 24).time;
  return {
    code: 'place-lets-nobody-in',
    path: `company.places.${place.id}.open`,
    parts: {
      place: place.label,
      arrives: clock(day.startsHr + loadingHr + place.driveHr),
      lastLoad: clock(place.open?.lastLoadHr ?? 0),
    },
  };
}
