import type { Lid, UnderSlab } from '../calculate/job.ts';
import type { HeightsSection, SiteSection } from '../read/index.ts';
import { inCoreUnit, mapThings } from './quantity.ts';
import { pointOf } from './shape-base.ts';

type UnderSlabInput = NonNullable<SiteSection['under-slab']>[string];

/** None where the job says nothing of heights. */
export function lidsOf(input: HeightsSection | undefined): Readonly<Record<string, Lid>> {
  return mapThings(input?.lids ?? {}, (id, { label, kind, at, height }) => ({
    id,
    label,
    kind,
    at: pointOf(at),
    heightIn: inCoreUnit(height),
  }));
}

export function underSlabOf(id: string, input: UnderSlabInput): UnderSlab {
  const { label, kind, along, size, depth } = input;
  return {
    id,
    label,
    kind,
    along: along.map(pointOf),
    sizeIn: inCoreUnit(size),
    depthIn: inCoreUnit(depth),
  };
}
