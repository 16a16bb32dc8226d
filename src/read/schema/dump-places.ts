import * as z from 'zod';
import { lazily } from './leaf.ts';
import { ABOVE_ZERO, duration, FROM_ZERO, length, money, rate, timeOfDay, yesNo } from './quantities.ts';
import { byId, choice, thing } from './shape.ts';
import { crewText } from './text.ts';

const STREAMS = [
  'clean-concrete',
  'concrete-with-steel',
  'coated',
  'masonry',
  'asphalt',
  'soil',
  'green',
  'other',
] as const;

const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const;

const UNITS = ['load', 'ton', 'yd3'] as const;

const surcharges = () =>
  byId(
    rate(
      UNITS,
      'Added to the fee of a load that holds any of this kind, over the whole load; a kind that it accepts.',
      '$15 per load',
    ),
    'What costs more than the fee, each under a kind of load that the place takes.',
  );

const largestPiece = () =>
  thing('largest-piece', {
    side: length({ ...ABOVE_ZERO, most: '20 ft' }, 'Longest side of a piece it takes.', '24 in'),
    thickness: length({ ...ABOVE_ZERO, most: '4 ft' }, 'Greatest thickness of a piece it takes.', '8 in'),
  }).meta({ description: 'The largest piece it takes.' });

const baseSold = () =>
  thing('base-sold', {
    price: rate(['ton'], 'What base costs there.', '$17 per ton'),
    minimum: money('The least for a load of it; $0 if not given.', '$40').optional(),
  }).meta({ description: "Its own price of base; the supplier's if not given." });

const openingHours = () =>
  thing('opening-hours', {
    from: timeOfDay('When it opens.', '7:00', '7 am'),
    to: timeOfDay('When it closes.', '16:30', '4:30 pm'),
    'last-load': timeOfDay(
      'When it takes the last load; the closing time if not given.',
      '16:00',
      '4 pm',
    ).optional(),
  }).meta({ description: 'Its hours.' });

/** Places that take rubble: what they take, when, for what, and how far they are. */
export const placesSection = lazily(() =>
  byId(
    thing('place', {
      label: crewText('What it is called on the haul plan.', 'County landfill'),
      address: crewText('Its address.', '9 Ridge Road'),
      accepts: z
        .array(choice(STREAMS, 'One kind of load.'))
        .meta({ description: 'What it takes.', examples: [['clean-concrete', 'soil']] }),
      fee: rate(UNITS, 'What it charges.', '$38 per ton', '$45 per load'),
      minimum: money('The least it charges for a visit; $0 if not given.', '$25').optional(),
      surcharges: surcharges().optional(),
      'fee-with-base': rate(
        UNITS,
        'Instead of the fee, for a load that goes back with base.',
        '$30 per load',
      ).optional(),
      'mixed-loads': yesNo('Whether kinds that it takes may share a load; no if not given.').optional(),
      rejected: money('What a load with anything else in it costs.', '$150').optional(),
      'largest-piece': largestPiece().optional(),
      open: openingHours().optional(),
      'open-on': z
        .array(choice(WEEKDAYS, 'A day of the week.'))
        .meta({
          description: 'On which days it is open; on all if not given.',
          examples: [['monday', 'tuesday', 'wednesday', 'thursday', 'friday']],
        })
        .optional(),
      distance: length({ ...FROM_ZERO, most: '500 mi' }, 'One way.', '14 mi'),
      drive: duration({ ...FROM_ZERO, most: '24 h' }, 'One way, loaded.', '30 min'),
      turn: duration({ ...FROM_ZERO, most: '24 h' }, 'At the gate, on the scale and tipping.', '20 min'),
      base: baseSold().optional(),
      'sells-base': yesNo('Whether base material can ride back from there.'),
    }),
    'Places that take rubble, each under an id.',
  ),
);

export type PlacesSection = z.output<ReturnType<typeof placesSection>>;
