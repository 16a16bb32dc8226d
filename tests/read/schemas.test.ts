import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { notoSansAdvances } from '../../src/describe/drawing/noto-sans-advances.ts';
import { isInFont } from '../../src/read/font-characters.ts';
import { jsonSchemas } from '../../src/read/json-schemas.ts';

const FOLDER = join(import.meta.dirname, '..', '..', 'src', 'read', 'schema');
type Json = { readonly [key: string]: unknown };

describe('the JSON Schemas for editors', () => {
  test.each(Object.entries(jsonSchemas()))('%s is current: npm run docs', (name, text) => {
    expect(readFileSync(join(FOLDER, name), 'utf8')).toBe(text);
  });

  test('every value has a description', () => {
    const bare: string[] = [];
    const walk = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return;
      const { properties, items, additionalProperties, type, description } = node as Json;
      if ((type === 'string' || Array.isArray(type)) && description === undefined) bare.push(path);
      for (const [key, child] of Object.entries((properties as Json | undefined) ?? {}))
        walk(child, `${path}.${key}`);
      walk(items, `${path}[]`);
      walk(additionalProperties, `${path}{}`);
    };
    for (const [name, text] of Object.entries(jsonSchemas())) walk(JSON.parse(text), name);
    expect(bare).toEqual([]);
  });
});

test('the characters that a text may have are those of the shipped font, in both weights', () => {
  const charactersOf = (weight: 400 | 700) =>
    notoSansAdvances[weight].flatMap(([, characters]) => [...characters]).sort();
  const taken = Array.from({ length: 0x10000 }, (_, code) => String.fromCharCode(code))
    .filter(isInFont)
    .sort();
  expect(taken).toEqual(charactersOf(400));
  expect(taken).toEqual(charactersOf(700));
});
