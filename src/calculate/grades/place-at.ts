import type { Point } from '../../geometry/index.ts';
import { type OldPart, partAt } from './old-ground.ts';
import { digFigures, heightFigure, type PlaceFigures } from './place-figures.ts';
import type { SlabSurface } from './surfaces.ts';

/**
 * What is known of a place on a slab with a surface.
 *
 * @param parts What is there now under the slab; null where that is not known, and nothing is said of digging.
 */
export function placeAt(
  { slab, surface, points }: SlabSurface,
  parts: readonly OldPart[] | null,
  at: Point,
): PlaceFigures {
  const finish = heightFigure(surface, at, points);
  const part = parts === null ? null : partAt(parts, at);
  if (part === null) return { finish };
  const existing = heightFigure(part.top, at, part.points);
  return { finish, ...digFigures({ slab, finish, existing, gone: part.gone }) };
}
