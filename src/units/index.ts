/** Quantities, money and dates as people write them: read exactly, converted, written again. Knows no language. */
export * from './convert.ts';
export { addDaysOn, daysBetween, nextWorkdayOn, parseDate, weekdayOf } from './date.ts';
export {
  formatDateLong,
  formatFeetInches,
  formatInches,
  formatMoney,
  formatNumber,
  formatPercent,
  formatQuantity,
} from './format.ts';
export type { Quantity, QuantityKind } from './kinds.ts';
export { floorToCent, parseMoney, roundToCent, splitByLargestRemainder, sumUsd, Usd } from './money.ts';
export { parseCount, parseYesNo } from './other.ts';
export { type Pace, type PaceUnit, parsePace } from './pace.ts';
export type { ParseCode, ParseResult } from './parse-result.ts';
export { parseQuantity } from './quantity.ts';
export { parseRate, type Rate, type RateUnit } from './rate.ts';
export * from './rational.ts';
export { type ClockFace, clockFace, parseTimeOfDay, type TimeOfDay } from './time-of-day.ts';
export { parseTurn, type Turn } from './turn.ts';
