import { distanceIn } from '../../geometry/index.ts';
import { type Figure, type FigureInput, type Formula, figure, given, num } from '../figure.ts';
import type { LevelPoint, PublicWalk } from '../job.ts';
import type { WalkEnd } from '../tie-in-things.ts';
import { transitionLengthIn } from './transition.ts';

/** One of the two, whichever way it goes [rise over run]. */
export type FallFigures = { readonly falls: Figure } | { readonly rises: Figure };

export type WalkEndFigures = {
  /** Against the datum, as it is and as it should be [in]. */
  readonly now: Figure;
  readonly should: Figure;
  /** How far the two are apart [in]. */
  readonly lip: Figure;
  /** On the plan, from the point the slab comes down from [in]. */
  readonly run: Figure;
  /** The slab, where it meets the walk as it is, and where it heads for where the walk should be. */
  readonly 'as-it-is': FallFigures;
  readonly 'as-it-should-be': FallFigures;
  /** What the transition takes of the slab, and how high it starts; only where it gets to the walk [in]. */
  readonly transition?: Figure;
  readonly 'transition-start'?: Figure;
  /** Where the slab ends while its last panel is held back, and how the way falls from there to the walk. */
  readonly 'panel-start'?: Figure;
  readonly 'over-panel'?: FallFigures;
};

type Placed = { readonly point: LevelPoint; readonly height: Figure };

/** What the ways to meet a public walk come to at one end of the joint. */
export function walkEndFigures(
  walk: PublicWalk,
  end: WalkEnd,
  { now, up }: { readonly now: Placed; readonly up: Placed },
): WalkEndFigures {
  const path = `heights.public-walks.${walk.id}`;
  const { shouldIn } = walk.ends[end];
  const should = inches(shouldIn, 'shouldIn', { shouldIn: given(`${path}.${end}.should`, shouldIn, 'in') });
  const nowHeight = inches(num(now.height), 'heightIn', { heightIn: now.height });
  const run = runFigure(up.point, now.point);
  const slab = { upIn: up.height, runIn: run };
  const panelIn = given(`${path}.last-panel`, walk.lastPanelIn, 'in');
  const ends = {
    now: nowHeight,
    should,
    lip: inches(Math.abs(shouldIn - num(nowHeight)), 'max(shouldIn - nowIn, nowIn - shouldIn)', {
      shouldIn: should,
      nowIn: nowHeight,
    }),
    run,
    'as-it-is': fallFigures(up.height, nowHeight, run),
    'as-it-should-be': fallFigures(up.height, should, run),
  };
  return {
    ...ends,
    ...transitionFigures({ walk, path, now: nowHeight, should, slab }),
    ...(walk.lastPanelIn < num(run) ? panelFigures({ now: nowHeight, should, slab, panelIn }) : {}),
  };
}

type Slab = { readonly upIn: Figure; readonly runIn: Figure };

function transitionFigures(made: {
  readonly walk: PublicWalk;
  readonly path: string;
  readonly now: Figure;
  readonly should: Figure;
  readonly slab: Slab;
}): Pick<WalkEndFigures, 'transition' | 'transition-start'> {
  const { walk, path, now, should, slab } = made;
  const settledIn = num(should) - num(now);
  const ownSlope = (num(slab.upIn) - num(should)) / num(slab.runIn);
  const lengthIn = transitionLengthIn({ settledIn, ownSlope, slope: walk.transitionSlope });
  if (lengthIn === null || lengthIn >= num(slab.runIn)) return {};
  const own = '(upIn - shouldIn) / runIn';
  const inputs = {
    shouldIn: should,
    nowIn: now,
    slope: given(`${path}.transition`, walk.transitionSlope, 'ratio'),
    ...slab,
  };
  const transition = inches(
    lengthIn,
    settledIn >= 0 ? `(shouldIn - nowIn) / (slope - ${own})` : `(nowIn - shouldIn) / (slope + ${own})`,
    inputs,
  );
  return { transition, 'transition-start': backFrom(should, transition, slab) };
}

function panelFigures(made: {
  readonly now: Figure;
  readonly should: Figure;
  readonly slab: Slab;
  readonly panelIn: FigureInput;
}): Pick<WalkEndFigures, 'panel-start' | 'over-panel'> {
  const { now, should, slab, panelIn } = made;
  const start = backFrom(should, panelIn, slab);
  return { 'panel-start': start, 'over-panel': fallFigures(start, now, panelIn) };
}

/** Height of a slab that heads for where the walk should be, so far before it. */
function backFrom(should: Figure, back: FigureInput, slab: Slab): Figure {
  return inches(
    num(should) + ((num(slab.upIn) - num(should)) * num(back)) / num(slab.runIn),
    'shouldIn + (upIn - shouldIn) * backIn / runIn',
    { shouldIn: should, backIn: back, ...slab },
  );
}

/** How a line falls from one height to another. */
export function fallFigures(from: Figure, to: Figure, run: FigureInput): FallFigures {
  const inputs = { fromIn: from, toIn: to, runIn: run };
  const [fromIn, toIn, runIn] = [num(from), num(to), num(run)];
  return fromIn >= toIn
    ? { falls: ratio((fromIn - toIn) / runIn, '(fromIn - toIn) / runIn', inputs) }
    : { rises: ratio((toIn - fromIn) / runIn, '(toIn - fromIn) / runIn', inputs) };
}

/** The distance of two points on the plan. */
export function runFigure(one: LevelPoint, other: LevelPoint): Figure {
  const place = ({ id, at }: LevelPoint, axis: 0 | 1) =>
    given(`heights.points.${id}.at.${axis}`, axis === 0 ? at.xIn : at.yIn, 'in');
  return inches(
    distanceIn(one.at, other.at),
    { method: 'the distance of the two points on the plan' },
    { xFromIn: place(one, 0), xToIn: place(other, 0), yFromIn: place(one, 1), yToIn: place(other, 1) },
  );
}

export function inches(value: number, formula: string | Formula, inputs: Figure['inputs']): Figure {
  return figure({ value, unit: 'in', decimals: 2, formula, inputs });
}

export function ratio(value: number, formula: string, inputs: Figure['inputs']): Figure {
  return figure({ value, unit: 'ratio', decimals: 4, formula, inputs });
}
