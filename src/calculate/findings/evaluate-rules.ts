import type { CoreProblem } from '../../problems/index.ts';
import { Usd } from '../../units/index.ts';
import type { FigureTree, FigureUnit, FigureValue } from '../figure.ts';
import type { Acknowledgement } from '../job.ts';
import type { Rule, RuleTag, Severity } from '../rule.ts';
import type { OfficeText } from '../text.ts';
import { matchFigures } from './match-figures.ts';

/** Legal input, doubtful job: a figure on the wrong side of a limit. */
export type Finding = {
  readonly code: string;
  /** The names the stars of the pattern matched, joined by points; `job` where it has none. */
  readonly where: string;
  readonly severity: Severity;
  readonly figureId: string;
  readonly value: FigureValue;
  readonly unit: FigureUnit;
  readonly limit: number;
  readonly limitText: string;
  readonly direction: Rule['direction'];
  readonly source: string;
  readonly seen: boolean;
  /** Why somebody accepted it; null where nobody did. */
  readonly acknowledged: OfficeText | null;
};

/** Of the limit: the noise of a chain of doubles. 1/4 in per ft is 1:48, and is not above it. */
const NOISE_RATIO = 1e-9;

const ORDER: Readonly<Record<Severity, number>> = { stop: 0, fix: 1, note: 2 };

/**
 * Holds every figure a rule names against its limit.
 *
 * A rule applies where one of its tags is a tag of the job; one whose pattern matches no figure is
 * silent. An acknowledgement, by finding and place, that matches no finding is a problem: what
 * somebody accepted has changed.
 *
 * @returns findings, the gravest first, then in the order of the rules.
 */
export function evaluateRules(input: {
  readonly rules: readonly Rule[];
  readonly figures: FigureTree;
  readonly tags: readonly RuleTag[];
  readonly acknowledged: readonly Acknowledgement[];
}): { readonly findings: readonly Finding[]; readonly problems: readonly CoreProblem[] } {
  const { rules, figures, tags, acknowledged } = input;
  const findings = rules
    .filter(({ appliesTo }) => appliesTo.some((tag) => tags.includes(tag)))
    .flatMap((rule) => findingsOf(rule, figures, acknowledged))
    .toSorted((one, other) => ORDER[one.severity] - ORDER[other.severity]);
  const problems = acknowledged.flatMap((accepted, index): CoreProblem[] => {
    if (findings.some((finding) => isMeant(finding, accepted))) return [];
    const { finding, where } = accepted;
    return [
      {
        code: 'acknowledgement-without-finding',
        path: `job.acknowledged.${index}`,
        parts: { finding, where },
      },
    ];
  });
  return { findings, problems };
}

/**
 * Whether a value is on the wrong side of a limit. A value on the limit is not.
 *
 * Money is compared exactly; doubles are let off the noise of their arithmetic, 1e-9 of the
 * larger of limit and value (1e-9 itself for a limit of 0).
 */
export function isBeyond(value: FigureValue, limit: number, direction: Rule['direction']): boolean {
  const sign = direction === 'at-most' ? 1 : -1;
  if (typeof value !== 'number') return new Usd(value).minus(limit).times(sign).gt(0);
  const noise = NOISE_RATIO * Math.max(Math.abs(limit), Math.abs(value));
  return sign * (value - limit) > (limit === 0 ? NOISE_RATIO : noise);
}

function findingsOf(
  rule: Rule,
  figures: FigureTree,
  acknowledged: readonly Acknowledgement[],
): readonly Finding[] {
  const { code, severity, limit, limitText, direction, source, seen } = rule;
  return matchFigures(rule.figure, figures)
    .filter(({ figure }) => isBeyond(figure.value, limit, direction))
    .map(({ id, where, figure }) => {
      const { value, unit } = figure;
      const accepted = acknowledged.find((one) => isMeant({ code, where }, one));
      const because = accepted?.reason ?? null;
      return {
        code,
        where,
        severity,
        figureId: id,
        value,
        unit,
        limit,
        limitText,
        direction,
        source,
        seen,
        acknowledged: because,
      };
    });
}

function isMeant(
  finding: { readonly code: string; readonly where: string },
  accepted: Acknowledgement,
): boolean {
  return finding.code === accepted.finding && finding.where === accepted.where;
}
