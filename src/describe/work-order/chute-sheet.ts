import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { mixWords } from '../parts/mix-words.ts';
import { orderedVolume, soldVolume } from '../parts/ordered.ts';
import { end, row, start } from '../parts/tables.ts';
import {
  type CheckListView,
  type FactView,
  type TableView,
  type WorkOrderView,
  WRITE_LINE,
} from '../views.ts';

/** The page for the chute; null where no truck comes. */
export function chuteSheet(made: Made): WorkOrderView['chute'] {
  const { results, words } = made;
  const say = words.workOrder.chute;
  if (results.concrete.data.loadsCuYd.length === 0) return null;
  return {
    heading: say.heading,
    facts: facts(made),
    checks: checks(made),
    refuse: { heading: say.refuse.heading, items: say.refuse.items },
    water: { heading: say.water.heading, items: say.water.items },
    trucks: trucks(made),
    balance: results.concrete.data.loadsCuYd.length < 2 ? null : balance(made),
  };
}

function facts({ job, results, show, words }: Made): readonly FactView[] {
  const say = words.workOrder.chute.facts;
  const { figures, data } = results.concrete;
  const { washout, leftOver } = job.site.access;
  const loads = data.loadsCuYd.map((load) => soldVolume(load, { job, show })).join(' + ');
  return [
    { label: say.mix, value: mixWords(job, results, show, words) },
    {
      label: say.loads,
      value:
        data.loadsCuYd.length > 1
          ? say.loadsValue(loads, show.minutes(num(figures.delivery.spacing)))
          : loads,
    },
    ...(washout === null ? [] : [{ label: say.washout, value: washout }]),
    ...(leftOver === null ? [] : [{ label: say.leftOver, value: leftOver }]),
  ];
}

function checks({ job, results, show, words }: Made): CheckListView {
  const say = words.workOrder.chute;
  const { mix, delivery } = results.concrete.figures;
  const range = (least: string, most: string) => say.range(least, most);
  const item = (text: string, quantity: string | null) => ({ text, quantity, isHold: false });
  return {
    heading: say.checks,
    items: [
      item(say.ticket, show.strength(num(mix.strength))),
      item(say.emptyBy, show.minutes(num(delivery.limit))),
      item(say.slump, range(show.size(num(mix['slump-least'])), show.size(num(mix['slump-most'])))),
      ...(num(mix.air) === 0
        ? []
        : [item(say.air, range(show.percent(num(mix['air-least'])), show.percent(num(mix['air-most']))))]),
      ...(job.build.mix.additives.length === 0
        ? []
        : [
            item(say.additives, job.build.mix.additives.map((one) => words.common.additives[one]).join(', ')),
          ]),
      item(say.look, null),
    ],
  };
}

function trucks({ job, results, show, words }: Made): TableView {
  const say = words.workOrder.chute.trucks;
  const { loadsCuYd } = results.concrete.data;
  const empty = Array.from({ length: 6 }, () => WRITE_LINE);
  return {
    caption: say.caption,
    columns: [
      start(say.truck),
      end(say.load),
      ...[say.ticket, say.batched, say.here, say.empty, say.slump, say.water].map((heading) =>
        start(heading),
      ),
    ],
    rows: [
      ...loadsCuYd.map((load, index) =>
        row(say.number(index + 1), soldVolume(load, { job, show }), ...empty),
      ),
      row(say.more, '', ...empty),
    ],
  };
}

/** What the crew works out before the last truck is called. */
function balance({
  job,
  results,
  show,
  words,
}: Made): NonNullable<NonNullable<WorkOrderView['chute']>['balance']> {
  const say = words.workOrder.chute.balance;
  const { unitSystem } = job;
  const { figures, data } = results.concrete;
  const { 'call-left': left } = figures.delivery;
  const { callAheadHr, incrementCuYd } = job.company.suppliers.concrete;
  return {
    table: {
      caption: say.caption,
      columns: [start(say.slab), start(say.open[unitSystem]), end(say.divide), start(say.makes[unitSystem])],
      rows: [
        ...Object.values(job.build.slabs).map(({ id, label }) => {
          const cover = num(thingNamed(figures.slabs, id, 'slab')['area-per-yard']);
          return row(label, WRITE_LINE, say.by(show.cover(cover)), WRITE_LINE);
        }),
        row(say.spare, '', '', show.volume(incrementCuYd)),
        row(say.order(orderedVolume(incrementCuYd, { job, show })), '', '', WRITE_LINE),
      ],
    },
    notes: [
      left === undefined || callAheadHr === null
        ? say.whenEmpty(data.loadsCuYd.length - 1)
        : say.whenLeft(
            orderedVolume(num(left), { job, show }),
            data.loadsCuYd.length - 1,
            show.minutes(callAheadHr),
          ),
    ],
  };
}
