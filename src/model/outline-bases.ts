import type { Origins } from '../problems/index.ts';
import { childrenOf } from './paths.ts';

/** The ways to tell an outline, one of them each. */
export const BASES = [
  'rectangle',
  'trapezoid',
  'circle',
  'sector',
  'corners',
  'sides',
  'four-sides',
  'triangles',
  'strip',
] as const;
export type Base = (typeof BASES)[number];

/** Those of what is left out of an outline. */
export const CUT_OUT_BASES: readonly Base[] = ['rectangle', 'trapezoid', 'circle', 'sector', 'corners'];

/** Those of a piece that is joined to an outline, by a straight edge. */
export const ADDED_BASES: readonly Base[] = ['rectangle', 'trapezoid', 'sector', 'corners'];

/** How many corners and edges a base has, and which of its edges are arcs before any is bent. */
export type Numbering = {
  readonly corners: number;
  readonly edges: number;
  readonly arcs: readonly number[];
};

const FOUR = { corners: 4, edges: 4, arcs: [] } as const;

/** Null for a walk, which has no numbers, and where what is counted does not stand in the files. */
export function numberingOf(base: Base, path: string, origins: Origins): Numbering | null {
  switch (base) {
    case 'rectangle':
    case 'trapezoid':
    case 'four-sides':
      return FOUR;
    case 'circle':
      return { corners: 0, edges: 1, arcs: [1] };
    case 'sector':
      return { corners: 3, edges: 3, arcs: [2] };
    case 'corners':
    case 'sides':
      return counted(itemsOf(`${path}.${base}`, origins)?.length);
    case 'triangles': {
      const more = itemsOf(`${path}.triangles.corners`, origins);
      return counted(more === null ? undefined : CORNERS_OF_BASE + more.length);
    }
    case 'strip':
      return null;
  }
}

/** Corners 1 and 2 are the ends of the base line. */
export const CORNERS_OF_BASE = 2;

function counted(count: number | undefined): Numbering | null {
  return count === undefined ? null : { corners: count, edges: count, arcs: [] };
}

/** The places of a list; null where nothing stands or something that is no list. */
export function itemsOf(path: string, origins: Origins): readonly string[] | null {
  const items = childrenOf(path, origins);
  const isList = items.length > 0 || origins.get(path)?.text.startsWith('[') === true;
  return isList ? items : null;
}
