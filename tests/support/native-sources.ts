import { randomUUID } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { type Plugin as BuildPlugin, build } from 'esbuild';
import type { Plugin } from 'vitest/config';
import { keyOf, ownPlaces, removeOld } from '../../src/commands/bundle.js';
import { withLock } from '../../src/print/lock.ts';

const PROJECT = resolve(import.meta.dirname, '..', '..');
const SRC = join(PROJECT, 'src');
const PATIENCE_MS = 60_000;
const CACHE = join(PROJECT, 'node_modules', '.cache', 'flatwork-jobs', 'tested');

/**
 * Has Node load the sources that tests ask for as modules of its own, each made JavaScript once. Through the
 * module runner of the tests every call from one source to another asks an object for the function first,
 * and all of them takes a tenth longer.
 */
export function nativeSources(): Plugin {
  const folder = join(CACHE, keyOf(PROJECT));
  return {
    name: 'native-sources',
    enforce: 'pre',
    buildStart: async () => {
      mkdirSync(CACHE, { recursive: true });
      // Each project of the tests wants it, all at once.
      await withLock(`${folder}.lock`, PATIENCE_MS, () => makeIn(folder));
    },
    resolveId(source, importer) {
      if (importer === undefined || !source.startsWith('.') || !source.endsWith('.ts')) return null;
      const path = relative(SRC, resolve(dirname(importer), source));
      // Of another drive there is no relative path.
      const isSource = !path.startsWith('..') && !isAbsolute(path);
      return isSource ? asModule(join(folder, path)) : null;
    },
  };
}

/** Made aside and moved into place, so that no part of it is ever seen. */
async function makeIn(folder: string): Promise<void> {
  if (existsSync(folder)) return;
  const aside = join(CACHE, `.next-${randomUUID()}`);
  const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' });
  try {
    await build({
      entryPoints: files.filter((file) => /(?<!\.d)\.ts$/.test(file)).map((file) => join(SRC, file)),
      outdir: aside,
      outbase: SRC,
      outExtension: { '.js': '.mjs' },
      bundle: true,
      packages: 'external',
      format: 'esm',
      platform: 'node',
      target: 'node20.20',
      sourcemap: 'inline',
      logLevel: 'silent',
      plugins: [ownPlaces(SRC), eachAlone()],
    });
    if (!existsSync(folder)) renameSync(aside, folder);
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
  removeOld(CACHE);
}

/** Every source stays a file of its own that asks for the others. */
function eachAlone(): BuildPlugin {
  return {
    name: 'each-alone',
    setup(building) {
      building.onResolve({ filter: /^\./ }, ({ path, kind }) =>
        kind === 'entry-point' ? null : { path: asModule(path), external: true },
      );
    },
  };
}

function asModule(path: string): string {
  return path.replace(/\.ts$/, '.mjs').split(sep).join('/');
}
