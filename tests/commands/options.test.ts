import { describe, expect, test } from 'vitest';
import { parseOptions } from '../../src/commands/options.ts';

const parse = (...args: string[]) => parseOptions(args, '/home/office');

describe('parseOptions', () => {
  test('without words it builds, from and to the usual folders', () => {
    expect(parse()).toEqual({
      ok: true,
      options: {
        command: 'build',
        names: [],
        jobsDir: '/home/office/jobs',
        outputDir: '/home/office/output',
        browserPath: null,
        port: 8080,
      },
    });
  });

  test('folders and the browser are taken from where the command was started', () => {
    const parsed = parse(
      'build',
      'a',
      'b',
      '--jobs',
      '../mine',
      '--output=/out',
      '--browser',
      'bin/chrome',
      '--port',
      '0',
    );
    expect(parsed).toEqual({
      ok: true,
      options: {
        command: 'build',
        names: ['a', 'b'],
        jobsDir: '/home/mine',
        outputDir: '/out',
        browserPath: '/home/office/bin/chrome',
        port: 0,
      },
    });
  });

  // Regression: the documents took the place of the jobs, or were taken for one.
  test.each(['jobs', 'jobs/out', './jobs/', 'jobs/../jobs/maple-court', '.'])(
    'the output %s is refused where it is the folder of the jobs, or in it',
    (output) => {
      const jobs = output === '.' ? ['--jobs', '.'] : [];
      for (const command of ['build', 'sheet'])
        expect(parse(command, '--output', output, ...jobs)).toMatchObject({
          ok: false,
          message: expect.stringContaining('The output cannot go into the folder of the jobs'),
        });
      // What writes nothing there does not mind.
      expect(parse('check', '--output', output, ...jobs).ok).toBe(true);
    },
  );

  test.each(['jobs-out', '..', '..jobs', '/jobs', 'output'])('the output %s is another folder', (output) => {
    expect(parse('build', '--output', output).ok).toBe(true);
  });

  test('help is no command', () => {
    expect(parse('--help')).toEqual({ ok: true, options: null });
    expect(parse('check', '--help')).toEqual({ ok: true, options: null });
  });

  test.each([
    { args: ['chekc'], message: 'There is no command "chekc". Did you mean check?' },
    { args: ['Build'], message: 'There is no command "Build". Did you mean build?' },
    {
      args: ['print-it-all'],
      message: 'There is no command "print-it-all". There are: build, check, start, sheet, serve.',
    },
    { args: ['build', '--ouput', 'x'], message: 'There is no option --ouput. Did you mean --output?' },
    {
      args: ['build', '--quietly'],
      message: 'There is no option --quietly. There are: --jobs, --output, --browser, --port, --help.',
    },
    { args: ['serve', '--port', 'http'], message: '--port takes a number up to 65535, not "http".' },
    { args: ['serve', '--port', '65536'], message: '--port takes a number up to 65535, not "65536".' },
    { args: ['serve', '--port=-1'], message: '--port takes a number up to 65535, not "-1".' },
  ])('$args is refused', ({ args, message }) => {
    expect(parse(...args)).toEqual({ ok: false, message });
  });

  test.each([
    [['build', '--jobs']],
    [['build', '--jobs', '--output', 'x']],
    [['build', '--help=yes']],
    [['-q']],
  ])('%j is refused', (args) => {
    expect(parse(...args)).toMatchObject({ ok: false });
  });
});
