import type { Phase, WorkDay } from '../../calculate/crew/index.ts';
import type { TaskId } from '../../calculate/job.ts';
import type { Made } from '../made.ts';
import { machineRuns } from './day-machines.ts';
import { type WhatThereIs, whatThereIs } from './what-there-is.ts';

type Day = {
  readonly phase: Phase;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly isWithMachine: boolean;
  readonly does: (...tasks: readonly TaskId[]) => boolean;
  readonly has: WhatThereIs;
};

/** What is looked at before the work of a part of a day. */
export function beforeYouStart(made: Made, part: WorkDay): readonly string[] {
  const say = made.words.crewDays.beforeYouStart;
  const day = dayOf(made, part);
  switch (day.phase) {
    case 'tear-out':
      return chosen(say, {
        marks: day.isFirst || day.does('saw-cut', 'break-out', 'break-out-by-hand', 'saw-and-lift', 'dig'),
        photos: day.isFirst,
        protect: day.isFirst,
        water: day.does('saw-cut', 'break-out', 'break-out-by-hand'),
      });
    case 'base-and-forms':
      return chosen(say, { soft: day.does('base'), strings: day.does('base', 'form') });
    case 'pour':
      return chosen(say, { prePour: true, weather: true, washout: true, gear: true });
    case 'strip-and-clean':
      return chosen(say, { hard: day.does('strip'), soil: day.does('backfill') });
  }
}

/** What is looked at after it. */
export function beforeYouLeave(made: Made, part: WorkDay): readonly string[] {
  const say = made.words.crewDays.beforeYouLeave;
  const day = dayOf(made, part);
  const { has } = day;
  switch (day.phase) {
    case 'tear-out':
      return chosen(say, {
        thickness: has.oldSlab && day.does('break-out', 'break-out-by-hand', 'saw-and-lift'),
        edges: true,
        swept: true,
        machine: day.isWithMachine,
      });
    case 'base-and-forms':
      return chosen(say, {
        stakes: day.does('form', 'drill', 'reinforce'),
        base: true,
        prePour: day.isLast,
      });
    case 'pour':
      return chosen(say, {
        curedCuts: has.sawnJoints,
        cured: !has.sawnJoints,
        barricade: true,
        washout: true,
        amounts: true,
      });
    case 'strip-and-clean':
      return chosen(say, { owner: day.isLast, photos: day.isLast, counted: day.isLast });
  }
}

function dayOf(made: Made, { phase, on, tasks }: WorkDay): Day {
  const { job, results } = made;
  const days = results.crew.data.days.filter((day) => day.kind === 'work' && day.phase === phase);
  const done = new Set(tasks.map(({ task }) => task));
  return {
    phase,
    isFirst: days[0]?.on === on,
    isLast: days.at(-1)?.on === on,
    isWithMachine: machineRuns(made, tasks).length > 0,
    does: (...asked) => asked.some((task) => done.has(task)),
    has: whatThereIs(job, results),
  };
}

/** The texts that are asked for, in that order. */
function chosen<Key extends string>(
  say: Readonly<Record<Key, string>>,
  asked: Readonly<Partial<Record<Key, boolean>>>,
): readonly string[] {
  const keys = Object.keys(asked) as Key[];
  return keys.filter((key) => asked[key] === true).map((key) => say[key]);
}
