import {
  arcOf,
  cutOutline,
  distanceIn,
  type Edge,
  edgesOf,
  isOnEdge,
  type Outline,
  type Point,
} from '../../geometry/index.ts';
import { cutWays, type Mark, marksOn } from './cut-ways.ts';
import type { Cut } from './line-cuts.ts';
import { expected, panelCost, wantsCut } from './panel-cost.ts';
import { isRectangle, type PanelShape, panelShape } from './panel-shape.ts';

/** A straight piece of a joint, from one panel's edge to another's. */
export type Piece = { readonly from: Point; readonly to: Point };
export type Split = { readonly panels: readonly PanelShape[]; readonly pieces: readonly Piece[] };

/** Costs of a cut itself, in panels. */
const COST = {
  length: 0.1,
  lined: -0.4,
  near: 1.5,
  leanAtArc: 1,
  leanADegree: 0.01,
  slantADegree: 0.02,
  uneven: 1,
} as const;
/** An end this near another joint or a corner, and not on it, leaves a short side [in]. */
const NEAR_IN = 24;
const ON_IN = 1e-3;
/** Ends of joints are square to a curve within so much [deg]. */
const SQUARE_DEG = 3;
/** A panel that becomes no more than so many is small, and so many cuts of it are followed. */
const SMALL_COUNT = 6;
const LIKELY_COUNT = 5;
/** A cut that is better by less is not [panels]. */
const NO_BETTER = 1e-6;
/** No layout has more panels: a limit a tenth of what a walk has. */
const MOST_PANELS = 4000;

/**
 * Cuts panels until none asks for another cut: each time that with the lowest expected cost, the first
 * of those that cost the same. A panel that no cut would make better stays. Of a small panel that is no rectangle
 * the likeliest cuts are followed to their ends: what is left over decides there.
 *
 * @param looksAhead Whether cuts are followed; not again while one is.
 */
export function splitPanels(start: Split, limitIn: number, looksAhead = true): Split {
  const done: PanelShape[] = [];
  const pieces = [...start.pieces];
  const marks: Mark[] = pieces.flatMap(marksOf);
  const open = [...start.panels];
  for (;;) {
    const shape = takeLargest(open);
    if (shape === null) return { panels: done, pieces };
    const best = done.length + open.length < MOST_PANELS ? bestCut(shape, marks, limitIn, looksAhead) : null;
    if (best === null) {
      done.push(shape);
      continue;
    }
    open.push(...best.panels);
    for (const piece of best.pieces) {
      pieces.push(piece);
      marks.push(...marksOf(piece));
    }
  }
}

/** The small panels follow the joints of the large ones. */
function takeLargest(open: PanelShape[]): PanelShape | null {
  if (open.length === 0) return null;
  const areasSqIn = open.map(({ areaSqIn }) => Math.round(areaSqIn));
  const [largest = null] = open.splice(areasSqIn.indexOf(Math.max(...areasSqIn)), 1);
  return largest;
}

/** A panel cut in one way; null where the way does not cut it. */
export function cutPanel(outline: Outline, cut: Cut): Split | null {
  let panels: readonly Outline[] = [outline];
  for (const path of cut) {
    const found = firstCut(panels, path);
    if (found === null) return null;
    panels = found;
  }
  if (panels.length < 2) return null;
  return { panels: panels.map(panelShape), pieces: cut.flatMap(piecesOf) };
}

function firstCut(panels: readonly Outline[], path: readonly Point[]): readonly Outline[] | null {
  for (const [index, panel] of panels.entries()) {
    const pieces = cutOutline(panel, path);
    if (pieces !== null) return [...panels.slice(0, index), ...pieces, ...panels.slice(index + 1)];
  }
  return null;
}

function piecesOf(path: readonly Point[]): readonly Piece[] {
  return path.slice(1).map((to, index) => ({ from: path[index] ?? to, to }));
}

function marksOf({ from, to }: Piece): readonly Mark[] {
  const alongRad = Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn);
  return [
    { at: from, alongRad },
    { at: to, alongRad },
  ];
}

function bestCut(
  shape: PanelShape,
  marks: readonly Mark[],
  limitIn: number,
  looksAhead: boolean,
): Split | null {
  if (!wantsCut(shape, limitIn)) return null;
  const cutOn: CutOn = {
    shape,
    edges: shape.outline.rings.flatMap((ring) => edgesOf(ring)),
    near: marksOn(shape, marks),
    limitIn,
  };
  const isSmall = looksAhead && !isRectangle(shape) && expected(shape, limitIn).count <= SMALL_COUNT;
  for (const ways of cutWays(shape, cutOn.near, limitIn)) {
    const [best, ...others] = ranked(ways(), cutOn);
    if (best === undefined || best.cost >= panelCost(shape, limitIn)) continue;
    const likely = isSmall ? others.slice(0, LIKELY_COUNT - 1).map(({ split }) => split) : [];
    return leastInTheEnd([best.split, ...likely], cutOn);
  }
  return null;
}

/** A panel that is cut, and the joints that end on its edges. */
type CutOn = {
  readonly shape: PanelShape;
  readonly edges: readonly Edge[];
  readonly near: readonly Mark[];
  readonly limitIn: number;
};

