import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PROJECT_DIR } from './project.ts';
import type { Leaf, TreePath } from './trees.ts';

/** A value a schema knows: `*` on its path is any id or any place in a list. */
export type SchemaLeaf = {
  readonly path: TreePath;
  /** The path in one text, `labor.people.*.wage`. */
  readonly name: string;
  readonly words: readonly string[] | null;
  readonly description: string;
};

type Node = { readonly [key: string]: unknown };

export function schemaLeaves(schema: 'company' | 'job'): readonly SchemaLeaf[] {
  const file = join(PROJECT_DIR, 'src', 'read', 'schema', `${schema}.schema.json`);
  return leavesBelow(JSON.parse(readFileSync(file, 'utf8')) as Node, []);
}

/** @throws {RangeError} If a node is of a form that is not walked, so that no leaf is passed over. */
function leavesBelow(node: Node, path: TreePath): readonly SchemaLeaf[] {
  const { type, enum: words, description } = node;
  if (type === 'object') {
    const fixed = Object.entries((node['properties'] ?? {}) as Record<string, Node>);
    const others = node['additionalProperties'];
    return [
      ...fixed.flatMap(([key, child]) => leavesBelow(child, [...path, key])),
      ...(typeof others === 'object' ? leavesBelow(others as Node, [...path, '*']) : []),
    ];
  }
  if (type === 'array') return leavesBelow(node['items'] as Node, [...path, '*']);
  if (![type].flat().includes('string'))
    throw new RangeError(`cannot walk ${path.join('.')}: ${JSON.stringify(node)}`);
  return [
    {
      path,
      name: path.join('.'),
      words: (words as string[] | undefined) ?? null,
      description: typeof description === 'string' ? description : '',
    },
  ];
}

/** The values of a tree that a leaf of its schema stands for. */
export function instancesOf(leaf: SchemaLeaf, leaves: readonly Leaf[]): readonly Leaf[] {
  return leaves.filter(
    ({ path }) =>
      path.length === leaf.path.length &&
      leaf.path.every((step, index) => step === '*' || step === path[index]),
  );
}
