import {
  type EdgeKind,
  type Outline,
  orient,
  polygonRing,
  type RoundedCorner,
  rectangleRing,
  ringAreaSqIn,
  roundCorners,
  selfCrossing,
  withEdgeKinds,
} from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatInches } from '../../units/index.ts';
import type { TapedShape } from '../job.ts';

type ClosedShape =
  | { readonly ok: true; readonly outline: Outline; readonly corners: readonly RoundedCorner[] }
  | { readonly ok: false; readonly problem: CoreProblem };

/**
 * A taped shape as a closed outline, its corners rounded.
 *
 * @param path Job path of the thing, for the problem where the shape cannot be closed: edges that
 *             cross, no area, or a rounding that does not fit on its edges.
 */
export function closeShape(shape: TapedShape, path: string): ClosedShape {
  const { base } = shape;
  const straight = base.kind === 'rectangle' ? rectangleRing(base) : polygonRing(base.points);
  const crossed = selfCrossing(straight);
  if (crossed !== null) {
    const [first, second] = crossed;
    return wrong('outline-crosses-itself', `${path}.corners`, { first: `${first}`, second: `${second}` });
  }
  if (!(Math.abs(ringAreaSqIn(straight)) > 0)) {
    return wrong('outline-without-area', `${path}.corners`, {});
  }

  const kinds = new Map<number, EdgeKind>(shape.edges.map(({ edge, kind }) => [edge, kind]));
  const setbacksIn = new Map(shape.rounded.map(({ corner, setbackIn }) => [corner, setbackIn]));
  const rounded = roundCorners(withEdgeKinds(straight, kinds), setbacksIn);
  if (!rounded.ok) {
    return wrong('corner-does-not-fit', `${path}.rounded.${rounded.corner}`, {
      corner: `${rounded.corner}`,
      wanted: formatInches(rounded.wantedIn, 16),
      available: formatInches(rounded.availableIn, 16),
    });
  }
  return { ok: true, outline: orient({ rings: [rounded.ring] }), corners: rounded.corners };
}

function wrong(code: string, path: string, parts: Readonly<Record<string, string>>): ClosedShape {
  return { ok: false, problem: { code, path, parts } };
}
