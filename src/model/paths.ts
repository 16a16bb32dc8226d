import type { Origins } from '../problems/index.ts';

/** The names right below a job path, in the order of the files; also of things that could not be read. */
export function childrenOf(path: string, origins: Origins): readonly string[] {
  const prefix = `${path}.`;
  const names = [...origins.keys()].flatMap((key) =>
    key.startsWith(prefix) ? [key.slice(prefix.length)] : [],
  );
  return names.filter((name) => !name.includes('.'));
}
