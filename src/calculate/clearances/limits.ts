import { type Constant, constant } from '../figure.ts';
import type { WallPart } from '../job.ts';

const SIDING =
  'International Residential Code, R317.1, wood siding 6 in above the ground and 2 in above outdoor slabs (from memory); the local code decides';
const SCREED =
  'International Residential Code, R703.7.2.1, weep screeds 4 in above earth and 2 in above paving (from memory); the local code decides';
const SILL =
  'Masonry and Concrete (2004), p. 285, the top of a patio slab 1 in below the door sill at least (seen)';

const least = (valueIn: number, source: string) => constant('least clearance', valueIn, 'in', source);

/*
 * How far parts of a wall stay above what is beside them. Null where nothing published was at hand: then
 * they are only kept from being covered, and the job may say more.
 */
const LIMITS: Readonly<
  Record<WallPart['kind'], { readonly slab: Constant | null; readonly earth: Constant | null }>
> = {
  siding: { slab: least(2, SIDING), earth: least(6, SIDING) },
  'weep-screed': { slab: least(2, SCREED), earth: least(4, SCREED) },
  'door-sill': { slab: least(1, SILL), earth: null },
  'brick-weeps': { slab: null, earth: null },
  vent: { slab: null, earth: null },
  'window-well': { slab: null, earth: null },
};

/** The least clearance of a part of a wall beside a new slab or earth; null where none is published. */
export function leastClearance(kind: WallPart['kind'], beside: WallPart['beside']['kind']): Constant | null {
  return LIMITS[kind][beside];
}
