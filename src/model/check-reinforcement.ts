import { type Finder, textAt } from './problems-found.ts';

const MESH_SUPPLIER = 'company.suppliers.mesh';
const GLASS_FIBRE = 'company.suppliers.glass-fibre-bars';
const ROLL_KEYS = ['roll-length', 'roll-width', 'roll-price'] as const;

/** Mesh or bars, each with its own keys, and somebody who sells them. */
export function checkReinforcement(finder: Finder, path: string): void {
  const { origins, add } = finder;
  if (!origins.has(path)) return;
  const has = (key: string) => origins.has(`${path}.${key}`);
  if (has('mesh') === has('bars')) {
    add(path, 'reinforcement-unclear', {});
    return;
  }
  if (has('bars')) checkBars(finder, path);
  else checkMesh(finder, path);
}

function checkBars({ origins, add }: Finder, path: string): void {
  if (!origins.has(`${path}.spacing`)) add(path, 'bars-without-spacing', {});
  if (origins.has(`${path}.from`)) add(`${path}.from`, 'only-with-mesh', { key: 'from' });
  const isGlassFibre = textAt(`${path}.material`, origins) === 'glass-fibre';
  if (isGlassFibre && origins.has('company.suppliers') && !origins.has(GLASS_FIBRE))
    add(`${path}.material`, 'no-glass-fibre-supplier', {});
}

function checkMesh({ origins, add }: Finder, path: string): void {
  if (origins.has(`${path}.spacing`)) add(`${path}.spacing`, 'spacing-without-bars', {});
  for (const key of ['spacing-across', 'material', 'corners']) {
    if (origins.has(`${path}.${key}`)) add(`${path}.${key}`, 'only-with-bars', { key });
  }
  const fromRolls = textAt(`${path}.from`, origins) === 'rolls';
  const hasRolls = ROLL_KEYS.every((key) => origins.has(`${MESH_SUPPLIER}.${key}`));
  if (fromRolls && origins.has(MESH_SUPPLIER) && !hasRolls) add(`${path}.from`, 'no-mesh-rolls', {});
}
