import { mkdtemp, readdir, readFile, rm, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type CacheKeyParts, cacheKey, openCache } from '../../src/print/cache.ts';

let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'print-cache-'));
});
afterEach(() => rm(folder, { recursive: true }));

function someParts(changes: Partial<CacheKeyParts> = {}): CacheKeyParts {
  const html = Buffer.from('<h1>Walk</h1>');
  return { html, browserIdentity: 'bundled-chromium-1', epochSeconds: 5, twoPass: false, ...changes };
}

const PDF = new Uint8Array([37, 80, 68, 70, 10, 0, 255, 10]);
const KEY = cacheKey(someParts());
const onlyFile = async (): Promise<string> => join(folder, (await readdir(folder))[0] ?? 'none');

describe('cacheKey', () => {
  test.each([
    { html: Buffer.from('<h1>Walk.</h1>') },
    { browserIdentity: 'bundled-chromium-2' },
    { epochSeconds: 6 },
    { twoPass: true },
  ])('%o makes another key', (changes) => {
    expect(cacheKey(someParts(changes))).not.toBe(KEY);
  });

  test('the same parts make the same key', () => {
    expect(cacheKey(someParts({ html: Buffer.from('<h1>Walk</h1>') }))).toBe(KEY);
  });
});

describe('openCache', () => {
  test('gives back what was put in, to another opener too', async () => {
    await openCache(join(folder, 'new')).put(KEY, PDF);
    expect(await openCache(join(folder, 'new')).get(KEY)).toEqual(PDF);
  });

  test('what is not there is null, also without a folder', async () => {
    expect(await openCache(join(folder, 'new')).get(KEY)).toBeNull();
  });

  test('an entry can be put again, and no temporary file stays', async () => {
    const cache = openCache(folder);
    await cache.put(KEY, PDF.slice(1));
    await cache.put(KEY, PDF);
    expect(await cache.get(KEY)).toEqual(PDF);
    expect(await readdir(folder)).toHaveLength(1);
  });

  test('a cut entry counts as missing', async () => {
    const cache = openCache(folder);
    await cache.put(KEY, PDF);
    const file = await onlyFile();
    await truncate(file, (await readFile(file)).length - 1);
    expect(await cache.get(KEY)).toBeNull();
  });

  test('an entry with one bit turned counts as missing', async () => {
    const cache = openCache(folder);
    await cache.put(KEY, PDF);
    const file = await onlyFile();
    const entry = await readFile(file);
    entry[entry.length - 2] = (entry.at(-2) ?? 0) ^ 1;
    await writeFile(file, entry);
    expect(await cache.get(KEY)).toBeNull();
  });

  test('an empty entry counts as missing', async () => {
    const cache = openCache(folder);
    await cache.put(KEY, PDF);
    await writeFile(await onlyFile(), '');
    expect(await cache.get(KEY)).toBeNull();
  });

  test('a key that is no hash is a programming error, not a path', async () => {
    await expect(openCache(folder).get('../../secret')).rejects.toThrow(RangeError);
  });
});
