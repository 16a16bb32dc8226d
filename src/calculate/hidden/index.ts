import type { Decimal } from 'decimal.js';
import type { CoreProblem } from '../../problems/index.ts';
import { Usd } from '../../units/index.ts';
import type { JobEdit } from '../edits.ts';
import { type Figure, figure } from '../figure.ts';
import type { PriceTerms } from '../job.ts';
import type { Price } from '../price/index.ts';
import type { TopicResult } from '../topic.ts';

export type HiddenResult = TopicResult<
  Readonly<Record<string, { readonly total: Figure; readonly difference: Figure }>>,
  Readonly<Record<string, Price>>
>;

type Recalculated = {
  readonly work: { readonly price: { readonly figures: { readonly total: Figure } } } | null;
  readonly problems: readonly CoreProblem[];
};

/**
 * What each likely hidden condition adds to the price: the price of the job with its edits, less
 * the price as it is. Where that comes out below zero (fewer dump trips of another kind, say)
 * nothing is added.
 */
export function calcHidden(input: {
  readonly hidden: PriceTerms['hidden'];
  readonly base: { readonly total: Figure };
  readonly recalculate: (edits: readonly JobEdit[]) => Recalculated;
}): HiddenResult {
  const { hidden, base, recalculate } = input;
  const figures: Record<string, { total: Figure; difference: Figure }> = {};
  const data: Record<string, Price> = {};
  const problems: CoreProblem[] = [];
  for (const { id, edits } of Object.values(hidden)) {
    const again = recalculate(edits);
    problems.push(
      ...again.problems.map(({ code, parts }) => ({ code, parts, path: `price.hidden.${id}.edits` })),
    );
    if (again.work === null) continue;
    const total = totalFigure(again.work.price.figures.total, edits);
    const added = addedUsd(total, base.total);
    data[id] = added as Price;
    figures[id] = {
      total,
      difference: figure({
        value: added,
        unit: '$',
        decimals: 2,
        formula: 'max(0, totalThenUsd - totalNowUsd)',
        inputs: { totalThenUsd: total, totalNowUsd: base.total },
        source: 'company figure',
        rounding: 'cent',
      }),
    };
  }
  return { figures, data, problems };
}

function totalFigure(total: Figure, edits: readonly JobEdit[]): Figure {
  const names = edits.map(({ edit }) => edit).join(', ');
  return figure({
    value: total.value,
    unit: '$',
    decimals: 2,
    formula: { method: `the whole job calculated again after the edits: ${names}` },
    inputs: {},
    source: 'company figure',
    rounding: 'cent',
  });
}

function addedUsd(then: Figure, now: Figure): Decimal {
  return Usd.max(0, new Usd(then.value).minus(now.value));
}
