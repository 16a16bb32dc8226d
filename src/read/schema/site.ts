import { z } from 'zod';
import { bearing } from './angles.ts';
import { lazily } from './leaf.ts';
import { outlineKeys } from './outline.ts';
import { place } from './place.ts';
import { ABOVE_ZERO, length, quantity } from './quantities.ts';
import { byId, choice, thing } from './shape.ts';
import { crewText, publicText } from './text.ts';

const existing = () =>
  thing('existing', {
    label: publicText('What it is called on paper.', 'Old driveway'),
    ...outlineKeys(),
    material: choice(
      ['concrete', 'brick', 'asphalt'],
      'What it is made of; concrete if not given.',
    ).optional(),
    thickness: length({ ...ABOVE_ZERO, most: '4 ft' }, 'How thick it is.', '4 in'),
    'thickness-is': choice(['measured', 'assumed'], 'Whether somebody saw an edge of it.'),
    steel: choice(['none', 'mesh', 'bars'], 'Steel inside; none if not given.').optional(),
    'unit-weight': quantity(
      'density',
      { least: '20 lb per cu ft' },
      'Only where it is known; the table is taken if not given.',
      '150 lb per cu ft',
    ).optional(),
  });

const photoPoint = () =>
  thing('photo-point', {
    label: crewText('What the photo shows.', 'Porch step and house wall'),
    at: place('Where one stands on the plan.'),
    looking: bearing('Which way one looks, clockwise from up the plan.', '45 deg'),
  });

/** What is there now, what stays, and how to get in. */
export const siteSection = lazily(() =>
  thing('site', {
    existing: byId(existing(), 'What is there now and goes, each under an id.').optional(),
    north: bearing('Which way north is on the plan, clockwise from up.', '30 deg').optional(),
    'photo-points': byId(photoPoint(), 'Where photos are taken from, each under an id.').optional(),
    stays: z
      .array(publicText('Something to protect.', 'Garage floor and door seal'))
      .meta({ description: 'What stays and is protected.' })
      .optional(),
    access: thing('access', {
      'truck-stands': publicText('Where the truck stands.', 'On the street in front of the drive'),
      note: publicText(
        'What the client should know about getting in.',
        'The side gate stays shut because of the dog',
      ).optional(),
      'gate-code': crewText('How to open the gate.', '4471 side gate').optional(),
      'crew-note': crewText(
        'What the crew should know about the place.',
        'The sewer is shallow on the left',
      ).optional(),
    }),
    'locate-ticket': crewText(
      'Ticket of the utility marking, and how long its marks are good.',
      'Ticket 26-0001, marks good until 2026-05-18',
    ).optional(),
    emergency: thing('emergency', {
      hospital: publicText('Nearest hospital.', 'Anytown General'),
      'hospital-address': publicText('Its address.', '1 Hospital Drive'),
      'hospital-phone': publicText('Its telephone.', '555-0100'),
      'cross-street': publicText('Nearest cross street, for the call.', 'Second Street'),
    }),
  }),
);

export type SiteSection = z.output<ReturnType<typeof siteSection>>;
export type ExistingInput = z.output<ReturnType<typeof existing>>;
