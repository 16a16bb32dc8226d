import { BREAK_TASKS } from '../breaking/index.ts';
import type { CrewTask } from '../crew/index.ts';
import type { Machine } from '../job.ts';
import { type Apf, COLUMN_HR, type ControlCode, type SilicaRow, type SilicaRowName } from './silica-table.ts';

const DEMOLITION: readonly CrewTask[] = [...BREAK_TASKS, 'chip'];

/** Of which water can be fed to what cuts or grinds. */
const WITH_BLADE: readonly Machine['kind'][] = ['walk-behind-saw', 'cut-off-saw', 'hand-grinder'];

/** Float noise of adding parts of a day; far below a minute. */
const NOISE_HR = 1e-9;

/**
 * The respirator a row asks for.
 *
 * @param shift.hours Hours of all Table 1 tasks of one person in the shift, added [h], 0 or more.
 * @returns The least assigned protection factor, 0 for none; null where the table does not reach
 *   and exposure is to be assessed under 29 CFR 1926.1153(d).
 * @throws {RangeError} If the hours are below 0 or not a number.
 *
 * Source: 29 CFR 1926.1153(c)(1), Table 1; the adding of hours is (c)(3).
 */
export function respiratorApf(row: SilicaRow, shift: { hours: number; place: 'outdoors' | 'indoors' }): Apf {
  const { hours, place } = shift;
  if (!(hours >= 0 && hours < Infinity)) throw new RangeError(`hours must be 0 or more, got ${hours}`);
  return hours > COLUMN_HR + NOISE_HR ? row[place].over4Hr : row[place].to4Hr;
}

/**
 * What a row asks for that is not there; empty where one of its ways is complete. Of several
 * ways the one that lacks least is told, the first of equals.
 */
export function missingControls(row: SilicaRow, present: ReadonlySet<ControlCode>): readonly ControlCode[] {
  const lacks = row.controls.map((way) => way.filter((control) => !present.has(control)));
  return lacks.toSorted((one, other) => one.length - other.length)[0] ?? [];
}

/**
 * The row of a task by the machine that does it; null where Table 1 has none.
 *
 * A loader breaks, and lifts what was sawn out, under (xvii): used in demolition. It digs under (xviii). A plate compactor is no heavy equipment and
 * stands on damp stone; a hammer drill held in the hand is under (vii); bagged concrete mixed dry has no row at all. A grinder held in the hand is
 * under (xii), by water or by its dust collector; a coating is no joint of mortar, so not under (xi).
 */
export function rowOfTask(
  task: CrewTask,
  { kind, wet }: Pick<Machine, 'kind' | 'wet'>,
): SilicaRowName | null {
  switch (kind) {
    case 'walk-behind-saw':
      return 'iv';
    case 'cut-off-saw':
      return 'ii';
    case 'jackhammer':
      return 'x';
    case 'hammer-drill':
      return 'vii';
    case 'hand-grinder':
      return wet ? 'xii, water' : 'xii, collector';
    case 'loader-with-breaker':
      return DEMOLITION.includes(task) ? 'xvii' : 'xviii';
    case 'plate-compactor':
    case 'mixer':
      return null;
  }
}

/**
 * Controls that are there: those the machine has, and those the sheet tells the crew to keep.
 * Water as needed is an instruction; a feed, a shroud or a cab is a matter of the machine.
 */
export function controlsPresent(machine: Pick<Machine, 'kind' | 'wet' | 'cab'>): ReadonlySet<ControlCode> {
  const hasBlade = WITH_BLADE.includes(machine.kind);
  const present: ControlCode[] = ['water-or-suppressant-as-needed', 'outdoors-only'];
  if (machine.wet && hasBlade) present.push('water-feed-to-blade');
  if (machine.wet && machine.kind === 'jackhammer') present.push('water-at-point');
  if (machine.cab === 'enclosed') present.push('enclosed-cab');
  return new Set(present);
}
