import * as z from 'zod';
import { height } from './levels.ts';
import { place } from './place.ts';
import { ABOVE_ZERO, length } from './quantities.ts';
import { thing } from './shape.ts';
import { publicText } from './text.ts';

const pipe = () =>
  thing('drain-pipe', {
    size: length({ least: '1 in', most: '3 ft' }, 'Its inside diameter.', '4 in'),
    invert: height(
      'How high the bottom of the pipe is inside where it leaves the drain.',
      '98.90 ft',
      '-14 in',
    ),
    length: length({ ...ABOVE_ZERO, most: '2,000 ft' }, 'From the drain to its outlet.', '32 ft'),
    outlet: height('How high the bottom of the pipe is inside where it ends.', '98.40 ft', '-20 in'),
    to: publicText('Where it ends.', 'the gutter, through the curb'),
  }).meta({ description: 'The pipe that leads the water off; a drain without it has no outlet.' });

/** A drain in a new slab; its rim is a fixed height of the surface. */
export const drain = () =>
  thing('drain', {
    label: publicText('What it is called on paper.', 'Channel drain before the garage'),
    at: z
      .array(place('One place of it.', ['2 ft', '0 ft']))
      .min(1)
      .max(20)
      .meta({
        description: 'Where it lies on the plan: one place, or the places a channel runs through.',
        examples: [
          [
            ['2 ft', '0 ft'],
            ['2 ft', '18 ft'],
          ],
        ],
      }),
    rim: height('How high its rim is, which the surface comes down to.', '99.80 ft', '-2 1/2 in'),
    pipe: pipe().optional(),
  });
