import { distanceIn, type Line, lineLengthIn, type Outline } from '../../geometry/index.ts';
import { rememberByValue } from '../remember.ts';
import { joinedLines } from './joined-lines.ts';
import { leastOf } from './least-joints.ts';
import { type Cut, cutsAlong } from './line-cuts.ts';
import { type PanelShape, panelShape } from './panel-shape.ts';
import { cutPanel, type Piece, type Split, splitPanels } from './split-panels.ts';

export type Layout = { readonly panels: readonly PanelShape[]; readonly lines: readonly Line[] };

type Laid = {
  readonly outline: Outline;
  readonly own: readonly Piece[];
  readonly across: readonly Piece[] | null;
  readonly limitIn: number;
  readonly propose: 'rest' | 'nothing';
};

/** More slabs than a job has, with its hidden conditions. */
const KEPT_LAYOUTS = 200;
/** A line that lies along a cut for less than this does not ask for it [in]. */
const LEAST_ALONG_IN = 1;
/** Nobody asks for joints nearer than this [in]. Common practice, no source. */
const LEAST_LIMIT_IN = 24;
const NOISE_IN = 1e-6;

/**
 * Joints that divide an outline into panels.
 *
 * Where a layout for half the limit happens to be found with fewer joints, panels or feet, it is taken: it
 * keeps the limit too. So a closer spacing never gives fewer.
 *
 * @param laid.own     Joints that have their place, in the order they are cut; each runs on to the next edge
 *                     or joint.
 * @param laid.across  Joints across a strip, in order along it, laid by the limit; those near a joint that has
 *                     its place are left out. Null where it is no strip.
 * @param laid.limitIn How long a panel may be.
 * @param laid.propose Whether panels are cut further, until they keep the limit.
 */
export const layJoints = rememberByValue('joints', laidOut, KEPT_LAYOUTS);

function laidOut(laid: Laid): Layout {
  const { own, across, limitIn, propose } = laid;
  const start = own.reduce(cutByLine, wholeOf(laid.outline));
  if (propose === 'nothing') return { panels: start.panels, lines: joinedLines(start.pieces, false) };
  if (across === null) return fewest(start, limitIn);
  const others = across.filter((line) =>
    own.every((one) => middlesApartIn(line, one) > limitIn * NEAR_RATIO),
  );
  const { panels, pieces } = splitPanels(others.reduce(cutByLine, start), limitIn);
  return { panels, lines: joinedLines(pieces, own.length === 0) };
}

/** Places in a list of joints that would cut nothing of an outline, each after those before it. */
export function uselessLines(outline: Outline, own: readonly Piece[]): readonly number[] {
  const useless: number[] = [];
  let split = wholeOf(outline);
  for (const [index, line] of own.entries()) {
    const next = cutByLine(split, line);
    if (next.pieces.length === split.pieces.length) useless.push(index);
    split = next;
  }
  return useless;
}

function wholeOf(outline: Outline): Split {
  return { panels: [panelShape(outline)], pieces: [] };
}

/** A joint across a strip is left out where another one is nearer than this share of the limit. */
const NEAR_RATIO = 0.4;

function middlesApartIn(one: Piece, other: Piece): number {
  const middle = ({ from, to }: Piece) => ({ xIn: (from.xIn + to.xIn) / 2, yIn: (from.yIn + to.yIn) / 2 });
  return distanceIn(middle(one), middle(other));
}

/** @param above What this has to be below in something to be asked for; null where it is asked for anyway. */
function fewest(start: Split, limitIn: number, above: Layout | null = null): Layout {
  const { panels, pieces } = splitPanels(start, limitIn);
  const layout = { panels, lines: joinedLines(pieces, false) };
  const halfIn = limitIn / 2;
  if (halfIn < LEAST_LIMIT_IN) return layout;
  const least = leastOf(start.panels, halfIn);
  const isWanted = above === null || isBelow(countsOf(layout), above) || isBelow(least, above);
  if (!isWanted || !isBelow(least, layout)) return layout;
  const closer = fewest(start, halfIn, layout);
  return isBelow(countsOf(closer), layout) ? closer : layout;
}

type Counts = ReturnType<typeof countsOf>;

/** Whether a layout could have fewer of anything than another has. */
function isBelow(counts: Counts, layout: Layout): boolean {
  const other = countsOf(layout);
  return (
    counts.lineCount < other.lineCount ||
    counts.panelCount < other.panelCount ||
    counts.lengthIn < other.lengthIn - NOISE_IN
  );
}

function countsOf({ panels, lines }: Layout) {
  const lengthIn = lines.reduce((sumIn, line) => sumIn + lineLengthIn(line), 0);
  return { lineCount: lines.length, panelCount: panels.length, lengthIn };
}

/** Every panel that a line runs through, cut along it. */
function cutByLine({ panels, pieces }: Split, line: Piece): Split {
  const added: Piece[] = [];
  const after = panels.flatMap((panel) => {
    let parts = [panel];
    for (const cut of cutsOf(panel.outline, line)) {
      parts = parts.flatMap((part) => {
        const split = cutPanel(part.outline, cut);
        if (split === null) return [part];
        added.push(...split.pieces);
        return [...split.panels];
      });
    }
    return parts;
  });
  return { panels: after, pieces: [...pieces, ...added] };
}

function cutsOf(outline: Outline, { from, to }: Piece): readonly Cut[] {
  const lengthIn = distanceIn(from, to);
  if (!(lengthIn > 0)) return [];
  const along = { xIn: (to.xIn - from.xIn) / lengthIn, yIn: (to.yIn - from.yIn) / lengthIn };
  const placeIn = ({ xIn, yIn }: Piece['from']) =>
    (xIn - from.xIn) * along.xIn + (yIn - from.yIn) * along.yIn;
  return cutsAlong(outline, from, Math.atan2(along.yIn, along.xIn)).filter((cut) => {
    const sharedIn = cut.reduce((sumIn, path) => {
      const [start, end] = [path[0], path.at(-1)];
      if (start === undefined || end === undefined) return sumIn;
      return sumIn + Math.max(0, Math.min(lengthIn, placeIn(end)) - Math.max(0, placeIn(start)));
    }, 0);
    return sharedIn > Math.min(LEAST_ALONG_IN, lengthIn / 2);
  });
}
