import type * as z from 'zod';
import { lazily } from './leaf.ts';
import { ABOVE_ZERO, count, duration, FROM_ZERO, length, money, pace, quantity, rate } from './quantities.ts';
import { thing } from './shape.ts';

/** A wheelbarrow or a buggy: it is filled at the truck, driven and tipped. */
const carrier = (holds: string) => ({
  holds: quantity(
    'volume',
    { ...ABOVE_ZERO, most: '2 yd3' },
    'Concrete that one of them carries at a time.',
    holds,
  ),
  count: count({ least: 1, most: 20 }, 'How many go at a time, one person each.', '2'),
  speed: pace(['ft', 'm'], 'How far one goes in an hour, there and back alike.', '9,000 ft per h'),
  turn: duration({ ...FROM_ZERO, most: '1 h' }, 'Filling and tipping one.', '1 min'),
  steepest: quantity('slope', FROM_ZERO, 'Steepest way it goes loaded.', '8 %'),
  narrowest: length(ABOVE_ZERO, 'Narrowest place it gets through.', '3 ft'),
});

const chute = () =>
  thing('chute', {
    reach: length(
      { least: '3 ft', most: '60 ft' },
      'How far the chutes reach from the rear of the truck.',
      '16 ft',
    ),
    pace: pace(['yd3', 'm3'], 'How fast concrete comes down them, as the crew takes it.', '15 yd3 per h'),
  });

const pump = () =>
  thing('pump', {
    reach: length({ least: '10 ft', most: '1,000 ft' }, 'How far the hose reaches.', '200 ft'),
    pace: pace(['yd3', 'm3'], 'How fast it pumps, as the crew takes it.', '20 yd3 per h'),
    people: count({ least: 1, most: 10 }, 'People of yours at the hose, beside those who place.', '2'),
    visit: money('What one visit costs.', '$480'),
    'by-volume': rate(['yd3', 'm3'], 'What pumping costs on top of the visit.', '$4 per yd3').optional(),
    keeps: quantity(
      'volume',
      { ...FROM_ZERO, most: '5 yd3' },
      'Concrete that stays in hopper and hose.',
      '1/4 yd3',
    ),
  });

/** How concrete gets from the truck to the slab; the cheapest that reaches is taken. */
export const placingSection = lazily(() =>
  thing('placing', {
    chute: chute().optional(),
    wheelbarrow: thing('carrier', carrier('2.5 cu ft')).optional(),
    buggy: thing('carrier', {
      ...carrier('10 cu ft'),
      cost: rate(['day', 'h'], 'What hiring or running it costs.', '$145 per day'),
    }).optional(),
    pump: pump().optional(),
  }),
);

export type PlacingSection = z.output<ReturnType<typeof placingSection>>;
