import type { Finder } from './problems-found.ts';

const LAYERS = ['tile', 'overlay'];

/** What only a flat thing has, and what only a hollow one. */
const WITH_THICKNESS = [
  'thickness-is',
  'thickest',
  'coating',
  'coating-thickness',
  'soil-stuck',
  'cut-outs',
] as const;
const WITH_WALLS = ['footing', 'fill'] as const;

/** What is said of something that goes, and does not go together. */
export function checkExisting(finder: Finder, path: string): void {
  const { origins, add } = finder;
  const [hasThickness, hasWalls] = [origins.has(`${path}.thickness`), origins.has(`${path}.walls`)];
  if (hasThickness && hasWalls) return add(`${path}.walls`, 'thickness-and-walls', {});
  if (hasWalls) return checkHollow(finder, path);
  if (!hasThickness) add(path, 'thickness-or-walls', {});
  for (const key of WITH_WALLS) {
    if (origins.has(`${path}.${key}`)) add(`${path}.${key}`, 'only-with-walls', { key });
  }
  if (hasThickness) checkFlat(finder, path);
}

function checkHollow({ origins, add }: Finder, path: string): void {
  for (const key of WITH_THICKNESS) {
    if (origins.has(`${path}.${key}`)) add(`${path}.${key}`, 'only-with-thickness', { key });
  }
  const is = (key: string, word: string) => wordAt({ origins }, `${path}.${key}`) === word;
  if (is('material', 'asphalt')) add(`${path}.material`, 'walls-of-asphalt', {});
  if (is('break-out', 'saw-and-lift')) add(`${path}.break-out`, 'walls-not-sawn', {});
}

function checkFlat(finder: Finder, path: string): void {
  const { origins, add } = finder;
  if (!origins.has(`${path}.thickness-is`))
    add(path, 'missing-key', { key: 'thickness-is', thing: 'existing', example: 'measured' });
  if (origins.has(`${path}.thickest`) && wordAt(finder, `${path}.thickness-is`) === 'measured')
    add(`${path}.thickest`, 'thickest-of-measured', {});
  checkCoating(finder, path);
}

function checkCoating(finder: Finder, path: string): void {
  const { origins, add } = finder;
  const coating = wordAt(finder, `${path}.coating`);
  const isLayer = coating !== null && LAYERS.includes(coating);
  const hasThickness = origins.has(`${path}.coating-thickness`);
  const material = wordAt(finder, `${path}.material`);
  if (coating !== null && material !== null && material !== 'concrete')
    add(`${path}.coating`, 'coating-not-on-concrete', { material });
  if (isLayer && !hasThickness) add(`${path}.coating`, 'coating-without-thickness', { coating });
  if (hasThickness && !isLayer) add(`${path}.coating-thickness`, 'coating-thickness-without-layer', {});
}

/** A word as written, without quotes; null where none stands. */
function wordAt({ origins }: Pick<Finder, 'origins'>, path: string): string | null {
  return origins.get(path)?.text.replace(/^(["'])(.*)\1$/, '$2') ?? null;
}
