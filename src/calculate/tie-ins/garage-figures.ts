import { type Figure, given, num } from '../figure.ts';
import type { GarageFloor } from '../job.ts';
import type { LevelsFigures } from '../levels/index.ts';
import { thingNamed } from '../parts.ts';
import { inches } from './walk-end-figures.ts';

export type GarageFigures = {
  /** How far the slab stays below the floor at the joint [in]. */
  readonly lip: Figure;
  /** From the joint in to the seal of the door [in]. */
  readonly seal: Figure;
  /** By the points on the floor: the top of the slab there, above the datum [in]. */
  readonly tops: Readonly<Record<string, Figure>>;
};

/** What a garage floor makes of the slab that comes up to it. */
export function garageFigures(
  { id, points, lipIn, sealIn }: GarageFloor,
  heights: NonNullable<LevelsFigures['points']>,
): GarageFigures {
  const path = `heights.garages.${id}`;
  const lip = inches(lipIn, 'lipIn', { lipIn: given(`${path}.lip`, lipIn, 'in') });
  return {
    lip,
    seal: inches(sealIn, 'sealIn', { sealIn: given(`${path}.seal`, sealIn, 'in') }),
    tops: Object.fromEntries(
      points.map((point) => {
        const { height } = thingNamed(heights, point, 'point');
        return [point, inches(num(height) - lipIn, 'floorIn - lipIn', { floorIn: height, lipIn: lip })];
      }),
    ),
  };
}
