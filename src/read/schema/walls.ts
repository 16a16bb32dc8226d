import { height } from './levels.ts';
import { place } from './place.ts';
import { FROM_ZERO, length } from './quantities.ts';
import { choice, reference, thing } from './shape.ts';
import { publicText } from './text.ts';

/** A part of a wall that a new surface must not cover or come near. */
export const wallPart = () =>
  thing('wall-part', {
    label: publicText('What it is called on paper.', 'Bottom of the siding, left of the door'),
    kind: choice(
      ['siding', 'weep-screed', 'brick-weeps', 'door-sill', 'vent', 'window-well'],
      'What it is: siding of wood, the weep screed of stucco, open joints at the foot of brick, a door sill, a vent, the rim of a window well.',
    ),
    at: place('Where it is on the plan.'),
    height: height('How high its lowest edge is above the datum, or below it.', '101.60 ft', '+7 in'),
    beside: reference('What is beside it when all is done: the id of a slab, or earth.', 'walk', 'earth'),
    ground: height(
      'How high the earth beside it then is; only with beside: earth, and needed with it.',
      '101.00 ft',
      '-1 in',
    ).optional(),
    least: length(
      { ...FROM_ZERO, most: '4 ft' },
      'How far it has to stay above, where the job knows better than the table.',
      '4 in',
    ).optional(),
  });
