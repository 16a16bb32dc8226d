import type { Constant, Figure, FigureInput, FigureUnit, FigureValue } from '../../calculate/figure.ts';
import type { PublicText } from '../../calculate/text.ts';
import { formatDateLong, formatMoney, formatNumber, Usd } from '../../units/index.ts';

/** The value of a figure with its unit, to its own decimals: `648.00 sq ft`, `$1,250.00`. */
export function showFigure(figure: Figure): string {
  return showValue(figure.value, figure.unit, figure.decimals);
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
  const text = typeof input.value === 'number' ? String(Number(input.value.toPrecision(12))) : input.value.toString();
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
