import { jointMiss, moveOutline, type Outline, overlapAreaSqIn } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatNumber } from '../../units/index.ts';
import { told, toldMost } from './told.ts';

/** A shape on the plan. `isPlaced`: the job says where it stands. */
export type OnPlan = {
  readonly id: string;
  readonly label: string;
  readonly outline: Outline;
  readonly isPlaced: boolean;
};

export type JoinedShapes = {
  readonly outlines: Readonly<Record<string, Outline>>;
  /** By the id of the shape that was moved: to what, and how far. */
  readonly misses: Readonly<Record<string, { readonly to: string; readonly missIn: number }>>;
  /** By the id of the shape that was moved. */
  readonly moves: Readonly<Record<string, { readonly dxIn: number; readonly dyIn: number }>>;
  readonly problems: readonly CoreProblem[];
};

/** Less than this is the noise of shapes that touch along arcs, not concrete counted twice [in²]. */
export const LEAST_OVERLAP_SQ_IN = 1;
/** Two joint edges further apart than this belong to different neighbours [in]. */
const MOST_MISS_IN = 24;

/**
 * Brings shapes that share a joint together, and refuses shapes that lie on one another.
 *
 * Two slabs measured from different ends miss by a little: the later one is moved by the miss, up to
 * the company's joining gap; beyond it the miss is a mistake of the tape.
 *
 * @param section Job path of the shapes, for problems.
 */
export function joinShapes(shapes: readonly OnPlan[], section: string, joiningGapIn: number): JoinedShapes {
  const done: OnPlan[] = [];
  const misses: Record<string, { to: string; missIn: number }> = {};
  const moves: Record<string, { dxIn: number; dyIn: number }> = {};
  const problems: CoreProblem[] = [];
  for (const shape of shapes) {
    let here = shape;
    for (const other of done) {
      if (!(shape.isPlaced && other.isPlaced)) continue;
      const miss = jointMiss(other.outline, here.outline);
      if (miss === null || miss.missIn > MOST_MISS_IN) continue;
      if (miss.missIn > joiningGapIn) {
        problems.push({
          code: 'slabs-miss',
          path: `${section}.${shape.id}.at`,
          parts: {
            first: other.label,
            second: shape.label,
            miss: told(miss.missIn),
            allowed: toldMost(joiningGapIn),
          },
        });
      } else {
        here = { ...here, outline: moveOutline(here.outline, miss.move) };
        const before = moves[shape.id] ?? { dxIn: 0, dyIn: 0 };
        moves[shape.id] = { dxIn: before.dxIn + miss.move.dxIn, dyIn: before.dyIn + miss.move.dyIn };
        misses[shape.id] = { to: other.id, missIn: miss.missIn };
      }
    }
    problems.push(...overlaps(done, here, section));
    done.push(here);
  }
  const outlines = Object.fromEntries(done.map(({ id, outline }) => [id, outline]));
  return { outlines, misses, moves, problems };
}

function overlaps(done: readonly OnPlan[], shape: OnPlan, section: string): readonly CoreProblem[] {
  if (!shape.isPlaced) return [];
  return done.flatMap((other): CoreProblem[] => {
    if (!other.isPlaced) return [];
    const areaSqIn = overlapAreaSqIn(other.outline, shape.outline);
    if (areaSqIn <= LEAST_OVERLAP_SQ_IN) return [];
    const parts = { first: other.label, second: shape.label, area: formatNumber(areaSqIn / 144, 2) };
    return [{ code: 'slabs-overlap', path: `${section}.${shape.id}.at`, parts }];
  });
}
