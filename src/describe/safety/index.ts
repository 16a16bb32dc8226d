import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Hazard, SilicaTask } from '../../calculate/safety/index.ts';
import type { Words } from '../../words/index.ts';
import { frameOf } from '../parts/frame.ts';
import { frameFactsOf } from '../parts/frame-facts.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import { type Show, shortDates, showIn } from '../show/index.ts';
import type { FactView, HazardView, ListView, SafetyView } from '../views.ts';

/** Poison help of the United States; source: America's Poison Centers, from memory. */
const POISON_HELP = '1-800-222-1222';
const WORST_COUNT = 5;

/** The safety sheet: this job's five worst hazards, then the rest. */
export function describeSafety(job: Job, results: JobResults, words: Words): SafetyView {
  const say = words.safety;
  const show = showIn(job.unitSystem);
  const hazards = results.safety.data.hazards.map((hazard, index) =>
    hazardView(hazard, index, results, words),
  );
  const rest = hazards.slice(WORST_COUNT);
  return {
    frame: frameOf('safety', frameFactsOf(job), words),
    worst: { heading: say.worst, hazards: hazards.slice(0, WORST_COUNT) },
    emergency: { heading: say.emergency.heading, facts: emergencyFacts(job, words) },
    silica: silicaView(job, results, words, show),
    rest: rest.length === 0 ? null : { heading: say.rest, hazards: rest },
    welfare: welfareList(job, results, show, words),
    cautions: say.cautions,
  };
}

function hazardView(hazard: Hazard, index: number, results: JobResults, words: Words): HazardView {
  const { hazards, when } = words.safety;
  const { name, measures, wear } = hazards[hazard.code];
  const dates = shortDates(
    results.crew.data.days
      .filter(({ kind, phase }) => kind === 'work' && hazard.phases.includes(phase))
      .map(({ on }) => on),
    words.common.months,
  );
  return { number: String(index + 1), name, when: when(dates), measures, wear };
}

function emergencyFacts(job: Job, words: Words): readonly FactView[] {
  const say = words.safety.emergency;
  const { emergency } = job.site;
  const { safety } = job.company;
  return [
    { label: say.site, value: job.address },
    { label: say.cross, value: emergency.crossStreet },
    { label: say.hospital, value: `${emergency.hospital}, ${emergency.hospitalAddress}` },
    { label: say.hospitalPhone, value: emergency.hospitalPhone },
    { label: say.poison, value: POISON_HELP },
    { label: say.firstAid, value: safety.firstAidPerson },
    { label: say.kit, value: safety.kitPlace },
  ];
}

function silicaView(job: Job, results: JobResults, words: Words, show: Show): SafetyView['silica'] {
  const say = words.safety.silica;
  const rows = results.safety.data.silica.map((task) => {
    const figures = results.safety.figures.silica[task.task];
    return row(
      say.tasks[task.task],
      task.machine === null ? say.byHand : thingNamed(job.company.machines, task.machine.id, 'machine').label,
      figures === undefined ? '' : show.hours(num(figures.hours)),
      task.row === null ? say.notOnTable : say.rowName(task.row.name, task.row.seen),
      whatToDo(task, words),
      respirator(task, words),
    );
  });
  const table = tableOrNull(
    say.caption,
    [start(say.task), start(say.machine), end(say.hours), start(say.row), start(say.what), start(say.wear)],
    rows,
  );
  return table === null ? null : { table, notes: [say.hoursNote, say.wetNote, say.planNote] };
}

function whatToDo({ onTable, row: tableRow, missing, controls }: SilicaTask, words: Words): string {
  const say = words.safety.silica;
  const named = (codes: SilicaTask['controls']) => codes.map((code) => say.controls[code]).join(', ');
  if (onTable) return say.follow(named(controls));
  return tableRow === null ? say.assess : say.assessMissing(named(missing));
}

function respirator({ apf }: SilicaTask, words: Words): string {
  const say = words.safety.silica;
  if (apf === null) return say.afterAssessment;
  return apf === 0 ? say.none : say.apf(String(apf));
}

function welfareList(job: Job, results: JobResults, show: Show, words: Words): ListView {
  const say = words.safety.welfare;
  const { water } = results.safety.figures;
  return {
    heading: say.heading,
    items: [
      job.company.safety.calls,
      ...(job.site.locateTicket === null ? [] : [job.site.locateTicket]),
      say.water,
      say.wash(show.liquid(num(water['wash-least'])), show.liquid(num(water['wash-most']))),
      say.toilet,
      say.kit,
      say.extinguisher,
    ],
  };
}
