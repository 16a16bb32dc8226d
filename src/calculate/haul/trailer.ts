import { cuFtToCuYd, cuInToCuFt, floorToStep } from '../../units/index.ts';
import type { TowVehicle, Trailer } from '../job.ts';

/**
 * Share of a loaded trailer's weight on the hitch. 10 to 15 % for a bumper pull: driver-test page,
 * learnexams.com, "When towing a trailer" (seen), and owners' manuals of vehicles (from memory);
 * another page has 9 to 15 % (qammunity.org, question 11348239, seen).
 */
export const TONGUE_LOW_RATIO = 0.1;
export const TONGUE_HIGH_RATIO = 0.15;
export const TONGUE_SOURCE =
  'driver-test page, learnexams.com: tongue weight 10 to 15 % of the loaded trailer (seen)';

/** Payload is cut down to whole tens: a scale does not show less. */
export const PAYLOAD_STEP_LB = 10;

/** In the order in which one of two equal limits is named. */
export const LIMITS = [
  'gross-rating',
  'axle-rating',
  'tow-rating',
  'combined-rating',
  'truck-gross',
  'hitch',
] as const;
export type Limit = (typeof LIMITS)[number];

/**
 * What each rating lets the trailer carry; 0 or less where it lets it carry nothing [lb].
 *
 * With G trailer gross rating, E empty, A axle rating, T tow rating, C combined rating, V truck
 * gross rating, K curb weight and what the truck carries, H hitch rating:
 * G - E; A / (1 - 0.10) - E, since a light tongue leaves the most on the axles; T - E; C - K - E;
 * (V - K) / 0.15 - E and H / 0.15 - E, since a heavy tongue puts the most on truck and hitch.
 * All must hold: standard towing practice (from memory); the axle and tongue terms are statics.
 */
export function limitsLb(
  trailer: LimitTrailer,
  towVehicle: LimitTowVehicle,
): Readonly<Record<Limit, number>> {
  const { grossRatingLb, axleRatingLb, emptyLb } = trailer;
  const { towRatingLb, combinedRatingLb, curbLb, carriesLb, hitchRatingLb } = towVehicle;
  return {
    'gross-rating': grossRatingLb - emptyLb,
    'axle-rating': axleRatingLb / (1 - TONGUE_LOW_RATIO) - emptyLb,
    'tow-rating': towRatingLb - emptyLb,
    'combined-rating': combinedRatingLb - curbLb - carriesLb - emptyLb,
    'truck-gross': (towVehicle.grossRatingLb - curbLb - carriesLb) / TONGUE_HIGH_RATIO - emptyLb,
    hitch: hitchRatingLb / TONGUE_HIGH_RATIO - emptyLb,
  };
}

export type LimitTrailer = Pick<Trailer, 'grossRatingLb' | 'axleRatingLb' | 'emptyLb'>;
export type LimitTowVehicle = Omit<TowVehicle, 'label' | 'cost'>;

/** The limit that allows the least; of equal ones the first. */
export function governingLimit(limits: Readonly<Record<Limit, number>>): Limit {
  return LIMITS.reduce((least, limit) => (limits[limit] < limits[least] ? limit : least));
}

/**
 * What may be loaded: the least of the limits, less the reserve, down to whole tens. 0 or less
 * means that the trailer may carry nothing.
 *
 * @throws {RangeError} If the reserve is below 0 or a limit is not a number.
 */
export function payloadLb(limits: Readonly<Record<Limit, number>>, reserveLb: number): number {
  if (!(reserveLb >= 0)) throw new RangeError(`reserveLb must be 0 or more, got ${reserveLb}`);
  return floorToStep(Math.min(...LIMITS.map((limit) => limits[limit])) - reserveLb, PAYLOAD_STEP_LB);
}

/**
 * Volume of a box, level full: V = L W H / (1728 x 27).
 *
 * @returns [yd3].
 * @throws {RangeError} If a side is not above 0.
 */
export function boxVolumeCuYd(box: Trailer['box']): number {
  const { lengthIn, widthIn, heightIn } = box;
  if (!(lengthIn > 0 && widthIn > 0 && heightIn > 0)) {
    throw new RangeError(`the sides of a box must be above 0, got ${lengthIn}, ${widthIn}, ${heightIn}`);
  }
  return cuFtToCuYd(cuInToCuFt(lengthIn * widthIn * heightIn));
}

/** Height of a volume spread level in a box: h = 1728 x 27 V / (L W) [in]. */
export function fillHeightIn(volumeCuYd: number, box: Trailer['box']): number {
  if (!(volumeCuYd >= 0)) throw new RangeError(`volumeCuYd must be 0 or more, got ${volumeCuYd}`);
  return (volumeCuYd * 27 * 1728) / (box.lengthIn * box.widthIn);
}

/**
 * Weight on the hitch of a loaded trailer: gross weight times the share.
 *
 * @throws {RangeError} If the weight is not above 0 or the share is not between 0 and 1.
 */
export function tongueLb(grossLb: number, shareRatio: number): number {
  if (!(grossLb > 0)) throw new RangeError(`grossLb must be above 0, got ${grossLb}`);
  if (!(shareRatio > 0 && shareRatio < 1)) {
    throw new RangeError(`shareRatio must be between 0 and 1, got ${shareRatio}`);
  }
  return grossLb * shareRatio;
}
