import * as z from 'zod';
import { parseTimeOfDay } from '../../units/index.ts';
import { lazily, leaf } from './leaf.ts';
import { date, FROM_ZERO, length, share, speed, temperature, timeOfDay } from './quantities.ts';
import { refusal } from './refusal.ts';
import { choice, thing } from './shape.ts';

const MIN_PER_HR = 60;

/** What a forecast in three parts means by its names. */
const PARTS_OF_DAY: Readonly<Record<string, number>> = {
  morning: 8 * MIN_PER_HR,
  noon: 12 * MIN_PER_HR,
  afternoon: 16 * MIN_PER_HR,
};

/** A time of day, or the part of it that a forecast in three parts names; minutes from midnight. */
const partOfDay = (description: string, ...examples: string[]) =>
  leaf({ kind: 'time of day', description, examples }, (text) => {
    const minutes = PARTS_OF_DAY[text.trim().toLowerCase()];
    if (minutes !== undefined) return { value: { minutes, text } };
    const parsed = parseTimeOfDay(text);
    if (parsed.ok) return { value: parsed.value };
    return { finding: refusal(text, 'time-of-day', { ...parsed, forms: [...parsed.forms, 'morning'] }) };
  });

const AIR = { least: '-40 F', most: '130 F' } as const;

const hour = () =>
  thing('weather-time', {
    at: partOfDay(
      'When: a time of day, or morning (8:00), noon, or afternoon (16:00). Times follow one another.',
      '"8:00"',
      'morning',
    ),
    air: temperature(AIR, 'Temperature of the air.', '58 F', '14 C'),
    humidity: share(FROM_ZERO, 'Relative humidity of the air.', '55 %'),
    wind: speed(
      { ...FROM_ZERO, most: '100 mph' },
      'Mean wind, not gusts; measured 20 in above the surface where it can be.',
      '8 mph',
      '13 km/h',
    ),
    'rain-chance': share(FROM_ZERO, 'Chance of rain.', '20 %').optional(),
    rain: length({ ...FROM_ZERO, most: '20 in' }, 'How much rain, where it comes.', '0.1 in').optional(),
    sky: choice(['clear', 'some-clouds', 'overcast'], 'What the sky is like.').optional(),
  });

const weather = () =>
  thing('weather', {
    on: date('The day the forecast is for.', '2026-05-07'),
    concrete: temperature(
      { least: '32 F', most: '120 F' },
      'Temperature the concrete is expected to arrive with; ask the plant.',
      '64 F',
    ),
    times: z
      .array(hour())
      .meta({ description: 'The forecast by the hour, or for morning, noon and afternoon.' }),
    'low-before': temperature(AIR, 'The lowest air temperature of the night before.', '41 F').optional(),
    'rain-before': length(
      { ...FROM_ZERO, most: '20 in' },
      'Rain of the day and night before.',
      '0.2 in',
    ).optional(),
    sunrise: timeOfDay('When the sun rises.', '"5:58"', '5:58 am').optional(),
    sunset: timeOfDay('When the sun sets.', '"20:12"', '8:12 pm').optional(),
    'coming-days': z
      .array(temperature(AIR, 'Mean air temperature of a day after the pour.', '52 F'))
      .meta({
        description:
          'Mean air temperature of each day after the pour, the first for the 24 hours that follow it. From these the strength is estimated.',
        examples: [['48 F', '52 F', '55 F']],
      })
      .optional(),
  });

/** The day concrete is placed: when, how it is cured, and what the weather will be. */
export const pourSection = lazily(() =>
  thing('pour', {
    'first-truck': timeOfDay(
      'When the first concrete is on site; the start of the working day if not given.',
      '8:00 am',
    ).optional(),
    'noise-allowed': thing('noise-hours', {
      from: timeOfDay('When machines may start.', '7:00 am'),
      to: timeOfDay('When they must be still.', '8:00 pm'),
    }).optional(),
    curing: choice(
      ['curing-compound', 'wet-cover', 'sheeting'],
      'How the concrete is cured; curing-compound if not given.',
    ).optional(),
    'later-coat': choice(
      ['none', 'sealer', 'stain', 'overlay'],
      'What is to go on the face later, so that no film is in its way; none if not given.',
    ).optional(),
    weather: weather().optional(),
  }),
);

export type PourSection = z.output<ReturnType<typeof pourSection>>;
