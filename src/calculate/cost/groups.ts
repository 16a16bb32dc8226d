import type { CrewTask } from '../crew/index.ts';

export const COST_GROUPS = [
  'tear-out-and-haul',
  'base-and-forms',
  'concrete',
  'finish-and-clean',
  'other',
] as const;
export type CostGroup = (typeof COST_GROUPS)[number];

export type CostKind = 'labor' | 'machine' | 'material' | 'haul' | 'other';

/** The group that pays for a task; what a homeowner sees as one price. */
export const TASK_GROUP: Readonly<Record<CrewTask, CostGroup>> = {
  'set-up': 'tear-out-and-haul',
  'saw-cut': 'tear-out-and-haul',
  'break-out': 'tear-out-and-haul',
  'break-out-by-hand': 'tear-out-and-haul',
  'saw-and-lift': 'tear-out-and-haul',
  chip: 'tear-out-and-haul',
  dig: 'tear-out-and-haul',
  haul: 'tear-out-and-haul',
  base: 'base-and-forms',
  form: 'base-and-forms',
  drill: 'base-and-forms',
  reinforce: 'base-and-forms',
  place: 'concrete',
  finish: 'finish-and-clean',
  cure: 'finish-and-clean',
  'saw-joints': 'finish-and-clean',
  strip: 'finish-and-clean',
  backfill: 'finish-and-clean',
  clean: 'finish-and-clean',
};
