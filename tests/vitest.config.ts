import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const printing = ['tests/browser/**/*.test.ts', 'tests/commands/**/*.test.ts'];

/**
 * Files of which each takes a minute or waits for programs and browsers that it starts: begun last, they would leave a
 * processor idle. In the order in which they begin.
 */
const FIRST = [
  'tests/documents/leaves.test.ts',
  'tests/documents/leaves-company.test.ts',
  'tests/browser/pages.test.ts',
  'tests/browser/print.test.ts',
  'tests/commands/build.test.ts',
  'tests/commands/killed.test.ts',
  'tests/commands/refused.test.ts',
  'tests/commands/program.test.ts',
  'tests/commands/serve.test.ts',
  'tests/documents/words.test.ts',
  'tests/documents/privacy.test.ts',
  'tests/properties/job.test.ts',
];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const placeOf = ({ moduleId }: TestSpecification) => FIRST.findIndex((path) => moduleId.endsWith(path));
    const sorted = await super.sort(files);
    const first = sorted.filter((file) => placeOf(file) >= 0);
    const rest = sorted.filter((file) => placeOf(file) < 0);
    return [...first.toSorted((one, other) => placeOf(one) - placeOf(other)), ...rest];
  }
}

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    testTimeout: process.env['FULL_PROPERTIES'] === '1' ? 600_000 : 180_000,
    reporters: ['default'],
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        extends: true,
        // One module graph a worker: the files share no state, and loading it anew for each costs more than they do.
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: printing,
          isolate: false,
          hookTimeout: 180_000,
          maxWorkers: 3,
          // What a test makes lives for a moment and is much: with room for it, less is gathered up too early.
          pool: 'forks',
          execArgv: ['--min-semi-space-size=64', '--max-semi-space-size=64'],
        },
      },
      {
        // Beside the others: while a program or a browser starts, the cores have room. So three workers for two cores.
        extends: true,
        test: {
          name: 'whole',
          isolate: false,
          include: printing,
          globalSetup: './tests/support/build-demos.ts',
          setupFiles: './tests/support/demos-built.ts',
          maxWorkers: 3,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
