import type { SchemaLeaf } from './schema-leaves.ts';
import { type Leaf, subtree, type Tree, type Trees } from './trees.ts';

/** Where the things stand that a key names by their id. */
const NAMED: Readonly<Record<string, readonly [keyof Trees, ...string[]]>> = {
  machine: ['company', 'machines'],
  operator: ['company', 'labor', 'people'],
  crew: ['company', 'labor', 'people'],
  'chute-reaches': ['job', 'build', 'slabs'],
  trailers: ['company', 'trailers'],
  board: ['company', 'forms', 'boards'],
  'curve-form': ['company', 'forms', 'strips'],
  'thicker-existing': ['job', 'site', 'existing'],
  'steel-found': ['job', 'site', 'existing'],
  'more-base': ['job', 'build', 'slabs'],
  geotextile: ['job', 'build', 'slabs'],
};

/** `$1,450`, `3 1/2`, `1/4`, `0.6`: the number a text starts with, its $ apart. */
const LEADING_NUMBER = /^(\$?)(?:(\d[\d,]*(?:\.\d+)?)(?: (\d+)\/(\d+))?(?!\/|[\d-])|(\d+)\/(\d+)(?!\/))/;

/**
 * Another valid value of the same kind: the next of the words or ids that may stand there, yes for
 * no, a date a week later, a number a fifth larger (whole numbers stay whole), a longer text.
 */
export function changedText(leaf: SchemaLeaf, { path, text }: Leaf, trees: Trees): string {
  if (leaf.words !== null) return nextOf(leaf.words, text);
  if (text === 'yes' || text === 'no') return text === 'yes' ? 'no' : 'yes';
  const key = path.findLast((step) => !/^\d+$/.test(step)) ?? '';
  const things = NAMED[key];
  if (things !== undefined)
    return nextOf(
      idsAt(things, trees).filter((id) => !isTaken(id, path, trees)),
      text,
    );
  if (/^\d{4}-\d\d-\d\d$/.test(text)) return weekLater(text);
  return LEADING_NUMBER.test(text) ? text.replace(LEADING_NUMBER, larger) : `${text} and more`;
}

function nextOf(words: readonly string[], text: string): string {
  const next = words[(words.indexOf(text) + 1) % words.length];
  if (next === undefined || next === text) throw new RangeError(`there is nothing else than ${text}`);
  return next;
}

function idsAt([of, ...path]: readonly [keyof Trees, ...string[]], trees: Trees): readonly string[] {
  return Object.keys(subtree(trees[of], path) as Record<string, Tree>);
}

/** A list of people or trailers names each once. */
function isTaken(id: string, path: Leaf['path'], trees: Trees): boolean {
  if (path[0] !== 'plan') return false;
  const list = subtree(trees.job, path.slice(0, -1)) as readonly string[];
  return list.some((other, index) => other === id && String(index) !== path.at(-1));
}

function weekLater(on: string): string {
  return new Date(Date.parse(`${on}T00:00:00Z`) + 7 * 24 * 3600 * 1000).toISOString().slice(0, 10);
}

function larger(_: string, dollar: string, whole?: string, n?: string, d?: string, n0?: string, d0?: string) {
  if (whole === undefined) return `${dollar}${round6((Number(n0) / Number(d0)) * 1.2)}`;
  const value = Number(whole.replaceAll(',', '')) + (n === undefined ? 0 : Number(n) / Number(d));
  if (value === 0) return `${dollar}1`;
  if (dollar !== '') return `${dollar}${(value * 1.2).toFixed(2)}`;
  return String(Number.isInteger(value) ? Math.ceil(value * 1.2) : round6(value * 1.2));
}

function round6(value: number): number {
  return Number(value.toFixed(6));
}
