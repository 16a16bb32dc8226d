import { num } from '../../../calculate/figure.ts';
import { orderedVolume } from '../../parts/ordered.ts';
import { end, row, start } from '../../parts/tables.ts';
import { showDate } from '../../show/index.ts';
import type { FactView, ListView, TableView, WorkOrderView } from '../../views.ts';
import { clockNotes, clockTable } from './clock-table.ts';
import { goNoGoTable } from './go-no-go.ts';
import type { Made, PourDay } from './made.ts';
import { exactTime } from './times.ts';

const NOTHING = '';

/** The sheet for the day of the pour; null where nothing is placed. */
export function pourDayView(made: Made): WorkOrderView['pourDay'] {
  const { results, words } = made;
  const { pourDay: day } = results;
  if (day === null) return null;
  const say = words.pourDay;
  return {
    heading: say.heading(showDate(day.data.on, words.common)),
    facts: facts(made, day),
    goNoGo: goNoGoTable(made, day),
    clock: clockTable(made, day),
    clockNotes: clockNotes(made, day),
    drying: dryingTable(made, day),
    measures: measures(made, day),
    rain: say.rain,
    notes: notes(made, day),
  };
}

function facts({ job, results, show, words }: Made, { figures }: PourDay): readonly FactView[] {
  const say = words.pourDay.facts;
  const time = (atHr: number) => exactTime(atHr, job.unitSystem, words);
  const putOff = figures.clock['put-off-by'];
  const { setting, finishers } = figures;
  const noise = job.pour.noiseAllowed;
  return [
    { label: say.truck, value: time(num(figures.clock['first-truck'])) },
    ...(putOff === undefined ? [] : [{ label: say.putOff, value: time(num(putOff)) }]),
    { label: say.amount, value: amount({ job, results, show, words }) },
    ...(finishers === undefined
      ? []
      : [
          {
            label: say.finishers,
            value: say.finishersValue(show.count(num(finishers.needed)), job.plan.crew.length),
          },
        ]),
    ...(setting === undefined
      ? []
      : [
          {
            label: say.tools,
            value: say.toolsValue(
              show.hours(num(setting['tools-after-earliest'])),
              show.hours(num(setting['tools-after-latest'])),
            ),
          },
        ]),
    { label: say.cure, value: cureText({ job, results, show, words }) },
    ...(noise === null
      ? []
      : [{ label: say.noise, value: say.noiseValue(time(noise.fromHr), time(noise.toHr)) }]),
  ];
}

function cureText({ job, results, show, words }: Made): string {
  const say = words.pourDay.facts;
  const { figures, data } = results.curing;
  const { method } = data;
  const cure = say.cures[method](
    method === 'curing-compound' ? show.liquid(num(figures.compound)) : show.area(num(figures.sheeting)),
  );
  const { laterCoat } = job.pour;
  return laterCoat === null ? cure : say.later(cure, say.coats[laterCoat]);
}

function amount({ job, results, show, words }: Made): string {
  const { figures, data } = results.concrete;
  return data.supply === 'truck'
    ? orderedVolume(num(figures.truck.order), { job, show })
    : words.workOrder.day.bagsArrive(show.count(num(figures.bags.count)));
}

type Drying = NonNullable<WorkOrderView['pourDay']>['drying'];

function dryingTable({ job, show, words }: Made, { data: { hours } }: PourDay): Drying {
  const { weather } = job.pour;
  if (weather === null || hours.length === 0) return null;
  const say = words.pourDay.drying;
  const table: TableView = {
    caption: say.caption(show.temperature(weather.concreteF)),
    columns: [
      start(say.hour),
      start(say.sky),
      end(say.air),
      end(say.humidity),
      end(say.wind),
      end(say.rain),
      end(say.loses),
      start(say.asks),
    ],
    rows: hours.map((hour) =>
      row(
        exactTime(hour.atHr, job.unitSystem, words),
        hour.sky === null ? NOTHING : say.skies[hour.sky],
        show.temperature(hour.airF),
        show.percent(Math.round(hour.humidityRatio * 100) / 100),
        show.speed(hour.windMph),
        hour.rainChanceRatio === null ? NOTHING : show.percent(hour.rainChanceRatio),
        show.evaporation(num(hour.evaporation)),
        say.levels[hour.level],
      ),
    ),
  };
  return { table, legend: say.legend };
}

function measures({ words }: Made, { data: { isHot, isCold } }: PourDay): readonly ListView[] {
  const say = words.pourDay;
  return [...(isHot ? [say.hot] : []), ...(isCold ? [say.cold] : [])];
}

/** What nobody gave, and how far to trust the rest. */
function notes({ job, words }: Made, { figures }: PourDay): readonly string[] {
  const say = words.pourDay.notChecked;
  const { weather } = figures;
  const { things } = say;
  const missing = [
    ...(weather !== undefined && weather['rain-chance'] === undefined ? [things.rain] : []),
    ...(weather !== undefined && weather['low-before'] === undefined ? [things.night] : []),
    ...(weather !== undefined && weather['rain-before'] === undefined ? [things.wet] : []),
    ...(weather !== undefined && weather['hours-in-the-dark'] === undefined ? [things.light] : []),
    ...(weather !== undefined && job.pour.noiseAllowed === null ? [things.noise] : []),
  ];
  return [
    ...(weather === undefined ? [say.noForecast] : []),
    ...(missing.length === 0 ? [] : [say.others(say.list(missing))]),
    say.estimate,
  ];
}
