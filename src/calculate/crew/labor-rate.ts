import type { Decimal } from 'decimal.js';
import type { CoreProblem } from '../../problems/index.ts';
import { roundToCent, sumUsd, Usd } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, figure, given } from '../figure.ts';
import type { Company, Person, Plan } from '../job.ts';
import { thingNamed } from '../parts.ts';
import { inputKey, inputsOf, sumExpression } from '../sum-figure.ts';
import type { TopicResult } from '../topic.ts';

export type LaborRateFigures = { readonly 'average-wage': Figure; readonly 'labor-cost-per-hour': Figure };

/**
 * What an hour of one person of this job's crew costs.
 *
 * average = sum of the wages / people; cost = average (1 + burden), burden a share of the wage.
 * Both are rates to the cent, so that what a reader sees multiplies out to the cost lines.
 *
 * @throws {RangeError} If the crew is empty or names a person the company does not have (the
 *   reader refuses such a file, so only a programmer can cause it).
 */
export function calcLaborRate(input: {
  readonly plan: Pick<Plan, 'crew'>;
  readonly labor: Pick<Company['labor'], 'burdenRatio' | 'people'>;
}): TopicResult<LaborRateFigures, null> {
  const crew = input.plan.crew.map((id) => thingNamed(input.labor.people, id, 'person of the company'));
  if (crew.length === 0) throw new RangeError('a crew needs at least one person');

  const wages = crew.map(({ id, wage }) => ({
    key: inputKey('wage', id, 'UsdPerHr'),
    input: given(wagePath(id), wage.amountUsd, '$/h'),
  }));
  const wagesUsdPerHr = crew.map(({ wage }) => wage.amountUsd);
  const average = figure({
    value: averageWageUsdPerHr(wagesUsdPerHr),
    unit: '$/h',
    decimals: 2,
    formula: `roundCent((${sumExpression(wages)}) / ${crew.length})`,
    inputs: inputsOf(wages),
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
  const { burdenRatio } = input.labor;
  const laborCost = figure({
    value: laborCostUsdPerHr({ wagesUsdPerHr, burdenRatio }),
    unit: '$/h',
    decimals: 2,
    formula: `roundCent((${sumExpression(wages)}) / ${crew.length} * (1 + burdenRatio))`,
    inputs: { ...inputsOf(wages), burdenRatio: given('company.labor.burden', burdenRatio, 'ratio') },
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
  return {
    figures: { 'average-wage': average, 'labor-cost-per-hour': laborCost },
    data: null,
    problems: crew.flatMap(notAnHour),
  };
}

/** Mean of the wages [$/h], to the cent. */
export function averageWageUsdPerHr(wagesUsdPerHr: readonly Decimal[]): Decimal {
  return roundToCent(sumUsd(wagesUsdPerHr).dividedBy(wagesUsdPerHr.length));
}

/**
 * Mean of the wages x (1 + burden) [$/h], to the cent, rounded once.
 *
 * @param crew.burdenRatio What the employer pays on top, as a share of the wage, 0 or more.
 */
export function laborCostUsdPerHr(crew: { wagesUsdPerHr: readonly Decimal[]; burdenRatio: number }): Decimal {
  const meanUsdPerHr = sumUsd(crew.wagesUsdPerHr).dividedBy(crew.wagesUsdPerHr.length);
  return roundToCent(meanUsdPerHr.times(new Usd(crew.burdenRatio).plus(1)));
}

function notAnHour({ id, wage }: Person): CoreProblem[] {
  if (wage.perUnit === 'h') return [];
  return [{ code: 'wage-not-per-hour', path: wagePath(id), parts: { unit: wage.perUnit } }];
}

function wagePath(id: string): string {
  return `company.labor.people.${id}.wage`;
}
