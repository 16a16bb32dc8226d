import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { type LocatedProblem, nearestName, problemAt, shortened } from '../problems/index.ts';
import { reasonOf } from './load-file.ts';
import { ID_PATTERN } from './schema/id.ts';

/** The folder of the company stands beside the jobs. */
export const COMPANY_FOLDER = 'company';
const MOST_CHARACTERS = 80;

/** Lower-case words joined by hyphens: a name in every file system, and never a way out of a folder. */
export function isJobName(name: string): boolean {
  return name.length <= MOST_CHARACTERS && ID_PATTERN.test(name) && name !== COMPANY_FOLDER;
}

export type JobList = { readonly ids: readonly string[]; readonly problems: readonly LocatedProblem[] };

/**
 * The jobs of a folder, sorted by name, or those of them that were asked for by name.
 *
 * @param asked Names as typed; `maple-court/` is taken for `maple-court`, a way out of the folder is not.
 */
export function listJobs(jobsFolder: string, asked: readonly string[] = []): JobList {
  const whole = { file: jobsFolder, line: null };
  const folders = foldersIn(jobsFolder);
  if (typeof folders === 'string') {
    return {
      ids: [],
      problems: [
        folders === 'ENOENT' || folders === 'ENOTDIR'
          ? problemAt(whole, 'no-folder', {})
          : problemAt(whole, 'unreadable-file', { reason: folders }),
      ],
    };
  }
  const found = folders.filter((name) => name !== COMPANY_FOLDER && !name.startsWith('.'));
  if (asked.length > 0) return pick(jobsFolder, found, asked);
  const problems = found
    .filter((name) => !isJobName(name))
    .map((name) =>
      problemAt({ file: join(jobsFolder, shortened(name, MOST_CHARACTERS)), line: null }, 'folder-name', {
        name: shortened(name, MOST_CHARACTERS),
      }),
    );
  if (found.length === 0) problems.push(problemAt(whole, 'no-jobs', {}));
  return { ids: found.filter(isJobName), problems };
}

function pick(jobsFolder: string, found: readonly string[], asked: readonly string[]): JobList {
  const ids: string[] = [];
  const problems: LocatedProblem[] = [];
  for (const typed of new Set(asked.map((name) => name.replace(/\/$/, '')))) {
    const name = shortened(typed, MOST_CHARACTERS);
    const whole = { file: jobsFolder, line: null };
    if (!isJobName(typed)) problems.push(problemAt(whole, 'folder-name', { name }));
    else if (!found.includes(typed))
      problems.push(problemAt(whole, 'unknown-job', { name, nearest: nearestName(typed, found) }));
    else ids.push(typed);
  }
  return { ids: ids.sort(), problems };
}

/** The folders in a folder, or the system's reason why it cannot be read. */
function foldersIn(folder: string): readonly string[] | string {
  try {
    return readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => name)
      .sort();
  } catch (error) {
    return reasonOf(error);
  }
}
