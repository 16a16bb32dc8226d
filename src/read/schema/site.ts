import * as z from 'zod';
import { bearing } from './angles.ts';
import { underSlab } from './fixtures.ts';
import { flight } from './flights.ts';
import { lazily } from './leaf.ts';
import { outlineKeys } from './outline.ts';
import { place } from './place.ts';
import { ABOVE_ZERO, count, FROM_ZERO, length, quantity, weight } from './quantities.ts';
import { byId, choice, reference, thing } from './shape.ts';
import { crewText, publicText } from './text.ts';

const walls = () =>
  thing('walls', {
    thickness: length({ ...ABOVE_ZERO, most: '4 ft' }, 'How thick they are.', '8 in'),
    height: length({ ...ABOVE_ZERO, most: '20 ft' }, 'From the footing to the top.', '2 ft'),
  }).meta({
    description: 'Of something hollow, such as a planter or a column; its outline is their outer face.',
  });

const footing = () =>
  thing('footing', {
    width: length(
      { ...ABOVE_ZERO, most: '10 ft' },
      'How wide it is, its middle under that of the walls.',
      '16 in',
    ),
    thickness: length({ ...ABOVE_ZERO, most: '4 ft' }, 'How thick it is.', '8 in'),
  }).meta({ description: 'Concrete below the walls, all round; only with walls.' });

const fill = () =>
  thing('fill', {
    material: choice(['soil', 'gravel', 'concrete'], 'What is inside.'),
    depth: length({ ...ABOVE_ZERO, most: '20 ft' }, 'How deep it lies inside the walls.', '18 in'),
  }).meta({ description: 'What is inside the walls; only with walls.' });

const existing = () =>
  thing('existing', {
    label: publicText('What it is called on paper.', 'Old driveway'),
    ...outlineKeys(),
    material: choice(
      ['concrete', 'brick', 'block', 'asphalt'],
      'What it is made of, or its walls are; concrete if not given. Block is hollow concrete block.',
    ).optional(),
    thickness: length(
      { ...ABOVE_ZERO, most: '4 ft' },
      'How thick it is; all that has no walls has a thickness.',
      '4 in',
    ).optional(),
    'thickness-is': choice(
      ['measured', 'assumed'],
      'Whether somebody saw an edge of it; goes with a thickness.',
    ).optional(),
    walls: walls().optional(),
    footing: footing().optional(),
    fill: fill().optional(),
    thickest: length(
      { ...ABOVE_ZERO, most: '4 ft' },
      'The most it may be where the thickness is assumed; loads are planned for it. An inch more than the thickness if not given.',
      '5 in',
    ).optional(),
    coating: choice(
      ['paint', 'sealer', 'epoxy', 'tile', 'overlay'],
      'What lies on it; only on concrete, which then goes as coated.',
    ).optional(),
    'coating-thickness': length(
      { ...ABOVE_ZERO, most: '6 in' },
      'Of tile with its bed, or of an overlay; only with these.',
      '1 1/2 in',
    ).optional(),
    'soil-stuck': length(
      { ...FROM_ZERO, most: '6 in' },
      'Soil that comes up with it and is hauled with it; 0 in if not given.',
      '1/2 in',
    ).optional(),
    steel: choice(['none', 'mesh', 'bars'], 'Steel inside; none if not given.').optional(),
    'break-out': choice(
      ['breaker', 'jackhammer', 'saw-and-lift'],
      'What it is taken out with; breaker if not given. The others need their pace in production.',
    ).optional(),
    'unit-weight': quantity(
      'density',
      { least: '20 lb per cu ft' },
      'Only where it is known; the table is taken if not given.',
      '150 lb per cu ft',
    ).optional(),
  });

const posts = () =>
  thing('posts', {
    label: publicText('What they are called on paper.', 'Fence posts'),
    count: count({ least: 1, most: 500 }, 'How many.', '6'),
    footing: thing('post-footing', {
      diameter: length({ ...ABOVE_ZERO, most: '6 ft' }, 'How wide the round concrete is.', '10 in'),
      depth: length({ ...ABOVE_ZERO, most: '10 ft' }, 'How deep it goes.', '2 ft 6 in'),
    }).meta({ description: 'The concrete in the ground of each.' }),
  });

