import type { Constant, Figure, FigureInput, FigureUnit, FigureValue } from '../../calculate/figure.ts';
import type { PublicText } from '../../calculate/text.ts';
import {
  addDaysOn,
  formatDateLong,
  formatMoney,
  formatNumber,
  type Rate,
  Usd,
  weekdayOf,
} from '../../units/index.ts';

const CENT_DECIMALS = 2;

const shown = new WeakMap<Figure, string>();

/** The value of a figure with its unit, to its own decimals: `648.00 sq ft`, `$1,250.00`. */
export function showFigure(figure: Figure): string {
  // Each stands in the formulas of those that follow from it too.
  const known = shown.get(figure);
  if (known !== undefined) return known;
  const text = showValue(figure.value, figure.unit, figure.decimals);
  shown.set(figure, text);
  return text;
}

/** A given value or a constant, with as many digits as it has, at most six. */
export function showInput(input: FigureInput): string {
  if ('figure' in input) return showFigure(input);
  return showValue(input.value, input.unit, digitsOf(input));
}

/** `lengthIn * widthIn / 144` with each name followed by its number: `lengthIn [432 in] × …`. */
export function showFormula(figure: Figure): string {
  if ('method' in figure.formula) return figure.formula.method;
  const { inputs } = figure;
  return figure.formula.expression
    .replace(/[A-Za-z_][A-Za-z0-9_]*/g, (name) => {
      const input = Object.hasOwn(inputs, name) ? inputs[name] : undefined;
      return input === undefined ? name : `${name} [${showInput(input)}]`;
    })
    .replaceAll('*', '×');
}

/** A price for a unit, to the cent or as fine as it was given: `$15.00/load`. */
export function showRate({ amountUsd, perUnit }: Rate): string {
  const decimals = Math.max(CENT_DECIMALS, amountUsd.decimalPlaces());
  return `$${formatNumber(amountUsd, decimals)}/${perUnit}`;
}

function showValue(value: FigureValue, unit: FigureUnit, decimals: number): string {
  if (unit.startsWith('$')) {
    const per = unit.slice(1);
    const amount = typeof value === 'number' ? new Usd(value) : value;
    return per === '' ? formatMoney(amount) : `$${formatNumber(amount, decimals)}${per}`;
  }
  if (unit === 'ratio') return formatNumber(value, decimals);
  return `${formatNumber(value, decimals)} ${unit}`;
}

function digitsOf(input: Exclude<FigureInput, Figure> | Constant): number {
  const text =
    typeof input.value === 'number' ? String(Number(input.value.toPrecision(12))) : input.value.toString();
  const behindPoint = /\.(\d+)$/.exec(text)?.[1] ?? '';
  return Math.min(behindPoint.length, 6);
}

/** A date in the words of a language: Monday 4 May 2026. */
export function showDate(
  on: string,
  names: { readonly weekdays: readonly PublicText[]; readonly months: readonly PublicText[] },
): PublicText {
  return formatDateLong(on, names) as PublicText;
}

/** A space at which no line ends. */
export const NO_BREAK = '\u00a0';

/** A day where its year is plain, on one line: Mon 4 May. */
export function showDay(
  on: string,
  names: { readonly shortWeekdays: readonly PublicText[]; readonly months: readonly PublicText[] },
): PublicText {
  const weekday = names.shortWeekdays[weekdayOf(on) - 1] ?? '';
  const month = names.months[Number(on.slice(5, 7)) - 1] ?? '';
  return [weekday, dayOf(on), month].join(NO_BREAK) as PublicText;
}

/**
 * Dates in a few letters, runs of days joined: `4–8, 11 May`. The days are sorted and each shown once.
 */
export function shortDates(dates: readonly string[], months: readonly string[]): string {
  const sorted = [...new Set(dates)].sort();
  const runs = sorted.reduce<string[][]>((made, on) => {
    const last = made.at(-1);
    const before = last?.at(-1);
    const continues =
      before !== undefined && addDaysOn(before, 1) === on && before.slice(0, 7) === on.slice(0, 7);
    return continues && last !== undefined ? [...made.slice(0, -1), [...last, on]] : [...made, [on]];
  }, []);
  return runs
    .map((run, index) => {
      const [first = '', last = first] = [run[0], run.at(-1)];
      const days = first === last ? dayOf(first) : `${dayOf(first)}–${dayOf(last)}`;
      const endsMonth = runs[index + 1]?.[0]?.slice(0, 7) !== last.slice(0, 7);
      return endsMonth ? `${days} ${months[Number(last.slice(5, 7)) - 1] ?? ''}` : days;
    })
    .join(', ');
}

function dayOf(on: string): string {
  return String(Number(on.slice(8)));
}
