import { ceilToStep, floorToStep } from '../../units/index.ts';

/** Trucks are spoken of in steps of so much [h]: 5 min. */
export const SPACING_STEP_HR = 1 / 12;

/**
 * The most a load can be, so that it is out before the limit: q = (limit - on the way) x rate, down to
 * the increment, never more than a truck holds and never less than an increment.
 *
 * @param load.onSiteHr     From arriving to the limit [h], 0 or more.
 * @param load.rateCuYdPerHr What is placed in an hour [yd³/h], above 0.
 * @returns [yd³]
 * @throws {RangeError} If a value is outside its range.
 */
export function mostPerLoadCuYd(load: {
  readonly onSiteHr: number;
  readonly rateCuYdPerHr: number;
  readonly truckCuYd: number;
  readonly incrementCuYd: number;
}): number {
  const { onSiteHr, rateCuYdPerHr, truckCuYd, incrementCuYd } = load;
  if (!(onSiteHr >= 0)) throw new RangeError(`onSiteHr must be 0 or more, got ${onSiteHr}`);
  if (!(rateCuYdPerHr > 0)) throw new RangeError(`rateCuYdPerHr must be above 0, got ${rateCuYdPerHr}`);
  const inTimeCuYd = floorToStep(onSiteHr * rateCuYdPerHr, incrementCuYd);
  return Math.max(incrementCuYd, Math.min(floorToStep(truckCuYd, incrementCuYd), inTimeCuYd));
}

/** A truck on the job: when it arrives after the first one [h], so that the one before it is empty. */
export type Arrival = { readonly loadCuYd: number; readonly afterFirstHr: number; readonly unloadHr: number };

/**
 * When each truck should arrive: as the one before it runs empty, in steps of 5 min, up.
 *
 * @throws {RangeError} If the rate is not above 0.
 */
export function arrivals(loadsCuYd: readonly number[], rateCuYdPerHr: number): readonly Arrival[] {
  if (!(rateCuYdPerHr > 0)) throw new RangeError(`rateCuYdPerHr must be above 0, got ${rateCuYdPerHr}`);
  let afterFirstHr = 0;
  return loadsCuYd.map((loadCuYd) => {
    const unloadHr = loadCuYd / rateCuYdPerHr;
    const arrival = { loadCuYd, afterFirstHr, unloadHr };
    afterFirstHr += ceilToStep(unloadHr, SPACING_STEP_HR);
    return arrival;
  });
}
