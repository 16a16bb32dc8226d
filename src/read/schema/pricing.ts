import * as z from 'zod';
import { lazily } from './leaf.ts';
import { ABOVE_ZERO, days, FROM_ZERO, money, share } from './quantities.ts';
import { byId, choice, thing } from './shape.ts';
import { publicText } from './text.ts';

/** From cost to price, and the terms that go with it. */
export const pricingSection = lazily(() =>
  thing('pricing', {
    overhead: share({ ...FROM_ZERO, most: '90 %' }, 'Share of the price, not of the cost.', '14 %'),
    margin: share({ ...FROM_ZERO, most: '90 %' }, 'Share of the price, not of the cost.', '16 %'),
    tax: share({ ...FROM_ZERO, most: '30 %' }, 'Sales tax; 0 % for none.', '0 %'),
    'tax-on': choice(['nothing', 'materials', 'price'], 'What it is charged on.'),
    'minimum-charge': money('The least a job is done for; $0 for none.', '$1,450'),
    payments: z
      .array(
        thing('payment', {
          label: publicText(
            'When it is due, as something that can be seen.',
            'The concrete is placed and finished',
          ),
          share: share(ABOVE_ZERO, 'Share of the price.', '30 %'),
        }),
      )
      .meta({
        description: 'Payments in their order; together 100 %.',
        examples: [[{ label: 'On signing', share: '100 %' }]],
      }),
    'valid-for': days(365, 'How long a proposal stands.', '30 days'),
    warranty: publicText(
      'What you repair, and how long.',
      'We repair for two years any slab that settles by more than 1/4 in.',
    ),
    clauses: byId(
      thing('clause', {
        question: publicText('What a client asks.', 'Who does the work?'),
        answer: publicText('What you say.', 'Our own crew.'),
      }),
      'Questions and answers for the proposal, each under an id.',
    ).optional(),
  }),
);

export type PricingSection = z.output<ReturnType<typeof pricingSection>>;
