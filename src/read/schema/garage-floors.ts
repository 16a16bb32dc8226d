import * as z from 'zod';
import { length } from './quantities.ts';
import { reference, thing } from './shape.ts';
import { publicText } from './text.ts';

/** A garage floor that a new slab comes up to. */
export const garageFloor = () =>
  thing('garage-floor', {
    label: publicText('What it is called on paper.', 'Garage floor'),
    slab: reference('Id of the new slab that meets it.', 'drive'),
    points: z
      .array(reference('Id of a fixed point on the floor, at the joint.', 'floor-left'))
      .min(1)
      .max(10)
      .meta({
        description: 'Where the floor was read along the joint.',
        examples: [['floor-left', 'floor-right']],
      }),
    lip: length(
      { least: '0 in', most: '4 in' },
      'How far the slab stays below the floor at the joint.',
      '1/2 in',
    ),
    seal: length(
      { least: '0 in', most: '3 ft' },
      'From the joint in to the line on which the seal of the door closes.',
      '3 in',
    ),
  });
