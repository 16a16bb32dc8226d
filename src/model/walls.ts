import type { WallPart } from '../calculate/job.ts';
import type { HeightsSection } from '../read/index.ts';
import { inCoreUnit, inCoreUnitOrNull, mapThings } from './quantity.ts';
import { pointOf } from './shape-base.ts';

type WallInput = NonNullable<HeightsSection['walls']>[string];

/** None where the job says nothing of heights. */
export function wallsOf(input: HeightsSection | undefined): Readonly<Record<string, WallPart>> {
  return mapThings(input?.walls ?? {}, (id, part) => ({
    id,
    label: part.label,
    kind: part.kind,
    at: pointOf(part.at),
    heightIn: inCoreUnit(part.height),
    beside: besideOf(part),
    leastIn: inCoreUnitOrNull(part.least),
  }));
}

/** @throws {RangeError} If it is beside earth of no height, which the checks refuse. */
function besideOf({ beside, ground }: WallInput): WallPart['beside'] {
  if (beside !== 'earth') return { kind: 'slab', id: beside };
  if (ground === undefined) throw new RangeError('a part of a wall beside earth of no height');
  return { kind: 'earth', heightIn: inCoreUnit(ground) };
}
