import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { stringify } from 'yaml';
import { aCalculator, type CalculateJob } from '../../src/calculate/index.ts';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import { showProblems } from '../../src/commands/show-problems.ts';
import { resolveJob } from '../../src/model/index.ts';
import { readCompany, readJob, readRules } from '../../src/read/index.ts';
import type { Tree, Trees } from './trees.ts';

/** A folder outside the project where changed jobs are written and read as a user's would be. */
export type Workbench = {
  /** The job without its results. @throws As `prepare`. */
  readonly resolve: (trees: Trees) => Pick<PreparedJob, 'job' | 'origins'>;
  /** @throws {Error} If the job has a problem; the message is the one a user reads. */
  readonly prepare: (trees: Trees) => PreparedJob;
  readonly remove: () => void;
};

/**
 * Every job gets the same place, every section its own file and every value its own line, so that two jobs
 * which differ in a value differ in nothing else, not even in the lines the calculation sheet names. What
 * did not change since the last job is not read or calculated again.
 */
export function aWorkbench(id: string, asked: Parameters<CalculateJob>[1] = { why: true }): Workbench {
  const root = mkdtempSync(join(tmpdir(), 'workbench-'));
  const calculate = aCalculator();
  const rules = readRules();
  const readAt = <T>(folder: string, read: (folder: string) => T) => {
    mkdirSync(join(root, folder));
    const known = new Map<Tree, T>();
    let there: { readonly [section: string]: Tree } = {};
    return (tree: Tree): T => {
      const before = known.get(tree);
      if (before !== undefined) return before;
      const sections = tree as typeof there;
      const fileOf = (section: string) => join(root, folder, `${section}.yaml`);
      for (const section of Object.keys(there)) if (!(section in sections)) rmSync(fileOf(section));
      for (const [section, value] of Object.entries(sections))
        if (there[section] !== value) writeFileSync(fileOf(section), yamlOf({ [section]: value }));
      there = sections;
      const made = read(join(root, folder));
      // Neighbours often have one of the two folders in common.
      if (known.size > 8) known.clear();
      known.set(tree, made);
      return made;
    };
  };
  const companyOf = readAt('company', readCompany);
  const jobOf = readAt(id, readJob);
  const resolve: Workbench['resolve'] = (trees) => {
    const company = companyOf(trees.company);
    const { job, origins, problems } = resolveJob(jobOf(trees.job), company, rules);
    if (job === null) throw new Error(showProblems([...rules.problems, ...company.problems, ...problems]));
    return { job, origins };
  };
  return {
    resolve,
    prepare: (trees) => {
      const { job, origins } = resolve(trees);
      const { results, problems: found } = calculate(job, asked);
      if (results === null || found.length > 0) throw new Error(JSON.stringify(found));
      return { job, origins, results };
    },
    remove: () => rmSync(root, { recursive: true }),
  };
}

/** No line is folded and no value becomes anything but text. */
function yamlOf(tree: Tree): string {
  return stringify(tree, { lineWidth: 0, schema: 'failsafe' });
}
