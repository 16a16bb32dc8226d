import { EXIT, type ExitCode } from './exit-codes.ts';
import { HELP } from './help.ts';
import { type Options, parseOptions } from './options.ts';

/** The program: reads its arguments, runs one command, ends with its exit code. */
async function main(): Promise<ExitCode> {
  const parsed = parseOptions(process.argv.slice(2), process.cwd());
  if (!parsed.ok) {
    console.error(`${parsed.message}\n\n${HELP}`);
    return EXIT.wrongUsage;
  }
  if (parsed.options === null) {
    console.log(HELP);
    return EXIT.built;
  }
  return run(parsed.options);
}

/** Each command is loaded only when asked for: a check loads no browser and no page engine. */
async function run(options: Options): Promise<ExitCode> {
  switch (options.command) {
    case 'build':
      return (await import('./build.ts')).build(options);
    case 'check':
      return (await import('./check.ts')).check(options);
    case 'start':
      return (await import('./start.ts')).start(options);
    case 'sheet':
      return (await import('./sheet.ts')).sheet(options);
    case 'serve':
      return (await import('./serve.ts')).serve(options);
  }
}

// Whoever reads our lines may stop reading (`| head`): that is no fault, and the work goes on.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
}

main().then(
  (code) => {
    process.exitCode = code;
  },
  async (error: unknown) => {
    const { refusalSentence } = await import('./refusal.ts');
    const refusal = refusalSentence(error);
    if (refusal !== null) {
      console.error(`${refusal} What was built before is unchanged.`);
      process.exitCode = EXIT.wrongUsage;
      return;
    }
    const { nameSources } = await import('./source-places.ts');
    nameSources(error);
    console.error('This is a fault of this program, not of your files. Please keep the lines below.');
    console.error(error);
    process.exitCode = EXIT.ourBug;
  },
);
