import * as z from 'zod';
import { height } from './levels.ts';
import { place } from './place.ts';
import { ABOVE_ZERO, FROM_ZERO, length } from './quantities.ts';
import { choice, thing } from './shape.ts';
import { publicText } from './text.ts';

/** A lid in a slab that is set to the height of the new surface. */
export const lid = () =>
  thing('lid', {
    label: publicText('What it is called on paper.', 'Sewer cleanout by the porch'),
    kind: choice(['lid', 'cleanout', 'valve-box', 'meter-box'], 'What it is.'),
    at: place('Where it is on the plan.'),
    height: height('How high its rim is now.', '100.12 ft', '-1 in'),
  });

/** A pipe that lies under a new slab. */
export const underSlab = () =>
  thing('under-slab', {
    label: publicText('What it is called on paper.', 'Downspout of the porch roof'),
    kind: choice(
      ['downspout', 'sleeve', 'irrigation', 'wires'],
      'What it is for: water of a downspout, an empty sleeve for later, irrigation, or wires in a conduit.',
    ),
    along: z
      .array(place('One place of it.', ['4 ft', '-1 ft']))
      .min(2)
      .max(20)
      .meta({
        description: 'The places it runs through on the plan.',
        examples: [
          [
            ['4 ft', '-1 ft'],
            ['4 ft', '19 ft'],
          ],
        ],
      }),
    size: length({ ...ABOVE_ZERO, most: '3 ft' }, 'Its outside diameter.', '4 in'),
    depth: length({ ...FROM_ZERO, most: '10 ft' }, 'From the top of the new slab down to its top.', '10 in'),
  });
