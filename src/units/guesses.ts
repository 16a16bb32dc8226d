import type { QuantityKind } from './kinds.ts';
import { UNIT_ROWS } from './unit-table.ts';

/*
 * What a refused text was probably meant to be. Used to suggest forms that work, never to
 * accept a text.
 */

/** Words and signs that are understood but not taken, and what to write for them, in this order. */
const UNDERSTOOD: readonly (readonly [RegExp, string])[] = [
  [/''/g, '"'],
  [/^["']+/, ''],
  [/([a-z%])["']+$/i, '$1'],
  [/²/g, '2'],
  [/³/g, '3'],
  [/' - /g, "'-"],
  [/(^|[^\d.])\.(\d)/g, '$10.$2'],
  [/(\d),(\d{1,2})(?!\d)/g, '$1.$2'],
  [/\b(in|ft|yd|sq|cu|lb|lbs|gal|hr|hrs|min|deg)\./gi, '$1'],
  [/\b(?:inches|inch)\b/gi, 'in'],
  [/\b(?:feet|foot)\b/gi, 'ft'],
  [/\b(?:yards?|yds)\b/gi, 'yd'],
  [/\bmiles?\b/gi, 'mi'],
  [/\bmillimet(?:er|re)s?\b/gi, 'mm'],
  [/\bcentimet(?:er|re)s?\b/gi, 'cm'],
  [/\bkilomet(?:er|re)s?\b/gi, 'km'],
  [/\bmet(?:er|re)s?\b/gi, 'm'],
  [/\bsquare\b/gi, 'sq'],
  [/\bcubic\b/gi, 'cu'],
  [/\b(?:sqft|sf)\b/gi, 'sq ft'],
  [/\b(?:cuft|cf)\b/gi, 'cu ft'],
  [/\bcy\b/gi, 'yd3'],
  [/\bsq m\b/gi, 'm2'],
  [/\bcu m\b/gi, 'm3'],
  [/\b(?:pounds?|lbs)\b/gi, 'lb'],
  [/\b(?:kilograms?|kgs)\b/gi, 'kg'],
  [/\btonnes?\b/gi, 't'],
  [/\b(?:gallons?|gals)\b/gi, 'gal'],
  [/\blit(?:er|re)s?\b/gi, 'L'],
  [/\b(?:hours?|hrs?)\b/gi, 'h'],
  [/\b(?:minutes?|mins)\b/gi, 'min'],
  [/\b(?:percent|pct)\b/gi, '%'],
  [/\bpcf\b/gi, 'lb per cu ft'],
  [/\b(?:kph|kmh|km ?(?:\/|per) ?h)\b/gi, 'km/h'],
  [/[º˚]/g, '°'],
  [/\b(?:degrees?|deg)\b ?/gi, ''],
  [/\bfahrenheit\b/gi, 'F'],
  [/\bcelsius\b/gi, 'C'],
];

/** What a number alone is taken for. */
const USUAL_UNIT: Readonly<Record<QuantityKind, string>> = {
  length: 'in',
  area: 'sq ft',
  volume: 'yd3',
  weight: 'lb',
  slope: '%',
  temperature: 'F',
  duration: 'h',
  share: '%',
  density: 'lb per cu ft',
  strength: 'psi',
  speed: 'mph',
  coverage: 'sq ft per gal',
  evaporation: 'lb per sq ft per h',
  angle: 'deg',
};

/** `42`, `14' 6`, `1/4`; not the 2 of `ft2`. */
const ENDS_IN_NUMBER = /(?:^|[ '/-])\d[\d.,]*$/;

/**
 * Texts that may read, of one meaning each.
 *
 * @param plain The text with plain quotes and single spaces.
 */
export function guesses(kind: QuantityKind, plain: string): readonly string[] {
  let text = plain;
  for (const [pattern, instead] of UNDERSTOOD) text = text.replace(pattern, instead);
  text = inProperCase(text.trim(), kind);
  if (kind === 'length') text = inFeetAndInches(text);
  if (!ENDS_IN_NUMBER.test(text)) return [text];
  if (kind === 'slope' && text.includes('/')) return [`${text} in per ft`];
  const ratio = /^0\.(\d\d)(\d*)$/.exec(text);
  if (kind === 'share' && ratio !== null) {
    const [, whole = '', part = ''] = ratio;
    return [`${Number(whole)}${part === '' ? '' : `.${part}`} %`, `${text} %`];
  }
  return [`${text} ${USUAL_UNIT[kind]}`];
}

/** `MM` to `mm`, `mpa` to `MPa`. */
function inProperCase(text: string, kind: QuantityKind): string {
  const words = UNIT_ROWS.filter((unit) => unit.kind === kind).flatMap((unit) =>
    [...unit.spellings, unit.symbol].flatMap((spelling) => spelling.split(' ')),
  );
  return text.replace(/[a-z]+[/a-z\d]*/gi, (word) =>
    words.includes(word) ? word : (words.find((known) => known.toLowerCase() === word.toLowerCase()) ?? word),
  );
}

/** Twelve inches or more beside feet are carried over: `5' 14"` is `6' 2"`. */
function inFeetAndInches(text: string): string {
  const match = /^(-?)(\d+) ?(?:'|ft)[ -]?(\d+)(.*)$/.exec(text);
  if (match === null) return text;
  const [, sign = '', feetText = '', inchText = '', rest = ''] = match;
  const feet = Number(feetText);
  const inches = Number(inchText);
  if (inches < 12 || !/^(?: ?["i]|$)/.test(rest)) return text;
  return `${sign}${feet + Math.floor(inches / 12)} ft ${inches % 12} in`;
}
