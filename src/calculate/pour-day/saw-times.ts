/** A stretch of time, hours from midnight of the day of the pour; past 24 it is the next day. */
export type Span = { readonly fromHr: number; readonly toHr: number };

const DAY_HR = 24;

/**
 * When the joints can be sawn: within the window of the concrete and the hours in which noise is allowed,
 * on the day of the pour or the day after.
 *
 * @param asked.cuttingHr How long the saw runs [h].
 * @param asked.allowed   Hours of a day, the same on both days; null where nothing limits them.
 * @returns at: the first stretch long enough, else the longest; null where there is none. shortHr: what
 *   of the cutting has no time [h].
 */
export function sawTimes(asked: {
  readonly window: Span;
  readonly cuttingHr: number;
  readonly allowed: Span | null;
}): { readonly at: Span | null; readonly shortHr: number } {
  const { window, cuttingHr, allowed } = asked;
  const open = stretches(window, allowed);
  const fits = open.find((span) => lengthHr(span) >= cuttingHr);
  const at = fits ?? open.toSorted((one, other) => lengthHr(other) - lengthHr(one))[0] ?? null;
  return { at, shortHr: Math.max(0, cuttingHr - (at === null ? 0 : lengthHr(at))) };
}

function stretches(window: Span, allowed: Span | null): readonly Span[] {
  if (allowed === null) return [window];
  return [0, DAY_HR]
    .map((shiftHr) => ({
      fromHr: Math.max(window.fromHr, allowed.fromHr + shiftHr),
      toHr: Math.min(window.toHr, allowed.toHr + shiftHr),
    }))
    .filter((span) => lengthHr(span) > 0);
}

function lengthHr({ fromHr, toHr }: Span): number {
  return toHr - fromHr;
}
