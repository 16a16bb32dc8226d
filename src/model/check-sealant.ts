import { childrenOf } from './paths.ts';
import { type Finder, textAt } from './problems-found.ts';

/** Sealant is bought somewhere: said once, at the first slab whose joints are sealed. */
export function checkSealant({ origins, add }: Finder): void {
  if (!origins.has('company.suppliers') || origins.has('company.suppliers.sundries.sealant')) return;
  const first = childrenOf('build.slabs', origins)
    .map((id) => `build.slabs.${id}.joints.sealed`)
    .find((path) => textAt(path, origins) === 'yes');
  if (first !== undefined) add(first, 'no-sealant', {});
}
