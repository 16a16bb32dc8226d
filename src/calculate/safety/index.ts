import { BREAK_TASKS } from '../breaking/index.ts';
import {
  CREW_TASKS,
  type CrewTask,
  PHASES,
  type Phase,
  TASKS,
  type TaskHours,
  type WorkDay,
} from '../crew/index.ts';
import { constant, type Figure, figure, num } from '../figure.ts';
import type { Company, Existing, Hollow, Machine, MachineKind, Slab } from '../job.ts';
import { thingNamed } from '../parts.ts';
import { productionRow } from '../production-row.ts';
import type { TopicResult } from '../topic.ts';
import { type Hazard, rankHazards } from './hazards.ts';
import { personHoursFigure, type ToolTask } from './person-hours.ts';
import { controlsPresent, missingControls, respiratorApf, rowOfTask } from './silica.ts';
import { type ControlCode, silicaCitation, silicaRow } from './silica-table.ts';
import { washWaterFigures } from './wash-water.ts';

export type { Hazard, HazardCode } from './hazards.ts';
export type { ControlCode } from './silica-table.ts';

/** A task that makes silica dust: on Table 1 with a respirator column, or to be assessed. */
export type SilicaTask = {
  readonly task: CrewTask;
  readonly phase: Phase;
  readonly machine: { readonly id: string; readonly kind: MachineKind } | null;
  /** The row of Table 1, and whether its columns were read in a public copy; null where there is none. */
  readonly row: { readonly name: string; readonly seen: boolean } | null;
  /** Every control of the row is there; else exposure is assessed under 29 CFR 1926.1153(d). */
  readonly onTable: boolean;
  readonly missing: readonly ControlCode[];
  /** Controls the crew keeps up, of the row's way that is followed. */
  readonly controls: readonly ControlCode[];
  /** 0 is no respirator; null where the table gives no answer. */
  readonly apf: number | null;
};

export type SafetyFigures = {
  readonly silica: Readonly<Record<string, { readonly hours: Figure; readonly 'respirator-apf'?: Figure }>>;
  readonly water: { readonly 'wash-least': Figure; readonly 'wash-most': Figure };
};
export type SafetyData = { readonly silica: readonly SilicaTask[]; readonly hazards: readonly Hazard[] };
export type SafetyResult = TopicResult<SafetyFigures, SafetyData>;

type SafetyInput = {
  readonly existing: Readonly<Record<string, Pick<Existing, 'material'>>>;
  readonly hollow: Readonly<Record<string, Pick<Hollow, 'material'>>>;
  readonly slabs: Readonly<Record<string, Pick<Slab, 'use' | 'reinforcement'>>>;
  readonly plan: { readonly crew: readonly string[]; readonly startsOn: string };
  readonly production: Company['production'];
  readonly machines: Company['machines'];
  readonly tasks: TaskHours;
  readonly days: readonly WorkDay[];
  readonly supply: 'truck' | 'bags';
};

type Tool = ToolTask & { readonly machine: Machine };

/**
 * Dust, water and the ranked hazards of this job.
 *
 * All work is taken to be outdoors. A porch closed on three sides or a garage counts as indoors
 * for Table 1 and asks for more; the sheet says so, since a job file does not know it.
 */
export function calcSafety(input: SafetyInput): SafetyResult {
  const tools = toolsOf(input);
  const dusty = tools.filter(({ task, machine }) => rowOfTask(task, machine) !== null);
  const onRows = dusty.map((tool) => silicaOf(tool, dusty, input));
  const silica = [...onRows.map(({ task }) => task), ...withoutRow(input)];
  return {
    figures: {
      silica: Object.fromEntries(onRows.map(({ task, figures }) => [task.task, figures])),
      water: washWaterFigures(input.plan.crew.length),
    },
    data: { silica, hazards: rankHazards(factsOf(input, tools, silica)) },
    problems: [],
  };
}

/** Tasks of this job that a machine does. */
function toolsOf({ tasks, production, machines }: SafetyInput): readonly Tool[] {
  return CREW_TASKS.flatMap((task) => {
    if (task === 'haul' || tasks[task] === undefined) return [];
    const { machine, operator } = productionRow(production, task);
    return machine === null ? [] : [{ task, operator, machine: thingNamed(machines, machine, 'machine') }];
  });
}

