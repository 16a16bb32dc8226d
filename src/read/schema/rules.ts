import * as z from 'zod';
import { lazily, listings, TEXT_OR_NUMBER } from './leaf.ts';
import { yesNo } from './quantities.ts';
import { byId, choice, reference, thing } from './shape.ts';

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

const severity = () => choice(['stop', 'fix', 'note'], 'How grave it is.');
const limit = () =>
  z
    .string()
    .meta({
      description: 'The limit, in a unit of the figure.',
      examples: ['4 in', '1:48', '10 %'],
      ...TEXT_OR_NUMBER,
    })
    .register(listings, { kind: 'limit', reader: null });

/** What a company changes in the shipped rules, by the code of the rule. */
export const ruleChangesSection = lazily(() =>
  byId(
    thing('rule-change', { limit: limit().optional(), severity: severity().optional() }),
    'Changes to shipped rules, by code.',
  ),
);

/** One file of shipped rules. */
export const ruleFile = lazily(() =>
  thing('rules-file', {
    label: reference('What the rule set is called.', 'Residential flatwork'),
    rules: byId(
      thing('rule', {
        figure: reference('Id of a figure; * stands for one name.', 'checks.driveway.*.thickness'),
        direction: choice(['at-most', 'at-least'], 'On which side of the limit it is well.'),
        limit: limit(),
        'applies-to': z.array(choice(RULE_TAGS, 'A tag of the jobs it is for.')).min(1),
        severity: severity(),
        source: reference('The published source.', 'common practice, no source'),
        seen: yesNo('Whether the source was read.'),
      }),
      'Rules by code.',
    ),
  }),
);

export type RuleChangesSection = z.output<ReturnType<typeof ruleChangesSection>>;
export type RuleFile = z.output<ReturnType<typeof ruleFile>>;
