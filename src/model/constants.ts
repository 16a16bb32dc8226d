import type { Origin, Origins } from '../problems/index.ts';
import { Usd } from '../units/index.ts';
import { childrenOf } from './paths.ts';

/**
 * What holds where a job or a company says nothing. Constants alone: whatever follows from
 * another value is a figure of the core, so that an edit cannot leave a stale value behind.
 */
export const SHIPPED = {
  revision: 1,
  stage: 'bid',
  units: 'us',
  ruleSets: ['general'],
  material: 'concrete',
  steel: 'none',
  reinforcement: { kind: 'none' },
  minimumUsd: new Usd(0),
} as const;

/** The origins of the constants that a job takes, by job path. */
export function shippedOrigins(origins: Origins): ReadonlyMap<string, Origin> {
  const shipped = new Map<string, Origin>();
  const add = (path: string, text: string) => {
    if (!origins.has(path)) shipped.set(path, { spot: null, text, from: 'shipped' });
  };
  add('job.revision', String(SHIPPED.revision));
  add('job.stage', SHIPPED.stage);
  add('job.units', SHIPPED.units);
  add('job.rule-sets', `[${SHIPPED.ruleSets.join(', ')}]`);
  for (const id of childrenOf('site.existing', origins)) {
    add(`site.existing.${id}.material`, SHIPPED.material);
    add(`site.existing.${id}.steel`, SHIPPED.steel);
  }
  for (const id of childrenOf('build.slabs', origins))
    add(`build.slabs.${id}.reinforcement`, SHIPPED.reinforcement.kind);
  for (const id of childrenOf('company.places', origins)) add(`company.places.${id}.minimum`, '$0');
  return shipped;
}
