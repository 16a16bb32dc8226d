import type { CrewFigures } from '../crew/index.ts';
import { type Figure, given } from '../figure.ts';
import type { Company, PriceTerms, TowVehicle } from '../job.ts';
import { inputKey, sumOfUsdParts } from '../sum-figure.ts';
import type { TopicResult } from '../topic.ts';
import { COST_GROUPS, type CostGroup, type CostKind } from './groups.ts';
import { deliveryLines, type HaulCosts, haulLines } from './haul-lines.ts';
import { laborLines } from './labor-lines.ts';
import { amountLine, type CostLine, joinLines } from './line.ts';
import { machineLines } from './machine-lines.ts';
import { type CuringNeed, type MaterialFigures, materialLines } from './material-lines.ts';
import { type PackFigures, packFigures } from './packs.ts';

export { COST_GROUPS, type CostGroup, type CostKind } from './groups.ts';

export type CostFigures = {
  /** Whole packs and strips to buy, each. */
  readonly packs: PackFigures;
  readonly lines: Readonly<Record<string, Figure>>;
  readonly groups: Readonly<Record<CostGroup, Figure>>;
  /** The sum of the lines that are material. */
  readonly materials: Figure;
  readonly total: Figure;
};

export type CostData = {
  readonly lines: readonly { readonly name: string; readonly group: CostGroup; readonly kind: CostKind }[];
};

export type CostResult = TopicResult<CostFigures, CostData>;

/**
 * What the job costs the company, line by line.
 *
 * Each line is rounded once, to the cent; groups and the total are sums of the lines as shown.
 * Bagged concrete is paid as bags here: the hours of mixing are labor, and stand there once.
 */
export function calcCost(
  input: MaterialFigures & {
    readonly laborUsdPerHr: Figure;
    readonly crew: CrewFigures;
    readonly firstPhasesShareDay: boolean;
    readonly haul: HaulCosts;
    readonly supply: 'truck' | 'bags';
    readonly production: Company['production'];
    readonly machines: Company['machines'];
    readonly towVehicle: Pick<TowVehicle, 'cost'>;
    readonly suppliers: Pick<
      Company['suppliers'],
      'base' | 'geotextile' | 'mesh' | 'bars' | 'glassFibreBars' | 'dowels' | 'bagged' | 'sundries'
    >;
    readonly ownForms: Company['forms'];
    readonly otherCosts: PriceTerms['otherCosts'];
    /** Curing compound [gal] and sheeting [sq ft]. */
    readonly curing: CuringNeed;
  },
): CostResult {
  const packs = packFigures({
    compoundGal: input.curing.compound,
    sealedFt: input.edges.total.sealed,
    isolationFt: input.edges.total.isolation,
    holes: input.edges.total.holes,
    ties: input.reinforcement.total.ties,
    dowels: input.suppliers.dowels,
    sundries: input.suppliers.sundries,
  });
  const { lines, problems } = joinLines([
    { lines: laborLines(input.crew.tasks, input.laborUsdPerHr), problems: [] },
    machineLines(input),
    haulLines(input.haul, input.towVehicle),
    materialLines({ ...input, figures: input, packs, boughtBase: input.haul.base }),
    deliveryLines(input.haul),
    { lines: placingLines(input), problems: [] },
    { lines: otherLines(input.otherCosts), problems: [] },
  ]);
  return {
    figures: {
      packs,
      lines: Object.fromEntries(lines.map(({ name, cost }) => [name, cost])),
      groups: Object.fromEntries(
        COST_GROUPS.map((group) => [group, sumOfLines(lines.filter((line) => line.group === group))]),
      ) as Record<CostGroup, Figure>,
      materials: sumOfLines(lines.filter(({ kind }) => kind === 'material')),
      total: sumOfLines(lines),
    },
    data: { lines: lines.map(({ name, group, kind }) => ({ name, group, kind })) },
    problems,
  };
}

/** Hire of what carries concrete from the truck. */
function placingLines({ concrete, supply }: Pick<MaterialFigures, 'concrete'> & { readonly supply: string }) {
  if (supply !== 'truck' || concrete.placing === undefined) return [];
  return amountLine({
    name: 'placing-hire',
    group: 'concrete',
    kind: 'machine',
    amount: concrete.placing.total.hire,
  });
}

function otherLines(others: PriceTerms['otherCosts']): readonly CostLine[] {
  return Object.values(others).flatMap(({ id, costUsd }) =>
    amountLine({
      name: `other-${id}`,
      group: 'other',
      kind: 'other',
      amount: given(`price.other-costs.${id}.cost`, costUsd, '$'),
    }),
  );
}

function sumOfLines(lines: readonly CostLine[]): Figure {
  return sumOfUsdParts(lines.map(({ name, cost }) => ({ key: inputKey('cost', name, 'Usd'), input: cost })));
}
