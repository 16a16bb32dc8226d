import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { inject } from 'vitest';
import { BUILT_MARK } from './build-demos.ts';

/*
 * Before each file of tests that looks at the demo jobs: they are built while the others run.
 */
const mark = join(inject('demoJobs'), '..', BUILT_MARK);
while (!existsSync(mark)) await sleep(100);
const said = readFileSync(mark, 'utf8');
if (said !== '') throw new Error(said);
