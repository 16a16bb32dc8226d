import { once } from 'node:events';
import { cp, readFile, rename, writeFile } from 'node:fs/promises';
import { get, type IncomingMessage } from 'node:http';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { runProgram, startProgram } from '../support/run-program.ts';
import { aFolder, someJobs } from './folders.ts';

type Answer = { readonly status: number; readonly type: string; readonly body: string };

/** Asks with the path as it is written: `fetch` would tidy the dots away. */
async function ask(port: number, path: string): Promise<Answer> {
  const [response] = (await once(get({ host: '127.0.0.1', port, path }), 'response')) as [IncomingMessage];
  response.setEncoding('utf8');
  let body = '';
  for await (const part of response) body += part;
  return { status: response.statusCode ?? 0, type: response.headers['content-type'] ?? '', body };
}

async function serving(jobs: string): Promise<{ port: number; stop: () => Promise<number | null> }> {
  const { child, ended, says } = startProgram(['serve', '--jobs', jobs, '--port', '0']);
  onTestFinished(async () => {
    child.kill('SIGKILL');
    await ended;
  });
  const [, port] = await says(/http:\/\/127\.0\.0\.1:(\d+)\//);
  const stop = async () => {
    child.kill('SIGTERM');
    return (await ended).code;
  };
  return { port: Number(port), stop };
}

describe('serve', () => {
  test('shows the pages, the problems of a bad edit over the last good page, and the mended job', async () => {
    const jobs = await someJobs('corner-walk', 'garden-row');
    const { port, stop } = await serving(jobs);
    const path = '/corner-walk/homeowner/proposal.html';
    const page = async () => (await ask(port, path)).body;

    expect(await ask(port, '/')).toMatchObject({ status: 200, type: 'text/html; charset=utf-8' });
    expect((await ask(port, '/')).body).toContain('garden-row');
    expect(await page()).toContain('One walk panel replaced');
    expect(await page()).not.toContain('role="alert"');

    // What the page listens to says that something changed.
    const [changes] = (await once(get({ host: '127.0.0.1', port, path: '/.changes' }), 'response')) as [
      IncomingMessage,
    ];
    let heard = '';
    changes.on('data', (bytes) => (heard += bytes)).on('error', () => undefined);

    const file = join(jobs, 'corner-walk/job.yaml');
    const good = await readFile(file, 'utf8');
    await writeFile(file, good.replace('length: 5 ft', 'length: 5 <b>ft</b>'));
    await expect.poll(page, { timeout: 15_000 }).toContain('role="alert"');
    const troubled = await page();
    expect(troubled).toContain('One walk panel replaced');
    expect(troubled).toMatch(/corner-walk\/job\.yaml:\d+:\d+/);
    expect(troubled.slice(troubled.indexOf('role="alert"'))).not.toContain('<b>');
    expect(heard).toContain('data: changed');
    expect((await ask(port, '/../../etc/passwd')).status).toBe(404);

    await writeFile(file, good.replace('One walk panel replaced', 'Two panels'));
    await expect.poll(page, { timeout: 15_000 }).toContain('Two panels');
    expect(await page()).not.toContain('role="alert"');

    // A new job folder, made while it runs.
    await cp(join(jobs, 'corner-walk'), join(jobs, 'new-walk'), { recursive: true });
    await expect
      .poll(async () => (await ask(port, '/new-walk/office/safety.html')).status, { timeout: 15_000 })
      .toBe(200);
    expect(await stop()).toBe(0);
  }, 90_000);

  // Regression: Node's own watching lost a file on Linux once another one was put in its place.
  test('sees each file that is put in the place of another, as editors save, and what is written into it later', async () => {
    // The name of a folder may begin with a dot; what is hidden in it is of no job.
    const jobs = join(await aFolder(), '.jobs');
    await cp(await someJobs('corner-walk'), jobs, { recursive: true });
    const { port } = await serving(jobs);
    const page = async () => (await ask(port, '/corner-walk/homeowner/proposal.html')).body;
    const file = join(jobs, 'corner-walk/job.yaml');
    const good = await readFile(file, 'utf8');
    const saysOf = (label: string) => good.replace('One walk panel replaced', label);
    for (const label of ['First save', 'Second save', 'Third save']) {
      await writeFile(`${file}~`, saysOf(label));
      await rename(`${file}~`, file);
      await expect.poll(page, { timeout: 15_000 }).toContain(label);
    }
    await writeFile(file, saysOf('In place'));
    await expect.poll(page, { timeout: 15_000 }).toContain('In place');

    // A drive that goes and comes again.
    await rename(jobs, `${jobs}-away`);
    await expect.poll(page, { timeout: 15_000 }).toContain('There is no folder of this name.');
    await rename(`${jobs}-away`, jobs);
    await expect.poll(page, { timeout: 15_000 }).not.toContain('role="alert"');
    await writeFile(file, saysOf('Come again'));
    await expect.poll(page, { timeout: 15_000 }).toContain('Come again');
  });

  test('gives nothing but its pages', async () => {
    const jobs = await someJobs('corner-walk');
    const { port } = await serving(jobs);
    for (const path of [
      '/../../etc/passwd',
      '/%2e%2e/%2e%2e/etc/passwd',
      '/..%2f..%2fetc%2fpasswd',
      '/corner-walk/../../../etc/passwd',
      '//etc/passwd',
      '/etc/passwd',
      '/corner-walk/job.yaml',
      '/corner-walk/',
      '/constructor',
      '/%',
      '/%00',
      '/?x=/etc/passwd&y',
    ]) {
      const { status, body } = await ask(port, path);
      expect(body, path).not.toContain('root:');
      expect(status, path).toBe(path.startsWith('/?') ? 200 : 404);
    }
  });

  test('begins with problems alone, and recovers from them', async () => {
    const jobs = await someJobs('corner-walk');
    const file = join(jobs, 'corner-walk/job.yaml');
    const good = await readFile(file, 'utf8');
    await writeFile(file, good.replace('length: 5 ft', 'length: 5'));
    const { port } = await serving(jobs);
    const first = await ask(port, '/');
    expect(first.status).toBe(503);
    expect(first.body).toContain('role="alert"');
    await writeFile(file, good);
    await expect.poll(async () => (await ask(port, '/')).status, { timeout: 15_000 }).toBe(200);
  });

  test('a jobs folder that is not there is a problem, not a fault', async () => {
    const { code, err } = await runProgram(['serve', '--jobs', join(await aFolder(), 'gone'), '--port', '0']);
    expect(code).toBe(1);
    expect(err).toContain('There is no folder of this name.');
  });
});
