import { type FigureUnit, num } from '../../../calculate/figure.ts';
import { limitWords } from '../../parts/limit-words.ts';
import { row, start } from '../../parts/tables.ts';
import { type TableView, TICK_BOX, WRITE_LINE } from '../../views.ts';
import type { Made, PourDay } from './made.ts';
import { aboutTime, exactTime } from './times.ts';

type Line = { readonly check: string; readonly go: string; readonly forecast: string | null };

/** A box for each thing to look at in the morning; what no forecast says is a line to write on. */
export function goNoGoTable(made: Made, day: PourDay): TableView {
  const say = made.words.pourDay.goNoGo;
  const lines = [
    rainLine(made, day),
    wetLine(made, day),
    frostLine(made, day),
    windLine(made, day),
    airLine(made, day),
    concreteLine(made, day),
    dryingLine(made, day),
    lightLine(made, day),
    sheetingLine(made),
  ];
  return {
    caption: say.caption,
    columns: [start(''), start(say.check), start(say.limit), start(say.forecast)],
    rows: lines.map(({ check, go, forecast }) => row(TICK_BOX, check, go, forecast ?? WRITE_LINE)),
  };
}

const NOTHING = '';

function goText(limit: string | null, say: (limit: string) => string): string {
  return limit === null ? NOTHING : say(limit);
}

/** The limit of a rule; null where the job has no such rule. */
function limitOf({ job }: Made, code: string, unit: FigureUnit): string | null {
  const rule = job.rules.find((each) => each.code === code);
  return rule === undefined ? null : limitWords({ ...rule, unit }, job.unitSystem);
}

function rainLine(made: Made, { figures: { weather } }: PourDay): Line {
  const { show, words } = made;
  const say = words.pourDay.goNoGo;
  const limit = limitOf(made, 'rain-likely', 'ratio');
  const chance = weather?.['rain-chance'];
  const amount = weather?.rain;
  const chanceText = chance === undefined ? null : show.percent(num(chance));
  return {
    check: say.rain,
    go: goText(limit, say.rainGo),
    forecast:
      chanceText !== null && amount !== undefined
        ? say.rainAmount(chanceText, show.rainfall(num(amount)))
        : chanceText,
  };
}

function wetLine({ show, words }: Made, { figures: { weather } }: PourDay): Line {
  const say = words.pourDay.goNoGo;
  const rain = weather?.['rain-before'];
  return {
    check: say.wet,
    go: say.wetGo,
    forecast: rain === undefined ? null : say.wetForecast(show.rainfall(num(rain))),
  };
}

function frostLine({ show, words }: Made, { figures: { weather } }: PourDay): Line {
  const say = words.pourDay.goNoGo;
  const low = weather?.['low-before'];
  return {
    check: say.frost,
    go: say.frostGo,
    forecast: low === undefined ? null : say.frostForecast(show.temperature(num(low))),
  };
}

function windLine(made: Made, { figures: { weather } }: PourDay): Line {
  const say = made.words.pourDay.goNoGo;
  const limit = limitOf(made, 'wind-strong', 'mph');
  return {
    check: say.wind,
    go: goText(limit, say.windGo),
    forecast: weather === undefined ? null : made.show.speed(num(weather['strongest-wind'])),
  };
}

function airLine(made: Made, { figures: { weather } }: PourDay): Line {
  const say = made.words.pourDay.goNoGo;
  const limit = limitOf(made, 'air-cold', '°F');
  const shown = (key: 'lowest-air' | 'highest-air') =>
    weather === undefined ? '' : made.show.temperature(num(weather[key]));
  return {
    check: say.air,
    go: goText(limit, say.airGo),
    forecast: weather === undefined ? null : say.airForecast(shown('lowest-air'), shown('highest-air')),
  };
}

function concreteLine(made: Made, { figures: { weather } }: PourDay): Line {
  const say = made.words.pourDay.goNoGo;
  const limit = limitOf(made, 'concrete-hot', '°F');
  return {
    check: say.concrete,
    go: goText(limit, say.concreteGo),
    forecast: weather === undefined ? null : made.show.temperature(num(weather.concrete)),
  };
}

function dryingLine(made: Made, { figures: { evaporation } }: PourDay): Line {
  const say = made.words.pourDay.goNoGo;
  const limit = limitOf(made, 'evaporation-high', 'lb/sq ft/h');
  return {
    check: say.drying,
    go: goText(limit, say.dryingGo),
    forecast: evaporation === undefined ? null : made.show.evaporation(num(evaporation.most)),
  };
}

function lightLine({ job, words }: Made, { figures: { clock } }: PourDay): Line {
  const say = words.pourDay.goNoGo;
  const { sunriseHr = null, sunsetHr = null } = job.pour.weather ?? {};
  const time = (atHr: number) => exactTime(atHr, job.unitSystem, words);
  const sun = [
    ...(sunriseHr === null ? [] : [say.sunUp(time(sunriseHr))]),
    ...(sunsetHr === null ? [] : [say.sunDown(time(sunsetHr))]),
  ];
  const curedBy = clock['cured-by'];
  return {
    check: say.light,
    go: words.pourDay.notChecked.list(sun),
    forecast:
      curedBy === undefined ? null : say.lightForecast(aboutTime(num(curedBy), job.unitSystem, words)),
  };
}

function sheetingLine({ results, show, words }: Made): Line {
  const say = words.pourDay.goNoGo;
  const area = results.crew.figures.tasks.finish?.quantity;
  return {
    check: say.sheeting,
    go: area === undefined ? say.sheetingForecast : say.sheetingGo(show.area(num(area))),
    forecast: say.sheetingForecast,
  };
}
