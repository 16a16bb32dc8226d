import { num } from '../../calculate/figure.ts';
import type { Slab } from '../../calculate/job.ts';
import type { Panel, SlabJoints } from '../../calculate/joints/index.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { type Line, lineLengthIn } from '../../geometry/index.ts';
import { formatNumber } from '../../units/index.ts';
import type { Words } from '../../words/index.ts';
import type { Made } from '../made.ts';
import { jointTags, panelLetters } from '../parts/joint-names.ts';
import { end, row, start, tableOrNull, withNote } from '../parts/tables.ts';
import type { Show } from '../show/index.ts';
import type { TableView } from '../views.ts';

/** Shorter than it is shown [ft]. */
const NO_LENGTH_FT = 0.05;

/**
 * Every joint by its number on the plan, like ones of a slab together; then what keeps a slab free of what stays.
 * Null where there is neither.
 */
export function jointsTable(made: Made): TableView | null {
  const { job, results, show, words } = made;
  const say = words.workOrder.joints;
  const rows = Object.values(job.build.slabs).flatMap((slab) => [
    ...cutRows(slab, made),
    ...stripRow(slab, made),
  ]);
  const cutFt = num(results.joints.figures.total.length);
  const total = row(say.total, '', say.cut, show.run(cutFt), '');
  const columns = [start(say.joint), start(say.slab), start(say.kind), end(say.length), end(say.depth)];
  return tableOrNull(
    say.caption,
    columns,
    withNote(cutFt < NO_LENGTH_FT ? rows : [...rows, { ...total, isTotal: true }], cutNotes(made)),
  );
}

function cutRows(slab: Slab, { job, results, show, words }: Made): TableView['rows'] {
  const say = words.workOrder.joints;
  const tags = jointTags(job, results, words)[slab.id] ?? [];
  const { depth } = thingNamed(results.joints.figures.slabs, slab.id, 'slab');
  const lengths = linesOf(slab, results).map((line) => show.length(lineLengthIn(line)));
  return runsOfLike(lengths).map(({ from, to }) =>
    row(
      span(tags.slice(from, to + 1), say.span),
      slab.label,
      say.cuts[slab.joints.cut],
      lengths[from] ?? '',
      show.size(num(depth)),
    ),
  );
}

function stripRow({ id, label }: Slab, { results, show, words }: Made): TableView['rows'] {
  const say = words.workOrder.joints;
  const lengthFt = num(thingNamed(results.edges.figures.isolation, id, 'slab'));
  return lengthFt < NO_LENGTH_FT
    ? []
    : [row(say.edge, label, say.isolation, show.run(lengthFt), say.fullDepth)];
}

function linesOf({ id }: Slab, results: Made['results']): readonly Line[] {
  return thingNamed(results.joints.data.lines, id, 'slab');
}

/** When each kind of joint here is cut, and how much of all gets a sealant; null where there is nothing to say. */
function cutNotes({ job, results, show, words }: Made): string | null {
  const say = words.workOrder.joints;
  const jointed = Object.values(job.build.slabs).filter((slab) => linesOf(slab, results).length > 0);
  const cuts = [...new Set(jointed.map(({ joints }) => joints.cut))];
  const sealedFt = num(results.edges.figures.total.sealed);
  const notes = [
    ...cuts.map((cut) => say.when[cut]),
    ...(sealedFt > 0 ? [say.sealed(show.run(sealedFt))] : []),
  ];
  return notes.length === 0 ? null : notes.join(' ');
}

/** Every panel by its letter on the plan, like ones of a slab together. */
export function panelsTable({ job, results, show, words }: Made): TableView {
  const say = words.workOrder.panels;
  const letters = panelLetters(job, results, words);
  const rows = Object.values(job.build.slabs).flatMap((slab) => {
    const panels = thingNamed(results.joints.data.panels, slab.id, 'slab');
    return groupsOfLike(panels.map((panel) => panelCells(panel, show, words))).map(({ cells, at }) =>
      row(at.map((index) => letters[slab.id]?.[index] ?? '').join(', '), slab.label, ...cells),
    );
  });
  return {
    caption: say.caption,
    columns: [start(say.panel), start(say.slab), end(say.size), end(say.ratio), end(say.angle)],
    rows: withNote(rows, panelNotes({ job, results, show, words })),
  };
}

function panelCells(panel: Panel, show: Show, words: Words): readonly string[] {
  const say = words.workOrder.panels;
  const { lengthIn, widthIn, ratio, smallestDeg } = panel;
  return [
    say.sides(show.length(lengthIn), show.length(widthIn)),
    formatNumber(ratio, 2),
    smallestDeg >= 180 ? say.round : say.degrees(formatNumber(smallestDeg, 0)),
  ];
}

/** How far apart joints may be on each slab, and what the job's own joints make of the layout. */
function panelNotes({ job, results, show, words }: Made): string {
  const say = words.workOrder.panels;
  const slabs = Object.values(job.build.slabs);
  const figuresOf = ({ id }: Slab) => thingNamed(results.joints.figures.slabs, id, 'slab');
  const limits = slabs.map((slab) =>
    say.limit(slab.label, show.length(num(figuresOf(slab)['spacing-limit']))),
  );
  const layout = (laid: Omit<NonNullable<SlabJoints['proposed']>, 'length-over-limit' | 'open-corners'>) =>
    say.layout(
      show.count(num(laid.panels)),
      show.length(num(laid['panel-length'])),
      formatNumber(num(laid['panel-ratio']), 2),
      say.degrees(formatNumber(num(laid['smallest-angle']), 0)),
      show.run(num(laid.length)),
    );
  const instead = slabs.flatMap((slab) => {
    const { proposed, ...own } = figuresOf(slab);
    return proposed === undefined ? [] : [say.instead(slab.label, layout(own), layout(proposed))];
  });
  return [say.limits(limits.join('; ')), ...instead].join(' ');
}

/** Neighbours in a list that are the same, as places in it. */
function runsOfLike(values: readonly string[]): readonly { readonly from: number; readonly to: number }[] {
  const runs: { from: number; to: number }[] = [];
  for (const [index, value] of values.entries()) {
    const last = runs.at(-1);
    if (last !== undefined && values[last.from] === value) last.to = index;
    else runs.push({ from: index, to: index });
  }
  return runs;
}

function groupsOfLike(
  rows: readonly (readonly string[])[],
): readonly { readonly cells: readonly string[]; readonly at: readonly number[] }[] {
  const groups = new Map<string, { cells: readonly string[]; at: number[] }>();
  for (const [index, cells] of rows.entries()) {
    const key = JSON.stringify(cells);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { cells, at: [index] });
    else group.at.push(index);
  }
  return [...groups.values()];
}

function span(tags: readonly string[], say: (from: string, to: string) => string): string {
  const [first = '', last = ''] = [tags[0], tags.at(-1)];
  return first === last ? first : say(first, last);
}
