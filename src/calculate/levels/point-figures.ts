import { type Figure, figure, given, num } from '../figure.ts';
import type { Existing, LevelPoint } from '../job.ts';
import { thingNamed } from '../parts.ts';

export type PointFigures = {
  /** Of what the rod stood on, above the datum [in]; only where a layer below it goes. */
  readonly read?: Figure;
  /** Above the datum, below it where negative [in]. */
  readonly height: Figure;
};

/**
 * The height of a point above the datum.
 *
 * A fixed height read on a layer that goes, such as tile, is that of the layer's top: what stays lies
 * lower by its thickness. What is there now, and what is chosen, counts as it is.
 *
 * @param readIn Height as written or as the notes give it [in].
 * @param existing Everything flat that goes.
 * @throws {RangeError} If a fixed point stands on something that goes and has no layer, which is refused
 *   where files are read.
 */
export function pointFigures(
  point: LevelPoint,
  readIn: Figure,
  existing: Readonly<Record<string, Existing>>,
): PointFigures {
  const { stoodOn, kind } = point;
  if (kind !== 'fixed' || stoodOn?.kind !== 'existing') return { height: readIn };
  const { coating } = thingNamed(existing, stoodOn.id, 'existing thing');
  if (coating === null || !('thicknessIn' in coating))
    throw new RangeError(`the fixed point ${point.id} stands on ${stoodOn.id}, which goes and has no layer`);
  const layerIn = given(`site.existing.${stoodOn.id}.coating-thickness`, coating.thicknessIn, 'in');
  return {
    read: readIn,
    height: figure({
      value: num(readIn) - coating.thicknessIn,
      unit: 'in',
      decimals: 3,
      formula: 'readIn - layerIn',
      inputs: { readIn, layerIn },
    }),
  };
}
