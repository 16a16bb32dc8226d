import type { Job } from './job.ts';

/**
 * A change to a job, as data of the core. Options, hidden conditions and change orders are all
 * a name and a list of these.
 */
export type JobEdit =
  | { readonly edit: 'thicker-existing'; readonly of: string; readonly byIn: number }
  | { readonly edit: 'steel-found'; readonly of: string; readonly steel: 'mesh' | 'bars' }
  /** As much deeper dug: the digging, the hauling of that soil and the base follow from it. */
  | { readonly edit: 'more-base'; readonly under: string; readonly byIn: number }
  /** Fabric between the ground and the base. */
  | { readonly edit: 'geotextile'; readonly under: string };

/**
 * The job after the edits, in their order. Pure: the job given is untouched.
 *
 * @throws {RangeError} If an edit names a thing that the job does not have (the reader refuses
 *   such a file, so only a programmer can cause it).
 */
export function applyEdits(job: Job, edits: readonly JobEdit[]): Job {
  return edits.reduce(applyEdit, job);
}

function applyEdit(job: Job, edit: JobEdit): Job {
  switch (edit.edit) {
    case 'thicker-existing': {
      const old = named(job.site.existing, edit.of);
      return withExisting(job, {
        ...old,
        thicknessIn: old.thicknessIn + edit.byIn,
        // It has been seen: what was hauled for being unknown is not charged once more.
        thicknessIs: 'measured',
        thickestIn: null,
      });
    }
    case 'steel-found':
      return withExisting(job, { ...named(job.site.existing, edit.of), steel: edit.steel });
    case 'more-base': {
      const slab = named(job.build.slabs, edit.under);
      return withSlab(job, { ...slab, baseIn: slab.baseIn + edit.byIn, digIn: slab.digIn + edit.byIn });
    }
    case 'geotextile':
      return withSlab(job, { ...named(job.build.slabs, edit.under), geotextile: true });
  }
}

function named<T>(things: Readonly<Record<string, T>>, id: string): T {
  const thing = Object.hasOwn(things, id) ? things[id] : undefined;
  if (thing === undefined) throw new RangeError(`no thing called ${id} in this job`);
  return thing;
}

function withSlab(job: Job, changed: Job['build']['slabs'][string]): Job {
  return { ...job, build: { ...job.build, slabs: { ...job.build.slabs, [changed.id]: changed } } };
}

function withExisting(job: Job, changed: Job['site']['existing'][string]): Job {
  return {
    ...job,
    site: { ...job.site, existing: { ...job.site.existing, [changed.id]: changed } },
  };
}
