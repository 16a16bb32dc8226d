import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

/** All tests with the full number of runs a property; the variable is set here since shells differ in how. */
const PROJECT = join(import.meta.dirname, '..', '..');
const vitest = join(PROJECT, 'node_modules', 'vitest', 'vitest.mjs');
const { status } = spawnSync(process.execPath, [vitest, 'run', '--config', 'tests/vitest.config.ts'], {
  cwd: PROJECT,
  stdio: 'inherit',
  env: { ...process.env, FULL_PROPERTIES: '1' },
});
process.exitCode = status ?? 1;
