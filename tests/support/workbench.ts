import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { stringify } from 'yaml';
import { type PreparedJob, prepareJobs } from '../../src/commands/prepare.ts';
import { showProblems } from '../../src/commands/show-problems.ts';
import type { Tree, Trees } from './trees.ts';

/** A folder outside the project where changed jobs are written and read as a user's would be. */
export type Workbench = {
  /** @throws {Error} If the job has a problem; the message is the one a user reads. */
  readonly prepare: (trees: Trees) => PreparedJob;
  readonly remove: () => void;
};

/**
 * Every job gets the same place and every value its own line, so that two jobs which differ in a
 * value differ in nothing else, not even in the lines the calculation sheet names.
 */
export function aWorkbench(id: string): Workbench {
  const root = mkdtempSync(join(tmpdir(), 'workbench-'));
  for (const name of ['company', id]) mkdirSync(join(root, name));
  return {
    prepare: ({ company, job }) => {
      writeFileSync(join(root, 'company', 'company.yaml'), yamlOf(company));
      writeFileSync(join(root, id, 'job.yaml'), yamlOf(job));
      const prepared = prepareJobs({ jobsDir: root, names: [id] });
      if (!prepared.ok) throw new Error(showProblems(prepared.problems));
      const [only] = prepared.jobs;
      if (only === undefined) throw new Error('no job was prepared');
      return only;
    },
    remove: () => rmSync(root, { recursive: true }),
  };
}

/** No line is folded and no value becomes anything but text. */
function yamlOf(tree: Tree): string {
  return stringify(tree, { lineWidth: 0, schema: 'failsafe' });
}
