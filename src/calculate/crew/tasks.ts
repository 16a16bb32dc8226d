import type { TaskId } from '../job.ts';

export const PHASES = ['tear-out', 'base-and-forms', 'pour', 'strip-and-clean'] as const;
export type Phase = (typeof PHASES)[number];

export type CrewTask = TaskId | 'haul';
export type TaskUnit = 'each' | 'sq ft' | 'ft' | 'yd3';

/**
 * What is done in which phase, in the order of the work, and what its quantity is counted in.
 *
 * The order of the pour is the order of the trade: place, screed and bull float before water
 * stands on top; wait; edge, float and broom; cure at once; saw in its window. Common practice.
 * Haul has no pace: its hours are driven, and come with the quantity.
 */
export const TASKS: Readonly<Record<CrewTask, { readonly phase: Phase; readonly unit: TaskUnit }>> = {
  'set-up': { phase: 'tear-out', unit: 'each' },
  'saw-cut': { phase: 'tear-out', unit: 'ft' },
  'break-out': { phase: 'tear-out', unit: 'sq ft' },
  'break-out-by-hand': { phase: 'tear-out', unit: 'sq ft' },
  'saw-and-lift': { phase: 'tear-out', unit: 'sq ft' },
  chip: { phase: 'tear-out', unit: 'sq ft' },
  dig: { phase: 'tear-out', unit: 'yd3' },
  haul: { phase: 'tear-out', unit: 'each' },
  base: { phase: 'base-and-forms', unit: 'sq ft' },
  form: { phase: 'base-and-forms', unit: 'ft' },
  drill: { phase: 'base-and-forms', unit: 'each' },
  reinforce: { phase: 'base-and-forms', unit: 'sq ft' },
  place: { phase: 'pour', unit: 'yd3' },
  finish: { phase: 'pour', unit: 'sq ft' },
  cure: { phase: 'pour', unit: 'sq ft' },
  'saw-joints': { phase: 'pour', unit: 'ft' },
  strip: { phase: 'strip-and-clean', unit: 'ft' },
  backfill: { phase: 'strip-and-clean', unit: 'ft' },
  clean: { phase: 'strip-and-clean', unit: 'each' },
};

export const CREW_TASKS = Object.keys(TASKS) as readonly CrewTask[];

export function tasksOf(phase: Phase): readonly CrewTask[] {
  return CREW_TASKS.filter((task) => TASKS[task].phase === phase);
}
