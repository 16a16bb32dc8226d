import { basename, join } from 'node:path';
import { type LocatedProblem, type Origin, type Origins, problemAt } from '../problems/index.ts';
import { type CheckedSection, checkSection } from './check-section.ts';
import { isJobName } from './job-names.ts';
import { addOrigins } from './origins.ts';
import { missingSections, readFolder, unknownSections } from './read-folder.ts';
import { JOB_SECTIONS, type JobSections, OVERRIDES, type Section } from './schema/sections.ts';
import type { MapNode, TreeNode } from './tree.ts';

/** What a job folder says, checked; a section is left out where it could not be read. */
export type JobInput = {
  readonly id: string;
  readonly folder: string;
  readonly files: readonly string[];
  readonly sections: Partial<JobSections>;
  /** The company's keys as this job has them; they are checked where they meet the company's own. */
  readonly overrides: MapNode | null;
  readonly origins: Origins;
  readonly problems: readonly LocatedProblem[];
};

const MAIN_FILE = 'job.yaml';
const JOB_KEYS: readonly string[] = [...Object.keys(JOB_SECTIONS), OVERRIDES];

/**
 * Reads a job folder.
 *
 * @param folder `jobs/maple-court`, as it is to stand in messages; its last name is the job's id.
 */
export function readJob(folder: string): JobInput {
  const id = basename(folder);
  if (!isJobName(id)) {
    const problems = [problemAt({ file: folder, line: null }, 'folder-name', { name: id })];
    return { id, folder, files: [], sections: {}, overrides: null, origins: new Map(), problems };
  }
  const read = readFolder(folder, { from: 'job', sections: JOB_KEYS, mainFile: MAIN_FILE });
  const { root } = read;
  const problems = [...read.problems, ...unknownSections(root.entries, JOB_KEYS, 'job-file')];
  if (read.isWhole) {
    const main = join(folder, MAIN_FILE);
    const file = read.files.includes(main) ? main : folder;
    const wanted = { required: requiredOf(JOB_SECTIONS), known: JOB_KEYS };
    problems.push(...missingSections(root, wanted, { file, ownFiles: true }));
  }
  const checked = checkSections(root, JOB_SECTIONS);
  const overrides = root.entries.get(OVERRIDES)?.node;
  if (overrides !== undefined && overrides.kind !== 'map' && !overrides.isBroken) {
    problems.push(problemAt(overrides.spot, 'keys-expected', { known: [] }));
  }
  return {
    id,
    folder,
    files: read.files,
    sections: checked.sections,
    overrides: overrides?.kind === 'map' ? overrides : null,
    origins: originsOf(root, Object.keys(JOB_SECTIONS), (section) => section),
    problems: [...problems, ...checked.problems],
  };
}

export function requiredOf(sections: Readonly<Record<string, Section>>): readonly string[] {
  return Object.entries(sections).flatMap(([name, { isRequired }]) => (isRequired ? [name] : []));
}

/** Every section that is there against its schema. */
export function checkSections(
  root: MapNode,
  sections: Readonly<Record<string, Section>>,
): { sections: Record<string, unknown>; problems: LocatedProblem[] } {
  const values: Record<string, unknown> = {};
  const problems: LocatedProblem[] = [];
  for (const [name, { schema }] of Object.entries(sections)) {
    const node = root.entries.get(name)?.node;
    if (node === undefined || node.isBroken) continue;
    const checked = checkedSection(node, schema);
    if (checked.value !== undefined) values[name] = checked.value;
    problems.push(...checked.problems);
  }
  return { sections: values, problems };
}

const checkedNodes = new WeakMap<
  TreeNode,
  { readonly by: Section['schema']; readonly checked: CheckedSection }
>();

/** A section that was not read anew is not checked anew. */
function checkedSection(node: TreeNode, by: Section['schema']): CheckedSection {
  const last = checkedNodes.get(node);
  if (last?.by === by) return last.checked;
  const checked = checkSection(node, by());
  checkedNodes.set(node, { by, checked });
  return checked;
}

/** Origins of the known sections, each under its own path. */
export function originsOf(
  root: MapNode,
  names: readonly string[],
  pathOfSection: (name: string) => string,
): Origins {
  const origins = new Map<string, Origin>();
  for (const name of names) {
    const node: TreeNode | undefined = root.entries.get(name)?.node;
    if (node !== undefined) addOrigins(origins, pathOfSection(name), node);
  }
  return origins;
}
