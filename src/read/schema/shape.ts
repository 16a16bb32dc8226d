import * as z from 'zod';
import type { Thing } from '../../problems/index.ts';
import { ID_PATTERN } from './id.ts';
import { listings } from './leaf.ts';

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

/** Values of one kind, by the number of a corner or an edge. */
export function byNumber<T extends z.core.$ZodType>(item: T, description: string) {
  return z.record(numberKey(), item).meta({ description });
}

/** One of a closed set of words. */
export function choice<const T extends readonly [string, ...string[]]>(words: T, description: string) {
  return z.enum(words).meta({ description });
}

/** An id of something that is described elsewhere; whether it is there, the model looks up. */
export function reference(description: string, ...examples: string[]) {
  return z.string().meta({ description, examples }).register(listings, { kind: 'id', reader: null });
}
