import { boundsOf, moveOutline, type Outline } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import type { TapedShape } from '../job.ts';
import type { TopicResult } from '../topic.ts';
import { closeShape } from './close-shape.ts';
import { type ShapeFigures, shapeFigures } from './shape-figures.ts';

export type { ShapeFigures } from './shape-figures.ts';

export type OutlineResult = TopicResult<
  { readonly slabs: Record<string, ShapeFigures>; readonly existing: Record<string, ShapeFigures> },
  { readonly slabs: Record<string, Outline>; readonly existing: Record<string, Outline> }
>;

type Shaped = { readonly id: string; readonly shape: TapedShape };

/** Room left between two shapes on the plan where none was given a place [in]. */
const GAP_IN = 48;

/**
 * Closes every taped shape of a job and measures it.
 *
 * A shape that cannot be closed gives a problem and no figures; the others are measured all the
 * same, so that every wrong shape shows at once.
 */
export function calcOutline(input: {
  readonly slabs: Readonly<Record<string, Shaped>>;
  readonly existing: Readonly<Record<string, Shaped>>;
}): OutlineResult {
  const slabs = measureAll(input.slabs, 'build.slabs');
  const existing = measureAll(input.existing, 'site.existing');
  return {
    figures: { slabs: slabs.figures, existing: existing.figures },
    data: { slabs: slabs.outlines, existing: existing.outlines },
    problems: [...slabs.problems, ...existing.problems],
  };
}

function measureAll(things: Readonly<Record<string, Shaped>>, section: string) {
  const figures: Record<string, ShapeFigures> = {};
  const outlines: Record<string, Outline> = {};
  const problems: CoreProblem[] = [];
  let nextXIn = 0;
  for (const { id, shape } of Object.values(things)) {
    const path = `${section}.${id}`;
    const closed = closeShape(shape, path);
    if (!closed.ok) {
      problems.push(closed.problem);
      continue;
    }
    const placed =
      shape.at === null
        ? moveOutline(closed.outline, { dxIn: nextXIn - boundsOf(closed.outline).minXIn, dyIn: 0 })
        : moveOutline(closed.outline, { dxIn: shape.at.xIn, dyIn: shape.at.yIn });
    nextXIn = Math.max(nextXIn, boundsOf(placed).maxXIn + GAP_IN);
    outlines[id] = placed;
    // Measured where it was closed: a move would add the noise of its coordinates.
    figures[id] = shapeFigures({ shape, outline: closed.outline, corners: closed.corners, path });
  }
  return { figures, outlines, problems };
}
