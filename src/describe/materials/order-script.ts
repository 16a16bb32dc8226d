import { num } from '../../calculate/figure.ts';
import type { Made } from '../made.ts';
import { orderedVolume } from '../parts/ordered.ts';
import { end, row, start } from '../parts/tables.ts';
import { trucksTable } from '../parts/trucks-table.ts';
import { showDate } from '../show/index.ts';
import { type MaterialsView, TICK_BOX, WRITE_LINE } from '../views.ts';

type ScriptView = NonNullable<MaterialsView['concrete']['script']>;

/** One page for the call to the plant: what to say, what to ask, room for the answer. */
export function orderScript(made: Made): ScriptView {
  const { job, words } = made;
  const say = words.materials.concrete.script;
  const { label, phone } = job.company.suppliers.concrete;
  return {
    heading: say.heading(label, phone),
    intro: say.intro,
    say: {
      caption: say.sayCaption,
      columns: [start(''), start(say.say)],
      rows: sentences(made).map((text) => row(TICK_BOX, text)),
    },
    trucks: trucksTable(made),
    ask: {
      caption: say.askCaption,
      columns: [start(''), start(say.ask), end(say.answer)],
      rows: questions(made).map((text) => row(TICK_BOX, text, WRITE_LINE)),
    },
    taken: say.taken,
  };
}

function sentences({ job, results, show, words }: Made): readonly string[] {
  const say = words.materials.concrete.script;
  const { mix } = job.build;
  const { figures } = results.concrete;
  const pour = results.crew.data.days.find(({ kind, phase }) => kind === 'work' && phase === 'pour');
  const { 'water-cement-most': water } = figures.mix;
  const { waterCementRatio, flyAshRatio, slagRatio, additives } = mix;
  const { truckStands, washout } = job.site.access;
  return [
    say.who(job.company.name, job.company.phone, job.address),
    ...(pour === undefined ? [] : [say.when(showDate(pour.on, words.common))]),
    say.order(orderedVolume(num(figures.truck.order), { job, show }), job.build.mix.exposure),
    say.strength(
      show.strength(num(figures.mix.strength)),
      num(figures.mix.air) === 0 ? null : show.percent(num(figures.mix.air)),
    ),
    say.slump(show.size(mix.slumpIn), show.size(mix.aggregateIn)),
    ...(waterCementRatio !== null
      ? [say.water(show.ratio(waterCementRatio))]
      : water === undefined
        ? []
        : [say.waterMost(show.ratio(num(water)))]),
    ...(flyAshRatio > 0 ? [say.flyAsh(show.percent(flyAshRatio))] : []),
    ...(slagRatio > 0 ? [say.slag(show.percent(slagRatio))] : []),
    say.additives(additives.map((additive) => words.common.additives[additive])),
    washout === null ? say.stands(truckStands) : say.washout(truckStands, washout),
  ];
}

function questions({ job, results, show, words }: Made): readonly string[] {
  const say = words.materials.concrete.script.questions;
  const { concrete } = job.company.suppliers;
  const { figures, data } = results.concrete;
  return [
    say.limit(show.minutes(num(figures.delivery.limit)), concrete.dischargeLimitHr === null),
    concrete.onTheWayHr === null ? say.drive : say.driveIs(show.minutes(concrete.onTheWayHr)),
    say.water,
    ...(data.loadsCuYd.length > 1
      ? [concrete.callAheadHr === null ? say.balance : say.balanceIs(show.minutes(concrete.callAheadHr))]
      : []),
    say.cancel,
    say.fees,
    say.leftOver,
  ];
}
