import { type ChildProcess, execFile } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { chmod, mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { isAlive, withLock } from './lock.ts';
import { writeWhole } from './write-whole.ts';

/** The version of @sparticuz/chromium in package.json: exact there, since 147.0.1 needs Node 22. */
export const PINNED_CHROMIUM = '147.0.0';

const LOCK_PATIENCE_MS = 120_000;
const UNPACK_LIMIT_MS = 120_000;

export type UnpackedBrowser = {
  executablePath: string;
  /** For the browser process only: our own process and its other children must not inherit these. */
  env: Readonly<Record<string, string>>;
};

/**
 * The bundled browser, unpacked once into a private folder of its version.
 *
 * Safe to call from several processes at once: the folder appears by one rename, complete or not
 * at all, and a lock keeps the others from doing the same work.
 *
 * @param cacheFolder Folder to unpack below, `node_modules/.cache/flatwork-jobs` of the project.
 * @param stop       Ends the unpacking; nothing is left of it then.
 * @throws {Error} If it cannot be unpacked (package missing, disk full, folder not writable), or was stopped.
 */
export async function unpackChromium(cacheFolder: string, stop?: AbortSignal): Promise<UnpackedBrowser> {
  const folder = join(cacheFolder, `chromium-${PINNED_CHROMIUM}`);
  if (!(await isComplete(folder))) {
    await mkdir(cacheFolder, { recursive: true });
    await withLock(`${folder}.lock`, LOCK_PATIENCE_MS, async () => {
      if (await isComplete(folder)) return;
      await removeLeftovers(cacheFolder);
      await unpackInto(folder, stop);
    });
  }
  const fontsFile = join(folder, 'fonts.conf');
  await keepFontsFile(fontsFile, folder);
  return {
    executablePath: join(folder, 'chromium'),
    env: { FONTCONFIG_FILE: fontsFile, LD_LIBRARY_PATH: join(folder, 'al2023', 'lib') },
  };
}

/** The folder is renamed into place when whole; sizes are compared in case files went missing later. */
async function isComplete(folder: string): Promise<boolean> {
  try {
    const expectedBytes = Number(await readFile(join(folder, 'chromium.bytes'), 'utf8'));
    const { size } = await stat(join(folder, 'chromium'));
    await stat(join(folder, 'al2023', 'lib', 'libnss3.so'));
    await stat(join(folder, 'fonts'));
    return size > 0 && size === expectedBytes;
  } catch {
    return false;
  }
}

/** What processes that were killed while unpacking left behind: 200 MB each. */
async function removeLeftovers(cacheFolder: string): Promise<void> {
  for (const name of await readdir(cacheFolder)) {
    const [, pid] = /^chromium-.*\.(\d+)\.[0-9a-f-]{36}\.tmp$/.exec(name) ?? [];
    if (pid !== undefined && !isAlive(Number(pid))) await rm(join(cacheFolder, name), { recursive: true });
  }
}

async function unpackInto(folder: string, stop: AbortSignal | undefined): Promise<void> {
  const temporary = `${folder}.${process.pid}.${randomUUID()}.tmp`;
  await mkdir(temporary, { mode: 0o700 });
  // mkdir's mode passes through the umask; this one does not.
  await chmod(temporary, 0o700);
  try {
    await runUnpacker(temporary, stop);
    const { size } = await stat(join(temporary, 'chromium'));
    await writeFile(join(temporary, 'chromium.bytes'), String(size));
    await mkdir(join(temporary, 'font-cache'));
    if (!(await isComplete(temporary))) throw new Error('@sparticuz/chromium did not unpack all its parts');
    await putInPlace(temporary, folder);
  } finally {
    await rm(temporary, { recursive: true, force: true });
  }
}

/**
 * Unpack in a child process, because the package is steered by environment variables that it reads
 * and changes while it is imported: TMPDIR (it takes any file called chromium there for its own),
 * AWS_EXECUTION_ENV (without it the NSS libraries stay packed), LD_LIBRARY_PATH. None of them
 * touches this process.
 */
async function runUnpacker(folder: string, stop: AbortSignal | undefined): Promise<void> {
  const entry = pathToFileURL(createRequire(import.meta.url).resolve('@sparticuz/chromium')).href;
  const program = `import(${JSON.stringify(entry)}).then(({ default: m }) => (m.default ?? m).executablePath())`;
  const env = { TMPDIR: folder, HOME: folder, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' };
  const unpacking = promisify(execFile)(process.execPath, ['-e', program], {
    env,
    timeout: UNPACK_LIMIT_MS,
    signal: stop,
  });
  try {
    await unpacking;
  } finally {
    // It is told to stop and still writes for a moment, into a folder that is about to go.
    await ended(unpacking.child);
  }
}

async function ended(child: ChildProcess): Promise<void> {
  if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
  await once(child, 'exit');
}

async function putInPlace(temporary: string, folder: string): Promise<void> {
  // Somebody without the lock was quicker; theirs is as good as ours, and perhaps already running.
  if (await isComplete(folder)) return;
  const damaged = `${folder}.${randomUUID()}.old`;
  await rename(folder, damaged).catch(() => undefined);
  try {
    await rename(temporary, folder);
  } catch (error) {
    if (!(await isComplete(folder))) throw error;
  } finally {
    await rm(damaged, { recursive: true, force: true });
  }
}

/**
 * A font set that does not depend on the machine: without it text in a font that is not embedded
 * vanishes silently on a box without fonts, and falls back to something else on every other box.
 * The file holds full paths, so it is written again when the project was moved.
 */
async function keepFontsFile(fontsFile: string, folder: string): Promise<void> {
  const wanted = [
    '<?xml version="1.0"?>',
    '<!DOCTYPE fontconfig SYSTEM "fonts.dtd">',
    '<fontconfig>',
    `  <dir>${escapeXml(join(folder, 'fonts'))}</dir>`,
    `  <cachedir>${escapeXml(join(folder, 'font-cache'))}</cachedir>`,
    '</fontconfig>',
    '',
  ].join('\n');
  const present = await readFile(fontsFile, 'utf8').catch(() => null);
  if (present !== wanted) await writeWhole(fontsFile, wanted);
}

function escapeXml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
