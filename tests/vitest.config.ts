import { defineConfig } from 'vitest/config';

const printing = ['tests/browser/**/*.test.ts', 'tests/commands/**/*.test.ts'];

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    testTimeout: process.env['FULL_PROPERTIES'] === '1' ? 600_000 : 180_000,
    reporters: ['default'],
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
          pool: 'threads',
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
