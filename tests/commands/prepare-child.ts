import { figuresJson } from '../../src/commands/figures-json.ts';
import { prepareJobs } from '../../src/commands/prepare.ts';

// A run of the program that keeps what it works out in a folder, or nothing at all; prints the figures of all jobs.
const [jobsDir = '', keptFolder] = process.argv.slice(2);
if (keptFolder !== undefined) Object.assign(globalThis, { KEPT_FOLDER: keptFolder });
const prepared = prepareJobs({ jobsDir, names: [] });
if (!prepared.ok) throw new Error(`${prepared.problems.length} problems`);
for (const job of prepared.jobs) console.log(figuresJson(job));
