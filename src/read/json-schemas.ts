import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';
import { COMPANY_SECTIONS, JOB_SECTIONS, OVERRIDES, type Section } from './schema/sections.ts';

const FOLDER = join(import.meta.dirname, 'schema');

type Json = Readonly<Record<string, unknown>>;

/**
 * The JSON Schemas an editor uses to complete keys and to show what they mean, by file name. No
 * section is required in them, since each may stand in a file of its own; the reader asks for all.
 */
export function jsonSchemas(): Readonly<Record<string, string>> {
  const company = schemaOf('Company folder', COMPANY_SECTIONS);
  const job = schemaOf('Job folder', JOB_SECTIONS);
  const overrides = {
    ...(withoutRequired(company) as Json),
    title: 'What this job has different from the company.',
  };
  const { $schema: _, ...nested } = overrides as Json & { $schema?: unknown };
  const withOverrides = { ...job, properties: { ...(job['properties'] as Json), [OVERRIDES]: nested } };
  return { 'job.schema.json': written(withOverrides), 'company.schema.json': written(company) };
}

/** Writes them beside the schema they are made from. */
export function writeJsonSchemas(folder: string = FOLDER): void {
  for (const [name, text] of Object.entries(jsonSchemas())) writeFileSync(join(folder, name), text);
}

function schemaOf(title: string, sections: Readonly<Record<string, Section>>): Json {
  const shape = Object.fromEntries(
    Object.entries(sections).map(([name, { schema }]) => [name, schema().optional()]),
  );
  return z.toJSONSchema(z.strictObject(shape).meta({ title }), { io: 'input', target: 'draft-7' }) as Json;
}

function withoutRequired(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(withoutRequired);
  if (typeof node !== 'object' || node === null) return node;
  return Object.fromEntries(
    Object.entries(node).flatMap(([key, value]) =>
      key === 'required' && Array.isArray(value) ? [] : [[key, withoutRequired(value)]],
    ),
  );
}

function written(schema: Json): string {
  return `${JSON.stringify(schema, null, 2)}\n`;
}
