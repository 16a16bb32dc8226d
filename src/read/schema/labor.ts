import type * as z from 'zod';
import { lazily } from './leaf.ts';
import { duration, FROM_ZERO, rate, share, timeOfDay } from './quantities.ts';
import { byId, thing } from './shape.ts';
import { crewText } from './text.ts';

/** Who works, for what wage, and how long a day is. */
export const laborSection = lazily(() =>
  thing('labor', {
    burden: share(
      { ...FROM_ZERO, most: '200 %' },
      'What comes on top of the wage: taxes, insurance, paid leave.',
      '24 %',
    ),
    day: duration({ above: 0, most: '24 h' }, 'Hours of a working day.', '8 h'),
    'day-starts': timeOfDay('When a working day starts; 7:00 if not given.', '7:00', '7:30 am').optional(),
    people: byId(
      thing('person', {
        label: crewText('What he or she is called on the work order.', 'Foreman'),
        wage: rate(['h'], 'Wage an hour, without burden.', '$36 per h'),
      }),
      'Everybody who may come to a job, each under an id.',
    ),
  }),
);

export type LaborSection = z.output<ReturnType<typeof laborSection>>;
