import { num } from '../../../calculate/figure.ts';
import type { JointCut, Slab } from '../../../calculate/job.ts';
import { thingNamed } from '../../../calculate/parts.ts';
import type { SawFigures, SawPlan, Step } from '../../../calculate/pour-day/index.ts';
import { row, start } from '../../parts/tables.ts';
import { type TableView, TICK_BOX } from '../../views.ts';
import { hasTooledJoints } from '../what-there-is.ts';
import type { Made, PourDay } from './made.ts';
import { aboutTime } from './times.ts';

/** Steps that are done on some slabs only, by their finish. */
const FINISH_OF: Readonly<Partial<Record<Step['name'], string>>> = {
  'finish-broom': 'broom',
  'finish-float': 'float',
  'retard-and-cover': 'exposed-aggregate',
  wash: 'exposed-aggregate',
};

/** And by how their joints are cut. */
const CUT_OF: Readonly<Partial<Record<Step['name'], JointCut>>> = {
  'saw-early': 'early-entry',
  saw: 'wet-sawn',
};

/** The day step by step, each with its time where one is known. */
export function clockTable(made: Made, { data }: PourDay): TableView {
  const { job, words } = made;
  const say = words.pourDay.clock;
  const time = (atHr: number | null) =>
    atHr === null ? words.pourDay.time.open : aboutTime(atHr, job.unitSystem, words);
  return {
    caption: job.pour.weather === null ? say.captionOpen : say.caption,
    columns: [start(''), start(say.step), start(say.from), start(say.until)],
    rows: data.steps.map(({ name, fromHr, toHr }) =>
      row(TICK_BOX, stepText(made, name), time(fromHr), time(toHr)),
    ),
  };
}

/** How deep a foot sinks where the face bears the first tool. PCA and ACI 302, from memory. */
const PRINT_IN = 1 / 4;

function stepText(made: Made, name: Step['name']): string {
  const say = made.words.pourDay.clock;
  if (name === 'wait') return say.wait(made.show.size(PRINT_IN));
  const cut = CUT_OF[name];
  if (cut !== undefined) return ofSlabs(say.steps[name], sawnSlabs(made), ({ joints }) => joints.cut === cut);
  const finish = FINISH_OF[name];
  if (finish === undefined) return say.steps[name];
  const isTooled = Object.values(made.job.build.slabs).some(
    (slab) => slab.finish === finish && hasTooledJoints(slab, made.results),
  );
  return ofSlabs(
    isTooled && name !== 'wash' ? say.tooled(say.steps[name]) : say.steps[name],
    Object.values(made.job.build.slabs),
    (slab) => slab.finish === finish,
  );

  function ofSlabs(text: string, slabs: readonly Slab[], isMeant: (slab: Slab) => boolean): string {
    const meant = slabs.filter(isMeant);
    return meant.length === slabs.length ? text : say.of(text, listOf(meant, made));
  }
}

/** When each saw may cut, and what else would do where it may not. */
export function clockNotes(made: Made, { figures, data }: PourDay): readonly string[] {
  const { job, words } = made;
  const say = words.pourDay.clock;
  const { saw, earlySaw, earlyEntry } = data;
  const time = (atHr: number) => aboutTime(atHr, job.unitSystem, words);
  const windowOf = ({ window }: SawPlan) => [time(window.fromHr), time(window.toHr)] as const;
  const isShort = (sawn: SawFigures | undefined) => sawn !== undefined && num(sawn['hours-short']) > 0;
  const cutEarly = sawnSlabs(made).filter(({ joints }) => joints.cut === CUT_OF['saw-early']);
  const earlySay = isShort(figures['early-saw']) ? say.earlyNight : say.earlyWindow;
  const instead = earlyEntry?.at ?? null;
  return [
    ...(earlySaw === null ? [] : [earlySay(listOf(cutEarly, made), ...windowOf(earlySaw))]),
    ...(saw === null ? [] : [(isShort(figures.saw) ? say.night : say.window)(...windowOf(saw))]),
    ...(instead === null ? [] : [say.early(time(instead.fromHr), time(instead.toHr))]),
  ];
}

/** Those with joints that a saw cuts. */
function sawnSlabs({ job, results }: Made): readonly Slab[] {
  const { slabs } = results.joints.figures;
  return Object.values(job.build.slabs).filter(({ id }) => num(thingNamed(slabs, id, 'slab').sawn) > 0);
}

function listOf(slabs: readonly Slab[], { words }: Made): string {
  return words.pourDay.notChecked.list(slabs.map(({ label }) => label));
}
