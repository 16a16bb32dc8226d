import * as z from 'zod';
import { place } from './place.ts';
import { choice, reference, thing } from './shape.ts';
import { publicText } from './text.ts';

/** A line that no water of a new slab may run to. */
export const keptDry = () =>
  thing('kept-dry', {
    label: publicText('What it is called on paper.', 'Lot line to the left'),
    kind: choice(['neighbor', 'window-well', 'building'], 'What lies behind it.'),
    along: z
      .array(place('A point of it.', ['0 ft', '-2 ft']))
      .min(2)
      .max(20)
      .meta({
        description: 'Where it runs on the plan.',
        examples: [
          [
            ['0 ft', '-2 ft'],
            ['36 ft', '-2 ft'],
          ],
        ],
      }),
  });

/** Lines from point to point that a surface may bend at. */
export const bends = () =>
  z.array(
    z
      .array(reference('Id of a fixed point or of a finish height.', 'break-left'))
      .min(2)
      .max(20)
      .meta({
        description: 'The points of one line, in order.',
        examples: [['break-left', 'break-right']],
      }),
  );
