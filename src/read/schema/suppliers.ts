import * as z from 'zod';
import { ADDITIVES } from './build.ts';
import { lazily } from './leaf.ts';
import {
  ABOVE_ZERO,
  count,
  days,
  duration,
  FROM_ZERO,
  length,
  money,
  pace,
  quantity,
  rate,
  times,
  weight,
} from './quantities.ts';
import { thing } from './shape.ts';
import { crewText } from './text.ts';

const MOST_NOTICE_DAYS = 60;
const asked = () => ({
  label: crewText('Who sells it.', 'Riverside ready-mix'),
  phone: crewText('Telephone for orders.', '555-0170'),
});
const notice = () => days(MOST_NOTICE_DAYS, 'How long before it must be ordered.', '2 days', '1 day');
const noticeIfAny = () =>
  days(
    MOST_NOTICE_DAYS,
    'How long before it must be ordered; 1 day if not given.',
    '2 days',
    '1 day',
  ).optional();
const priceEach = (description: string, example: string) => money(description, example);

const concrete = () =>
  thing('concrete-supplier', {
    ...asked(),
    price: rate(['yd3', 'cu ft', 'm3'], 'Price of the mix, delivered.', '$172 per yd3'),
    increment: quantity('volume', { ...ABOVE_ZERO, most: '10 yd3' }, 'Orders go up by this.', '1/4 yd3'),
    truck: quantity('volume', { ...ABOVE_ZERO, most: '20 yd3' }, 'What one truck brings.', '10 yd3'),
    'short-load-below': quantity(
      'volume',
      { ...FROM_ZERO, most: '20 yd3' },
      'Loads below this pay the fee; 0 yd3 for none.',
      '4 yd3',
    ),
    'short-load-fee': money('Fee for such a load.', '$120'),
    'fuel-fee': rate(
      ['load', 'yd3', 'm3'],
      'Fuel or delivery fee; none if not given.',
      '$28 per load',
    ).optional(),
    'saturday-fee': rate(
      ['load', 'yd3', 'm3'],
      'What a Saturday costs more; it counts only where the pour falls on one. None if not given.',
      '$75 per load',
    ).optional(),
    additives: thing(
      'additive-prices',
      Object.fromEntries(
        ADDITIVES.map((additive) => [
          additive,
          rate(['yd3', 'm3', 'load'], 'What this additive costs more.', '$8 per yd3').optional(),
        ]),
      ) as Record<(typeof ADDITIVES)[number], z.ZodOptional<ReturnType<typeof rate>>>,
    ).optional(),
    'discharge-limit': duration(
      { least: '15 min', most: '4 h' },
      'From batching to empty, as the ticket of the plant states; the older fixed limit of 90 min if not given.',
      '90 min',
    ).optional(),
    'on-the-way': duration(
      { ...FROM_ZERO, most: '3 h' },
      'From batching to the truck standing on the job; without it loads are not held against the limit.',
      '30 min',
    ).optional(),
    'free-per-yard': duration(
      { ...FROM_ZERO, most: '1 h' },
      'How long unloading may take for each cubic yard before waiting is charged.',
      '6 min',
    ).optional(),
    'wait-fee': rate(['h'], 'What waiting past that costs; none if not given.', '$150 per h').optional(),
    'call-ahead': duration(
      { ...FROM_ZERO, most: '6 h' },
      'How long before it is needed the last load has to be called.',
      '45 min',
    ).optional(),
    notice: notice(),
    'free-cancel': duration(
      { ...FROM_ZERO, most: '3 days' },
      'How long before the first truck the order can be put off without a fee.',
      '3 h',
    ).optional(),
  });

const bagged = () =>
  thing('bag-supplier', {
    ...asked(),
    price: rate(['bag', 'each'], 'Price of a bag.', '$6.75 per bag'),
    yield: quantity('volume', { ...ABOVE_ZERO, most: '5 cu ft' }, 'Concrete from one bag.', '0.6 cu ft'),
    weight: weight({ ...ABOVE_ZERO, most: '500 lb' }, 'Weight of a bag.', '80 lb'),
    mixing: pace(['each'], 'Bags that one person mixes and places in an hour.', '12 each per h'),
  });

const base = () =>
  thing('base-supplier', {
    ...asked(),
    price: rate(['ton'], 'Price at the yard.', '$19 per ton'),
    increment: weight({ ...ABOVE_ZERO, most: '20 tons' }, 'Orders go up by this.', '0.5 tons'),
    delivery: money('What bringing one load costs.', '$110'),
    'delivery-load': weight(ABOVE_ZERO, 'What one delivery brings.', '12 tons'),
    'compacted-weight': quantity(
      'density',
      { least: '50 lb per cu ft' },
      'Its weight once compacted.',
      '130 lb per cu ft',
    ),
    'loose-over-compacted': times({ least: '1', most: '3' }, 'Loose volume over compacted volume.', '1.25'),
    notice: notice(),
  });

const geotextile = () =>
  thing('geotextile-supplier', {
    ...asked(),
    'roll-width': length({ ...ABOVE_ZERO, most: '40 ft' }, 'Width of a roll.', '12 ft 6 in'),
    'roll-length': length(ABOVE_ZERO, 'Length of a roll.', '100 ft'),
    lap: length({ ...FROM_ZERO, most: '6 ft' }, 'How far pieces overlap.', '12 in'),
    price: rate(['roll', 'sq ft'], 'Price of a roll, or of a square foot of it.', '$140 per roll'),
  }).meta({
    description:
      'Fabric to lay between the ground and a base, bought in whole rolls; asked for where a slab or a hidden condition has it.',
  });

