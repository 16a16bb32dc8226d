import type { Origins } from '../problems/index.ts';
import { childrenOf } from './paths.ts';

/** Keys of heights below a thing of each kind. */
const KEYS: Readonly<Record<string, readonly string[]>> = {
  'heights.public-walks': ['left.should', 'right.should'],
  'heights.lids': ['height'],
  'heights.drains': ['rim', 'pipe.invert', 'pipe.outlet'],
};

/** Where heights against the datum are written in what new slabs meet. */
export function tieInHeights(origins: Origins): readonly string[] {
  const profiles = childrenOf('heights.profiles', origins).map((id) => `heights.profiles.${id}.beyond`);
  return [...Object.entries(KEYS), ...profiles.map((below) => [below, ['height']] as const)].flatMap(
    ([below, keys]) => childrenOf(below, origins).flatMap((id) => keys.map((key) => `${below}.${id}.${key}`)),
  );
}
