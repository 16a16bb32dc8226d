import type { Rule } from '../../../src/calculate/rule.ts';
import { readRules } from '../../../src/read/index.ts';

const { sets, problems } = readRules();
if (problems.length > 0) throw new Error(`shipped rules: ${JSON.stringify(problems)}`);

export const RULE_SETS: readonly string[] = [...sets.keys()];

/** The rules of a set that comes with the program, as the reader reads them. */
export function shippedRules(name: string): readonly Rule[] {
  const set = sets.get(name);
  if (set === undefined) throw new Error(`no rule set ${name}; there are ${RULE_SETS.join(', ')}`);
  return set.rules;
}
