import type * as z from 'zod';
import type { PaceUnit } from '../../units/index.ts';
import { lazily } from './leaf.ts';
import { count, pace } from './quantities.ts';
import { reference, thing } from './shape.ts';

const AREA: readonly PaceUnit[] = ['sq ft', 'm2'];
const LENGTH: readonly PaceUnit[] = ['ft', 'm'];
const VOLUME: readonly PaceUnit[] = ['yd3', 'm3'];
const EACH: readonly PaceUnit[] = ['each'];

/** What a task is counted in decides what its pace is in. */
const row = (units: readonly PaceUnit[]) =>
  thing('production-row', {
    pace: pace(
      units,
      'How much gets done in an hour by the people named here together.',
      `100 ${units[0]} per h`,
    ),
    people: count({ least: 1, most: 50 }, 'How many people it takes.', '2'),
    machine: reference('Id of the machine it is done with.', 'loader').optional(),
    operator: reference('Id of the person who runs it; anybody if not given.', 'foreman').optional(),
  });

/** How fast each task goes. */
export const productionSection = lazily(() =>
  thing('production', {
    'set-up': row(EACH),
    'saw-cut': row(LENGTH),
    'break-out': row(AREA),
    'break-out-by-hand': row(AREA).optional(),
    'saw-and-lift': row(AREA).optional(),
    chip: row(AREA).optional(),
    drill: row(EACH).optional(),
    dig: row(VOLUME),
    base: row(AREA),
    form: row(LENGTH),
    reinforce: row(AREA),
    place: row(VOLUME),
    finish: row(AREA),
    cure: row(AREA),
    'saw-joints': row(LENGTH),
    strip: row(LENGTH),
    backfill: row(LENGTH),
    clean: row(EACH),
  }),
);

export type ProductionSection = z.output<ReturnType<typeof productionSection>>;
