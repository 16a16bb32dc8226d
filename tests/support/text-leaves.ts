import * as z from 'zod';
import { COMPANY_SECTIONS, JOB_SECTIONS, type Section } from '../../src/read/schema/sections.ts';
import { instancesOf, type SchemaLeaf, schemaLeaves } from './schema-leaves.ts';
import { leavesOf, type Trees, withLeaf } from './trees.ts';

export type Audience = 'public' | 'crew' | 'office';
export type TextLeaf = SchemaLeaf & { readonly audience: Audience };

/** A text that is no number, no amount, no date and none of a closed set of words. */
const ANY_TEXT = '~';

/** The leaves of a schema that take any text, and who may read it: the schema says so of each. */
export function textLeaves(side: keyof Trees): readonly TextLeaf[] {
  const sections: Readonly<Record<string, Section>> = side === 'job' ? JOB_SECTIONS : COMPANY_SECTIONS;
  return schemaLeaves(side).flatMap((leaf): TextLeaf[] => {
    const [name = '', ...path] = leaf.path;
    const section = Object.hasOwn(sections, name) ? sections[name] : undefined;
    if (section === undefined || !takesAnyText(section.schema(), path)) return [];
    return [{ ...leaf, audience: audienceOf(leaf.description) }];
  });
}

function audienceOf(description: string): Audience {
  if (description.endsWith('Only the crew and the office see it.')) return 'crew';
  return description.endsWith('Only the office sees it.') ? 'office' : 'public';
}

/** References and limits are plain strings in the schema; text is made of a string. */
function takesAnyText(schema: z.core.$ZodType, path: readonly string[]): boolean {
  if (schema instanceof z.ZodOptional) return takesAnyText(schema.unwrap(), path);
  const [step, ...rest] = path;
  if (step === undefined) return schema instanceof z.ZodPipe && schema.safeParse(ANY_TEXT).success;
  if (schema instanceof z.ZodObject) return takesAnyText(schema.shape[step], rest);
  if (schema instanceof z.ZodRecord) return takesAnyText(schema.valueType, rest);
  if (schema instanceof z.ZodArray) return takesAnyText(schema.element, rest);
  throw new RangeError(`cannot follow ${path.join('.')}`);
}

/** A job with every text of its files replaced. */
export function withTexts(
  trees: Trees,
  textOf: (leaf: TextLeaf, index: number, text: string) => string,
): Trees {
  let index = 0;
  // A job may say of the company what it likes.
  const overrides = textLeaves('company').map((leaf) => ({ ...leaf, path: ['company', ...leaf.path] }));
  const replaced = (side: keyof Trees) =>
    [...textLeaves(side), ...(side === 'job' ? overrides : [])].reduce(
      (tree, leaf) =>
        instancesOf(leaf, leavesOf(tree)).reduce((at, { path, text }) => {
          index += 1;
          return withLeaf(at, path, textOf(leaf, index, text));
        }, tree),
      trees[side],
    );
  return { company: replaced('company'), job: replaced('job') };
}
