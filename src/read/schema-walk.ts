import * as z from 'zod';
import { isThing, type Thing } from '../problems/index.ts';
import type { TreePath } from './tree.ts';

/** The schema of the value at a path, through optional keys and transforms; undefined where there is none. */
export function schemaAt(root: z.core.$ZodType, path: TreePath): z.core.$ZodType | undefined {
  let schema: z.core.$ZodType | undefined = bare(root);
  for (const step of path) {
    if (schema === undefined) return undefined;
    schema = childSchema(schema, step);
  }
  return schema;
}

function childSchema(schema: z.core.$ZodType, step: string | number): z.core.$ZodType | undefined {
  if (schema instanceof z.ZodObject) {
    const shape: Readonly<Record<string, z.core.$ZodType>> = schema.shape;
    const child = Object.hasOwn(shape, step) ? shape[step] : undefined;
    return child === undefined ? undefined : bare(child);
  }
  if (schema instanceof z.ZodRecord) return bare(schema.valueType);
  if (schema instanceof z.ZodArray) return bare(schema.element);
  return undefined;
}

function bare(schema: z.core.$ZodType): z.core.$ZodType {
  if (schema instanceof z.ZodOptional) return bare(schema.unwrap());
  if (schema instanceof z.ZodPipe) return bare(schema.in);
  return schema;
}

/** The keys of a map of fixed keys; none of anything else. */
export function keysOf(schema: z.core.$ZodType | undefined): readonly string[] {
  return schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
}

/** What the keys of a map belong to. @throws {RangeError} If the schema has no such title. */
export function thingOf(schema: z.core.$ZodType | undefined): Thing {
  const title = schema instanceof z.ZodObject ? schema.meta()?.title : undefined;
  if (title === undefined || !isThing(title))
    throw new RangeError(`a map of the schema without a title: ${title}`);
  return title;
}

/** Whether the keys of a map are numbers of corners or edges. */
export function hasNumberKeys(schema: z.core.$ZodType | undefined): boolean {
  return schema instanceof z.ZodRecord && z.globalRegistry.get(schema.keyType)?.title === 'number';
}

/** Ways to write a value, for a message; its words where it is one of a closed set. */
export function examplesOf(schema: z.core.$ZodType | undefined): readonly string[] {
  if (schema === undefined) return [];
  if (schema instanceof z.ZodEnum) return schema.options.map(String);
  const examples: unknown = z.globalRegistry.get(schema)?.['examples'];
  return Array.isArray(examples) ? examples.map(inOneLine) : [];
}

/** An example as it would stand in a file, lists and maps in brackets. */
function inOneLine(example: unknown): string {
  if (Array.isArray(example)) return `[${example.map(inOneLine).join(', ')}]`;
  if (typeof example !== 'object' || example === null) return String(example);
  const entries = Object.entries(example).map(([key, value]) => `${key}: ${inOneLine(value)}`);
  return `{ ${entries.join(', ')} }`;
}
