import { type Outline, turnOutline } from '../../geometry/index.ts';
import type { Figure } from '../figure.ts';
import type { BreakOut, Company, Existing, Job, Machine, TaskId } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import { productionRow } from '../production-row.ts';
import type { ExistingFigures } from '../tear-out/index.ts';
import type { TopicResult } from '../topic.ts';
import { type GridFigures, gridFigures, machinePieceFigure } from './piece-figures.ts';

export type { GridFigures } from './piece-figures.ts';

/** The task in which a thing goes, by what it is taken out with. */
export const TASK_OF: Readonly<
  Record<BreakOut, Extract<TaskId, 'break-out' | 'break-out-by-hand' | 'saw-and-lift'>>
> = {
  breaker: 'break-out',
  jackhammer: 'break-out-by-hand',
  'saw-and-lift': 'saw-and-lift',
};

/** What the crew does to a thing to get it out, in the order of the tasks. */
export const BREAK_TASKS = Object.values(TASK_OF);

export type BreakingFigures = {
  /** Side of the largest square piece the machine of its task lifts; only where both are known. */
  readonly 'machine-piece': Readonly<Record<string, Figure>>;
  /** Of things that are sawn and lifted. */
  readonly grids: Readonly<Record<string, GridFigures>>;
  readonly total: { readonly 'cut-length': Figure };
};

export type BreakingResult = TopicResult<BreakingFigures, Record<never, never>>;

/**
 * How large the pieces may be that a machine lifts, and the grid of what is sawn out.
 *
 * @throws {RangeError} If a thing is to be sawn and lifted and no machine says what it lifts.
 */
export function calcBreaking(input: {
  readonly existing: Job['site']['existing'];
  readonly tearOut: {
    readonly existing: Readonly<Record<string, Pick<ExistingFigures, 'weight-per-sq-ft'>>>;
  };
  readonly shapes: Pick<OutlineResult['figures'], 'existing'>;
  readonly outlines: OutlineResult['data']['existing'];
  readonly production: Company['production'];
  readonly machines: Company['machines'];
}): BreakingResult {
  const pieces: Record<string, Figure> = {};
  const grids: Record<string, GridFigures> = {};
  for (const thing of Object.values(input.existing)) {
    const machine = lifterOf(thing, input);
    if (machine === null) continue;
    const perSqFt = thingNamed(input.tearOut.existing, thing.id, 'figures')['weight-per-sq-ft'];
    const mostIn = machinePieceFigure(machine, perSqFt);
    pieces[thing.id] = mostIn;
    if (thing.breakOut !== 'saw-and-lift') continue;
    grids[thing.id] = gridFigures({
      outline: alongItsLines(thingNamed(input.outlines, thing.id, 'outline'), thing),
      shape: thingNamed(input.shapes.existing, thing.id, 'outline'),
      mostIn,
    });
  }
  const cuts = pick(grids, 'cut-length');
  return {
    figures: {
      'machine-piece': pieces,
      grids,
      total: { 'cut-length': sumFigure({ parts: cuts, unitSuffix: 'Ft', unit: 'ft', decimals: 1 }) },
    },
    data: {},
    problems: [],
  };
}

/** The machine of the task in which a thing goes, where it is known what it lifts. */
function lifterOf(
  thing: Existing,
  { production, machines }: Pick<Company, 'production' | 'machines'>,
): (Machine & { readonly liftsLb: number }) | null {
  const { machine: id } = productionRow(production, TASK_OF[thing.breakOut]);
  const machine = id === null ? null : thingNamed(machines, id, 'machine');
  const liftsLb = machine?.liftsLb ?? null;
  if (machine !== null && liftsLb !== null) return { ...machine, liftsLb };
  if (thing.breakOut !== 'saw-and-lift') return null;
  throw new RangeError(`no machine says what it lifts, and ${thing.id} is to be sawn and lifted`);
}

/** Turned back as it was taped: a grid runs with its sides, however it lies on the plan. */
function alongItsLines(outline: Outline, { shape }: Existing): Outline {
  return turnOutline(outline, (-shape.turnedRad * 180) / Math.PI);
}
