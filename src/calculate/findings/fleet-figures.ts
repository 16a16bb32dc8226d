import { COMPANY_FIGURE, constant, type Figure, figure, given, num } from '../figure.ts';
import type { Company } from '../job.ts';
import { thingNamed } from '../parts.ts';

/** A combination of so much or more is a heavy one [lb]. */
const HEAVY_COMBINATION_LB = 26_001;
const HEAVY_SOURCE =
  '49 CFR 383.91(a)(1): combination rating of 26,001 lb or more and a towed unit over 10,000 lb (seen)';
const COMBINATION_SOURCE =
  '49 CFR 390.5: the greater of the rating on the label and the sum of the units (seen as quoted in a training page for carriers)';

/** Federal rules for commercial vehicles between states start at so much: 49 CFR 390.5 (seen as quoted in a trade magazine) [lb]. */
export const COMMERCIAL_VEHICLE_LB = 10_001;

export type FleetFigures = {
  /** Truck and trailer together, in whole pounds [lb]. */
  readonly 'combination-rating': Figure;
  /** Rating of the trailer where the combination is heavy, else 0 [lb]. */
  readonly 'towed-rating-of-heavy-combination': Figure;
};

/**
 * Rating of truck and trailer together: the greater of what the truck is rated for in combination
 * and the sum of both gross ratings, cut to whole pounds. So "at most 26,000" says the same as
 * "not 26,001 or more", whatever unit a plate is in.
 *
 * @returns [lb].
 * @throws {RangeError} If a rating is not above 0.
 *
 * floor(max(C, V + G)), with C combination, V truck and G trailer rating. Source: 49 CFR 390.5,
 * current definition. The truck's label need not show C; then the sum alone would count, and this
 * is on the safe side.
 */
export function combinationRatingLb(rated: {
  readonly truckGrossLb: number;
  readonly trailerGrossLb: number;
  readonly combinedLb: number;
}): number {
  const { truckGrossLb, trailerGrossLb, combinedLb } = rated;
  if (![truckGrossLb, trailerGrossLb, combinedLb].every((ratingLb) => ratingLb > 0 && ratingLb < Infinity)) {
    throw new RangeError(`ratings must be above 0, got ${truckGrossLb}, ${trailerGrossLb} and ${combinedLb}`);
  }
  return Math.floor(Math.max(combinedLb, truckGrossLb + trailerGrossLb));
}

/** Rating of a towed unit of a combination of 26,001 lb or more; 0 of a lighter one [lb]. */
export function towedOfHeavyLb(rated: {
  readonly combinationLb: number;
  readonly trailerGrossLb: number;
}): number {
  return rated.combinationLb >= HEAVY_COMBINATION_LB ? rated.trailerGrossLb : 0;
}

/** What the licence rules are held against, for each trailer that hauls something in this job. */
export function fleetFigures(input: {
  readonly towVehicle: Pick<Company['towVehicle'], 'grossRatingLb' | 'combinedRatingLb'>;
  readonly trailers: Company['trailers'];
  /** Ids of the trailers that haul. */
  readonly hauling: readonly string[];
}): Readonly<Record<string, FleetFigures>> {
  const { towVehicle, trailers, hauling } = input;
  return Object.fromEntries(
    hauling.map((id) => {
      const { grossRatingLb } = thingNamed(trailers, id, 'trailer');
      return [id, ofTrailer({ id, trailerGrossLb: grossRatingLb, towVehicle })] as const;
    }),
  );
}

function ofTrailer({
  id,
  trailerGrossLb,
  towVehicle,
}: {
  readonly id: string;
  readonly trailerGrossLb: number;
  readonly towVehicle: Parameters<typeof fleetFigures>[0]['towVehicle'];
}): FleetFigures {
  const trailerGrossRatingLb = given(`company.trailers.${id}.gross-rating`, trailerGrossLb, 'lb');
  const combination = figure({
    value: combinationRatingLb({
      truckGrossLb: towVehicle.grossRatingLb,
      trailerGrossLb,
      combinedLb: towVehicle.combinedRatingLb,
    }),
    unit: 'lb',
    decimals: 0,
    formula: 'floor(max(combinedRatingLb, truckGrossRatingLb + trailerGrossRatingLb))',
    inputs: {
      combinedRatingLb: given('company.tow-vehicle.combined-rating', towVehicle.combinedRatingLb, 'lb'),
      truckGrossRatingLb: given('company.tow-vehicle.gross-rating', towVehicle.grossRatingLb, 'lb'),
      trailerGrossRatingLb,
    },
    source: COMBINATION_SOURCE,
    rounding: 'down',
  });
  return {
    'combination-rating': combination,
    'towed-rating-of-heavy-combination': figure({
      value: towedOfHeavyLb({ combinationLb: num(combination), trailerGrossLb }),
      unit: 'lb',
      decimals: 0,
      formula: 'trailerGrossRatingLb * min(1, floor(combinationRatingLb / heavyLb))',
      inputs: {
        trailerGrossRatingLb,
        combinationRatingLb: combination,
        heavyLb: constant('heavy combination', HEAVY_COMBINATION_LB, 'lb', HEAVY_SOURCE),
      },
      source: HEAVY_SOURCE,
    }),
  };
}

/** Gross rating of the truck by itself, in whole pounds, as the combination is. */
export function truckRatingFigure(grossRatingLb: number): Figure {
  return figure({
    value: Math.floor(grossRatingLb),
    unit: 'lb',
    decimals: 0,
    formula: 'floor(truckGrossRatingLb)',
    inputs: { truckGrossRatingLb: given('company.tow-vehicle.gross-rating', grossRatingLb, 'lb') },
    source: COMPANY_FIGURE,
    rounding: 'down',
  });
}
