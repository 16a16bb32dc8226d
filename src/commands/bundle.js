// @ts-check

import { createHash, randomUUID } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';

/*
 * The program in a few files: a check that loads some 250 sources, each through tsx, takes three times as long.
 * JavaScript, since it runs before anything that can read TypeScript. A bundle is a cache: it is made when the
 * sources are not those of the last one, thrown away without a loss, and never committed.
 */

/** Packages that load files of their own, or that most commands do without. */
const APART = ['@11ty/eleventy', '@sparticuz/chromium', 'esbuild', 'nunjucks', 'puppeteer', 'tsx'];

/** How many bundles stay: a program that runs may still load a part of an older one, or make the next. */
const KEPT = 5;

/**
 * Where the bundle of the program as it is now stands, made first where there is none.
 *
 * @param {{ projectDir: string, cacheDir: string }} folders
 * @returns {Promise<string | null>} Its URL; null where none can be made or kept, and the sources have to do.
 */
export async function bundleOf({ projectDir, cacheDir }) {
  try {
    const folder = join(cacheDir, keyOf(projectDir));
    if (!existsSync(folder)) await makeBundle(projectDir, cacheDir, folder);
    return pathToFileURL(join(folder, 'main.mjs')).href;
  } catch {
    return null;
  }
}

/**
 * Names, sizes and times of all sources and rule sets, what is installed, and where: paths are written into the bundle.
 *
 * @param {string} projectDir
 */
export function keyOf(projectDir) {
  const src = join(projectDir, 'src');
  const files = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.([jt]s|yaml)$/.test(file),
  );
  const paths = [
    ...files.sort().map((file) => join(src, file)),
    join(projectDir, 'node_modules', '.package-lock.json'),
  ];
  const seen = paths.map((path) => {
    const { size, mtimeMs } = statSync(path);
    return `${path} ${size} ${mtimeMs}`;
  });
  return createHash('sha256').update(seen.join('\n')).digest('hex').slice(0, 20);
}

/**
 * Made aside and moved into place: of two that make it at once one is kept, and no part of one is ever seen.
 *
 * @param {string} projectDir
 * @param {string} cacheDir
 * @param {string} folder
 */
async function makeBundle(projectDir, cacheDir, folder) {
  const aside = join(cacheDir, `.next-${randomUUID()}`);
  const { build } = await import('esbuild');
  try {
    await build({
      entryPoints: [join(projectDir, 'src', 'commands', 'main.ts')],
      outdir: aside,
      outExtension: { '.js': '.mjs' },
      // What is loaded late stays apart, so that it goes on being loaded late.
      bundle: true,
      splitting: true,
      format: 'esm',
      platform: 'node',
      target: 'node20.20',
      external: APART,
      // Packages in the older form ask for node:fs and the like by require.
      banner: {
        js: "import{createRequire as requireFrom}from'node:module';const require=requireFrom(import.meta.url);",
      },
      sourcemap: true,
      sourcesContent: false,
      // Half as much to compile; names stay as they are.
      minifyWhitespace: true,
      minifySyntax: true,
      logLevel: 'silent',
      // What this very program worked out is kept with it, and goes with it.
      define: { KEPT_FOLDER: JSON.stringify(join(folder, 'kept')) },
      plugins: [ownPlaces(join(projectDir, 'src'))],
    });
    if (!existsSync(folder)) renameSync(aside, folder);
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
  removeOld(cacheDir);
}

/**
 * A source that asks where it stands is told where it stood.
 *
 * @param {string} src
 * @returns {import('esbuild').Plugin}
 */
export function ownPlaces(src) {
  return {
    name: 'own-places',
    setup(build) {
      build.onLoad({ filter: /\.ts$/ }, ({ path }) => {
        const text = path.startsWith(src) ? readFileSync(path, 'utf8') : '';
        if (!text.includes('import.meta')) return undefined;
        const contents = text
          .replaceAll('import.meta.dirname', JSON.stringify(dirname(path)))
          .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href));
        return { contents, loader: 'ts' };
      });
    },
  };
}

/**
 * What was made before the last few.
 *
 * @param {string} cacheDir
 */
export function removeOld(cacheDir) {
  const made = readdirSync(cacheDir)
    .map((name) => ({ path: join(cacheDir, name), atMs: statSync(join(cacheDir, name)).mtimeMs }))
    .sort((one, other) => other.atMs - one.atMs);
  for (const { path } of made.slice(KEPT)) rmSync(path, { recursive: true, force: true });
}
