import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { type LocatedProblem, nearestName, problemAt, shortened } from '../problems/index.ts';
import { loadFile, reasonOf } from './load-file.ts';
import type { MapEntry, MapNode } from './tree.ts';
import { type ReadTree, readTree } from './yaml-tree.ts';

/** Which files a folder may hold, and which sections stand in them. */
export type FolderPlan = {
  readonly from: 'job' | 'company';
  /** Every name that a section or a file may have. */
  readonly sections: readonly string[];
  /** The file that may hold all sections, with every other in a file of its own name; null: any file any section. */
  readonly mainFile: string | null;
};

export type ReadFolder = {
  readonly sections: ReadonlyMap<string, MapEntry>;
  /** The whole of the folder as one map, for keys that belong nowhere. */
  readonly root: MapNode;
  /** Whether every file could be read, so that a section that is not there is missing. */
  readonly isWhole: boolean;
  readonly files: readonly string[];
  readonly problems: readonly LocatedProblem[];
};

/** All sections of a folder, each with its place, and all that is wrong with the files themselves. */
export function readFolder(folder: string, plan: FolderPlan): ReadFolder {
  const problems: LocatedProblem[] = [];
  const sections = new Map<string, MapEntry>();
  let isWhole = true;
  const names = namesIn(folder, problems);
  const files: string[] = [];
  for (const name of names) {
    const file = join(folder, name);
    const strange = strangeFile(name, file, plan);
    if (strange !== null) {
      // It may hold what is missing elsewhere.
      isWhole = false;
      problems.push(strange);
      continue;
    }
    files.push(file);
    const entries = entriesOf(file, plan, problems);
    if (entries === null) isWhole = false;
    for (const [section, entry] of entries ?? []) {
      const problem = sectionProblem(section, entry, { name, plan, sections });
      if (problem !== null) problems.push(problem);
      if (!sections.has(section)) sections.set(section, entry);
    }
  }
  if (files.length === 0 && problems.length === 0)
    problems.push(problemAt({ file: folder, line: null }, 'no-yaml', {}));
  return {
    sections,
    root: rootOf(folder, sections, plan),
    isWhole: isWhole && files.length > 0,
    files,
    problems,
  };
}

function namesIn(folder: string, problems: LocatedProblem[]): readonly string[] {
  try {
    const entries = readdirSync(folder, { withFileTypes: true });
    for (const entry of entries) {
      const isRead = !entry.isDirectory() || !holdsYaml(join(folder, entry.name));
      if (!isRead)
        problems.push(
          problemAt({ file: join(folder, entry.name), line: null }, 'folder-not-read', {
            name: shortened(entry.name, 60),
          }),
        );
    }
    return entries
      .filter((entry) => !entry.isDirectory() && isYaml(entry.name))
      .map(({ name }) => name)
      .sort();
  } catch (error) {
    const whole = { file: folder, line: null };
    const code = reasonOf(error);
    problems.push(
      code === 'ENOENT' || code === 'ENOTDIR'
        ? problemAt(whole, 'no-folder', {})
        : problemAt(whole, 'unreadable-file', { reason: code }),
    );
    return [];
  }
}

function isYaml(name: string): boolean {
  return /\.ya?ml$/i.test(name) && !name.startsWith('.');
}

function holdsYaml(folder: string): boolean {
  try {
    return readdirSync(folder).some(isYaml);
  } catch {
    // A folder that cannot be looked into is not ours to complain about: nothing in it is used.
    return false;
  }
}

/** A problem for a file that nothing reads, or null. */
function strangeFile(name: string, file: string, plan: FolderPlan): LocatedProblem | null {
  const known = plan.sections.map((section) => `${section}.yaml`);
  if (plan.mainFile === null ? name.endsWith('.yaml') : known.includes(name)) return null;
  const renamed = name.replace(/\.ya?ml$/i, '.yaml');
  const nearest = plan.mainFile === null ? renamed : nearestName(renamed, known);
  return problemAt({ file, line: null }, 'other-file', { name: shortened(name, 60), nearest, known });
}

