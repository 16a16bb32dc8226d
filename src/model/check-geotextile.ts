import { childrenOf } from './paths.ts';
import { type Finder, textAt } from './problems-found.ts';

const SUPPLIER = 'company.suppliers.geotextile';

/** Fabric is bought somewhere: said once, at the first slab that has it or edit that brings it. */
export function checkGeotextile(finder: Finder): void {
  const { origins, add } = finder;
  if (!origins.has('company.suppliers') || origins.has(SUPPLIER)) return;
  const slabs = childrenOf('build.slabs', origins)
    .map((id) => `build.slabs.${id}.geotextile`)
    .filter((path) => textAt(path, origins) === 'yes');
  const [first] = [...slabs, ...editsOf(finder)];
  if (first !== undefined) add(first, 'no-geotextile-supplier', {});
}

function editsOf({ origins }: Finder): readonly string[] {
  return childrenOf('price.hidden', origins)
    .map((id) => `price.hidden.${id}.edits`)
    .flatMap((edits) => childrenOf(edits, origins).map((index) => `${edits}.${index}.geotextile`))
    .filter((path) => origins.has(path));
}
