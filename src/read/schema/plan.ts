import * as z from 'zod';
import { lazily } from './leaf.ts';
import { count, date } from './quantities.ts';
import { reference, thing } from './shape.ts';

/** When, and with whom and what. */
export const planSection = lazily(() =>
  thing('plan', {
    'starts-on': date('First day of work.', '2026-05-04'),
    crew: z
      .array(reference('Id of a person of the company.', 'foreman'))
      .meta({ description: 'Who comes.', examples: [['foreman', 'laborer']] }),
    trailers: z
      .array(reference('Id of a trailer of the company.', 'long-box'))
      .meta({ description: 'Which trailers come.', examples: [['long-box']] }),
    drivers: count(
      { least: 1, most: 6 },
      'How many drive at once, each a truck like yours; 1 if not given.',
      '1',
    ).optional(),
    'haul-by': date(
      'Last day on which the truck is free to haul: the cheapest plan that is done by then is taken.',
      '2026-05-06',
    ).optional(),
    'pours-on': date(
      'Day of the pour, where it is not the first one that is free; a Saturday too.',
      '2026-05-09',
    ).optional(),
  }),
);

export type PlanSection = z.output<ReturnType<typeof planSection>>;
