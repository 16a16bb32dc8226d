import { childrenOf } from './paths.ts';
import { checkId, type Finder, textAt } from './problems-found.ts';

/** What is beside each part of a wall: a slab, or earth of a height. */
export function checkWalls(finder: Finder): void {
  const { origins, add } = finder;
  for (const id of childrenOf('heights.walls', origins)) {
    const path = `heights.walls.${id}`;
    checkId(finder, `${path}.beside`, { thing: 'slab', below: 'build.slabs', orWords: ['earth'] });
    const isEarth = textAt(`${path}.beside`, origins) === 'earth';
    const hasGround = origins.has(`${path}.ground`);
    if (isEarth && !hasGround) add(`${path}.beside`, 'earth-without-height', {});
    if (hasGround && !isEarth && origins.has(`${path}.beside`))
      add(`${path}.ground`, 'ground-beside-slab', {});
  }
}