/** The entries at the top of a file; null if they cannot be told. */
function entriesOf(
  file: string,
  plan: FolderPlan,
  problems: LocatedProblem[],
): ReadonlyMap<string, MapEntry> | null {
  const loaded = loadFile(file);
  if ('problem' in loaded) {
    problems.push(loaded.problem);
    return null;
  }
  const { root, problems: found } = treeOf(loaded.text, file, plan.from);
  problems.push(...found);
  if (root === null) return null;
  if (root.kind === 'map') return root.entries;
  if (!root.isBroken) problems.push(problemAt(root.spot, 'keys-expected', { known: plan.sections }));
  return null;
}

/** More than a job and its company have; the oldest goes first. */
const KEPT_FILES = 50;
type KeptTree = { readonly text: string; readonly from: FolderPlan['from']; readonly tree: ReadTree };
const lastTrees = new Map<string, KeptTree>();

/** A file that says what it said when it was read last is not taken apart again: pages are served while one is edited. */
function treeOf(text: string, file: string, from: FolderPlan['from']): ReadTree {
  const last = lastTrees.get(file);
  if (last !== undefined && last.text === text && last.from === from) return last.tree;
  const tree = readTree(text, file, from);
  const [oldest] = lastTrees.keys();
  if (lastTrees.size >= KEPT_FILES && oldest !== undefined) lastTrees.delete(oldest);
  lastTrees.set(file, { text, from, tree });
  return tree;
}

function sectionProblem(
  section: string,
  entry: MapEntry,
  within: { name: string; plan: FolderPlan; sections: ReadonlyMap<string, MapEntry> },
): LocatedProblem | null {
  const { name, plan, sections } = within;
  const ownFile = `${section}.yaml`;
  const isElsewhere =
    plan.mainFile !== null && name !== plan.mainFile && name !== ownFile && plan.sections.includes(section);
  if (isElsewhere) return problemAt(entry.keySpot, 'section-elsewhere', { section, file: ownFile });
  const first = sections.get(section);
  if (first === undefined) return null;
  return problemAt(entry.keySpot, 'section-twice', {
    section: shortened(section, 60),
    where: `${first.keySpot.file}:${first.keySpot.line}`,
  });
}

function rootOf(folder: string, entries: ReadonlyMap<string, MapEntry>, plan: FolderPlan): MapNode {
  const spot = {
    file: plan.mainFile === null ? folder : join(folder, plan.mainFile),
    line: 1,
    column: 1,
    length: 1,
  };
  return { kind: 'map', entries, spot, written: '', from: plan.from, isBroken: false };
}

/** A key of the file that is no section. */
export function unknownSections(
  entries: ReadonlyMap<string, MapEntry>,
  known: readonly string[],
  thing: 'job-file' | 'company-file' | 'overrides',
): LocatedProblem[] {
  return [...entries]
    .filter(([name]) => !known.includes(name))
    .map(([name, { keySpot }]) =>
      problemAt(keySpot, 'unknown-key', {
        key: shortened(name, 60),
        thing,
        nearest: nearestName(name, known),
        known,
      }),
    );
}

/** A section that should be there and is not, nor under a mistyped name. */
export function missingSections(
  root: MapNode,
  sections: { readonly required: readonly string[]; readonly known: readonly string[] },
  where: { readonly file: string; readonly ownFiles: boolean },
): LocatedProblem[] {
  const meant = [...root.entries.keys()].map((name) => nearestName(name, sections.known));
  return sections.required
    .filter((name) => !root.entries.has(name) && !meant.includes(name))
    .map((section) => {
      const file = where.ownFiles ? `${section}.yaml` : null;
      return problemAt({ file: where.file, line: null }, 'missing-section', { section, file });
    });
}
