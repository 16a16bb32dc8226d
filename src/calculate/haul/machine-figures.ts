import { COMPANY_FIGURE, type Figure, figure, given } from '../figure.ts';
import { type HaulRates, haulCostFigure } from './cost-figures.ts';
import { type Carried, legHr, type Yard } from './machine-legs.ts';

/** Bringing a machine and taking it back. */
export type MachineFigures = {
  /** What it weighs, of the payload of its trailer. */
  readonly fullness: Figure;
  /** Of the driver [h]. */
  readonly hours: Figure;
  readonly miles: Figure;
  /** Driver and truck [$]. */
  readonly cost: Figure;
};

/** By machine; between two of them the truck drives the way once more. */
export function machineFigures(
  carried: readonly Carried[],
  made: {
    readonly yard: Yard | null;
    readonly rates: HaulRates;
    readonly payloadOf: (trailer: string) => Figure;
  },
): Readonly<Record<string, MachineFigures>> {
  const { yard, rates, payloadOf } = made;
  if (yard === null) return {};
  const driveHr = given('company.yard.drive', yard.driveHr, 'h');
  const tieDownHr = given('company.yard.tie-down', yard.tieDownHr, 'h');
  const distanceMi = given('company.yard.distance', yard.distanceMi, 'mi');
  return Object.fromEntries(
    carried.map(({ machine, trailer }, index) => {
      const again = index === 0 ? 0 : 2;
      const payloadLb = payloadOf(trailer);
      const hours = figure({
        value: 2 * legHr(yard) + again * yard.driveHr,
        unit: 'h',
        decimals: 2,
        formula: `2 * (tieDownHr + driveHr + tieDownHr)${index === 0 ? '' : ' + 2 * driveHr'}`,
        inputs: { tieDownHr, driveHr },
        source: COMPANY_FIGURE,
      });
      const miles = figure({
        value: (2 + again) * yard.distanceMi,
        unit: 'mi',
        decimals: 0,
        formula: `${2 + again} * distanceMi`,
        inputs: { distanceMi },
        source: COMPANY_FIGURE,
      });
      const weightLb = given(
        `company.machines.${machine.id}.tied-down.weight`,
        machine.tiedDown.weightLb,
        'lb',
      );
      return [
        machine.id,
        {
          fullness: figure({
            value: machine.tiedDown.weightLb / Number(payloadLb.value),
            unit: 'ratio',
            decimals: 2,
            formula: 'weightLb / payloadLb',
            inputs: { weightLb, payloadLb },
          }),
          hours,
          miles,
          cost: haulCostFigure({ hours, miles, fee: null }, rates),
        },
      ];
    }),
  );
}
