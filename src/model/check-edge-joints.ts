import { childrenOf } from './paths.ts';
import { type Finder, textAt } from './problems-found.ts';

const SUPPLIER = 'company.suppliers.dowels';
const DRILLING = 'company.production.drill';
/** What stands at an edge of each kind, where the joint does not say. */
const STANDS: Readonly<Record<string, string>> = { house: 'house', stays: 'old-slab' };

/** A joint as written, and what it is joined to. */
type Written = {
  readonly path: string;
  readonly how: string;
  readonly into: string;
  /** What stands at the edge, where that keeps it apart and nobody says what bars go into. */
  readonly apartFrom: string | null;
  readonly edge: string;
};

/** One joint an edge: bars only where nothing is kept apart, and drilled only where that is known to be safe. */
export function checkEdgeJoints(finder: Finder): void {
  const { origins, add } = finder;
  const joints = childrenOf('build.slabs', origins).flatMap((id) => jointsOf(finder, `build.slabs.${id}`));
  for (const joint of joints) checkJoint(finder, joint);
  // Said once, at the first edge that asks for it.
  const barred = joints.filter(hasBars);
  const [first] = barred;
  if (first !== undefined && origins.has('company.suppliers') && !origins.has(SUPPLIER))
    add(`${first.path}.how`, 'no-dowel-supplier', {});
  const drilled = barred.find(({ into }) => into !== 'new-slab');
  if (drilled !== undefined && origins.has('company.production') && !origins.has(DRILLING))
    add(`${drilled.path}.how`, 'no-pace-for-drill', {});
}

function jointsOf({ origins }: Finder, slab: string): readonly Written[] {
  return childrenOf(`${slab}.edge-joints`, origins).map((edge) => {
    const path = `${slab}.edge-joints.${edge}`;
    const stands = STANDS[textAt(`${slab}.edges.${edge}`, origins) ?? ''] ?? null;
    const said = textAt(`${path}.into`, origins);
    const how = textAt(`${path}.how`, origins) ?? '';
    const apartFrom = how === 'tied' && said === null ? stands : null;
    return { path, how, into: said ?? stands ?? 'new-slab', apartFrom, edge };
  });
}

function hasBars({ how }: Written): boolean {
  return how === 'dowelled' || how === 'tied';
}

function checkJoint(finder: Finder, joint: Written): void {
  const { origins, add } = finder;
  const { path, how, into, apartFrom, edge } = joint;
  if (into === 'public' && (hasBars(joint) || how === 'keyed') && !origins.has(`${path}.detail`))
    add(`${path}.into`, 'public-without-detail', {});
  if (apartFrom !== null) add(`${path}.how`, 'tied-across-isolated', { edge, stands: apartFrom });
  else if (hasBars(joint) && into !== 'new-slab') checkTendons(finder, path, into);
}

/** Slabs that often have tendons: nothing is drilled into them until somebody knows. */
const MAY_HAVE_TENDONS: readonly string[] = ['garage', 'house'];

/** A tendon that is cut can kill, and the slab has lost its strength. */
function checkTendons({ origins, add }: Finder, path: string, into: string): void {
  const said = textAt(`${path}.post-tensioned`, origins);
  if (said === 'yes') add(`${path}.post-tensioned`, 'drill-into-tendons', {});
  if (!MAY_HAVE_TENDONS.includes(into)) return;
  if (said === null) add(`${path}.how`, 'tendons-not-ruled-out', { into });
  else if (said === 'no' && !origins.has(`${path}.known-by`))
    add(`${path}.post-tensioned`, 'tendons-known-by', {});
}
