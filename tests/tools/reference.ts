import * as z from 'zod';
import type { ProblemCode } from '../../src/problems/index.ts';
import { readRules } from '../../src/read/index.ts';
import { listings } from '../../src/read/schema/leaf.ts';
import { COMPANY_SECTIONS, JOB_SECTIONS, type Section } from '../../src/read/schema/sections.ts';
import { problemsEn } from '../../src/words/problems-en.ts';

/** The parts of README.md that are made from the schema and the catalogue, by the name of their markers. */
export function generatedParts(): Readonly<Record<string, string>> {
  return {
    'job keys': sectionTables(JOB_SECTIONS),
    'company keys': sectionTables(COMPANY_SECTIONS),
    rules: ruleTables(),
    codes: codeTable(),
  };
}

/**
 * A text with what stands between each pair of markers replaced.
 *
 * @throws {RangeError} If a pair is missing or stands twice.
 */
export function withGenerated(text: string, parts: Readonly<Record<string, string>>): string {
  return Object.entries(parts).reduce((whole, [name, part]) => {
    const begin = `<!-- generated: ${name}, by npm run docs -->\n`;
    const end = `<!-- end of ${name} -->`;
    const [before, after, more] = whole.split(begin);
    const endAt = after?.indexOf(end) ?? -1;
    if (before === undefined || after === undefined || more !== undefined || endAt < 0) {
      throw new RangeError(`the markers of "${name}" must stand once: ${begin.trim()} ... ${end}`);
    }
    return `${before}${begin}\n${part}\n\n${after.slice(endAt)}`;
  }, text);
}

/** Whether a key must stand there: always, never, or where the named key stands. */
type Need = { readonly isOwn: boolean; readonly within: string | null };

type Row = {
  readonly key: string;
  readonly kind: string;
  readonly need: Need;
  readonly otherwise: string;
  readonly example: string;
  readonly reader: string;
  readonly what: string;
};

function sectionTables(sections: Readonly<Record<string, Section>>): string {
  return Object.entries(sections)
    .map(([name, { schema, isRequired }]) => {
      const rows = rowsOf(schema(), name, { isOwn: true, within: isRequired ? null : name });
      const cells = rows.map(({ key, kind, need, otherwise, example, reader, what }) =>
        [code(key), kind, neededText(need), otherwise, code(example), reader, what].map(inCell),
      );
      const heads = ['Key', 'Kind', 'Needed', 'If not given', 'Example', 'Who reads it', 'What it is'];
      return `**${name}**${isRequired ? '' : ' (may be left out)'}\n\n${table(heads, cells)}`;
    })
    .join('\n\n');
}

function neededText({ isOwn, within }: Need): string {
  if (!isOwn) return 'no';
  return within === null ? 'yes' : `with ${code(within)}`;
}

/** A row for each value below a schema; maps and lists are steps of its key. */
function rowsOf(schema: z.core.$ZodType, key: string, need: Need): readonly Row[] {
  if (schema instanceof z.ZodOptional) return rowsOf(schema.unwrap(), key, { ...need, isOwn: false });
  if (schema instanceof z.ZodPipe) return rowsOf(schema.in, key, need);
  const below = need.isOwn ? need : { isOwn: true, within: key.split('.').at(-1) ?? key };
  if (schema instanceof z.ZodObject) {
    const children: Readonly<Record<string, z.core.$ZodType>> = schema.shape;
    return Object.entries(children).flatMap(([name, child]) => rowsOf(child, `${key}.${name}`, below));
  }
  if (schema instanceof z.ZodRecord) {
    const isNumber = z.globalRegistry.get(schema.keyType)?.title === 'number';
    const itemNeed = schema.valueType instanceof z.ZodObject ? below : need;
    return rowsOf(schema.valueType, `${key}.${isNumber ? 'N' : 'ID'}`, itemNeed);
  }
  if (schema instanceof z.ZodArray) return listRows(schema, key, need, below);
  return [rowOf(schema, key, need)];
}

/** A list of plain values is one row, told in the words of the list. */
function listRows(schema: z.ZodArray, key: string, need: Need, below: Need): readonly Row[] {
  const isOfThings = schema.element instanceof z.ZodObject;
  const rows = rowsOf(schema.element, `${key}[]`, isOfThings ? below : need);
  const description = z.globalRegistry.get(schema)?.description;
  if (isOfThings || description === undefined) return rows;
  const [what, otherwise] = whatAndOtherwise(description);
  return rows.map((row) => ({ ...row, otherwise, what }));
}

