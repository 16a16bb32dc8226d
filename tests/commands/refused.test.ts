import { execFile, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { writeFile } from 'node:fs/promises';
import { type AddressInfo, createServer } from 'node:net';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, inject, onTestFinished, test } from 'vitest';
import { ForeignError } from '../../src/commands/output-folder.ts';
import { refusalSentence } from '../../src/commands/refusal.ts';
import { BusyError } from '../../src/print/index.ts';
import { PROJECT_DIR, runProgram } from '../support/run-program.ts';
import { aFolder, someJobs } from './folders.ts';

describe('refusalSentence', () => {
  const systemError = (fields: object) => Object.assign(new Error('x'), fields);

  test.each([
    [{ code: 'ENOSPC' }, 'This cannot be done: there is no room left on the disk.'],
    [{ code: 'EROFS', path: '/out' }, '/out cannot be used: it can only be read, not written.'],
    [{ code: 'EACCES', path: '/out' }, '/out cannot be used: permission is denied.'],
    [
      { code: 'EADDRINUSE', address: '127.0.0.1', port: 80 },
      '127.0.0.1:80 cannot be used: this port is taken by another program; choose one with --port N.',
    ],
  ])('%j', (fields, sentence) => {
    expect(refusalSentence(systemError(fields))).toBe(sentence);
  });

  test('a build that does not end names its lock', () => {
    expect(refusalSentence(new BusyError('/out/.lock', 12))).toBe(
      'Another build (process 12) is still writing there. If none is running, remove /out/.lock and try again.',
    );
  });

  test('what no build made is named, and what to do', () => {
    expect(refusalSentence(new ForeignError('/out/walk/job.yaml'))).toBe(
      '/out/walk/job.yaml would be replaced, and no build made it: name another folder with --output, or move it away.',
    );
  });

  test('anything else is a fault of ours', () => {
    expect(refusalSentence(new TypeError('x is undefined'))).toBeNull();
    expect(refusalSentence(systemError({ code: 'ERR_MODULE_NOT_FOUND' }))).toBeNull();
    expect(refusalSentence('text')).toBeNull();
  });
});

describe('an output folder that cannot be used', () => {
  test('is named, with the reason and no stack trace', async () => {
    const folder = await aFolder();
    const file = join(folder, 'a-file');
    await writeFile(file, 'mine');
    for (const output of [file, join(file, 'below')]) {
      const { code, out, err } = await runProgram([
        'build',
        'corner-walk',
        '--jobs',
        inject('demoJobs'),
        '--output',
        output,
      ]);
      expect({ code, out }).toEqual({ code: 3, out: '' });
      expect(err).toMatch(
        /^\S+a-file\S* cannot be used: .*(file|folder).*What was built before is unchanged\.\n$/,
      );
    }
  });
});

/** A file system of our own needs a kernel that lets us mount one. */
const canMount =
  process.platform === 'linux' &&
  spawnSync('unshare', ['-rm', 'sh', '-c', 'mount -t tmpfs none /mnt']).status === 0;

describe.skipIf(!canMount)('a disk with no room', () => {
  const KINDS = [
    { kind: 'for the pages', freeKb: 200 },
    { kind: 'for the PDFs', freeKb: 1300 },
  ];

  test.each(KINDS)('$kind: said in a sentence, and the old output stays', async ({ freeKb }) => {
    const folder = await aFolder();
    const script = `set -e
      mkdir disk
      mount -t tmpfs -o size=20m none disk
      cp -r "$BUILT/corner-walk" "$BUILT/index.html" disk
      cp -r disk before
      dd if=/dev/zero of=disk/filler bs=1k count=$(($(df -k --output=avail disk | tail -1) - ${freeKb})) status=none
      set +e
      (cd "$PROJECT" && "$NODE" src/commands/bin.js build corner-walk --jobs "$JOBS" --output "$PLACE/disk") 2>&1
      echo "ended with $?"
      rm disk/filler
      diff -r before disk && echo "all as before"`;
    const env = {
      ...process.env,
      BUILT: inject('demoOutput'),
      JOBS: inject('demoJobs'),
      PROJECT: PROJECT_DIR,
      NODE: process.execPath,
      PLACE: folder,
    };
    const { stdout } = await promisify(execFile)('unshare', ['-rm', 'sh', '-c', script], {
      cwd: folder,
      env,
    });
    expect(stdout).toContain(
      'there is no room left on the disk. What was built before is unchanged.\nended with 3\n',
    );
    expect(stdout).not.toMatch(/\n\s+at /);
    expect(stdout).toMatch(/\nall as before\n$/);
  });
});

describe('a port', () => {
  test('that is taken is named, and serve ends', async () => {
    const taken = createServer().listen(0, '127.0.0.1');
    await once(taken, 'listening');
    onTestFinished(() => void taken.close());
    const { port } = taken.address() as AddressInfo;
    const jobs = await someJobs('corner-walk');
    const { code, err } = await runProgram(['serve', '--jobs', jobs, '--port', String(port)]);
    expect(code).toBe(3);
    expect(err).toContain(`127.0.0.1:${port} cannot be used: this port is taken by another program`);
    expect(err).not.toMatch(/\n\s+at /);
  });
});
