import { isAbsolute, relative, resolve, sep } from 'node:path';
import { parseArgs } from 'node:util';
import { nearestName } from '../problems/index.ts';

/** What a user asked for on the command line. */
export type Options = {
  readonly command: Command;
  /** Words after the command: job names, or the name of a new job. */
  readonly names: readonly string[];
  readonly jobsDir: string;
  readonly outputDir: string;
  readonly browserPath: string | null;
  readonly port: number;
};

export const COMMANDS = ['build', 'check', 'start', 'sheet', 'serve'] as const;
export type Command = (typeof COMMANDS)[number];

export type ParsedOptions =
  | { readonly ok: true; readonly options: Options }
  | { readonly ok: true; readonly options: null }
  | { readonly ok: false; readonly message: string };

const FLAGS = {
  jobs: { type: 'string' },
  output: { type: 'string' },
  browser: { type: 'string' },
  port: { type: 'string' },
  help: { type: 'boolean' },
} as const;

/**
 * Reads the command line. `options: null` means that help was asked for.
 *
 * @param args Everything after the program's own name.
 * @param cwd  Folder that relative folders are taken from.
 */
export function parseOptions(args: readonly string[], cwd: string): ParsedOptions {
  const parsed = splitArgs(args);
  if (!parsed.ok) return parsed;
  const { values, positionals } = parsed;
  if (values.help === true) return { ok: true, options: null };

  const [word = 'build', ...names] = positionals;
  const command = COMMANDS.find((known) => known === word);
  if (command === undefined) {
    return { ok: false, message: `There is no command "${word}".${suggestion(word, COMMANDS)}` };
  }
  const port = values.port ?? '8080';
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65535) {
    return { ok: false, message: `--port takes a number up to 65535, not "${port}".` };
  }
  const jobsDir = resolve(cwd, values.jobs ?? 'jobs');
  const outputDir = resolve(cwd, values.output ?? 'output');
  if ((command === 'build' || command === 'sheet') && isWithin(outputDir, jobsDir)) {
    return {
      ok: false,
      message: `The output cannot go into the folder of the jobs, where it would be taken for a job: ${outputDir}. Name another folder with --output.`,
    };
  }
  return {
    ok: true,
    options: {
      command,
      names,
      jobsDir,
      outputDir,
      browserPath: values.browser === undefined ? null : resolve(cwd, values.browser),
      port: Number(port),
    },
  };
}

/** Whether a folder is another one, or in it. */
function isWithin(folder: string, other: string): boolean {
  const path = relative(other, folder);
  return path !== '..' && !path.startsWith(`..${sep}`) && !isAbsolute(path);
}

function splitArgs(args: readonly string[]) {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      options: FLAGS,
      allowPositionals: true,
      strict: true,
    });
    return { ok: true as const, values, positionals };
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const flag = /'(--[^' ]+)/.exec(message)?.[1];
    const known = Object.keys(FLAGS).map((name) => `--${name}`);
    if (flag === undefined || known.includes(flag)) return { ok: false as const, message };
    return { ok: false as const, message: `There is no option ${flag}.${suggestion(flag, known)}` };
  }
}

function suggestion(word: string, known: readonly string[]): string {
  const nearest = nearestName(word, known);
  return nearest === null ? ` There are: ${known.join(', ')}.` : ` Did you mean ${nearest}?`;
}