/** @throws {RangeError} If the value is of a form that is not known, so that none is passed over. */
function rowOf(schema: z.core.$ZodType, key: string, need: Need): Row {
  const meta = z.globalRegistry.get(schema);
  const examples = meta?.['examples'];
  const [what, otherwise] = whatAndOtherwise(meta?.description ?? '');
  const row = { key, need, otherwise, what, example: exampleOf(examples), reader: '' };
  if (schema instanceof z.ZodEnum) {
    return { ...row, kind: schema.options.map((word) => code(String(word))).join(', ') };
  }
  if (!(schema instanceof z.ZodString)) throw new RangeError(`${key} is of a form without a row`);
  const listing = listings.get(schema);
  if (listing === undefined) throw new RangeError(`${key} has no listing`);
  const reader = listing.reader === null ? '' : READERS[listing.reader];
  return { ...row, kind: KINDS[listing.kind] ?? listing.kind, reader, what: withoutReader(what) };
}

const READERS = { homeowner: 'everybody', crew: 'crew, office', office: 'office' } as const;

const KINDS: Readonly<Record<string, string>> = {
  duration: 'time',
  density: 'weight for a volume',
  coverage: 'area for a volume',
};

/** The description says what holds where nothing is given, in one of two ways. */
function whatAndOtherwise(description: string): readonly [string, string] {
  const match = /(?:^|; )(?<text>[^;.]+) (?:is taken )?if not given/.exec(description);
  const otherwise = match?.groups?.['text'];
  if (match === null || otherwise === undefined) return [description, ''];
  return [description.slice(0, match.index) + description.slice(match.index + match[0].length), otherwise];
}

function withoutReader(what: string): string {
  return what.replace(/ Only the (?:crew and the office see|office sees) it\.$/, '');
}

function exampleOf(examples: unknown): string {
  const [first]: readonly unknown[] = Array.isArray(examples) ? examples : [];
  return typeof first === 'string' ? first : '';
}

function ruleTables(): string {
  const { sets, problems } = readRules();
  if (problems.length > 0) throw new RangeError('the shipped rules have problems; run the tests of src/read');
  return [...sets.values()]
    .map(({ name, label, rules }) => {
      const rows = rules.map(({ code: ruleCode, figure, direction, limitText, severity, source, seen }) => [
        code(ruleCode),
        severity,
        `${code(figure)} ${direction === 'at-most' ? 'at most' : 'at least'} ${limitText}`,
        `${source}${seen || HAS_NO_SOURCE.test(source) || source.includes('from memory') ? '' : ' (from memory)'}`,
      ]);
      const heads = ['Finding', 'Severity', 'Figure and limit', 'Source'];
      return `**${name}**: ${label}\n\n${table(
        heads,
        rows.map((row) => row.map(inCell)),
      )}`;
    })
    .join('\n\n');
}

/** What no source was read for, and is not from memory either. */
const HAS_NO_SOURCE = /^(common practice|definition|the company|the published)/;

/** What stands in a message where the part of this name goes. */
const SAMPLES: Readonly<Record<string, unknown>> = {
  forms: ['FORM', 'OTHER FORM'],
  known: ['NAME', 'OTHER NAME'],
  choices: ['WORD', 'OTHER WORD'],
  nearest: null,
  thing: 'slab',
  measure: 'length',
  overhead: '0.6',
  margin: '0.45',
};

function codeTable(): string {
  const codes = (Object.keys(problemsEn.texts) as ProblemCode[]).toSorted();
  const rows = codes.map((problemCode) => [code(problemCode), messageOf(problemCode)]);
  return table(
    ['Code', 'Message'],
    rows.map((row) => row.map(inCell)),
  );
}

/** A message with samples for its parts; a part without one is its own name in capitals. */
function messageOf(problemCode: ProblemCode): string {
  const parts = new Proxy({}, { get: (_, name) => sampleOf(String(name)) });
  return (problemsEn.texts[problemCode] as (parts: object) => string)(parts);
}

function sampleOf(name: string): unknown {
  return Object.hasOwn(SAMPLES, name) ? SAMPLES[name] : name.toUpperCase();
}

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const lines = [heads, heads.map(() => '---'), ...rows];
  return lines.map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}

function code(text: string): string {
  return text === '' ? '' : `\`${text}\``;
}

function inCell(text: string): string {
  return text.trim().replaceAll('|', '\\|').replaceAll('<', '&lt;');
}
