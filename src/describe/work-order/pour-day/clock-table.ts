import { num } from '../../../calculate/figure.ts';
import type { SawPlan, Step } from '../../../calculate/pour-day/index.ts';
import { row, start } from '../../parts/tables.ts';
import { type TableView, TICK_BOX } from '../../views.ts';
import type { Made, PourDay } from './made.ts';
import { aboutTime } from './times.ts';

/** Steps that are done on some slabs only, by their finish. */
const FINISH_OF: Readonly<Partial<Record<Step['name'], string>>> = {
  'finish-broom': 'broom',
  'finish-float': 'float',
  'retard-and-cover': 'exposed-aggregate',
  wash: 'exposed-aggregate',
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

function stepText({ job, words }: Made, name: Step['name']): string {
  const say = words.pourDay.clock;
  const slabs = Object.values(job.build.slabs);
  if (name === 'saw-early') return say.of(say.steps[name], slabsCutEarly(job, words));
  const finish = FINISH_OF[name];
  const meant = slabs.filter((slab) => slab.finish === finish);
  if (finish === undefined || meant.length === slabs.length) return say.steps[name];
  return say.of(say.steps[name], words.pourDay.notChecked.list(meant.map(({ label }) => label)));
}

/** When the saw may cut, and what else would do where it may not. */
export function clockNotes({ job, words }: Made, { figures, data }: PourDay): readonly string[] {
  const say = words.pourDay.clock;
  const { saw, alsoEarly, earlyEntry } = data;
  if (saw === null || figures.saw === undefined) return [];
  const time = (atHr: number) => aboutTime(atHr, job.unitSystem, words);
  const windowOf = ({ window }: SawPlan) => [time(window.fromHr), time(window.toHr)] as const;
  const early = slabsCutEarly(job, words);
  const short = figures['early-saw']?.['hours-short'];
  const isEarlyShort = short !== undefined && num(short) > 0;
  const earlySay = isEarlyShort ? say.earlyNight : say.earlyWindow;
  const beside = alsoEarly === null ? [] : [earlySay(early, ...windowOf(alsoEarly))];
  if (num(figures.saw['hours-short']) === 0) {
    const isEarly = saw.method === 'early-entry';
    return [...beside, isEarly ? say.earlyWindow(early, ...windowOf(saw)) : say.window(...windowOf(saw))];
  }
  const instead = earlyEntry?.at ?? null;
  return [
    ...beside,
    say.night(...windowOf(saw)),
    ...(instead === null ? [] : [say.early(time(instead.fromHr), time(instead.toHr))]),
  ];
}

function slabsCutEarly(job: Made['job'], words: Made['words']): string {
  const cut = Object.values(job.build.slabs).filter(({ joints }) => joints.cut === 'early-entry');
  return words.pourDay.notChecked.list(cut.map(({ label }) => label));
}
