import type { Tree, Trees } from './trees.ts';

type TreeMap = { readonly [key: string]: Tree };

/** What stays in every part: a slab of each use that most values speak of, and something to haul of each kind. */
const ALWAYS = ['drive', 'walk', 'old-drive', 'old-court', 'brick-edge', 'old-seat'];

/**
 * The full job with few of its slabs and of what is there: those that stay in every part, those
 * named, and what goes where one of these comes. Whatever names a thing that is gone goes too, and
 * the points of its heights and flights at it. All else that a job can say is still said. To calculate the full job
 * takes four times as long, so what a part can show is looked for there.
 *
 * @param named Words of which some are ids of things or of their points; the others are passed over.
 */
export function partOfFull(trees: Trees, named: readonly string[]): Trees {
  const { build, site, heights } = trees.job as Readonly<Record<string, TreeMap>>;
  const things = [...idsIn(build?.['slabs']), ...idsIn(site?.['existing'])];
  const kept = [...ALWAYS, ...things.filter((id) => named.some((word) => isOf(id, word)))];
  const goes = things.filter((id) => !kept.includes(id) && !kept.includes(id.replace(/^old-/, '')));
  const namedFor = [...idsIn(heights?.['points']), ...idsIn(site?.['flights'])].filter((name) =>
    goes.some((id) => isOf(id, name)),
  );
  return { ...trees, job: without(trees.job, new Set([...goes, ...namedFor])) };
}

/** Points and flights are named for the thing they lie on: `pad-3` and `wedge-flight`. */
function isOf(id: string, word: string): boolean {
  return word === id || word.startsWith(`${id}-`);
}

function idsIn(things: Tree | undefined): readonly string[] {
  return Object.keys((things ?? {}) as TreeMap);
}

/** The tree without what is called by, or directly names, one of the ids. */
function without(tree: Tree, gone: ReadonlySet<string>): Tree {
  if (typeof tree === 'string') return tree;
  if (isList(tree)) return tree.filter((item) => !namesOne(item, gone)).map((item) => without(item, gone));
  return Object.fromEntries(
    Object.entries(tree)
      .filter(([key, child]) => !gone.has(key) && !namesOne(child, gone))
      .map(([key, child]) => [key, without(child, gone)]),
  );
}

function namesOne(tree: Tree, gone: ReadonlySet<string>): boolean {
  if (typeof tree === 'string' || isList(tree)) return false;
  return Object.values(tree).some((child) => typeof child === 'string' && gone.has(child));
}

function isList(tree: Tree): tree is readonly Tree[] {
  return Array.isArray(tree);
}
