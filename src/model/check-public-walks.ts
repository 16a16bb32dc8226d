import { childrenOf } from './paths.ts';
import { checkId, type Finder, idAt, textAt } from './problems-found.ts';

const WALKS = 'heights.public-walks';
const POINTS = 'heights.points';
const ENDS = ['left', 'right'];

/** What public walks name: a slab, and points of the heights that fit what is said of them. */
export function checkPublicWalks(finder: Finder): void {
  for (const id of childrenOf(WALKS, finder.origins)) {
    const path = `${WALKS}.${id}`;
    checkId(finder, `${path}.slab`, { thing: 'slab', below: 'build.slabs' });
    for (const end of ENDS) checkEnd(finder, `${path}.${end}`);
    checkEndsApart(finder, path);
    checkPanel(finder, path);
  }
}

function checkEnd(finder: Finder, path: string): void {
  const { origins, add } = finder;
  for (const key of ['now', 'up'])
    checkId(finder, `${path}.${key}`, { thing: 'level-point', below: POINTS, mayBeNone: true });
  const kindOf = (key: string) => textAt(`${POINTS}.${idAt(`${path}.${key}`, origins)}.kind`, origins);
  const nowKind = kindOf('now');
  if (nowKind === 'finish' || nowKind === 'existing')
    add(`${path}.now`, 'public-point-not-fixed', { kind: nowKind });
  if (kindOf('up') === 'existing') add(`${path}.up`, 'slab-down-from-existing', {});
}

/** A joint has two ends, and each of its lines down another start. */
function checkEndsApart({ origins, add }: Finder, path: string): void {
  const at = (key: string) => idAt(`${path}.${key}`, origins);
  const same = [
    ['right.now', 'left.now'],
    ['left.up', 'left.now'],
    ['right.up', 'right.now'],
  ] as const;
  for (const [key, other] of same) {
    const id = at(key);
    if (id !== null && id === at(other)) add(`${path}.${key}`, 'same-point-twice', { id });
  }
}

function checkPanel({ origins, add }: Finder, path: string): void {
  const [hasPrice, hasShare] = ['panel-price', 'owner-share'].map((key) => origins.has(`${path}.${key}`));
  if (hasPrice && !hasShare) add(`${path}.panel-price`, 'panel-price-without-share', {});
  if (hasShare && !hasPrice) add(`${path}.owner-share`, 'owner-share-without-price', {});
}
