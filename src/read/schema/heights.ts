import * as z from 'zod';
import { drain } from './drains.ts';
import { lid } from './fixtures.ts';
import { garageFloor } from './garage-floors.ts';
import { lazily } from './leaf.ts';
import { height, rodReading, station } from './levels.ts';
import { place } from './place.ts';
import { publicWalk } from './public-walks.ts';
import { ABOVE_ZERO, length } from './quantities.ts';
import { byId, choice, reference, thing } from './shape.ts';
import { crewText, publicText } from './text.ts';
import { wallPart } from './walls.ts';
import { bends, keptDry } from './water.ts';

const point = () =>
  thing('level-point', {
    label: publicText('What it is called on paper.', 'Garage floor, left'),
    at: place('Where it is on the plan.'),
    height: height(
      'How high it is above the datum, or below it; not needed where the notes have a foresight on it.',
      '100.25 ft',
      '-3/4 in',
    ).optional(),
    kind: choice(
      ['fixed', 'finish', 'existing'],
      'Fixed cannot move, such as a garage floor or a public walk; finish is a height chosen for the new surface; existing is what is there now.',
    ),
    'stood-on': reference(
      'What the rod stood on: stays, dirt, or the id of an existing thing. Needed for existing; stays if not given for fixed. A fixed height read on a layer that goes is lowered by that layer.',
      'stays',
      'old-drive',
    ).optional(),
  });

const note = () =>
  thing('level-note', {
    on: station(
      'Where the rod stood: the id of a point, or a name of its own, such as that of a turning point.',
      'tp-1',
    ),
    height: height(
      'Its height, where it is known: a run of notes starts there, or is checked.',
      '100.00 ft',
    ).optional(),
    backsight: rodReading(
      'The rod on a known height, read first from each new place of the instrument.',
      '4.32 ft',
      `5' 1 3/16"`,
    ).optional(),
    foresight: rodReading('The rod on any other place.', '5.10 ft').optional(),
  });

const beyondPoint = () =>
  thing('beyond-point', {
    label: crewText('What it is called on paper.', 'Gutter'),
    away: length(
      { ...ABOVE_ZERO, most: '100 ft' },
      'How far it is from the point before it; the first one from the edge of the last slab.',
      '2 ft',
    ),
    height: height('How high it is above the datum, or below it.', '99.62 ft', '-5 in'),
  });

const profile = () =>
  thing('profile', {
    label: crewText('What the line is called on paper.', 'Middle of the drive'),
    along: z
      .array(place('A point of it.'))
      .min(2)
      .max(20)
      .meta({
        description:
          'Where it runs on the plan, from point to point across the slabs; not along the edge of one.',
        examples: [
          [
            ['0 ft', '9 ft'],
            ['36 ft', '9 ft'],
          ],
        ],
      }),
    beyond: z
      .array(beyondPoint())
      .max(10)
      .meta({
        description:
          'Where the line goes on past its last slab, such as gutter and street: each change of slope there is worked out for cars.',
      })
      .optional(),
  });

/** How high things are, against one datum. */
export const heightsSection = lazily(() =>
  thing('heights', {
    datum: crewText(
      'What all heights of this job are measured from, and what it is called.',
      'Nail in the curb, called 100.00 ft',
    ),
    notes: z
      .array(note())
      .meta({
        description:
          'Level notes in the order taken. Each says one thing: a height, a backsight or a foresight. They are best closed by a foresight on a known height.',
      })
      .optional(),
    'closing-error': length(
      { ...ABOVE_ZERO, most: '6 in' },
      'What level notes may miss a known height by; only with notes, and needed with them.',
      '1/8 in',
    ).optional(),
    points: byId(point(), 'Points whose height counts, each under an id.'),
    'bends-along': bends()
      .meta({
        description:
          'Lines across a slab at which its surface may bend, each from point to point; without them the bends run where the triangles between the points come out.',
      })
      .optional(),
    garages: byId(garageFloor(), 'Garage floors that new slabs come up to, each under an id.').optional(),
    'keep-dry': byId(
      keptDry(),
      'Lines that no water of a new slab may run to, such as that to a neighbor, each under an id.',
    ).optional(),
    drains: byId(drain(), 'Drains in new slabs, each under an id.').optional(),
    lids: byId(
      lid(),
      'Lids, cleanouts and boxes that are set to the height of the new surface, each under an id.',
    ).optional(),
    'public-walks': byId(
      publicWalk(),
      'Public walks that have settled or heaved where a new slab meets them, each under an id.',
    ).optional(),
    walls: byId(
      wallPart(),
      'Parts of walls that stay clear of what is beside them, each under an id.',
    ).optional(),
    profiles: byId(
      profile(),
      'Lines along which what is there now is drawn against what will be, each under an id.',
    ).optional(),
  }),
);

export type HeightsSection = z.output<ReturnType<typeof heightsSection>>;
export type LevelNoteInput = z.output<ReturnType<typeof note>>;
