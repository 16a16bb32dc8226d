import type { Production, ProductionRow, TaskId } from './job.ts';

/**
 * The pace of a task.
 *
 * @throws {RangeError} If the company has none: a thing that asks for one is checked where files
 *   are read.
 */
export function productionRow(production: Production, task: TaskId): ProductionRow {
  const row = production[task];
  if (row === undefined) throw new RangeError(`no pace for ${task}`);
  return row;
}

/** Every row that the company has. */
export function productionRows(production: Production): readonly ProductionRow[] {
  return Object.values(production).filter((row) => row !== undefined);
}
