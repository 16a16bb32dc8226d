import { climbOf, climbTowards, crossLines, planeAt, surfaceAlong } from '../../geometry/index.ts';
import { type Figure, figure } from '../figure.ts';
import { heightsOf } from './place-figures.ts';
import type { SlabSurface } from './surfaces.ts';

/** Of a walk. */
export type AcrossFigures = {
  /** The most it falls from edge to edge, square to them [rise over run]. */
  readonly slope: Figure;
  /** The most it falls along [rise over run]. */
  readonly along: Figure;
};

/** How a walk falls across and along; null where no line goes across it. */
export function acrossFigures({ surface, outline, points }: SlabSurface): AcrossFigures | null {
  const lines = crossLines(outline);
  if (lines.length === 0) return null;
  const across = lines.flatMap((line) => surfaceAlong(surface, line).map(climbOf)).map(Math.abs);
  const along = lines.map(({ from, to }) => {
    const middle = { xIn: (from.xIn + to.xIn) / 2, yIn: (from.yIn + to.yIn) / 2 };
    const acrossRad = Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn);
    return Math.abs(climbTowards(planeAt(surface, middle), acrossRad + Math.PI / 2));
  });
  const ratio = (values: readonly number[], method: string) =>
    figure({
      value: Math.max(...values),
      unit: 'ratio',
      decimals: 4,
      formula: { method },
      inputs: heightsOf(points),
    });
  return {
    slope: ratio(
      across,
      'the most that the surface falls or climbs along lines square to the edges, every 2 ft',
    ),
    along: ratio(along, 'the most that it falls or climbs square to these lines, halfway between the edges'),
  };
}
