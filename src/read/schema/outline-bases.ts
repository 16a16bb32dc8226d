import * as z from 'zod';
import { opening, turnOfSide } from './angles.ts';
import { place } from './place.ts';
import { ABOVE_ZERO, count, length } from './quantities.ts';
import { choice, thing } from './shape.ts';

/** Shapes that a part of a slab can have too. */
export const simpleBases = () => ({
  rectangle: thing('rectangle', {
    length: length(ABOVE_ZERO, 'Corner 1 to corner 2.', '36 ft'),
    width: length(ABOVE_ZERO, 'Corner 2 to corner 3.', '18 ft'),
  }).optional(),
  trapezoid: thing('trapezoid', {
    base: length(ABOVE_ZERO, 'Corner 1 to corner 2.', '22 ft'),
    top: length(ABOVE_ZERO, 'Corner 3 to corner 4, parallel to the base.', '16 ft'),
    depth: length(ABOVE_ZERO, 'From the base to the top, square to both.', '12 ft'),
    offset: length(
      { least: '-2,000 ft' },
      'How far along the base corner 4 stands, below 0 where it stands before corner 1; 0 in if not given.',
      '3 ft',
    ).optional(),
  }).optional(),
  circle: thing('circle', { diameter: length(ABOVE_ZERO, 'All the way across.', '12 ft') }).optional(),
  sector: thing('sector', {
    radius: length(ABOVE_ZERO, 'From corner 1 to the arc.', '10 ft'),
    angle: opening('How wide it opens at corner 1.', '90 deg'),
  }).optional(),
  corners: z
    .array(place('One corner: how far along, how far across.'))
    .meta({ description: 'The corners in order, anticlockwise on the plan.' })
    .optional(),
});

const sides = () =>
  z
    .array(
      thing('side', {
        turn: turnOfSide(
          'Turn at the corner it starts from; every side but the first has one.',
          'left',
        ).optional(),
        length: length(ABOVE_ZERO, 'From this corner to the next.', '14 ft'),
      }),
    )
    .meta({
      description: 'Side after side, walked along the edge from corner 1.',
      examples: [[{ length: '20 ft' }, { turn: 'left', length: '14 ft' }]],
    });

const fourSides = () =>
  thing('four-sides', {
    sides: z
      .array(length(ABOVE_ZERO, 'Edge 1 to edge 4.', '18 ft'))
      .length(4)
      .meta({ description: 'Edge 1 to edge 4.', examples: [['18 ft', '11 ft', '17 ft', '12 ft']] }),
    diagonal: length(ABOVE_ZERO, 'Corner 1 to corner 3.', '21 ft'),
    'other-diagonal': length(ABOVE_ZERO, 'Corner 2 to corner 4, as a check.', '20 ft').optional(),
  });

const triangleCorner = () =>
  thing('triangle-corner', {
    from: z
      .array(count({ least: 1, most: 99 }, 'Number of a corner before it.', '1'))
      .length(2)
      .meta({ description: 'The two corners before it that it was measured from.', examples: [['1', '2']] }),
    distances: z
      .array(length(ABOVE_ZERO, 'From the first and from the second.', '15 ft'))
      .length(2)
      .meta({ description: 'How far it is from each of them.', examples: [['15 ft', '19 ft']] }),
    side: choice(
      ['left', 'right'],
      'Where it lies, looking from the first of them to the second; left if not given.',
    ).optional(),
  });

const triangles = () =>
  thing('triangles', {
    base: length(ABOVE_ZERO, 'Corner 1 to corner 2.', '16 ft'),
    corners: z.array(triangleCorner()).meta({
      description: 'Corner 3 and those after it.',
      examples: [[{ from: ['1', '2'], distances: ['15 ft', '19 ft'] }]],
    }),
  });

/** Shapes told by what a tape gives: sides, turns, diagonals, distances. */
export const tapedBases = () => ({
  sides: sides().optional(),
  'four-sides': fourSides().optional(),
  triangles: triangles().optional(),
});
