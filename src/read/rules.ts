import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { type LocatedProblem, type Origin, problemAt } from '../problems/index.ts';
import { checkSection } from './check-section.ts';
import { parseLimit } from './limit.ts';
import { loadFile } from './load-file.ts';
import { addOrigins } from './origins.ts';
import { type RULE_TAGS, type RuleFile, ruleFile } from './schema/rules.ts';
import { readTree } from './yaml-tree.ts';

/** A rule as read; the core declares the same row for itself. */
type RuleInput = {
  readonly code: string;
  readonly figure: string;
  readonly limit: number;
  readonly limitText: string;
  readonly direction: 'at-most' | 'at-least';
  readonly appliesTo: readonly (typeof RULE_TAGS)[number][];
  readonly severity: 'stop' | 'fix' | 'note';
  readonly source: string;
  readonly seen: boolean;
};

type RuleSet = { readonly name: string; readonly label: string; readonly rules: readonly RuleInput[] };
export type RulesInput = {
  readonly sets: ReadonlyMap<string, RuleSet>;
  readonly problems: readonly LocatedProblem[];
};

const LIMIT_FORMS = ['4 in', '1:48', '10 %', '$1,000'];
const SHIPPED = join(import.meta.dirname, '..', 'rules');

/** All rule sets of a folder, each under the name of its file; those that come with the program if none is given. */
export function readRules(folder = SHIPPED): RulesInput {
  const sets = new Map<string, RuleSet>();
  const problems: LocatedProblem[] = [];
  for (const name of readdirSync(folder)
    .filter((each) => each.endsWith('.yaml'))
    .sort()) {
    const read = readRuleFile(join(folder, name), name.slice(0, -'.yaml'.length));
    problems.push(...read.problems);
    if (read.set !== null) sets.set(read.set.name, read.set);
  }
  return { sets, problems };
}

function readRuleFile(
  file: string,
  name: string,
): { set: RuleSet | null; problems: readonly LocatedProblem[] } {
  const loaded = loadFile(file);
  if ('problem' in loaded) return { set: null, problems: [loaded.problem] };
  const { root, problems } = readTree(loaded.text, file, 'company');
  if (root === null) return { set: null, problems };
  const checked = checkSection(root, ruleFile());
  const found = [...problems, ...checked.problems];
  if (checked.value === undefined) return { set: null, problems: found };
  const origins = new Map<string, Origin>();
  addOrigins(origins, name, root);
  const { label, rules } = checked.value as RuleFile;
  const rows = Object.entries(rules).flatMap(([code, rule]): RuleInput[] => {
    const limit = parseLimit(rule.limit);
    if (limit === null) {
      found.push(
        problemAt(origins.get(`${name}.rules.${code}.limit`)?.spot ?? { file, line: null }, 'limit-kind', {
          value: rule.limit,
          forms: LIMIT_FORMS,
        }),
      );
      return [];
    }
    const { figure, direction, severity, source, seen } = rule;
    return [
      {
        code,
        figure,
        limit: limit.value,
        limitText: rule.limit,
        direction,
        appliesTo: rule['applies-to'],
        severity,
        source,
        seen,
      },
    ];
  });
  return { set: { name, label, rules: rows }, problems: found };
}
