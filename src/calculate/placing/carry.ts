import { ceilCount, cuYdToCuFt } from '../../units/index.ts';

/**
 * Trips of a wheelbarrow or a buggy: n = ceil(27 V / q).
 *
 * @param load.volumeCuYd [yd³], 0 or more.
 * @param load.holdsCuFt  What one carries [cu ft], above 0.
 * @throws {RangeError} If a value is outside its range.
 *
 * @example carryTrips({ volumeCuYd: 1, holdsCuFt: 2.5 }) // 11
 */
export function carryTrips(load: { readonly volumeCuYd: number; readonly holdsCuFt: number }): number {
  const { volumeCuYd, holdsCuFt } = load;
  if (!(volumeCuYd >= 0 && volumeCuYd < Infinity))
    throw new RangeError(`volumeCuYd must be 0 or more, got ${volumeCuYd}`);
  if (!(holdsCuFt > 0 && holdsCuFt < Infinity))
    throw new RangeError(`holdsCuFt must be above 0, got ${holdsCuFt}`);
  return ceilCount(cuYdToCuFt(volumeCuYd) / holdsCuFt);
}

/**
 * Labor hours of trips: t = n (2 d / v + t_turn).
 *
 * @param way.trips       Whole number, 0 or more.
 * @param way.wayFt       One way [ft], 0 or more.
 * @param way.speedFtPerHr [ft/h], above 0.
 * @param way.turnHr      Filling and tipping [h], 0 or more.
 * @throws {RangeError} If a value is outside its range.
 */
export function carryHr(way: {
  readonly trips: number;
  readonly wayFt: number;
  readonly speedFtPerHr: number;
  readonly turnHr: number;
}): number {
  const { trips, wayFt, speedFtPerHr, turnHr } = way;
  for (const [name, value] of Object.entries({ trips, wayFt, turnHr })) {
    if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} must be 0 or more, got ${value}`);
  }
  if (!(speedFtPerHr > 0 && speedFtPerHr < Infinity))
    throw new RangeError(`speedFtPerHr must be above 0, got ${speedFtPerHr}`);
  return trips * ((2 * wayFt) / speedFtPerHr + turnHr);
}
