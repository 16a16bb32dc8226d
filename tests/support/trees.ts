import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';

/** A folder of YAML as it is written: every value still its text. */
export type Tree = string | readonly Tree[] | { readonly [key: string]: Tree };
export type TreePath = readonly string[];

/** A job and its company, as written. */
export type Trees = { readonly company: Tree; readonly job: Tree };

export type Leaf = { readonly path: TreePath; readonly text: string };

/** All sections of a folder's files in one map. */
export function readTree(folder: string): Tree {
  const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
  return Object.assign(
    {},
    ...files
      .toSorted()
      .map((name) => parse(readFileSync(join(folder, name), 'utf8'), { schema: 'failsafe' })),
  );
}

export function readTrees(jobsDir: string, id: string): Trees {
  return { company: readTree(join(jobsDir, 'company')), job: readTree(join(jobsDir, id)) };
}

/** Every value of a tree with where it stands; the numbers of a list are steps too. */
export function leavesOf(tree: Tree, path: TreePath = []): readonly Leaf[] {
  if (typeof tree === 'string') return [{ path, text: tree }];
  return Object.entries(tree).flatMap(([key, child]: [string, Tree]) => leavesOf(child, [...path, key]));
}

/** The tree with another text at a path; maps on the way are made where they are not there. */
export function withLeaf(tree: Tree, path: TreePath, text: string): Tree {
  const [key, ...rest] = path;
  if (key === undefined) return text;
  if (Array.isArray(tree)) {
    return tree.map((child: Tree, index) => (String(index) === key ? withLeaf(child, rest, text) : child));
  }
  const map = typeof tree === 'string' ? {} : (tree as { readonly [key: string]: Tree });
  return { ...map, [key]: withLeaf(map[key] ?? {}, rest, text) };
}

/** The tree without what stands at a path, which nothing has to. */
export function withoutPath(tree: Tree, [key = '', ...rest]: TreePath): Tree {
  const { [key]: part, ...others } = tree as { readonly [key: string]: Tree };
  return rest.length === 0 || part === undefined ? others : { ...others, [key]: withoutPath(part, rest) };
}

/** What stands at a path. @throws {RangeError} If nothing does. */
export function subtree(tree: Tree, path: TreePath): Tree {
  return path.reduce<Tree>((at, key) => {
    const child = typeof at === 'string' ? undefined : (at as { readonly [key: string]: Tree })[key];
    if (child === undefined) throw new RangeError(`nothing stands at ${path.join('.')}`);
    return child;
  }, tree);
}
