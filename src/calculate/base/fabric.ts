import type { CoreProblem } from '../../problems/index.ts';
import type { Figure } from '../figure.ts';
import type { Job, Suppliers } from '../job.ts';
import { thingNamed } from '../parts.ts';
import {
  type GeotextileFigures,
  geotextileFigures,
  rollLapProblem,
  withoutBaseProblem,
} from './geotextile-figures.ts';

type Areas = Readonly<Record<string, { readonly area: Figure }>>;

/**
 * The fabric of a job: null where no slab has any, or where something is wrong with it.
 *
 * @param input.bases Of slabs that get a base.
 * @throws {RangeError} If a slab has fabric and nobody sells it, which is refused where files are read.
 */
export function fabricOf(input: {
  readonly slabs: Job['build']['slabs'];
  readonly bases: Areas;
  readonly shapes: Readonly<Record<string, { readonly perimeter: Figure }>>;
  readonly supplier: Suppliers['geotextile'];
}): { readonly figures: GeotextileFigures | null; readonly problems: readonly CoreProblem[] } {
  const { bases, shapes, supplier } = input;
  const asked = Object.values(input.slabs).filter(({ geotextile }) => geotextile);
  if (asked.length === 0) return { figures: null, problems: [] };
  if (supplier === null) throw new RangeError('a slab has fabric, and nobody sells it');
  const tooLong = rollLapProblem(supplier);
  const bare = asked.filter(({ baseIn }) => baseIn === 0);
  const problems = [...(tooLong === null ? [] : [tooLong]), ...bare.map(withoutBaseProblem)];
  if (problems.length > 0) return { figures: null, problems };
  const boxes = asked.map((slab) => ({
    slab,
    baseArea: thingNamed(bases, slab.id, 'base').area,
    perimeter: thingNamed(shapes, slab.id, 'outline').perimeter,
  }));
  return { figures: geotextileFigures(boxes, supplier), problems };
}
