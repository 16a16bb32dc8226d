import { type Figure, figure, given, num } from '../figure.ts';
import type { Drain } from '../job.ts';
import { leastPipeSlope } from './least-pipe-slope.ts';
import { inches, ratio } from './walk-end-figures.ts';

export type DrainFigures = {
  /** Above the datum, as the surface there [in]. */
  readonly rim: Figure;
  /** 1 where nothing leads the water off. */
  readonly 'no-outlet': Figure;
  readonly pipe?: {
    /** From the rim down to the bottom of the pipe where it leaves [in]. */
    readonly deep: Figure;
    /** How much it falls over its length [in]. */
    readonly drop: Figure;
    readonly slope: Figure;
    readonly least: Figure;
    readonly 'short-by': Figure;
  };
};

/** @throws {RangeError} If the pipe has no size, which is refused where files are read. */
export function drainFigures({ id, rimIn, pipe }: Drain): DrainFigures {
  const path = `heights.drains.${id}`;
  const rim = inches(rimIn, 'rimIn', { rimIn: given(`${path}.rim`, rimIn, 'in') });
  const noOutlet = figure({
    value: pipe === null ? 1 : 0,
    unit: 'each',
    decimals: 0,
    formula: { method: '1 where the drain has no pipe to an outlet' },
    inputs: {},
  });
  return {
    rim,
    'no-outlet': noOutlet,
    ...(pipe === null ? {} : { pipe: pipeFigures(`${path}.pipe`, rim, pipe) }),
  };
}

function pipeFigures(
  path: string,
  rim: Figure,
  { sizeIn, invertIn, outletIn, lengthIn }: NonNullable<Drain['pipe']>,
): NonNullable<DrainFigures['pipe']> {
  const invert = given(`${path}.invert`, invertIn, 'in');
  const drop = inches(invertIn - outletIn, 'invertIn - outletIn', {
    invertIn: invert,
    outletIn: given(`${path}.outlet`, outletIn, 'in'),
  });
  const slope = ratio(num(drop) / lengthIn, 'dropIn / lengthIn', {
    dropIn: drop,
    lengthIn: given(`${path}.length`, lengthIn, 'in'),
  });
  const leastSlope = leastPipeSlope(sizeIn);
  const least = figure({
    value: num(leastSlope),
    unit: 'ratio',
    decimals: 4,
    formula: { method: 'the row of the table for the size' },
    inputs: { sizeIn: given(`${path}.size`, sizeIn, 'in'), leastSlope },
    source: leastSlope.source,
  });
  return {
    deep: inches(num(rim) - invertIn, 'rimIn - invertIn', { rimIn: rim, invertIn: invert }),
    drop,
    slope,
    least,
    'short-by': ratio(Math.max(0, num(least) - num(slope)), 'max(0, leastSlope - slope)', {
      leastSlope: least,
      slope,
    }),
  };
}
