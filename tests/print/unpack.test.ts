import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { PINNED_CHROMIUM } from '../../src/print/unpack.ts';

test('the version in the folder name is the exact one in package.json and the installed one', () => {
  const read = (path: string) => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'));
  expect(read('../../package.json').dependencies['@sparticuz/chromium']).toBe(PINNED_CHROMIUM);
  expect(read('../../node_modules/@sparticuz/chromium/package.json').version).toBe(PINNED_CHROMIUM);
});
