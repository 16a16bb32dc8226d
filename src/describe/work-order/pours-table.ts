import { exposedTimes } from '../../calculate/exposed.ts';
import { num } from '../../calculate/figure.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { PourPart } from '../../calculate/pours/index.ts';
import type { Made } from '../made.ts';
import { jointTags, panelLetters } from '../parts/joint-names.ts';
import { end, row, start } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

/** Where to divide what is more than the crew finishes in one pour; null where it is not. */
export function poursTable(made: Made): TableView | null {
  const { job, results, show, words } = made;
  const { pours } = results;
  if (pours === null) return null;
  const say = words.workOrder.pours;
  const rows = pours.data.parts.map((part, index) => {
    const { area, concrete } = thingNamed(pours.figures.parts, `pour-${index + 1}`, 'pour');
    return row(
      say.pour(index + 1),
      part.slabs.map((slab) => panelsOf(slab, made)).join('; '),
      show.area(num(area)),
      show.volume(num(concrete)),
      endOf(part, index === pours.data.parts.length - 1, made),
    );
  });
  const times =
    Object.values(job.build.slabs)
      .map(({ finish }) => exposedTimes(finish))
      .find((one) => one !== null) ?? null;
  const note = [
    say.most(show.area(num(pours.figures['most-area']))),
    ...(times === null ? [] : [say.exposed(show.ratio(num(times)))]),
    say.bulkhead,
    say.days,
  ].join(' ');
  return {
    caption: say.caption,
    columns: [start(say.number), start(say.panels), end(say.area), end(say.concrete), start(say.endsAt)],
    rows: rows.map((one, index) => (index === rows.length - 1 ? { ...one, note } : one)),
  };
}

/** Letters of panels that follow each other as a span. */
function panelsOf({ id, panels }: PourPart['slabs'][number], { job, results, words }: Made): string {
  const say = words.workOrder.pours;
  const letters = thingNamed(panelLetters(job, results, words), id, 'slab');
  const { label } = thingNamed(job.build.slabs, id, 'slab');
  if (panels.length === letters.length) return say.whole(label);
  const spans: { from: number; to: number }[] = [];
  for (const place of panels) {
    const last = spans.at(-1);
    if (last !== undefined && last.to === place - 1) last.to = place;
    else spans.push({ from: place, to: place });
  }
  const named = spans.map(({ from, to }) =>
    from === to ? `${letters[from]}` : say.span(`${letters[from]}`, `${letters[to]}`),
  );
  return say.some(label, named.join(', '));
}

function endOf({ endsAt, slabs }: PourPart, isLast: boolean, { job, results, words }: Made): string {
  const say = words.workOrder.pours;
  if (isLast) return say.nothing;
  if (endsAt !== null) {
    const tag = thingNamed(jointTags(job, results, words), endsAt.id, 'slab')[endsAt.joint] ?? '';
    return say.joint(tag, thingNamed(job.build.slabs, endsAt.id, 'slab').label);
  }
  return say.slab(thingNamed(job.build.slabs, slabs.at(-1)?.id ?? '', 'slab').label);
}
