#!/usr/bin/env node
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundleOf } from './bundle.js';

const projectDir = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const bundle = await bundleOf({
  projectDir,
  cacheDir: join(projectDir, 'node_modules', '.cache', 'flatwork-jobs', 'program'),
});
if (bundle !== null) {
  // A stack trace names the sources.
  process.setSourceMapsEnabled(true);
  await import(bundle);
} else {
  const { register } = await import('tsx/esm/api');
  register();
  await import('./main.ts');
}
