import { segmentCrossingIn } from '../../geometry/index.ts';
import { COMMON_PRACTICE, type Figure, figure } from '../figure.ts';
import { lapsOf } from './bar-laps.ts';
import type { LaidBar } from './lay-bars.ts';

/** A lap is tied near both its ends; a bar across a corner twice to the mat. */
const TIES_EACH = 2;

/**
 * Ties of a mat: every crossing that is the first or the last of a bar, every other one of the rest; and two
 * of each lap and of each bar across an inner corner. Common practice, no source.
 */
export function tieCount(bars: readonly LaidBar[]): number {
  const across = bars.filter(({ way }) => way === 'across');
  const crossings = bars
    .filter(({ way }) => way === 'along')
    .flatMap((along) => across.filter((bar) => crosses(along, bar)).map((bar) => ({ along, across: bar })));
  const onRim = new Set([
    ...endsBy(crossings, ({ along }) => along),
    ...endsBy(crossings, (crossing) => crossing.across),
  ]);
  const laps = bars.reduce((sum, { pieces }) => sum + lapsOf(pieces).length, 0);
  const diagonals = bars.filter(({ way }) => way === 'diagonal').length;
  return onRim.size + Math.ceil((crossings.length - onRim.size) / 2) + (laps + diagonals) * TIES_EACH;
}

export function tiesFigure(bars: readonly LaidBar[], inputs: Figure['inputs']): Figure {
  return figure({
    value: tieCount(bars),
    unit: 'each',
    decimals: 0,
    formula: {
      method:
        'crossings at both ends of every bar, every other one between; 2 each lap and each bar across a corner',
    },
    inputs,
    source: COMMON_PRACTICE,
    rounding: 'up',
  });
}

type Crossing = { readonly along: LaidBar; readonly across: LaidBar };

/** Bars lie in order, and so do their crossings: the first and the last of each bar. */
function endsBy(crossings: readonly Crossing[], barOf: (crossing: Crossing) => LaidBar): readonly Crossing[] {
  const ends = new Map<LaidBar, { readonly first: Crossing; last: Crossing }>();
  for (const crossing of crossings) {
    const known = ends.get(barOf(crossing));
    if (known === undefined) ends.set(barOf(crossing), { first: crossing, last: crossing });
    else known.last = crossing;
  }
  return [...ends.values()].flatMap(({ first, last }) => [first, last]);
}

function crosses(along: LaidBar, { from, to }: LaidBar): boolean {
  const line = { fromXIn: from.xIn, fromYIn: from.yIn, toXIn: to.xIn, toYIn: to.yIn };
  return segmentCrossingIn(along, line) !== null;
}