const mesh = () =>
  thing('mesh-supplier', {
    ...asked(),
    'sheet-length': length(ABOVE_ZERO, 'Length of a sheet.', '10 ft'),
    'sheet-width': length(ABOVE_ZERO, 'Width of a sheet.', '5 ft'),
    lap: length(FROM_ZERO, 'How far sheets overlap.', '8 in'),
    price: rate(['sheet', 'each'], 'Price of a sheet.', '$14.50 per sheet'),
    'roll-length': length(ABOVE_ZERO, 'Length of a roll, where it sells rolls.', '150 ft').optional(),
    'roll-width': length(ABOVE_ZERO, 'Width of a roll.', '5 ft').optional(),
    'roll-price': priceEach('Price of a roll.', '$165').optional(),
    notice: noticeIfAny(),
  });

const barKeys = (kerf: string) => ({
  ...asked(),
  stock: length(ABOVE_ZERO, 'Length of a bar as sold.', '20 ft'),
  'other-stock': z
    .array(length(ABOVE_ZERO, 'Another length as sold.', '10 ft'))
    .meta({ description: 'Other lengths it sells; bars are cut from the length that leaves least over.' })
    .optional(),
  lap: count({ least: 0, most: 200 }, 'How far bars overlap, in bar diameters.', '40'),
  kerf: length(
    { ...FROM_ZERO, most: '1 in' },
    `What one cut takes away; ${kerf} if not given.`,
    '1/8 in',
  ).optional(),
  notice: noticeIfAny(),
});

const bars = () =>
  thing('bar-supplier', {
    ...barKeys('nothing, since steel is sheared,'),
    price: rate(['lb'], 'Price of the steel.', '$1.15 per lb'),
  });

const glassFibreBars = () =>
  thing('glass-fibre-supplier', {
    ...barKeys('1/8 in, since glass fibre is sawn,'),
    price: rate(['ft', 'lb'], 'Price of a foot or a pound.', '$0.62 per ft'),
    'bent-price': priceEach('Price of a piece bent where it is made.', '$9.50'),
    'bent-notice': days(
      MOST_NOTICE_DAYS,
      'How long before bent pieces must be ordered.',
      '15 days',
      '3 days',
    ),
  }).meta({ description: 'Bars of glass fibre; asked for where a slab has them.' });

const dowels = () =>
  thing('dowel-supplier', {
    ...asked(),
    'dowel-price': priceEach('Price of a dowel.', '$3.10'),
    'tie-price': priceEach('Price of a tie bar, cut to length.', '$2.20'),
    'holes-per-cartridge': count({ least: 1, most: 1000 }, 'Holes that a cartridge of epoxy fills.', '10'),
    'cartridge-price': priceEach('Price of a cartridge.', '$32'),
    notice: noticeIfAny(),
  }).meta({ description: 'Bars across joints and epoxy; asked for where an edge is dowelled or tied.' });

const sundries = () =>
  thing('sundries', {
    ...asked(),
    'curing-coverage': quantity(
      'coverage',
      ABOVE_ZERO,
      'What a gallon of curing compound covers on a smooth face, all coats together.',
      '200 sq ft per gal',
    ),
    'curing-coverage-rough': quantity(
      'coverage',
      ABOVE_ZERO,
      'The same on a broomed or washed face; three quarters of it if not given.',
      '150 sq ft per gal',
    ).optional(),
    'sheeting-price': rate(
      ['sq ft'],
      'Price of covers or sheeting to cure under; needed where a job is cured so.',
      '$0.09 per sq ft',
    ).optional(),
    'curing-pack': quantity('volume', { ...ABOVE_ZERO, most: '500 gal' }, 'What one pack holds.', '5 gal'),
    'curing-price': priceEach('Price of a pack.', '$78'),
    'isolation-strip': length(ABOVE_ZERO, 'Length of a strip of joint filler.', '10 ft'),
    'isolation-price': priceEach('Price of a strip.', '$6.20'),
    sealant: thing('sealant', {
      fills: length(ABOVE_ZERO, 'How much joint a tube fills, backer rod under it.', '24 ft'),
      price: priceEach('Price of a tube.', '$9.50'),
    })
      .meta({ description: 'Sealant for joints; asked for where a slab has sealed joints.' })
      .optional(),
    'chair-price': priceEach('Price of a bar chair.', '$0.35'),
    'bar-ties': thing('bar-ties', {
      pack: count(
        { least: 1, most: 100_000 },
        'How many ties a pack gives, or a roll of wire cut to ties.',
        '400',
      ),
      price: priceEach('Price of a pack.', '$6.50'),
    })
      .meta({ description: 'Ties for bars; not bought where they are not given.' })
      .optional(),
  });

export const suppliersSection = lazily(() =>
  thing('suppliers', {
    concrete: concrete(),
    bagged: bagged(),
    base: base(),
    geotextile: geotextile().optional(),
    mesh: mesh(),
    bars: bars(),
    'glass-fibre-bars': glassFibreBars().optional(),
    dowels: dowels().optional(),
    sundries: sundries(),
  }),
);

export type SuppliersSection = z.output<ReturnType<typeof suppliersSection>>;
