import type { Rule } from '../calculate/rule.ts';
import { nearestName } from '../problems/index.ts';
import { parseLimit, type RuleChangesSection, type RulesInput } from '../read/index.ts';
import type { Finder } from './problems-found.ts';

/** The rules of a job: those of its sets, with what the company changes. */
export function rulesOf(
  finder: Finder,
  names: readonly string[],
  rules: RulesInput,
  changes: RuleChangesSection | undefined,
): readonly Rule[] {
  checkCodes(finder, rules, changes ?? {});
  const chosen = new Map<string, { readonly rule: Rule; readonly set: string }>();
  for (const [index, name] of names.entries()) {
    const path = `job.rule-sets.${index}`;
    const set = rules.sets.get(name);
    if (set === undefined) {
      const known = [...rules.sets.keys()];
      finder.add(path, 'unknown-id', {
        id: name,
        thing: 'rule-set',
        nearest: nearestName(name, known),
        known,
      });
      continue;
    }
    for (const rule of set.rules) {
      const first = chosen.get(rule.code);
      if (first !== undefined) finder.add(path, 'rule-twice', { code: rule.code, where: first.set });
      else chosen.set(rule.code, { rule: changed(finder, rule, changes), set: name });
    }
  }
  return [...chosen.values()].map(({ rule }) => rule);
}

function checkCodes(finder: Finder, rules: RulesInput, changes: RuleChangesSection): void {
  const known = [...rules.sets.values()].flatMap((set) => set.rules.map(({ code }) => code));
  for (const code of Object.keys(changes)) {
    if (known.includes(code)) continue;
    finder.add(`company.rules.${code}`, 'unknown-id', {
      id: code,
      thing: 'rule',
      nearest: nearestName(code, known),
      known: [],
    });
  }
}

function changed(finder: Finder, rule: Rule, changes: RuleChangesSection | undefined): Rule {
  const change = changes !== undefined && Object.hasOwn(changes, rule.code) ? changes[rule.code] : undefined;
  if (change === undefined) return rule;
  const severity = change.severity ?? rule.severity;
  if (change.limit === undefined) return { ...rule, severity };
  const limit = parseLimit(change.limit);
  if (limit === null || limit.kind !== parseLimit(rule.limitText)?.kind) {
    finder.add(`company.rules.${rule.code}.limit`, 'limit-kind', {
      value: change.limit,
      forms: [rule.limitText],
    });
    return rule;
  }
  return { ...rule, severity, limit: limit.value, limitText: change.limit };
}
