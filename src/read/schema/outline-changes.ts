import { partOfCorner } from './angles.ts';
import { place } from './place.ts';
import { ABOVE_ZERO, length } from './quantities.ts';
import { byNumber, choice, thing } from './shape.ts';
import { EDGE_KINDS } from './strip.ts';

const chord = () =>
  thing('chord', {
    chord: length(ABOVE_ZERO, 'Straight from mark to mark.', '4 ft'),
    rise: length(ABOVE_ZERO, 'From the middle of that line to the curve.', '8 in'),
  });

const twoArcs = () =>
  thing('two-arcs', {
    'first-radius': length(
      ABOVE_ZERO,
      'Radius of the arc that starts on the edge before the corner.',
      '8 ft',
    ),
    'first-turn': partOfCorner('How much of the corner the first arc takes.', '30 deg'),
    'second-radius': length(ABOVE_ZERO, 'Radius of the arc that takes the rest of the corner.', '4 ft'),
  });

/** One of `rise`, `radius` and `through` says how far; the model checks that it is one. */
const bend = () =>
  thing('bend', {
    rise: length(ABOVE_ZERO, 'From the middle of the straight edge to the curve.', '1 ft').optional(),
    radius: length(ABOVE_ZERO, 'Radius of the curve.', '20 ft').optional(),
    through: place('A point the curve goes through, on this shape.', ['12 ft', '21 ft']).optional(),
    bends: choice(['out', 'in'], 'Away from the concrete or into it; with rise and radius.').optional(),
  });

/** What makes an outline of a base: corners rounded, edges bent, and what stands at an edge. */
export const outlineChanges = () => ({
  rounded: byNumber(
    length(ABOVE_ZERO, 'How far the curve starts from the corner, along both edges.', '3 ft'),
    'Corner number to how far back its curve starts.',
  ).optional(),
  'rounded-to-radius': byNumber(
    length(ABOVE_ZERO, 'Radius of the curve at the corner.', '4 ft'),
    'Corner number to the radius of its curve.',
  ).optional(),
  'rounded-by-chord': byNumber(chord(), 'Corner number to the chord of its curve and its rise.').optional(),
  'rounded-by-two-arcs': byNumber(twoArcs(), 'Corner number to the two arcs of its curve.').optional(),
  bent: byNumber(bend(), 'Edge number to how it curves.').optional(),
  edges: byNumber(
    choice(EDGE_KINDS, 'What stands at the edge.'),
    'Edge number (1 runs from corner 1 to corner 2) to what stands there; formed where nothing is said.',
  ).optional(),
});
