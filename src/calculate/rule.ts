/** What a rule may apply to; a closed set, so that a typing mistake in a rule set is a problem. */
export const RULE_TAGS = [
  'any-job',
  'driveway',
  'walk',
  'patio',
  'porch',
  'steps',
  'freezing',
  'deicers',
  'haul',
  'price',
] as const;
export type RuleTag = (typeof RULE_TAGS)[number];

export type Severity = 'stop' | 'fix' | 'note';

/**
 * One limit, as a row of data. `figure` is a pattern over figure ids in which `*` stands for one
 * name (`joints.*.panel-ratio`); the matched names are the place of a finding.
 */
export type Rule = {
  readonly code: string;
  readonly figure: string;
  readonly limit: number;
  /** The limit as written in the rule set, with its unit. */
  readonly limitText: string;
  readonly direction: 'at-most' | 'at-least';
  readonly appliesTo: readonly RuleTag[];
  readonly severity: Severity;
  readonly source: string;
  readonly seen: boolean;
};
