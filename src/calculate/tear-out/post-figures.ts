import { ceilCount, cuFtToCuYd } from '../../units/index.ts';
import { COMMON_PRACTICE, constant, type Figure, figure, given, num } from '../figure.ts';
import type { Posts } from '../job.ts';
import { type PartFigures, partFigures } from './part-figures.ts';

/** A hole is filled in layers of at most so much, each tamped; common practice, no source. */
export const HOLE_LIFT_IN = 6;

export type PostFigures = {
  /** All of them. */
  readonly footings: PartFigures;
  /** To bring for the holes, tamped [yd3]. */
  readonly 'hole-fill': Figure;
  /** Of fill in each hole. */
  readonly lifts: Figure;
  /** Every lift of every hole [sq ft]. */
  readonly 'tamped-area': Figure;
};

/**
 * Round footings of posts, and what fills the holes they leave: as much as the footings were.
 *
 * V = n pi d² / 4 h. Source: geometry.
 */
export function postFigures({ id, count, footing }: Posts): PostFigures {
  const path = `site.posts.${id}`;
  const { diameterIn, depthIn } = footing;
  const depth = given(`${path}.footing.depth`, depthIn, 'in');
  const round = {
    count: given(`${path}.count`, count, 'each'),
    pi: constant('pi', Math.PI, 'ratio', 'definition'),
    diameterIn: given(`${path}.footing.diameter`, diameterIn, 'in'),
  };
  const volume = figure({
    value: (((count * Math.PI) / 4) * diameterIn ** 2 * depthIn) / 1728,
    unit: 'cu ft',
    decimals: 2,
    formula: 'count * pi / 4 * diameterIn ^ 2 * depthIn / 1728',
    inputs: { ...round, depthIn: depth },
  });
  const lifts = figure({
    value: ceilCount(depthIn / HOLE_LIFT_IN),
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(depthIn / liftIn, 1)',
    inputs: { depthIn: depth, liftIn: constant('lift in a hole', HOLE_LIFT_IN, 'in', COMMON_PRACTICE) },
    source: COMMON_PRACTICE,
    rounding: 'up',
  });
  return {
    footings: partFigures(volume, { material: 'concrete', own: null }),
    'hole-fill': figure({
      value: cuFtToCuYd(num(volume)),
      unit: 'yd3',
      decimals: 2,
      formula: 'volumeCuFt / 27',
      inputs: { volumeCuFt: volume },
    }),
    lifts,
    'tamped-area': figure({
      value: ((((count * Math.PI) / 4) * diameterIn ** 2) / 144) * num(lifts),
      unit: 'sq ft',
      decimals: 1,
      formula: 'count * pi / 4 * diameterIn ^ 2 / 144 * lifts',
      inputs: { ...round, lifts },
    }),
  };
}
