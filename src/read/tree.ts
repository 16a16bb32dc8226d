import type { SourceSpot } from '../problems/index.ts';

type Anywhere = {
  /** What to underline: the value itself, or the key above a value of several lines. */
  readonly spot: SourceSpot;
  /** As it stands in the file; for a value of several lines its key. */
  readonly written: string;
  readonly from: 'job' | 'company';
  /** Something is wrong here that has been said already; nothing more follows from this value. */
  readonly isBroken: boolean;
};
type TextNode = Anywhere & { readonly kind: 'text'; readonly text: string };
type ListNode = Anywhere & { readonly kind: 'list'; readonly items: readonly TreeNode[] };
export type MapEntry = { readonly keySpot: SourceSpot; readonly node: TreeNode };
export type MapNode = Anywhere & { readonly kind: 'map'; readonly entries: ReadonlyMap<string, MapEntry> };

/** A value of a YAML file with its place: every scalar as text, just as it was written. */
export type TreeNode = TextNode | ListNode | MapNode;

export type TreePath = readonly (string | number)[];

/** The value at a path, or undefined. */
export function nodeAt(root: TreeNode, path: TreePath): TreeNode | undefined {
  return path.reduce<TreeNode | undefined>((node, step) => childOf(node, step), root);
}

/** The spot of a key, or of the map it should stand in. */
export function keySpotAt(root: TreeNode, path: TreePath): SourceSpot {
  const parent = nodeAt(root, path.slice(0, -1));
  if (parent?.kind !== 'map') return nearestNode(root, path).spot;
  return parent.entries.get(String(path.at(-1)))?.keySpot ?? parent.spot;
}

/** The value at a path, or the last one on the way there. */
export function nearestNode(root: TreeNode, path: TreePath): TreeNode {
  let nearest = root;
  for (const step of path) {
    const next = childOf(nearest, step);
    if (next === undefined) return nearest;
    nearest = next;
  }
  return nearest;
}

/** Whether a problem was reported already on the way to a path. */
export function isBrokenAt(root: TreeNode, path: TreePath): boolean {
  return path.reduce<{ node: TreeNode | undefined; broken: boolean }>(
    ({ node, broken }, step) => {
      const next = childOf(node, step);
      return { node: next, broken: broken || next?.isBroken === true };
    },
    { node: root, broken: root.isBroken },
  ).broken;
}

function childOf(node: TreeNode | undefined, step: string | number): TreeNode | undefined {
  if (node?.kind === 'map') return node.entries.get(String(step))?.node;
  return node?.kind === 'list' ? node.items[Number(step)] : undefined;
}

/** Plain texts, lists and records without a prototype, for the schema. */
export function plainValue(node: TreeNode): unknown {
  if (node.kind === 'text') return node.text;
  if (node.kind === 'list') return node.items.map(plainValue);
  const record: Record<string, unknown> = Object.create(null);
  for (const [key, entry] of node.entries) record[key] = plainValue(entry.node);
  return record;
}

/** Maps merge by key, everything else is replaced. */
export function mergeTrees(below: TreeNode, above: TreeNode): TreeNode {
  if (below.kind !== 'map' || above.kind !== 'map') return above;
  const entries = new Map(below.entries);
  for (const [key, entry] of above.entries) {
    const old = entries.get(key);
    entries.set(key, old === undefined ? entry : { ...entry, node: mergeTrees(old.node, entry.node) });
  }
  return { ...below, entries, isBroken: below.isBroken || above.isBroken };
}
