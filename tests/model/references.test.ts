import { afterAll, describe, expect, test } from 'vitest';
import * as z from 'zod';
import { listings } from '../../src/read/schema/leaf.ts';
import { COMPANY_SECTIONS, JOB_SECTIONS, type Section } from '../../src/read/schema/sections.ts';
import { FULL_JOB, TEST_JOBS } from '../support/project.ts';
import { instancesOf, schemaLeaves } from '../support/schema-leaves.ts';
import { leavesOf, readTrees, type Trees, withLeaf } from '../support/trees.ts';
import { aWorkbench } from '../support/workbench.ts';

/** What is acknowledged is compared with what a build finds: that has a problem of its own. */
const FREE = ['job.acknowledged.*.finding', 'job.acknowledged.*.where'];

function isReference(schema: z.core.$ZodType, path: readonly string[]): boolean {
  if (schema instanceof z.ZodOptional) return isReference(schema.unwrap(), path);
  const [step, ...rest] = path;
  if (step === undefined) return listings.get(schema)?.kind === 'id';
  if (schema instanceof z.ZodObject) return isReference(schema.shape[step], rest);
  if (schema instanceof z.ZodRecord) return isReference(schema.valueType, rest);
  if (schema instanceof z.ZodArray) return isReference(schema.element, rest);
  return false;
}

function referencesOf(side: keyof Trees) {
  const sections: Readonly<Record<string, Section>> = side === 'job' ? JOB_SECTIONS : COMPANY_SECTIONS;
  return schemaLeaves(side)
    .filter(({ path: [name = '', ...path] }) => {
      const section = Object.hasOwn(sections, name) ? sections[name] : undefined;
      return section !== undefined && isReference(section.schema(), path);
    })
    .map((leaf) => ({ side, leaf }));
}

const trees = readTrees(TEST_JOBS, FULL_JOB);
const bench = aWorkbench(FULL_JOB);
afterAll(() => bench.remove());

const REFERENCES = [...referencesOf('job'), ...referencesOf('company')].filter(
  ({ leaf }) => !FREE.includes(leaf.name),
);

/* regression: a name with a space or a capital was taken for an id that somebody else refuses, and threw. */
describe('what stands where an id should and is none', () => {
  test('is looked at wherever a schema takes an id', () => {
    expect(REFERENCES.length).toBeGreaterThan(30);
  });

  test.each(REFERENCES.map((one) => [`${one.side} ${one.leaf.name}`, one] as const))(
    '%s: a located problem',
    (_, { side, leaf }) => {
      const [instance] = instancesOf(leaf, leavesOf(trees[side]));
      if (instance === undefined) throw new RangeError(`the full job has no ${leaf.name}`);
      const changed = { ...trees, [side]: withLeaf(trees[side], instance.path, 'Some Thing') };
      expect(() => bench.prepare(changed)).toThrow(/(?:unknown|bad)-[a-z-]+[\s\S]*Some Thing/);
    },
  );
});
