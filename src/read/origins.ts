import type { Origin } from '../problems/index.ts';
import type { TreeNode } from './tree.ts';

/** Adds the origin of a value and of all that is in it, under its job path. List items count from 0. */
export function addOrigins(origins: Map<string, Origin>, path: string, node: TreeNode): void {
  origins.set(path, { spot: node.spot, text: node.written, from: node.from });
  if (node.kind === 'map') {
    for (const [key, entry] of node.entries) addOrigins(origins, `${path}.${key}`, entry.node);
  } else if (node.kind === 'list') {
    node.items.forEach((item, index) => {
      addOrigins(origins, `${path}.${index}`, item);
    });
  }
}