const oldSteps = () =>
  thing('old-steps', {
    label: publicText('What they are called on paper.', 'Old porch steps'),
    material: choice(
      ['concrete', 'brick', 'block'],
      'What they are made of, solid; concrete if not given.',
    ).optional(),
    steel: choice(['none', 'mesh', 'bars'], 'Steel inside; none if not given.').optional(),
    width: length(ABOVE_ZERO, 'Width of the flight and of its landing.', '5 ft'),
    risers: count({ least: 1, most: 30 }, 'How many steps up.', '2'),
    riser: length({ ...ABOVE_ZERO, most: '2 ft' }, 'Height of one step.', '6 1/2 in'),
    tread: length({ ...ABOVE_ZERO, most: '6 ft' }, 'Depth of one step.', '12 in'),
    landing: length(ABOVE_ZERO, 'Depth of the landing, or of the top step.', '3 ft'),
  });

const green = () =>
  thing('green', {
    label: publicText('What it is called on paper.', 'Hedge along the walk'),
    'loose-volume': quantity('volume', ABOVE_ZERO, 'As it lies on the trailer.', '2 yd3'),
    'loose-weight': quantity(
      'density',
      { least: '1 lb per cu ft' },
      'As it lies on the trailer; weigh a load, or ask the place that takes it.',
      '250 lb per yd3',
    ),
  });

const chip = () =>
  thing('chip', {
    label: publicText('What it is called on paper.', 'Coating on the garage lip'),
    area: quantity('area', ABOVE_ZERO, 'How much of it comes off.', '6 sq ft'),
    thickness: length({ ...ABOVE_ZERO, most: '6 in' }, 'How thick it lies.', '1/4 in'),
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
    posts: byId(posts(), 'Posts that go with their footings, each row under an id.').optional(),
    'old-steps': byId(oldSteps(), 'Solid steps that go, each flight under an id.').optional(),
    flights: byId(
      flight(),
      'Flights of steps that stay while the surface at their foot is new, each under an id.',
    ).optional(),
    green: byId(green(), 'Shrubs and the like that go, each under an id.').optional(),
    chip: byId(
      chip(),
      'Coating chipped off concrete that stays, each under an id; the company needs a pace for "chip".',
    ).optional(),
    'under-slab': byId(
      underSlab(),
      'Pipes that lie under new slabs: downspouts, sleeves, irrigation, wires; each under an id.',
    ).optional(),
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
      'truck-at': place('Where the rear of the concrete truck stands on the plan.', [
        '-6 ft',
        '9 ft',
      ]).optional(),
      'chute-reaches': z
        .array(reference('Id of a slab along which the truck can drive.', 'drive'))
        .meta({
          description: 'Slabs along which the truck can drive, so that its chute reaches all of them.',
        })
        .optional(),
      'way-extra': length(
        { ...FROM_ZERO, most: '500 ft' },
        'What the way from the truck to the slabs is longer than straight; nothing if not given.',
        '15 ft',
      ).optional(),
      'way-slope': quantity('slope', FROM_ZERO, 'The steepest part of that way.', '8 %').optional(),
      'way-width': length(ABOVE_ZERO, 'The narrowest place on that way.', '3 ft 6 in').optional(),
      washout: crewText(
        'Where chutes and tools are washed out.',
        'Lined box on the parking strip, uphill of no drain',
      ).optional(),
      'left-over': crewText(
        'Where concrete goes that is left over.',
        'Two block molds beside the truck, then the washout',
      ).optional(),
      'gate-code': crewText('How to open the gate.', '4471 side gate').optional(),
      'crew-note': crewText(
        'What the crew should know about the place.',
        'The sewer is shallow on the left',
      ).optional(),
    }),
    'base-room': weight(
      FROM_ZERO,
      'The most base that may lie on the job before the rubble is gone; no limit if not given.',
      '10 tons',
    ).optional(),
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