function silicaOf(tool: Tool, dusty: readonly Tool[], input: SafetyInput) {
  const { task, machine } = tool;
  const name = rowOfTask(task, machine);
  if (name === null) throw new RangeError(`Table 1 has no row for ${task} by ${machine.kind}`);
  const row = silicaRow(name);
  const hours = personHoursFigure({ of: tool, tools: dusty, days: input.days, tasks: input.tasks });
  const present = controlsPresent(machine);
  const missing = missingControls(row, present);
  const apf = missing.length > 0 ? null : respiratorApf(row, { hours: num(hours), place: 'outdoors' });
  const silica: SilicaTask = {
    task,
    phase: TASKS[task].phase,
    machine: { id: machine.id, kind: machine.kind },
    row: { name: row.row, seen: row.seen },
    onTable: apf !== null,
    missing,
    controls: row.controls.find((way) => way.every((control) => present.has(control))) ?? [],
    apf,
  };
  if (apf === null) return { task: silica, figures: { hours } };
  const respirator = figure({
    value: apf,
    unit: 'APF',
    decimals: 0,
    formula: { method: 'the outdoor column of the row: hours of 4 or less, or more than 4' },
    inputs: {
      hours,
      apf: constant('least protection factor of the column', apf, 'APF', silicaCitation(row)),
    },
    source: silicaCitation(row),
  });
  return { task: silica, figures: { hours, 'respirator-apf': respirator } };
}

/** Tasks in which something is broken, chipped or drilled; what was sawn out before is only lifted. */
const BROKEN_IN = ['break-out', 'break-out-by-hand', 'chip', 'drill'] as const;

/** Dusty work that Table 1 does not name: breaking and drilling by hand, and emptying and mixing bags. */
function withoutRow({ tasks, production, supply }: SafetyInput): readonly SilicaTask[] {
  const byHand = BROKEN_IN.filter(
    (task) => tasks[task] !== undefined && productionRow(production, task).machine === null,
  );
  const bags = supply === 'bags' && tasks.place !== undefined;
  const none = (task: CrewTask): SilicaTask => {
    return {
      task,
      phase: TASKS[task].phase,
      machine: null,
      row: null,
      onTable: false,
      missing: [],
      controls: [],
      apf: null,
    };
  };
  return [...byHand.map(none), ...(bags ? [none('place')] : [])];
}

const LOUD: readonly MachineKind[] = [
  'loader-with-breaker',
  'jackhammer',
  'walk-behind-saw',
  'cut-off-saw',
  'plate-compactor',
  'hand-grinder',
  'hammer-drill',
];
const WITH_ENGINE: readonly MachineKind[] = [
  'walk-behind-saw',
  'cut-off-saw',
  'plate-compactor',
  'mixer',
  'loader-with-breaker',
];

function factsOf(input: SafetyInput, tools: readonly Tool[], silica: readonly SilicaTask[]) {
  const { tasks, supply } = input;
  const phasesOf = (isSo: (kind: MachineKind) => boolean) =>
    tools.filter(({ machine }) => isSo(machine.kind)).map(({ task }) => TASKS[task].phase);
  const uses = Object.values(input.slabs).map(({ use }) => use);
  return {
    phases: PHASES.filter((phase) =>
      CREW_TASKS.some((task) => TASKS[task].phase === phase && tasks[task] !== undefined),
    ),
    breaksOut: BREAK_TASKS.some((task) => tasks[task] !== undefined),
    hasLoader: tools.some(({ machine }) => machine.kind === 'loader-with-breaker'),
    digs: tasks.dig !== undefined,
    hauls: tasks.haul !== undefined,
    pours: tasks.place !== undefined,
    mixesBags: supply === 'bags',
    hasBars: Object.values(input.slabs).some(({ reinforcement }) => reinforcement.kind === 'bars'),
    takesMasonryDown: [...Object.values(input.existing), ...Object.values(input.hollow)].some(
      ({ material }) => material === 'brick' || material === 'block',
    ),
    isByThePublicWay: uses.includes('driveway') || uses.includes('walk'),
    silicaPhases: silica.map(({ phase }) => phase),
    hasSilicaOffTable: silica.some(({ onTable }) => !onTable),
    cutOffSawPhases: phasesOf((kind) => kind === 'cut-off-saw'),
    loudPhases: phasesOf((kind) => LOUD.includes(kind)),
    enginePhases: phasesOf((kind) => WITH_ENGINE.includes(kind)),
    month: Number(input.plan.startsOn.slice(5, 7)),
  };
}
