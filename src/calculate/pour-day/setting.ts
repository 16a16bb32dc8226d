/**
 * About how long concrete takes to set, by its temperature: a table that many cement makers print, from
 * memory; both its ends were seen (100 minutes at 100 °F and 19 hours just above freezing, in a general
 * article on setting time). For a plain mix without accelerator or retarder.
 */
const SETTING_ROWS = [
  { temperatureF: 30, settingHr: 19 },
  { temperatureF: 40, settingHr: 14 },
  { temperatureF: 50, settingHr: 11 },
  { temperatureF: 60, settingHr: 8 },
  { temperatureF: 70, settingHr: 6 },
  { temperatureF: 80, settingHr: 4 },
  { temperatureF: 90, settingHr: 2.7 },
  { temperatureF: 100, settingHr: 1.7 },
] as const;
const COLDEST_F = 30;
const WARMEST_F = 100;

export const SETTING_SOURCE =
  'table of setting times by temperature, 1.7 h at 100 °F to 19 h at 30 °F, as printed by cement makers (rows from memory, both ends seen); plain mix, no accelerator or retarder';

/**
 * About how long a plain mix takes until it is too stiff for a broom.
 *
 * @param temperatureF Of concrete and air together [°F]; below 30 the time of 30, above 100 that of 100.
 * @returns [h], straight between the rows of the table.
 * @throws {RangeError} If the temperature is no finite number.
 *
 * @example settingHr(65) // 7
 */
export function settingHr(temperatureF: number): number {
  if (!Number.isFinite(temperatureF))
    throw new RangeError(`temperatureF must be finite, got ${temperatureF}`);
  const withinF = Math.min(WARMEST_F, Math.max(COLDEST_F, temperatureF));
  const above = Math.max(
    1,
    SETTING_ROWS.findIndex((row) => row.temperatureF >= withinF),
  );
  const [lower, upper] = [SETTING_ROWS[above - 1], SETTING_ROWS[above]];
  if (lower === undefined || upper === undefined) throw new RangeError(`no row for ${withinF} °F`);
  const share = (withinF - lower.temperatureF) / (upper.temperatureF - lower.temperatureF);
  return lower.settingHr + (upper.settingHr - lower.settingHr) * share;
}

/** Of the setting time, when bleed water is gone and a foot leaves a print of 1/4 in. */
export const TOOLS_AFTER_RATIO = 0.4;
/** How much of the setting time sooner or later that may be. */
export const TOOLS_SPREAD_RATIO = 0.1;
export const TOOLS_SOURCE =
  'common practice, no source: the sheen is gone and a footprint 1/4 in deep after 0.3 to 0.5 of the setting time; look, do not trust the clock';

export type SawMethod = 'wet-saw' | 'early-entry';

/** Hours after finishing, at 90 °F or more and at 40 °F or less. */
const OPENS_AFTER: Readonly<Record<SawMethod, { readonly hotHr: number; readonly coldHr: number }>> = {
  'wet-saw': { hotHr: 4, coldHr: 12 },
  'early-entry': { hotHr: 1, coldHr: 4 },
};
const HOT_F = 90;
const COLD_F = 40;

export const SAW_OPENS_SOURCE =
  'ACI 302.1R as repeated in general articles: wet saw 4 h after finishing when hot to 12 h when cold, early-entry saw 1 to 4 h (seen there); straight between 90 and 40 °F: common practice, no source';

/** No slab is sawn later than this after finishing [h]. */
const SAW_CLOSES_HR = 18;
export const SAW_CLOSES_SOURCE =
  "common practice, no source: a wet saw has twice the time to its first cut, an early-entry saw until a wet saw can start; at most 18 h, the end of the range of CSA A23.1-94, 20.2.1, note 1, as quoted in an engineers' forum (seen)";

/**
 * When a saw may first cut without tearing stones out.
 *
 * @returns Hours after finishing, straight between the values for 90 °F and for 40 °F.
 * @throws {RangeError} If the temperature is no finite number.
 */
export function sawOpensHr(method: SawMethod, temperatureF: number): number {
  if (!Number.isFinite(temperatureF))
    throw new RangeError(`temperatureF must be finite, got ${temperatureF}`);
  const { hotHr, coldHr } = OPENS_AFTER[method];
  const coldShare = Math.min(1, Math.max(0, (HOT_F - temperatureF) / (HOT_F - COLD_F)));
  return hotHr + (coldHr - hotHr) * coldShare;
}

/**
 * When it is too late: a wet saw has twice the time to its first cut, at most 18 h, before the slab may have
 * cracked by itself; an early-entry saw, whose cuts are shallow, has until a wet saw could start.
 *
 * @returns Hours after finishing.
 */
export function sawClosesHr(method: SawMethod, temperatureF: number): number {
  const wetOpensHr = sawOpensHr('wet-saw', temperatureF);
  return method === 'wet-saw' ? Math.min(SAW_CLOSES_HR, 2 * wetOpensHr) : wetOpensHr;
}
