import type * as z from 'zod';
import type { LocatedProblem } from '../problems/index.ts';
import { isMissing, pathOf, problemsOfIssues } from './issues.ts';
import { plainValue, type TreeNode, type TreePath } from './tree.ts';

/**
 * @property value What could be read. With problems it is what is left when all that is wrong is
 *                 taken out, so that the rest can be checked too; undefined if nothing is left.
 */
export type CheckedSection = { readonly value: unknown; readonly problems: readonly LocatedProblem[] };

/** Taking a value out can leave its map without a key it needs, which is then taken out, and so on. */
const MOST_ROUNDS = 8;

/** A part of the files against its schema, all problems at once. */
export function checkSection(root: TreeNode, schema: z.ZodType): CheckedSection {
  const first = schema.safeParse(plainValue(root));
  if (first.success) return { value: first.data, problems: [] };
  const problems = problemsOfIssues(first.error.issues, { root, schema });
  return { value: restOf(root, schema, first.error.issues), problems };
}

function restOf(root: TreeNode, schema: z.ZodType, issues: readonly z.core.$ZodIssue[]): unknown {
  let left = root;
  let wrong = issues;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const cut = cutOut(left, wrong);
    if (cut === null) return undefined;
    const parsed = schema.safeParse(plainValue(cut));
    if (parsed.success) return parsed.data;
    left = cut;
    wrong = parsed.error.issues;
  }
  return undefined;
}

/** A tree without the places of the issues, from the last to the first so that list items keep their places. */
function cutOut(root: TreeNode, issues: readonly z.core.$ZodIssue[]): TreeNode | null {
  const paths = issues.flatMap((issue) => pathsToCut(issue, root)).toReversed();
  return paths.reduce<TreeNode | null>((tree, path) => (tree === null ? null : without(tree, path)), root);
}

function pathsToCut(issue: z.core.$ZodIssue, root: TreeNode): readonly TreePath[] {
  const path = pathOf(issue);
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => [...path, key]);
  return [isMissing(issue, root) ? path.slice(0, -1) : path];
}

/** A tree without the value at a path; null if that is all of it. */
function without(node: TreeNode, path: TreePath): TreeNode | null {
  const [step, ...rest] = path;
  if (step === undefined) return null;
  if (node.kind === 'map') {
    const entries = new Map(node.entries);
    const entry = entries.get(String(step));
    const left = entry === undefined ? null : without(entry.node, rest);
    if (entry === undefined || left === null) entries.delete(String(step));
    else entries.set(String(step), { ...entry, node: left });
    return { ...node, entries };
  }
  if (node.kind === 'list') {
    const items = node.items.flatMap((item, index) => {
      if (index !== Number(step)) return [item];
      const left = without(item, rest);
      return left === null ? [] : [left];
    });
    return { ...node, items };
  }
  return null;
}
