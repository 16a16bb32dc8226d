import * as z from 'zod';
import { lazily } from './leaf.ts';
import { ABOVE_ZERO, length, money } from './quantities.ts';
import { byId, choice, reference, thing } from './shape.ts';
import { officeText, publicText } from './text.ts';

/** One of the four first keys says what changes; the model checks that it is one. */
const edit = () =>
  thing('edit', {
    'thicker-existing': reference(
      'Id of something existing that is thicker than described.',
      'old-drive',
    ).optional(),
    'steel-found': reference('Id of something existing that has steel in it.', 'old-walk').optional(),
    'more-base': reference(
      'Id of a slab that needs more base below it; digging as much deeper, hauling that soil and the base itself are in its price.',
      'drive',
    ).optional(),
    geotextile: reference(
      'Id of a slab that needs a fabric below its base; with more-base beside it for soft ground.',
      'drive',
    ).optional(),
    by: length({ ...ABOVE_ZERO, most: '4 ft' }, 'By how much.', '1 in').optional(),
    steel: choice(['mesh', 'bars'], 'Which steel.').optional(),
  });

const hidden = () =>
  thing('hidden', {
    label: publicText(
      'What may be found, in words for the client.',
      'The old driveway is an inch thicker than assumed',
    ),
    edits: z.array(edit()).meta({
      description: 'What it changes.',
      examples: [[{ 'thicker-existing': 'old-drive', by: '1 in' }]],
    }),
  });

/** What the price covers and what it leaves out. */
export const priceSection = lazily(() =>
  thing('price', {
    hidden: byId(hidden(), 'What may be found, each with a price agreed beforehand.').optional(),
    'other-costs': byId(
      thing('other-cost', {
        label: officeText('What it is.', 'Right-of-way permit'),
        cost: money('What it costs you.', '$85.00'),
      }),
      'Costs that follow from nothing else, such as permits.',
    ).optional(),
    'not-included': z
      .array(publicText('Something the price leaves out.', 'Lawn repair past 6 in from the new edge'))
      .meta({ description: 'What the price leaves out.' })
      .optional(),
  }),
);

export type PriceSection = z.output<ReturnType<typeof priceSection>>;
export type EditInput = z.output<ReturnType<typeof edit>>;
