import type { Origins } from '../problems/index.ts';

const childrenByOrigins = new WeakMap<Origins, ReadonlyMap<string, readonly string[]>>();

/** The names right below a job path, in the order of the files; also of things that could not be read. */
export function childrenOf(path: string, origins: Origins): readonly string[] {
  const known = childrenByOrigins.get(origins) ?? allChildren(origins);
  childrenByOrigins.set(origins, known);
  return known.get(path) ?? [];
}

/** Every path is looked at once: a job has many things, and each is asked for. */
function allChildren(origins: Origins): ReadonlyMap<string, readonly string[]> {
  const children = new Map<string, string[]>();
  for (const path of origins.keys()) {
    const dot = path.lastIndexOf('.');
    if (dot < 0) continue;
    const parent = path.slice(0, dot);
    const names = children.get(parent);
    if (names === undefined) children.set(parent, [path.slice(dot + 1)]);
    else names.push(path.slice(dot + 1));
  }
  return children;
}
