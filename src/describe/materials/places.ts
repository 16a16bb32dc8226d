import type { DumpPlace, Stream } from '../../calculate/job.ts';
import { formatMoney } from '../../units/index.ts';
import type { Words } from '../../words/index.ts';
import type { Made } from '../made.ts';
import { clockWords } from '../parts/clock-words.ts';
import { placesUsed } from '../parts/places-used.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import { showRate } from '../show/index.ts';
import type { TableView } from '../views.ts';

/** What the driver has to know of each place that this job drives to; what nobody said is to be asked. */
export function placesTable({ job, results, show, words }: Made): TableView | null {
  const say = words.materials.places;
  const rows = placesUsed(job, results).map((place) => {
    const { open, largestPiece, rejectedUsd } = place;
    const clock = (timeHr: number) => clockWords(timeHr, job.unitSystem, words);
    return {
      ...row(
        say.place(place.label, place.address),
        daysOpen(place, words),
        open === null ? say.ask : say.hours(clock(open.fromHr), clock(open.toHr)),
        open === null ? say.ask : clock(open.lastLoadHr),
        largestPiece === null
          ? say.ask
          : say.pieceValue(show.size(largestPiece.sideIn), show.size(largestPiece.thicknessIn)),
        place.mixedLoads ? say.mayMix : say.mayNotMix,
        rejectedUsd === null ? say.ask : formatMoney(rejectedUsd),
      ),
      note: takesAndAsks(place, words),
    };
  });
  return tableOrNull(
    say.caption,
    [
      start(say.where),
      start(say.days),
      start(say.open),
      end(say.lastLoad),
      start(say.piece),
      start(say.mixed),
      end(say.rejected),
    ],
    rows,
  );
}

/** The days of the week, those that follow one another joined. */
function daysOpen({ openOn }: DumpPlace, words: Words): string {
  const { weekdays } = words.common;
  const say = words.materials.places;
  if (openOn.length === weekdays.length) return say.everyDay;
  const runs = openOn.reduce<number[][]>((made, day) => {
    const last = made.at(-1);
    return last?.at(-1) === day - 1 ? [...made.slice(0, -1), [...last, day]] : [...made, [day]];
  }, []);
  const named = (day: number | undefined) => weekdays[(day ?? 0) - 1] ?? '';
  return runs
    .map((run) => (run.length === 1 ? named(run[0]) : say.dayToDay(named(run[0]), named(run.at(-1)))))
    .join(', ');
}

function basePrice({ sellsBase, base }: DumpPlace, words: Words): readonly string[] {
  const { places: say } = words.materials;
  if (!sellsBase) return [];
  if (base === null) return [say.sellsBase];
  const { price, minimumUsd } = base;
  return [
    minimumUsd.isZero()
      ? say.sellsBaseFor(showRate(price))
      : say.sellsBaseFrom(showRate(price), formatMoney(minimumUsd)),
  ];
}

/** What it takes, what of that costs more, whether it sells base, and what a load costs that goes back with it. */
function takesAndAsks(place: DumpPlace, words: Words): string {
  const { accepts, surcharges, feeWithBase } = place;
  const { places: say, streamNames } = words.materials;
  const dearer = Object.entries(surcharges).map(([stream, rate]) =>
    say.surcharge(streamNames[stream as Stream], showRate(rate)),
  );
  return [
    say.takes(accepts.map((stream) => streamNames[stream]).join(', ')),
    ...(dearer.length === 0 ? [] : [say.surcharges(dearer.join(', '))]),
    ...basePrice(place, words),
    ...(feeWithBase === null ? [] : [say.feeWithBase(showRate(feeWithBase))]),
  ].join(' ');
}
