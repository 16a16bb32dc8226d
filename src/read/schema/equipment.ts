import type * as z from 'zod';
import { lazily } from './leaf.ts';
import {
  ABOVE_ZERO,
  count,
  duration,
  FROM_ZERO,
  length,
  money,
  pace,
  quantity,
  rate,
  share,
  weight,
  yesNo,
} from './quantities.ts';
import { byId, choice, thing } from './shape.ts';
import { crewText, publicText } from './text.ts';

export const machinesSection = lazily(() =>
  byId(
    thing('machine', {
      label: crewText('What it is called on the work order.', 'Compact loader with breaker'),
      kind: choice(
        [
          'loader-with-breaker',
          'jackhammer',
          'walk-behind-saw',
          'cut-off-saw',
          'plate-compactor',
          'mixer',
          'hand-grinder',
          'hammer-drill',
        ],
        'What it is; decides on dust and noise.',
      ),
      cost: rate(['h', 'day'], 'What it costs you, owned or rented.', '$48 per h'),
      cab: choice(['enclosed', 'open', 'none'], 'Where the operator sits.'),
      wet: yesNo('Water is fed to its blade or point all the time.'),
      lifts: weight(
        { least: '60 lb', most: '100,000 lb' },
        'The most it lifts at once; decides how large the pieces of a slab may be.',
        '900 lb',
      ).optional(),
      'plate-width': length(
        { least: '6 in', most: '6 ft' },
        'How wide the plate of a compactor is; 20 in if not given.',
        '20 in',
      ).optional(),
      travel: pace(
        ['ft', 'm'],
        'How far a compactor moves on in an hour of running; 4,200 ft if not given.',
        '4,200 ft per h',
      ).optional(),
      lift: length(
        { least: '1 in', most: '2 ft' },
        'Most base a compactor takes at once, measured compacted; 4 in if not given.',
        '4 in',
      ).optional(),
      passes: count(
        { least: 1, most: 20 },
        'How often a compactor goes over a lift in each of two directions; 2 if not given.',
        '2',
      ).optional(),
      'tied-down': thing('tied-down', {
        weight: weight({ ...ABOVE_ZERO, most: '80,000 lb' }, 'Its weight ready to work.', '6,200 lb'),
        length: length({ ...ABOVE_ZERO, most: '53 ft' }, 'How long it is, attachments lowered.', '9 ft'),
      }).optional(),
    }),
    'Machines you own or rent, each under an id.',
  ),
);

const ratingPlate = (description: string, example: string) => weight(ABOVE_ZERO, description, example);

export const trailersSection = lazily(() =>
  byId(
    thing('trailer', {
      label: crewText('What it is called on the work order.', '14 ft dump trailer'),
      'gross-rating': ratingPlate('Gross rating on its plate.', '14,000 lb'),
      'axle-rating': ratingPlate('Rating of its axles together.', '14,000 lb'),
      empty: ratingPlate('Its weight empty, from a scale ticket.', '4,200 lb'),
      box: thing('box', {
        length: length(ABOVE_ZERO, 'Inside length.', '14 ft'),
        width: length(ABOVE_ZERO, 'Inside width.', '7 ft'),
        height: length(ABOVE_ZERO, 'Height of the sides.', '2 ft'),
      }),
    }),
    'Trailers, each under an id.',
  ),
);

export const towVehicleSection = lazily(() =>
  thing('tow-vehicle', {
    label: crewText('What it is called on the work order.', 'One-ton truck'),
    'tow-rating': ratingPlate('Most it may tow.', '16,000 lb'),
    'combined-rating': ratingPlate('Most that truck and trailer may weigh together.', '25,000 lb'),
    'gross-rating': ratingPlate('Gross rating on its plate.', '12,400 lb'),
    curb: ratingPlate('Its weight ready to drive, without people.', '7,300 lb'),
    carries: weight(FROM_ZERO, 'People, tools and fuel that ride in it.', '900 lb'),
    'hitch-rating': ratingPlate('Most weight on the hitch.', '2,400 lb'),
    cost: rate(['mi', 'h'], 'What driving it costs.', '$0.95 per mi'),
  }),
);

export const loadReserveSection = lazily(() =>
  weight({ ...FROM_ZERO, most: '20,000 lb' }, 'Kept free on every load.', '300 lb'),
);

export const loadingTimeSection = lazily(() =>
  duration({ ...FROM_ZERO, most: '24 h' }, 'Loading one trailer.', '25 min'),
);

export const swapTimeSection = lazily(() =>
  duration(
    { ...FROM_ZERO, most: '4 h' },
    'Dropping one trailer to be filled and taking another that is full; where it is given, one truck works so with two trailers or more.',
    '8 min',
  ),
);

export const yardSection = lazily(() =>
  thing('yard', {
    distance: length({ ...FROM_ZERO, most: '500 mi' }, 'One way to the job.', '8 mi'),
    drive: duration({ ...FROM_ZERO, most: '24 h' }, 'One way to the job.', '20 min'),
    'tie-down': duration(
      { ...FROM_ZERO, most: '4 h' },
      'Loading a machine and tying it down, or taking it off.',
      '15 min',
    ),
  }).meta({
    description:
      'Where machines come from that ride on the trailers of a job: those that break out, load, dig or compact the base and say how they are tied down. What fits together rides together.',
  }),
);

