import { z } from 'zod';
import type { Thing } from '../../problems/index.ts';
import { ID_PATTERN } from './id.ts';
import { listings } from './leaf.ts';
import { ABOVE_ZERO, length } from './quantities.ts';

const MOST_ID_CHARACTERS = 40;

const idKey = () => z.string().regex(ID_PATTERN).max(MOST_ID_CHARACTERS);
const numberKey = () =>
  z
    .string()
    .regex(/^[1-9]\d?$/)
    .meta({ title: 'number' });

/** A map of fixed keys. Its title tells the reader what a key belongs to. */
export function thing<S extends z.core.$ZodLooseShape>(title: Thing, shape: S) {
  return z.strictObject(shape).meta({ title });
}

/** Things of one kind, by an id of the user's own. */
export function byId<T extends z.core.$ZodType>(item: T, description: string) {
  return z.record(idKey(), item).meta({ description });
}

/** One of a closed set of words. */
export function choice<const T extends readonly [string, ...string[]]>(words: T, description: string) {
  return z.enum(words).meta({ description });
}

/** An id of something that is described elsewhere; whether it is there, the model looks up. */
export function reference(description: string, ...examples: string[]) {
  return z.string().meta({ description, examples }).register(listings, { kind: 'id', reader: null });
}

const MOST_PLACE = { least: '-2,000 ft' } as const;
const place = (description: string) =>
  z
    .array(length(MOST_PLACE, 'Along the length, then across it.', '0 ft'))
    .length(2)
    .meta({ description, examples: [['6 ft', '20 ft']] });

/** The keys of an outline as taped, shared by what is there and what will be there. */
export const outlineKeys = () => ({
  rectangle: thing('rectangle', {
    length: length(ABOVE_ZERO, 'Corner 1 to corner 2.', '36 ft'),
    width: length(ABOVE_ZERO, 'Corner 2 to corner 3.', '18 ft'),
  }).optional(),
  corners: z
    .array(place('One corner: how far along, how far across.'))
    .meta({ description: 'The corners in order, anticlockwise on the plan, instead of a rectangle.' })
    .optional(),
  rounded: z
    .record(
      numberKey(),
      length(ABOVE_ZERO, 'How far the curve starts from the corner, along both edges.', '3 ft'),
    )
    .meta({ description: 'Corner number to how far back its curve starts.' })
    .optional(),
  edges: z
    .record(numberKey(), choice(['formed', 'house', 'stays', 'joint'], 'What stands at the edge.'))
    .meta({
      description:
        'Edge number (1 runs from corner 1 to corner 2) to what stands there; formed where nothing is said.',
    })
    .optional(),
  at: place('Where corner 1 stands on the plan.').optional(),
});
