import type * as z from 'zod';
import { bearing } from './angles.ts';
import { simpleBases, tapedBases } from './outline-bases.ts';
import { outlineChanges } from './outline-changes.ts';
import { place } from './place.ts';
import { FROM_ZERO, quantity } from './quantities.ts';
import { byId, choice, thing } from './shape.ts';
import { strip } from './strip.ts';
import { publicText } from './text.ts';

const turned = () =>
  bearing('How far it is turned about its corner 1, anticlockwise; 0 deg if not given.', '30 deg').optional();

const cutOut = () =>
  thing('cut-out', {
    label: publicText('What is left out.', 'Tree well'),
    ...simpleBases(),
    at: place('Where its corner 1 stands, on this shape.'),
    turned: turned(),
    around: choice(['formed', 'stays', 'house'], 'What the concrete ends at there.'),
  });

/** No circle: a piece is joined by a straight edge. */
const addedPiece = () => {
  const { circle: _, ...withStraightEdges } = simpleBases();
  return thing('added-piece', {
    label: publicText('What is joined on.', 'Widening for a second car'),
    ...withStraightEdges,
    at: place('Where its corner 1 stands, on this shape.'),
    turned: turned(),
  });
};

const taped = () =>
  thing('taped', {
    how: choice(['on-slope', 'level'], 'How the tape lay.'),
    slope: quantity('slope', FROM_ZERO, 'How steep the ground is.', '12 %'),
    runs: choice(['along', 'across'], 'Which way the slope runs on this shape.'),
  });

/** The keys of an outline as taped, shared by what is there and what will be there. */
export const outlineKeys = () => ({
  ...simpleBases(),
  ...tapedBases(),
  strip: strip().optional(),
  ...outlineChanges(),
  'cut-outs': byId(cutOut(), 'What is left out of it, each under an id.').optional(),
  added: byId(addedPiece(), 'Pieces joined to a straight edge of it, each under an id.').optional(),
  taped: taped().optional(),
  at: place('Where corner 1 stands on the plan.').optional(),
  turned: turned(),
});

export type OutlineInput = z.output<z.ZodObject<ReturnType<typeof outlineKeys>>>;
export type SimpleBaseInput = z.output<z.ZodObject<ReturnType<typeof simpleBases>>>;
export type StripInput = NonNullable<OutlineInput['strip']>;
export type BendInput = NonNullable<OutlineInput['bent']>[string];
