import { constant, type Figure, figure, given, num } from '../figure.ts';
import type { Company, Machine } from '../job.ts';
import { thingNamed } from '../parts.ts';
import { productionRows } from '../production-row.ts';
import {
  AGGREGATE_SHARE_RATIO,
  AGGREGATE_SOURCE,
  aggregateWorkingLoadLb,
  COUNT_SOURCE,
  HEAVY_MACHINE_COUNT,
  HEAVY_MACHINE_LB,
  machineTiedownCount,
  SAME_SIDE_RATIO,
  SAME_SIDE_SOURCE,
  STEP_IN,
  tiedownCount,
} from './tie-downs.ts';

export type TieDownFigures = {
  /** Of all tie-downs together, at least [lb]. */
  readonly 'working-load': Figure;
  /** At least so many where nothing blocks the machine in front. */
  readonly count: Figure;
  readonly 'count-blocked': Figure;
  /** Of each of `count` tie-downs that are fixed to the machine, at least [lb]. */
  readonly 'working-load-each': Figure;
};

type Tied = Machine & { readonly tiedDown: NonNullable<Machine['tiedDown']> };

/**
 * How each machine is tied down that works in this job and says what it weighs and measures; by id.
 * One that does not say it has no figures: a guess would be a strap too few.
 */
export function calcTieDowns(input: {
  readonly machines: Company['machines'];
  readonly production: Company['production'];
  /** The tasks of this job. */
  readonly tasks: { readonly [task in keyof Company['production']]?: unknown };
}): Readonly<Record<string, TieDownFigures>> {
  const { machines, production, tasks } = input;
  const used = new Set(
    productionRows(production).flatMap(({ task, machine }) =>
      machine === null || tasks[task] === undefined ? [] : [thingNamed(machines, machine, 'machine')],
    ),
  );
  return Object.fromEntries(
    [...used].filter(isTied).map((machine) => [machine.id, tieDownFigures(machine)] as const),
  );
}

function isTied(machine: Machine): machine is Tied {
  return machine.tiedDown !== null;
}

function tieDownFigures({ id, tiedDown: { weightLb: weighs, lengthIn: measures } }: Tied): TieDownFigures {
  const weightLb = given(`company.machines.${id}.tied-down.weight`, weighs, 'lb');
  const workingLoad = figure({
    value: Math.ceil(aggregateWorkingLoadLb(weighs)),
    unit: 'lb',
    decimals: 0,
    formula: 'ceil(weightLb * shareRatio)',
    inputs: {
      weightLb,
      shareRatio: constant('share of the weight', AGGREGATE_SHARE_RATIO, 'ratio', AGGREGATE_SOURCE),
    },
    source: AGGREGATE_SOURCE,
    rounding: 'up',
  });
  const count = countFigure({ id, weightLb: weighs, lengthIn: measures, isBlockedInFront: false });
  return {
    'working-load': workingLoad,
    count,
    'count-blocked': countFigure({ id, weightLb: weighs, lengthIn: measures, isBlockedInFront: true }),
    'working-load-each': figure({
      value: Math.ceil(num(workingLoad) / (num(count) * SAME_SIDE_RATIO)),
      unit: 'lb',
      decimals: 0,
      formula: 'ceil(workingLoadLb / (tiedowns * sameSideRatio))',
      inputs: {
        workingLoadLb: workingLoad,
        tiedowns: count,
        sameSideRatio: constant('counted of each limit', SAME_SIDE_RATIO, 'ratio', SAME_SIDE_SOURCE),
      },
      source: SAME_SIDE_SOURCE,
      rounding: 'up',
    }),
  };
}

/** The formula follows the case: what is light and short, or blocked in front, has no tie-down more. */
function countFigure(machine: Parameters<typeof tiedownCount>[0] & { readonly id: string }): Figure {
  const { id, lengthIn, weightLb } = machine;
  const stepIn = constant('length of a tie-down more', STEP_IN, 'in', COUNT_SOURCE);
  const hasOneMore = tiedownCount(machine) > Math.ceil(lengthIn / STEP_IN);
  const byLength = `ceil(lengthIn / stepIn)${hasOneMore ? ' + 1' : ''}`;
  const isHeavy = weightLb >= HEAVY_MACHINE_LB;
  const heavy = { leastCount: constant('heavy machine', HEAVY_MACHINE_COUNT, 'each', COUNT_SOURCE) };
  return figure({
    value: machineTiedownCount(machine),
    unit: 'each',
    decimals: 0,
    formula: isHeavy ? `max(leastCount, ${byLength})` : byLength,
    inputs: {
      lengthIn: given(`company.machines.${id}.tied-down.length`, lengthIn, 'in'),
      stepIn,
      ...(isHeavy ? heavy : {}),
    },
    source: COUNT_SOURCE,
    rounding: 'up',
  });
}