const formStrip = () =>
  thing('form-strip', {
    thickness: length({ ...ABOVE_ZERO, most: '3/4 in' }, 'How thick it is.', '1/4 in'),
    height: length(
      { ...ABOVE_ZERO, most: '2 ft' },
      'How high it is; ripped to the form is taken if not given.',
      '3 1/2 in',
    ).optional(),
    length: length({ least: '2 ft', most: '40 ft' }, 'How long it is.', '8 ft'),
    lap: length({ ...FROM_ZERO, most: '18 in' }, 'How far it laps the next one and a form.', '12 in'),
    bent: choice(
      ['across-grain', 'along-grain'],
      'Which way it is bent to the grain of its face; across-grain if not given.',
    ).optional(),
    'least-radius': length(
      ABOVE_ZERO,
      'The smallest curve it is bent to; the table for its thickness is taken if not given.',
      '2 ft',
    ).optional(),
    'on-hand': count({ least: 0, most: 10_000 }, 'How many you have.', '6'),
    price: money('What one more costs.', '$4.60'),
  });

export const formsSection = lazily(() =>
  thing('forms', {
    boards: byId(
      thing('board', {
        height: length({ ...ABOVE_ZERO, most: '2 ft' }, 'Its true height, not its name.', '3 1/2 in'),
        length: length({ least: '1 ft' }, 'How long it is.', '16 ft'),
        'on-hand': count({ least: 0, most: 10_000 }, 'How many you have.', '24'),
        price: money('What one more costs.', '$9.40'),
      }),
      'Form boards, each under an id.',
    ),
    strips: byId(formStrip(), 'Thin strips that curves are bent of, each under an id.').optional(),
    'run-past': length(
      FROM_ZERO,
      'How far a whole board may stick out past a corner before it is cut; no limit if not given.',
      '4 ft',
    ).optional(),
    'saw-kerf': length(
      { ...FROM_ZERO, most: '1/2 in' },
      'What a saw cut takes away; 1/8 in if not given.',
      '1/8 in',
    ).optional(),
    'stake-spacing': length({ least: '6 in', most: '20 ft' }, 'Stake to stake.', '3 ft'),
    'stake-spacing-curved': length(
      { least: '3 in', most: '20 ft' },
      'Stake to stake on curves; the published one if not given.',
      '18 in',
    ).optional(),
    'stake-price': money('What one more stake costs.', '$1.10'),
    'stakes-on-hand': count({ least: 0, most: 100_000 }, 'How many you have.', '90'),
    'kicker-spacing': length(
      { least: '6 in', most: '40 ft' },
      'Brace to brace behind the forms; no braces if not given.',
      '6 ft',
    ).optional(),
    'screws-per-stake': count(
      { least: 0, most: 20 },
      'Screws through a stake into the form; none are counted if not given.',
      '2',
    ).optional(),
    'release-coverage': quantity(
      'coverage',
      ABOVE_ZERO,
      'Face of form that a gallon of form release covers; none is counted if not given.',
      '400 sq ft per gal',
    ).optional(),
  }),
);

export const allowancesSection = lazily(() =>
  thing('allowances', {
    'base-unevenness': length({ ...FROM_ZERO, most: '6 in' }, 'How low the base lies on average.', '1/4 in'),
    spill: share({ ...FROM_ZERO, most: '50 %' }, 'Concrete that is lost or left in the truck.', '3 %'),
    'form-bulge': length(
      { ...FROM_ZERO, most: '2 in' },
      'How far forms bow out under the concrete, on average; nothing if not given.',
      '1/8 in',
    ).optional(),
    'base-margin': length({ ...FROM_ZERO, most: '10 ft' }, 'How far the base runs past the forms.', '6 in'),
    'closing-error': length(
      { ...FROM_ZERO, most: '2 ft' },
      'How far a walk along the sides may miss where it began, and a diagonal its check; 2 in if not given.',
      '2 in',
    ).optional(),
    'joining-gap': length(
      { ...FROM_ZERO, most: '2 ft' },
      'How far two pieces measured apart may miss each other and still be joined; 1 in if not given.',
      '1 in',
    ).optional(),
  }),
);

export const safetySection = lazily(() =>
  thing('safety', {
    'first-aid-person': crewText('Who gives first aid.', 'The foreman, card in the truck'),
    'kit-place': crewText('Where the kit is.', "Behind the driver's seat, with the eyewash"),
    calls: publicText(
      'Who calls, and who meets the ambulance.',
      'The foreman calls; the second person walks to the street',
    ),
  }),
);

export type MachinesSection = z.output<ReturnType<typeof machinesSection>>;
export type TrailersSection = z.output<ReturnType<typeof trailersSection>>;
export type TowVehicleSection = z.output<ReturnType<typeof towVehicleSection>>;
export type FormsSection = z.output<ReturnType<typeof formsSection>>;
export type AllowancesSection = z.output<ReturnType<typeof allowancesSection>>;
export type YardSection = z.output<ReturnType<typeof yardSection>>;
export type SafetySection = z.output<ReturnType<typeof safetySection>>;
