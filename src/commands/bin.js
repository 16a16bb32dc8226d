#!/usr/bin/env node
import module from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundleOf } from './bundle.js';

const projectDir = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const cacheDir = join(projectDir, 'node_modules', '.cache', 'flatwork-jobs');
const bundle = await bundleOf({ projectDir, cacheDir: join(cacheDir, 'program') });
if (bundle !== null) {
  // From Node 22 on, what was compiled is kept.
  module.enableCompileCache?.(join(cacheDir, 'compiled'));
  await import(bundle);
} else {
  const { register } = await import('tsx/esm/api');
  register();
  await import('./main.ts');
}
