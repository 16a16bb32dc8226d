import * as z from 'zod';
import { turnAtOnce, turnOfArc } from './angles.ts';
import { ABOVE_ZERO, length } from './quantities.ts';
import { choice, thing } from './shape.ts';

/** What can stand at an edge of concrete. */
export const EDGE_KINDS = ['formed', 'house', 'stays', 'joint'] as const;

const endOf = (what: string) => choice(EDGE_KINDS, `What stands ${what}; formed if not given.`).optional();

/** One of `straight`, `arc` and `turn` says what the line does; the model checks that it is one. */
const piece = () =>
  thing('strip-piece', {
    straight: length(ABOVE_ZERO, 'How far it goes straight on.', '12 ft').optional(),
    arc: turnOfArc('How far an arc turns.', '60 deg left').optional(),
    radius: length(ABOVE_ZERO, 'Radius of the arc, at the middle of the walk.', '10 ft').optional(),
    turn: turnAtOnce('How far the line turns at once.', '90 deg right').optional(),
    rounded: choice(
      ['parallel', 'equal', 'outer', 'inner'],
      'How the corner of a turn is rounded: parallel keeps the width, equal has the same setback on both sides, outer and inner round that corner alone.',
    ).optional(),
    back: length(
      ABOVE_ZERO,
      'How far from the inner corner its curve starts; from the outer one with outer.',
      '3 ft',
    ).optional(),
  });

/** A walk by its middle line. */
export const strip = () =>
  thing('strip', {
    width: length(ABOVE_ZERO, 'Width of the walk.', '4 ft'),
    'end-width': length(ABOVE_ZERO, 'Width at its far end, where it changes on the way.', '5 ft').optional(),
    line: z.array(piece()).meta({
      description: 'The middle line, piece by piece.',
      examples: [[{ straight: '12 ft' }, { arc: '60 deg left', radius: '10 ft' }]],
    }),
    start: endOf('where it starts'),
    end: endOf('where it ends'),
    left: endOf('along its left side'),
    right: endOf('along its right side'),
  });
