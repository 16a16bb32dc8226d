import * as z from 'zod';
import { compareR, parseQuantity, type Quantity } from '../../units/index.ts';
import { leaf } from './leaf.ts';
import { place } from './place.ts';
import { ABOVE_ZERO, FROM_ZERO, length } from './quantities.ts';
import { outOfRange } from './range.ts';
import { refusal } from './refusal.ts';
import { thing } from './shape.ts';
import { publicText } from './text.ts';

const MOST = { least: '-2 ft', most: '2 ft' } as const;

/** How much higher something lies than it does now; with a minus lower, and a plus may stand before it. */
function change(description: string, example: string) {
  return leaf({ kind: 'length', description, examples: [example] }, (text) => {
    const parsed = parseQuantity('length', text.replace(/^\s*\+\s*(?=[\d.])/, ''));
    if (!parsed.ok) return { finding: refusal(text, 'length', parsed) };
    const { value } = parsed.value;
    const finding = outOfRange(text, MOST, (end) => compareR(value, lengthOf(end)));
    return finding === null ? { value: { ...parsed.value, text } } : { finding };
  });
}

function lengthOf(end: string | 0): Quantity['value'] {
  const parsed = parseQuantity('length', end === 0 ? '0 in' : end);
  if (!parsed.ok) throw new RangeError(`${end} is not a length`);
  return parsed.value.value;
}

const foot = () =>
  thing('flight-foot', {
    left: change(
      'How much higher the new surface is than the one that is there, at the left end of the lowest step seen from below; with a minus, lower.',
      '-1/2 in',
    ),
    middle: change('The same at its middle.', '0 in'),
    right: change('The same at its right end.', '+1/4 in'),
  }).meta({
    description:
      'What changes at the foot of the flight; or its foot-ends say where it is, and the heights tell.',
  });

const topping = () =>
  thing('topping', {
    thinnest: length({ ...ABOVE_ZERO, most: '6 in' }, 'How thin it may be; its maker says.', '1/2 in'),
    thickest: length({ ...ABOVE_ZERO, most: '6 in' }, 'How thick it may be; its maker says.', '1 1/2 in'),
    landing: length(
      { ...FROM_ZERO, most: '6 in' },
      'How much of it may be laid on the landing at the top; 0 in for none.',
      '3/4 in',
    ),
  }).meta({ description: 'What could be laid on the treads, if anything.' });

/** A flight of steps that stays while the surface at its foot is built anew. */
export const flight = () =>
  thing('flight', {
    label: publicText('What it is called on paper.', 'Front porch steps'),
    risers: z
      .array(length({ ...ABOVE_ZERO, most: '2 ft' }, 'Height of one step as it is now.', '7 in'))
      .min(1)
      .meta({
        description: 'Each step as it is now, from the bottom up; the last one ends on the landing.',
        examples: [['7 in', '7 1/4 in', '7 in']],
      }),
    tread: length({ ...ABOVE_ZERO, most: '6 ft' }, 'Depth of one step.', '11 in'),
    width: length(ABOVE_ZERO, 'Width of the flight.', '4 ft'),
    foot: foot().optional(),
    'foot-ends': z
      .array(place('An end of the lowest step.'))
      .length(2)
      .meta({
        description:
          'Where its foot is on the plan, left end first as seen from below: what changes there is then the new surface less what is there now.',
        examples: [
          [
            ['6 ft', '20 ft'],
            ['6 ft', '24 ft'],
          ],
        ],
      })
      .optional(),
    topping: topping().optional(),
  });
