import type { PublicText } from '../../calculate/text.ts';
import { addDaysOn } from '../../units/index.ts';
import type { Words } from '../../words/index.ts';
import { NO_BREAK, showDay, showIn } from '../show/index.ts';
import type { ProposalView, TableView } from '../views.ts';
import type { ProposalFacts } from './facts.ts';
import { showPrice } from './show-price.ts';

type Row = TableView<PublicText>['rows'][number];

const row = (...cells: PublicText[]): Row => ({ cells, note: null, isTotal: false });
const NONE = '' as PublicText;
const total = (...cells: PublicText[]): Row => ({ cells, note: null, isTotal: true });

/** All that will be new, one row a part: how large, how thick, what its top is like. */
export function whatYouGetTable(facts: ProposalFacts, words: Words): TableView<PublicText> {
  const say = words.proposal.whatYouGet;
  const show = showIn(facts.unitSystem);
  return {
    caption: say.caption,
    columns: [
      { heading: say.part, align: 'start' },
      { heading: say.size, align: 'end' },
      { heading: say.thickness, align: 'end' },
      { heading: say.surface, align: 'start' },
    ],
    rows: [
      ...facts.slabs.map(({ label, areaSqFt, thicknessIn, finish }) =>
        row(label, show.area(areaSqFt), show.size(thicknessIn), words.common.finishes[finish]),
      ),
      ...facts.steps.map(({ label, riserCount }) =>
        row(label, say.risers(show.count(riserCount)), NONE, NONE),
      ),
    ],
  };
}

/** The price by part of the work; the total is the sum of the rows shown. */
export function pricesTable(facts: ProposalFacts, words: Words): TableView<PublicText> {
  const say = words.proposal.prices;
  const { groups, minimum, tax } = facts.prices;
  return {
    caption: say.caption,
    columns: [
      { heading: say.part, align: 'start' },
      { heading: say.amount, align: 'end' },
    ],
    rows: [
      ...groups.map(({ group, amount }) => row(say.groups[group], showPrice(amount))),
      ...(minimum === null ? [] : [row(say.minimum, showPrice(minimum))]),
      ...(tax === null ? [] : [row(say.tax, showPrice(tax))]),
      total(say.total, showPrice(facts.prices.total)),
    ],
  };
}

/** Payment steps; shares of the total, to the cent, that add up to it. */
export function paymentsTable(facts: ProposalFacts, words: Words): TableView<PublicText> {
  const say = words.proposal.payments;
  const show = showIn(facts.unitSystem);
  return {
    caption: say.caption,
    columns: [
      { heading: say.step, align: 'start' },
      { heading: say.share, align: 'end' },
      { heading: say.amount, align: 'end' },
    ],
    rows: [
      ...facts.payments.map(({ label, shareRatio, amount }) =>
        row(label, show.percent(shareRatio), showPrice(amount)),
      ),
      total(say.total, show.percent(1), showPrice(facts.prices.total)),
    ],
  };
}

/** Agreed prices for hidden conditions; null where the job names none. */
export function hiddenTable(facts: ProposalFacts, words: Words): ProposalView['hidden'] {
  if (facts.hidden.length === 0) return null;
  const say = words.proposal.hidden;
  return {
    heading: say.heading,
    intro: say.intro,
    table: {
      caption: say.caption,
      columns: [
        { heading: say.condition, align: 'start' },
        { heading: say.difference, align: 'end' },
      ],
      rows: facts.hidden.map(({ label, difference }) =>
        row(label, difference.isZero() ? say.noChange : showPrice(difference)),
      ),
    },
  };
}

type Told = { readonly on: string; readonly happens: PublicText; readonly kept: PublicText };

/** Days one after the other of which the same is told, as first and last day. */
function likeRuns(days: readonly Told[]): readonly (readonly [Told, Told])[] {
  return days.reduce<(readonly [Told, Told])[]>((runs, day) => {
    const [first, last] = runs.at(-1) ?? [];
    const continues =
      first !== undefined &&
      last !== undefined &&
      addDaysOn(last.on, 1) === day.on &&
      last.happens === day.happens &&
      last.kept === day.kept;
    return continues ? [...runs.slice(0, -1), [first, day]] : [...runs, [day, day]];
  }, []);
}

/** One day, or the first and the last; the month once where both are in it. It stays on one line. */
function daysSpan(firstOn: string, lastOn: string, words: Words): PublicText {
  const last = showDay(lastOn, words.common);
  if (firstOn === lastOn) return last;
  const first = showDay(firstOn, words.common);
  const month = last.slice(last.lastIndexOf(NO_BREAK));
  const day = first.endsWith(month) ? (first.slice(0, -month.length) as PublicText) : first;
  return words.proposal.calendar.span(day, last);
}

/** Day by day: what happens and what cannot be used, then when the slab may be walked and driven on. */
export function calendarTable(facts: ProposalFacts, words: Words): TableView<PublicText> {
  const say = words.proposal.calendar;
  const { common } = words;
  const { days, sawOn, walkOn, driveOn, hasDriveway } = facts.calendar;
  const marked = [...(sawOn === null ? [] : [sawOn]), walkOn, ...(hasDriveway ? [driveOn] : [])];
  const dates = [...new Set([...days.map(({ on }) => on), ...marked])].sort();
  const happensOn = (on: string): PublicText[] => [
    ...days
      .filter((day) => day.on === on)
      .map(({ phase }) => (phase === 'cure' ? say.cure : common.phases[phase])),
    ...(on === sawOn ? [say.saw] : []),
    ...(on === walkOn ? [say.walk] : []),
    ...(on === driveOn && hasDriveway ? [say.drive] : []),
  ];
  const keptFrom = (on: string): PublicText => {
    if (days.some((day) => day.on === on && day.phase !== 'cure')) return say.useWork;
    if (on < walkOn) return say.useKeepOff;
    return hasDriveway && on < driveOn ? say.useWheels : say.nothing;
  };
  const told = dates.map((on) => ({ on, happens: say.sentence(happensOn(on)), kept: keptFrom(on) }));
  const rows = likeRuns(told).map(([first, last]) =>
    row(daysSpan(first.on, last.on, words), first.happens, first.kept),
  );
  const last = rows.length - 1;
  return {
    caption: say.caption,
    columns: [
      { heading: say.day, align: 'start' },
      { heading: say.work, align: 'start' },
      { heading: say.use, align: 'start' },
    ],
    rows: rows.map((one, index) => (index === last ? { ...one, note: say.weather } : one)),
  };
}
