import { distanceIn, type Line, type Outline, type Point } from '../../geometry/index.ts';
import { type Figure, type FigureInput, figure } from '../figure.ts';
import type { HaulLoad } from '../haul/index.ts';
import { type Lies, type OutlineResult, surfaceToPlan } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { type CutBay, cutThing } from './cut-thing.ts';

/** A bay of one load on one existing thing, as it is chalked. */
export type Bay = {
  /** Name of the load. */
  readonly load: string;
  readonly existingId: string;
  readonly areaSqFt: number;
  /** On the level plan: a place inside, and the lines on which it starts; none for the first bay of a thing. */
  readonly label: Point;
  readonly lines: readonly Line[];
  /** The figures that find the ends of its lines, each from a mark. */
  readonly ties: readonly { readonly figure: string; readonly mark: string }[];
};

/** A corner to hook the tape on, `a` the first of the job; on the level plan. */
export type TapeMark = { readonly mark: string; readonly at: Point };

export type BaysResult = TopicResult<
  /** By existing thing, then by load: from a mark to an end of the line on which its bay starts [in]. */
  Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, Figure>>>>>>,
  { readonly bays: readonly Bay[]; readonly marks: Readonly<Record<string, readonly TapeMark[]>> }
>;

type Load = Pick<HaulLoad, 'name' | 'pieces'>;

/** A piece smaller than this is noise of the weights: nobody chalks it [sq ft]. */
const LEAST_SQ_FT = 1e-3;
/** Corners this near each other are one [in]. */
const SAME_CORNER_IN = 0.01;

/**
 * The bays to chalk on what goes, each as large as what one load takes of it.
 *
 * Only what is loaded by the square foot has bays. They are cut on the surface, which is what the crew
 * tapes and what the areas are of, and drawn on the level plan.
 *
 * @throws {RangeError} If the loads do not take all of a thing.
 */
export function calcBays(input: {
  readonly loads: readonly Load[];
  readonly outlines: Readonly<Record<string, Outline>>;
  readonly lies: Readonly<Record<string, Lies>>;
  readonly shapes: Pick<OutlineResult['figures'], 'existing'>;
}): BaysResult {
  const figures: Record<string, Record<string, Record<string, Figure>>> = {};
  const marks: Record<string, TapeMark[]> = {};
  const bays: Bay[] = [];
  let markCount = 0;
  for (const [id, pieces] of piecesByThing(input.loads)) {
    const lies = thingNamed(input.lies, id, 'existing thing');
    const from = { areaSqFt: thingNamed(input.shapes.existing, id, 'existing thing').area };
    const hooks: { readonly mark: string; readonly corner: Point }[] = [];
    const markAt = (corner: Point): string => {
      const known = hooks.find((hook) => distanceIn(hook.corner, corner) < SAME_CORNER_IN);
      if (known !== undefined) return known.mark;
      const mark = letters(markCount);
      markCount += 1;
      hooks.push({ mark, corner });
      return mark;
    };
    const cut = cutThing(
      thingNamed(input.outlines, id, 'existing thing'),
      pieces.map(({ areaSqFt }) => areaSqFt),
    );
    for (const [index, { load, areaSqFt }] of pieces.entries()) {
      const bay = cut[index];
      if (bay === undefined) throw new RangeError(`${id} has no bay for ${load}`);
      const ties = tieFigures(bay, markAt, from);
      if (ties.length > 0) {
        figures[id] ??= {};
        figures[id][load] = Object.fromEntries(ties.map((tie) => [tie.name, tie.figure]));
      }
      bays.push({
        load,
        existingId: id,
        areaSqFt,
        label: surfaceToPlan(bay.label, lies),
        lines: bay.lines.map((line) => onPlan(line, lies)),
        ties: ties.map(({ name, mark }) => ({ figure: name, mark })),
      });
    }
    if (hooks.length > 0) {
      marks[id] = hooks.map(({ mark, corner }) => ({ mark, at: surfaceToPlan(corner, lies) }));
    }
  }
  return { figures, data: { bays: inDrivingOrder(bays, input.loads), marks }, problems: [] };
}

type Piece = { readonly load: string; readonly areaSqFt: number };

/** What of each thing is on which load, in driving order. */
function piecesByThing(loads: readonly Load[]): ReadonlyMap<string, readonly Piece[]> {
  const found = new Map<string, Piece[]>();
  for (const load of loads) {
    for (const { existingId, areaSqFt } of load.pieces) {
      if (existingId === null || areaSqFt === null || !(areaSqFt >= LEAST_SQ_FT)) continue;
      const pieces = found.get(existingId) ?? [];
      pieces.push({ load: load.name, areaSqFt });
      found.set(existingId, pieces);
    }
  }
  return found;
}

function inDrivingOrder(bays: readonly Bay[], loads: readonly Load[]): readonly Bay[] {
  return loads.flatMap(({ name }) => bays.filter(({ load }) => load === name));
}

function tieFigures(
  { ties }: CutBay,
  markAt: (corner: Point) => string,
  inputs: Readonly<Record<string, FigureInput>>,
): readonly { readonly name: string; readonly mark: string; readonly figure: Figure }[] {
  const taken = new Map<string, number>();
  return ties.map(({ corner, lengthIn }) => {
    const mark = markAt(corner);
    const count = (taken.get(mark) ?? 0) + 1;
    taken.set(mark, count);
    const name = count === 1 ? `from-${mark}` : `from-${mark}-${count}`;
    const method = `straight from corner ${mark.toUpperCase()} to the line that leaves the areas of the loads before it on one side`;
    return {
      name,
      mark,
      figure: figure({ value: lengthIn, unit: 'in', decimals: 1, formula: { method }, inputs }),
    };
  });
}

/** a to z, then aa, ab and so on. */
function letters(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : `${letters(Math.floor(index / 26) - 1)}${last}`;
}

function onPlan({ from, to }: { readonly from: Point; readonly to: Point }, lies: Lies): Line {
  const [start, end] = [surfaceToPlan(from, lies), surfaceToPlan(to, lies)];
  return { fromXIn: start.xIn, fromYIn: start.yIn, toXIn: end.xIn, toYIn: end.yIn };
}
