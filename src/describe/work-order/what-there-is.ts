import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Job, Slab } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';

/** Shorter than it is shown [ft]. */
const NO_LENGTH_FT = 0.05;

/** What a job has, so that the crew ticks no box for what is not there. */
export type WhatThereIs = {
  readonly bags: boolean;
  readonly steel: boolean;
  readonly softStrip: boolean;
  readonly sawnJoints: boolean;
  readonly tooledJoints: boolean;
  /** An edge along the house. */
  readonly house: boolean;
  /** A slab that is broken up or lifted out. */
  readonly oldSlab: boolean;
  readonly onlyBroom: boolean;
};

/** Told from the job where it says so, from the results where it follows. */
export function whatThereIs(job: Job, results: JobResults): WhatThereIs {
  const slabs = Object.values(job.build.slabs);
  return {
    bags: results.concrete.data.supply === 'bags',
    steel: slabs.some(({ reinforcement }) => reinforcement.kind !== 'none'),
    softStrip: num(results.edges.figures.total.isolation) >= NO_LENGTH_FT,
    sawnJoints: Object.values(results.joints.figures.slabs).some(({ sawn }) => num(sawn) >= NO_LENGTH_FT),
    tooledJoints: slabs.some((slab) => hasTooledJoints(slab, results)),
    house: Object.values(results.edges.data.apart).some(({ houseFt }) => houseFt >= NO_LENGTH_FT),
    oldSlab: Object.keys(job.site.existing).length > 0,
    onlyBroom: slabs.every(({ finish }) => finish === 'broom'),
  };
}

/** Whether joints are made in a slab while it is finished. */
export function hasTooledJoints({ id, joints }: Slab, results: JobResults): boolean {
  return (
    joints.cut === 'tooled' &&
    num(thingNamed(results.joints.figures.slabs, id, 'slab').length) >= NO_LENGTH_FT
  );
}
