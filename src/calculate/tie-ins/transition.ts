/**
 * How much of a slab a transition takes: its last part, which comes to a walk as it is while the rest of the
 * slab heads for where the walk should be.
 *
 * @param made.settledIn How much lower the walk lies than it should [in]; below 0 where it stands higher.
 * @param made.ownSlope How the slab falls to where the walk should be [rise over run]; below 0 where it rises.
 * @param made.slope How the transition falls to a walk that settled, or rises to one that heaved; above 0.
 * @returns Its length on the plan [in], 0 where the walk is as it should be; null where it never gets there,
 *   since the slab by itself goes that way as steeply.
 * @throws {RangeError} If a value is not a finite number, or the slope is not above 0.
 *
 * Falling: settled + own t = slope t, so t = settled / (slope - own). Rising: heaved - own t = slope t, so
 * t = heaved / (slope + own). Source: definition.
 *
 * @example transitionLengthIn({ settledIn: 2, ownSlope: 1 / 48, slope: 1 / 12 }) // 32
 */
export function transitionLengthIn(made: {
  readonly settledIn: number;
  readonly ownSlope: number;
  readonly slope: number;
}): number | null {
  const { settledIn, ownSlope, slope } = made;
  if (![settledIn, ownSlope].every(Number.isFinite) || !(slope > 0 && slope < Infinity)) {
    throw new RangeError(`a transition of ${settledIn} in at ${slope}, beside ${ownSlope}`);
  }
  if (settledIn === 0) return 0;
  const gained = settledIn > 0 ? slope - ownSlope : slope + ownSlope;
  return gained > 0 ? Math.abs(settledIn) / gained : null;
}
