import { shortened } from '../../problems/index.ts';
import { compareR, parseQuantity, type Quantity } from '../../units/index.ts';
import { ID_PATTERN } from './id.ts';
import { leaf } from './leaf.ts';
import { FROM_ZERO } from './quantities.ts';
import { outOfRange, type Range } from './range.ts';
import { refusal } from './refusal.ts';

const MOST_ID_CHARACTERS = 40;

type Told = readonly [description: string, ...examples: string[]];

/** Higher than any place that is built on, lower than any. */
const ANY_HEIGHT = { least: '-2,000 ft', most: '30,000 ft' } as const;

/** A height above a datum; what lies below has a minus, and a plus may stand before what lies above. */
export const height = (...told: Told) => levelled(ANY_HEIGHT, ...told);

/** What is read on a rod; the longest rods have 25 ft. */
export const rodReading = (...told: Told) => levelled({ ...FROM_ZERO, most: '30 ft' }, ...told);

/** Where a rod stood. Its name is part of the names of figures. */
export function station(...[description, ...examples]: Told) {
  return leaf({ kind: 'id', description, examples }, (text) =>
    ID_PATTERN.test(text) && text.length <= MOST_ID_CHARACTERS
      ? { value: text }
      : { finding: { code: 'bad-id', parts: { id: shortened(text, MOST_ID_CHARACTERS) } } },
  );
}

function levelled(range: Range<string>, ...[description, ...examples]: Told) {
  return leaf({ kind: 'length', description, examples }, (text) => {
    const parsed = parseQuantity('length', text.replace(/^\s*\+\s*(?=[\d.])/, ''));
    if (!parsed.ok) return { finding: refusal(text, 'length', { ...parsed, forms: formsOf(text, parsed) }) };
    const { value } = parsed.value;
    const finding = outOfRange(text, range, (end) => compareR(value, lengthOf(end)));
    return finding === null ? { value: { ...parsed.value, text } } : { finding };
  });
}

/** Levels are read in feet with decimals or in metres, so a bare number is not taken for inches first. */
function formsOf(text: string, refused: { readonly forms: readonly string[] }): readonly string[] {
  const bare = /^\s*([+-]?)\s*(\d+(?:\.\d+)?)\s*$/.exec(text);
  if (bare === null) return refused.forms;
  const [, sign = '', digits = ''] = bare;
  return ['ft', 'm', 'in'].map((unit) => `${sign}${digits} ${unit}`);
}

function lengthOf(end: string | 0): Quantity['value'] {
  const parsed = parseQuantity('length', end === 0 || end === '0' ? '0 in' : end);
  if (!parsed.ok) throw new RangeError(`${end} is not a length`);
  return parsed.value.value;
}
