import type { Heights, LevelNote, LevelPoint, StoodOn } from '../calculate/job.ts';
import type { HeightsSection, LevelNoteInput } from '../read/index.ts';
import { SHIPPED } from './constants.ts';
import { inCoreUnit, inCoreUnitOrNull, mapThings } from './quantity.ts';
import { pointOf } from './shape-base.ts';

/** Null where the job has no such section. */
export function heightsOf(input: HeightsSection | undefined): Heights | null {
  if (input === undefined) return null;
  return {
    datum: input.datum,
    notes: (input.notes ?? []).map(noteOf),
    closingErrorIn: inCoreUnitOrNull(input['closing-error']),
    points: mapThings(
      input.points,
      (id, { label, at, height, kind, 'stood-on': stoodOn }): LevelPoint => ({
        id,
        label,
        at: pointOf(at),
        heightIn: inCoreUnitOrNull(height),
        kind,
        stoodOn: kind === 'finish' ? null : stoodOnOf(stoodOn ?? SHIPPED.stoodOn),
      }),
    ),
  };
}

/** @throws {RangeError} If it says nothing, which the checks refuse. */
function noteOf({ on, height, backsight, foresight }: LevelNoteInput): LevelNote {
  if (height !== undefined) return { on, kind: 'height', valueIn: inCoreUnit(height) };
  if (backsight !== undefined) return { on, kind: 'backsight', valueIn: inCoreUnit(backsight) };
  if (foresight !== undefined) return { on, kind: 'foresight', valueIn: inCoreUnit(foresight) };
  throw new RangeError(`a level note on ${on} without a height or a reading`);
}

/** The words win over an existing thing of that name. */
function stoodOnOf(written: string): StoodOn {
  return written === 'stays' || written === 'dirt' ? { kind: written } : { kind: 'existing', id: written };
}
