import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { loadChecks } from './load.ts';

/*
 * How many published values each topic is held against. The counts are committed, so that a check
 * that is dropped is seen; a topic with more raises its count there.
 */
const COUNTS = 'counts.yaml';
const committed = parse(readFileSync(join(import.meta.dirname, COUNTS), 'utf8')) as Record<string, number>;
const topics = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith('.yaml') && name !== COUNTS)
  .map((name) => name.replace('.yaml', ''));

describe('counts of published checks', () => {
  test('every topic has a count, and every count a topic', () => {
    expect(Object.keys(committed)).toEqual(topics.toSorted());
  });

  test.each(topics)('%s', (topic) => {
    const { checks, notChecked } = loadChecks(topic);
    const seen = checks.filter((check) => check.seen === 'seen').length;
    console.log(
      `published checks, ${topic}: ${checks.length}, of them ${seen} read in the publication; left out with a reason: ${notChecked.length}`,
    );
    expect(checks.length).toBeGreaterThanOrEqual(committed[topic] ?? Number.POSITIVE_INFINITY);
    expect(existsSync(join(import.meta.dirname, `${topic}.test.ts`))).toBe(true);
    for (const { what, why } of notChecked) expect(why.trim().length, what).toBeGreaterThan(10);
  });
});
