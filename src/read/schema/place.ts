import * as z from 'zod';
import { length } from './quantities.ts';

const MOST_PLACE = { least: '-2,000 ft' } as const;

/** A point: how far along, then how far across. */
export function place(description: string, example: readonly [string, string] = ['6 ft', '20 ft']) {
  return z
    .array(length(MOST_PLACE, 'Along the length, then across it.', '0 ft'))
    .length(2)
    .meta({ description, examples: [[...example]] });
}
