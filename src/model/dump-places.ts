import type { DumpPlace } from '../calculate/job.ts';
import type { PlacesSection } from '../read/index.ts';
import type { TimeOfDay } from '../units/index.ts';
import { SHIPPED } from './constants.ts';
import { inCoreUnit, inPerMi, inUnitOf, mapThings } from './quantity.ts';

type PlaceInput = PlacesSection[string];

const MIN_PER_HR = 60;

const WEEKDAY = {
  monday: 1,
  tuesday: 2,
  wednesday: 3,
  thursday: 4,
  friday: 5,
  saturday: 6,
  sunday: 7,
} as const satisfies Readonly<Record<NonNullable<PlaceInput['open-on']>[number], number>>;

export function placesOf(input: PlacesSection): Readonly<Record<string, DumpPlace>> {
  return mapThings(input, (id, place) => ({
    id,
    label: place.label,
    address: place.address,
    accepts: place.accepts,
    fee: place.fee,
    minimumUsd: place.minimum ?? SHIPPED.minimumUsd,
    surcharges: place.surcharges ?? {},
    feeWithBase: place['fee-with-base'] ?? null,
    mixedLoads: place['mixed-loads'] ?? SHIPPED.mixedLoads,
    rejectedUsd: place.rejected ?? null,
    largestPiece: largestPieceOf(place['largest-piece']),
    open: hoursOf(place.open),
    openOn: daysOf(place['open-on']),
    distanceMi: inUnitOf(place.distance, inPerMi),
    driveHr: inCoreUnit(place.drive),
    turnHr: inCoreUnit(place.turn),
    sellsBase: place['sells-base'],
    base:
      place.base === undefined
        ? null
        : { price: place.base.price, minimumUsd: place.base.minimum ?? SHIPPED.minimumUsd },
  }));
}

function largestPieceOf(input: PlaceInput['largest-piece']): DumpPlace['largestPiece'] {
  if (input === undefined) return null;
  return { sideIn: inCoreUnit(input.side), thicknessIn: inCoreUnit(input.thickness) };
}

function hoursOf(input: PlaceInput['open']): DumpPlace['open'] {
  if (input === undefined) return null;
  const { from, to, 'last-load': lastLoad = to } = input;
  return {
    fromHr: hoursFromMidnight(from),
    toHr: hoursFromMidnight(to),
    lastLoadHr: hoursFromMidnight(lastLoad),
  };
}

function hoursFromMidnight({ minutes }: TimeOfDay): number {
  return minutes / MIN_PER_HR;
}

/** In the order of the week, whatever order they were written in. */
function daysOf(input: PlaceInput['open-on']): DumpPlace['openOn'] {
  if (input === undefined) return SHIPPED.openOn;
  return input.map((day) => WEEKDAY[day]).toSorted((one, other) => one - other);
}
