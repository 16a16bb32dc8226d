import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { nativeSources } from './support/native-sources.ts';

const printing = ['tests/browser/**/*.test.ts', 'tests/commands/**/*.test.ts'];

/** Short files of which each has a minute of tests: begun last, they would leave a processor idle. */
const LONGEST = [
  'tests/documents/leaves.test.ts',
  'tests/documents/leaves-company.test.ts',
  'tests/documents/words.test.ts',
  'tests/browser/pages.test.ts',
];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const isLong = ({ moduleId }: TestSpecification) => LONGEST.some((path) => moduleId.endsWith(path));
    const sorted = await super.sort(files);
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))];
  }
}

export default defineConfig({
  // While tests are watched the sources go through their module runner, which sees them change.
  plugins: process.argv.includes('run') ? [nativeSources()] : [],
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
          maxWorkers: 2,
          // What a test makes lives for a moment and is much: with room for it, less is gathered up too early.
          pool: 'forks',
          execArgv: ['--min-semi-space-size=128', '--max-semi-space-size=128'],
        },
      },
      {
        // After the others: a browser takes both cores, but a program that starts waits for its files.
        extends: true,
        test: {
          name: 'whole',
          isolate: false,
          include: printing,
          globalSetup: './tests/support/build-demos.ts',
          setupFiles: './tests/support/demos-built.ts',
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
