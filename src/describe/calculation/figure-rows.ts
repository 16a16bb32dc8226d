import { type Figure, type FigureInput, type FigureTree, walkFigures } from '../../calculate/figure.ts';
import type { Words } from '../../words/index.ts';
import { showFigure, showFormula, showInput } from '../show/index.ts';
import type { FigureGroupView, FigureRowView } from '../views.ts';
import type { PlaceOf } from './places.ts';
import type { Sources } from './sources.ts';

/** What the rows of a sheet share. */
export type Sheet = {
  readonly idOf: ReadonlyMap<Figure, string>;
  readonly placeOf: PlaceOf;
  readonly sources: Sources;
  readonly say: Words['calculation'];
};

/** A list of inputs that is longer is printed once in a topic, and named where it comes again [characters]. */
const LONG = 120;

/**
 * The figures of a topic, those of one thing under its name: `outline.slabs.drive` above `area` and
 * `perimeter`. A figure that stands alone keeps its whole id.
 */
export function figureGroups(topic: string, tree: FigureTree, sheet: Sheet): readonly FigureGroupView[] {
  const runs = walkFigures(tree, topic).reduce<{ parent: string; rows: { id: string; figure: Figure }[] }[]>(
    (made, row) => {
      const last = made.at(-1);
      if (last !== undefined && last.parent === parentOf(row.id)) last.rows.push(row);
      else made.push({ parent: parentOf(row.id), rows: [row] });
      return made;
    },
    [],
  );
  const printed = new Map<string, string>();
  return runs.map(({ parent, rows }) => {
    const alone = rows.length === 1;
    return {
      heading: alone ? null : parent,
      figures: rows.map(({ id, figure }) =>
        rowOf({ id, name: alone ? id : id.slice(parent.length + 1), figure, parent, printed }, sheet),
      ),
    };
  });
}

function parentOf(id: string): string {
  return id.slice(0, Math.max(0, id.lastIndexOf('.')));
}

function rowOf(
  row: {
    readonly id: string;
    readonly name: string;
    readonly figure: Figure;
    readonly parent: string;
    /** Long lists of inputs that stand in the topic by now, each with the figure it stands with. */
    readonly printed: Map<string, string>;
  },
  sheet: Sheet,
): FigureRowView {
  const { id, name, figure, parent, printed } = row;
  const { say, sources } = sheet;
  const before = printedBefore(id, figure, printed, sheet);
  const origins = [
    ...(before === undefined ? originsOf(figure, parent, sheet) : [say.inputsAs(before)]),
    ...[say.rounding[figure.rounding]].filter((one) => one !== null),
  ];
  return {
    name,
    value: showFigure(figure),
    formula: showFormula(figure),
    origins: origins.length === 0 ? null : origins.join('; '),
    source: sources.numberOf(figure.source),
  };
}

/** The figure of the topic with which the same long list of inputs stands; this one, for those to come, where there is none. */
function printedBefore(
  id: string,
  figure: Figure,
  printed: Map<string, string>,
  sheet: Sheet,
): string | undefined {
  if (Object.keys(figure.inputs).length < 3) return undefined;
  const inputs = originsOf(figure, '', sheet).join('; ');
  if (inputs.length <= LONG) return undefined;
  // Two thicknesses may come from one place and be two.
  const key = [inputs, ...Object.values(figure.inputs).map(({ value }) => value)].join(' ');
  const before = printed.get(key);
  if (before === undefined) printed.set(key, id);
  return before;
}

/** Where the inputs of a figure come from, those of one place together: `lengthIn, widthIn: job.yaml:21`. */
function originsOf(figure: Figure, parent: string, sheet: Sheet): readonly string[] {
  const isShown = 'expression' in figure.formula;
  const byPlace = new Map<string, string[]>();
  for (const [name, input] of Object.entries(figure.inputs)) {
    const place = placeOfInput(name, input, parent, sheet);
    const shown = isShown ? name : `${name} [${showInput(input)}]`;
    byPlace.set(place, [...(byPlace.get(place) ?? []), shown]);
  }
  return [...byPlace].map(([place, names]) => sheet.say.from(names.join(', '), place));
}

function placeOfInput(name: string, input: FigureInput, parent: string, sheet: Sheet): string {
  const { idOf, placeOf, sources, say } = sheet;
  if ('figure' in input) {
    const id = idOf.get(input) ?? name;
    return parentOf(id) === parent ? id.slice(parent.length + 1) : id;
  }
  if ('constant' in input) return say.sourceNumber(sources.numberOf(input.source));
  return placeOf(input.path) ?? say.shipped(input.path);
}
