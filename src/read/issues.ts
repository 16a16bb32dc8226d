import type * as z from 'zod';
import {
  type LocatedProblem,
  nearestName,
  problemAt,
  type SourceSpot,
  shortened,
} from '../problems/index.ts';
import type { Finding } from './schema/leaf.ts';
import { examplesOf, hasNumberKeys, keysOf, schemaAt, thingOf } from './schema-walk.ts';
import { isBrokenAt, keySpotAt, nearestNode, nodeAt, type TreeNode, type TreePath } from './tree.ts';

const MOST_SHOWN = 60;

type Checked = { readonly root: TreeNode; readonly schema: z.core.$ZodType };

/** What the schema found, placed and in our words; nothing below a value that was reported before. */
export function problemsOfIssues(issues: readonly z.core.$ZodIssue[], checked: Checked): LocatedProblem[] {
  const open = issues.filter((issue) => !isBrokenAt(checked.root, pathOf(issue)));
  const meant = new Set(open.flatMap((issue) => meantKeys(issue, checked)));
  return open
    .filter((issue) => !(isMissing(issue, checked.root) && meant.has(pathOf(issue).join('.'))))
    .flatMap((issue) => problemsOf(issue, checked));
}

/** Paths of the keys that mistyped ones were meant to be: they are not missing as well. */
function meantKeys(issue: z.core.$ZodIssue, { schema }: Checked): readonly string[] {
  if (issue.code !== 'unrecognized_keys') return [];
  const known = keysOf(schemaAt(schema, pathOf(issue)));
  return issue.keys.flatMap((key) => {
    const nearest = nearestName(key, known);
    return nearest === null ? [] : [[...pathOf(issue), nearest].join('.')];
  });
}

export function pathOf(issue: z.core.$ZodIssue): TreePath {
  return issue.path.map((step) => (typeof step === 'number' ? step : String(step)));
}

/** Whether the issue is that nothing stands at its path. */
export function isMissing(issue: z.core.$ZodIssue, root: TreeNode): boolean {
  return nodeAt(root, pathOf(issue)) === undefined;
}

function problemsOf(issue: z.core.$ZodIssue, checked: Checked): readonly LocatedProblem[] {
  const path = pathOf(issue);
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey([...path, key], checked));
  if (isMissing(issue, checked.root)) return [missingKey(path, checked)];
  if (issue.code === 'invalid_key') return [badKey(path, checked)];
  const node = nearestNode(checked.root, path);
  if (issue.code === 'custom') return [findingAt(issue.params as Finding, path, node)];
  if (issue.code === 'invalid_value') return [notAChoice(node, examplesOf(schemaAt(checked.schema, path)))];
  if (issue.code === 'invalid_type') return [wrongForm(issue.expected, path, node, checked)];
  if (issue.code === 'too_small' || issue.code === 'too_big') {
    const wanted = String(issue.code === 'too_small' ? issue.minimum : issue.maximum);
    const count = node.kind === 'list' ? String(node.items.length) : '0';
    return [problemAt(node.spot, 'list-length', { count, wanted })];
  }
  throw new RangeError(`no message for the schema issue ${issue.code} at ${path.join('.')}`);
}

function findingAt(finding: Finding, path: TreePath, node: TreeNode): LocatedProblem {
  const key = path.findLast((step) => typeof step === 'string') ?? '';
  if (finding.code === 'empty-value') {
    return problemAt(node.spot, 'empty-value', { key: shortened(key, MOST_SHOWN) });
  }
  return problemAt(characterSpot(finding, node) ?? node.spot, finding.code, finding.parts as never);
}

/** Where in a text that stands in its file just as it is read the refused character is. */
function characterSpot(finding: Finding, node: TreeNode): SourceSpot | null {
  if (finding.code !== 'character-not-in-font' || node.kind !== 'text') return null;
  const at = node.text.indexOf(finding.parts.character);
  if (at < 0 || node.text.length !== node.spot.length) return null;
  return { ...node.spot, column: node.spot.column + at, length: finding.parts.character.length };
}

function unknownKey(path: TreePath, { root, schema }: Checked): LocatedProblem {
  const key = String(path.at(-1));
  const owner = schemaAt(schema, path.slice(0, -1));
  const known = keysOf(owner);
  return problemAt(keySpotAt(root, path), 'unknown-key', {
    key: shortened(key, MOST_SHOWN),
    thing: thingOf(owner),
    nearest: nearestName(key, known),
    known,
  });
}

function missingKey(path: TreePath, { root, schema }: Checked): LocatedProblem {
  const owner = nearestNode(root, path.slice(0, -1));
  const [example = null] = examplesOf(schemaAt(schema, path));
  return problemAt(owner.spot, 'missing-key', {
    key: String(path.at(-1)),
    thing: thingOf(schemaAt(schema, path.slice(0, -1))),
    example,
  });
}

function badKey(path: TreePath, { root, schema }: Checked): LocatedProblem {
  const key = shortened(String(path.at(-1)), MOST_SHOWN);
  const spot = keySpotAt(root, path);
  const isNumbered = hasNumberKeys(schemaAt(schema, path.slice(0, -1)));
  return isNumbered
    ? problemAt(spot, 'not-a-corner-number', { key })
    : problemAt(spot, 'bad-id', { id: key });
}

function notAChoice(node: TreeNode, choices: readonly string[]): LocatedProblem {
  if (node.kind !== 'text') return problemAt(node.spot, 'one-value-expected', { forms: choices });
  const nearest = nearestName(node.text, choices);
  return problemAt(node.spot, 'not-a-choice', { value: shortened(node.text, MOST_SHOWN), choices, nearest });
}

function wrongForm(expected: string, path: TreePath, node: TreeNode, { schema }: Checked): LocatedProblem {
  const wanted = schemaAt(schema, path);
  if (expected === 'array') return problemAt(node.spot, 'list-expected', {});
  if (expected === 'string') return problemAt(node.spot, 'one-value-expected', { forms: examplesOf(wanted) });
  return problemAt(node.spot, 'keys-expected', { known: keysOf(wanted) });
}
