import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { Company } from '../job.ts';
import { thingNamed } from '../parts.ts';
import { inputKey } from '../sum-figure.ts';
import { type HaulRates, haulCostFigure } from './cost-figures.ts';
import type { MachineLeg, Yard } from './machine-legs.ts';

/** One ride of machines between the yard and the job. */
export type MachineFigures = {
  /** What rides weighs, of the payload of its trailer. */
  readonly fullness: Figure;
  /** Of the driver [h]. */
  readonly hours: Figure;
  readonly miles: Figure;
  /** Driver and truck [$]. */
  readonly cost: Figure;
};

/** By way and number, such as `to-job-1`; between two rides of one way the truck drives back empty. */
export function machineFigures(
  legs: readonly MachineLeg[],
  made: {
    readonly yard: Yard;
    readonly machines: Company['machines'];
    readonly rates: HaulRates;
    readonly payloadOf: (trailer: string) => Figure;
  },
): Readonly<Record<string, MachineFigures>> {
  const { yard, rates } = made;
  const driveHr = given('company.yard.drive', yard.driveHr, 'h');
  const tieDownHr = given('company.yard.tie-down', yard.tieDownHr, 'h');
  const distanceMi = given('company.yard.distance', yard.distanceMi, 'mi');
  return Object.fromEntries(
    legs.map((leg) => {
      const number = legs.filter(({ way }) => way === leg.way).indexOf(leg) + 1;
      const drives = number === 1 ? 1 : 2;
      const handled = 2 * leg.machines.length;
      const hours = figure({
        value: handled * yard.tieDownHr + drives * yard.driveHr,
        unit: 'h',
        decimals: 2,
        formula: `${handled} * tieDownHr + ${drives} * driveHr`,
        inputs: { tieDownHr, driveHr },
        source: COMPANY_FIGURE,
      });
      const miles = figure({
        value: drives * yard.distanceMi,
        unit: 'mi',
        decimals: 0,
        formula: `${drives} * distanceMi`,
        inputs: { distanceMi },
        source: COMPANY_FIGURE,
      });
      const cost = haulCostFigure({ hours, miles, fee: null }, rates);
      return [`${leg.way}-${number}`, { fullness: fullnessOf(leg, made), hours, miles, cost }] as const;
    }),
  );
}

function fullnessOf(
  { machines: ids, trailer }: MachineLeg,
  { machines, payloadOf }: Pick<Parameters<typeof machineFigures>[1], 'machines' | 'payloadOf'>,
): Figure {
  const payloadLb = payloadOf(trailer);
  const weighs = ids.map((id) => thingNamed(machines, id, 'machine').tiedDown?.weightLb ?? 0);
  const names = ids.map((id) => inputKey('machine', id, 'Lb'));
  const weights = ids.map((id, index) =>
    given(`company.machines.${id}.tied-down.weight`, weighs[index] ?? 0, 'lb'),
  );
  return figure({
    value: weighs.reduce((sum, weightLb) => sum + weightLb, 0) / num(payloadLb),
    unit: 'ratio',
    decimals: 2,
    formula: `(${names.join(' + ')}) / payloadLb`,
    inputs: { ...Object.fromEntries(names.map((name, index) => [name, weights[index]])), payloadLb },
  });
}