/** The first of those cuts after which all that follows costs least. */
function leastInTheEnd(splits: readonly [Split, ...Split[]], cutOn: CutOn): Split {
  const { limitIn } = cutOn;
  const [first, ...others] = splits;
  if (others.length === 0) return first;
  const costOf = (split: Split) => {
    const { panels, pieces } = splitPanels(split, limitIn, false);
    return (
      panels.reduce((sum, panel) => sum + panelCost(panel, limitIn), 0) +
      pieces.reduce((sum, { from, to }) => sum + pathCost([from, to], cutOn), 0)
    );
  };
  let best = { split: first, cost: costOf(first) };
  for (const split of others) {
    const cost = costOf(split);
    if (cost < best.cost - NO_BETTER) best = { split, cost };
  }
  return best.split;
}

/** Cheapest first, as far as can be told before the rest is cut; of those that cost the same the first. */
function ranked(
  cuts: readonly Cut[],
  cutOn: CutOn,
): readonly { readonly split: Split; readonly cost: number }[] {
  const { shape, limitIn } = cutOn;
  const tried = new Set<string>();
  const found: { readonly split: Split; readonly cost: number }[] = [];
  for (const cut of cuts) {
    const key = keyOf(cut);
    if (tried.has(key)) continue;
    tried.add(key);
    const split = cutPanel(shape.outline, cut);
    if (split === null) continue;
    const likely = split.panels.map((panel) => expected(panel, limitIn));
    const cost =
      likely.reduce((sum, panel) => sum + panel.cost, 0) +
      COST.uneven *
        unevenness(split.panels.map(({ areaSqIn }, at) => areaSqIn / Math.round(likely[at]?.count ?? 1))) +
      cut.reduce((sum, path) => sum + pathCost(path, cutOn), 0);
    found.push({ split, cost });
  }
  const stepsOf = ({ cost }: (typeof found)[number]) => Math.round(cost / NO_BETTER);
  return found.toSorted((one, other) => stepsOf(one) - stepsOf(other));
}

/** The same for the same cut from either end, to a hundredth of an inch. */
function keyOf(cut: Cut): string {
  return cut
    .map((path) => {
      const points = path.map(({ xIn, yIn }) => `${Math.round(xIn * 100)},${Math.round(yIn * 100)}`);
      const back = points.toReversed().join(' ');
      const forth = points.join(' ');
      return forth < back ? forth : back;
    })
    .toSorted()
    .join(';');
}

/** How much sizes differ, 0 where all are alike. */
function unevenness(sizes: readonly number[]): number {
  return 1 - Math.min(...sizes) / Math.max(...sizes);
}

function pathCost(path: readonly Point[], cutOn: CutOn): number {
  const lengthIn = piecesOf(path).reduce((sumIn, { from, to }) => sumIn + distanceIn(from, to), 0);
  const ends = [
    [path[0], path[1]],
    [path.at(-1), path.at(-2)],
  ] as const;
  return ends.reduce(
    (sum, [at, next]) => (at === undefined || next === undefined ? sum : sum + endCost(at, next, cutOn)),
    (COST.length * lengthIn) / cutOn.limitIn + COST.slantADegree * slantDeg(path, cutOn),
  );
}

/** How far a straight cut is from running along a long edge of the panel or square to one [deg]. */
function slantDeg(path: readonly Point[], { shape, edges }: CutOn): number {
  const [from, to] = path;
  if (from === undefined || to === undefined || path.length > 2) return 0;
  const lineRad = Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn);
  const offs = edges
    .filter((edge) => edge.from.bulge === 0 && distanceIn(edge.from, edge.to) > shape.box.lengthIn / 3)
    .map((edge) => {
      const edgeRad = Math.atan2(edge.to.yIn - edge.from.yIn, edge.to.xIn - edge.from.xIn);
      const offRad = Math.abs(lineRad - edgeRad) % (Math.PI / 2);
      return (Math.min(offRad, Math.PI / 2 - offRad) * 180) / Math.PI;
    });
  return offs.length === 0 ? 0 : Math.min(...offs);
}

function endCost(at: Point, next: Point, { shape, edges, near, limitIn }: CutOn): number {
  if (near.some((mark) => distanceIn(mark.at, at) < ON_IN)) return COST.lined;
  const edge = edges.find((one) => isOnEdge(one, at, ON_IN));
  if (edge === undefined) return 0;
  if (shape.corners.some((corner) => distanceIn(corner.at, at) < ON_IN)) return 0;
  const nearIn = Math.min(NEAR_IN, limitIn / 3);
  let offIn = nearIn;
  for (const other of near) offIn = Math.min(offIn, distanceIn(other.at, at));
  for (const corner of shape.corners) offIn = Math.min(offIn, distanceIn(corner.at, at));
  const leanDeg = leanFrom(edge, at, next);
  const atArc = edge.from.bulge !== 0 && leanDeg > SQUARE_DEG ? COST.leanAtArc : 0;
  return COST.near * (1 - offIn / nearIn) + atArc + COST.leanADegree * leanDeg;
}

/** How far from square a line leaves an edge [deg]. */
function leanFrom({ from, to }: ReturnType<typeof edgesOf>[number], at: Point, next: Point): number {
  const lineRad = Math.atan2(next.yIn - at.yIn, next.xIn - at.xIn);
  const centre = from.bulge === 0 ? null : arcOf(from, to).centre;
  const squareRad =
    centre === null
      ? Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn) + Math.PI / 2
      : Math.atan2(at.yIn - centre.yIn, at.xIn - centre.xIn);
  const offRad = Math.abs(lineRad - squareRad) % Math.PI;
  return (Math.min(offRad, Math.PI - offRad) * 180) / Math.PI;
}
