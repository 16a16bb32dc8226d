import { Usd } from '../../units/index.ts';
import { type Figure, num } from '../figure.ts';
import type { BuiltSteps } from '../flights/index.ts';
import type { BagSupplier, Company, ConcreteSupplier, Job, Slab } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { type BagFigures, bagFigures } from './bag-figures.ts';
import { strengthFigure } from './strength-figure.ts';
import { type TruckTerms, truckLoadsCuYd } from './truck.ts';
import { type TruckFigures, truckFigures, truckProblem } from './truck-figures.ts';
import { slabNet, stepsNet, type TotalFigures, totals } from './volume-figures.ts';

export type { BagFigures } from './bag-figures.ts';
export { bagCount, baggedCostUsd } from './bags.ts';
export { type Standard, type StrengthRow, strengthFloor, strengthRows } from './strength.ts';
export {
  cheapestTruckOrder,
  shortLoadFeesUsd,
  type TruckTerms,
  truckLoadsCuYd,
  truckOrderCostUsd,
} from './truck.ts';
export type { TruckFigures } from './truck-figures.ts';
export { slabCuYd, spillCuYd, stepsCuYd, unevennessCuYd } from './volumes.ts';

type PouredSlab = Pick<Slab, 'id' | 'thicknessIn'>;

export type ConcreteResult = TopicResult<
  {
    readonly slabs: Readonly<Record<string, { readonly net: Figure }>>;
    readonly steps: Readonly<Record<string, { readonly net: Figure }>>;
    readonly total: TotalFigures;
    readonly truck: TruckFigures;
    readonly bags: BagFigures;
    readonly 'strength-floor': Figure;
  },
  {
    readonly supply: 'truck' | 'bags';
    /** Loads to call for; none where bags are cheaper. */
    readonly loadsCuYd: readonly number[];
  }
>;

/**
 * Concrete of a job: net, the named allowances on it, the order by truck, the bags in its place,
 * and which of the two is cheaper.
 */
export function calcConcrete(input: {
  readonly slabs: Readonly<Record<string, PouredSlab>>;
  readonly steps: Readonly<Record<string, BuiltSteps>>;
  readonly shapes: Pick<OutlineResult['figures'], 'slabs'>;
  readonly mix: Pick<Job['build']['mix'], 'exposure'>;
  readonly allowances: Pick<Company['allowances'], 'baseUnevennessIn' | 'spillRatio'>;
  readonly supplier: ConcreteSupplier;
  readonly bagged: BagSupplier;
  readonly laborUsdPerHr: Figure;
}): ConcreteResult {
  const areas = Object.fromEntries(
    Object.values(input.slabs).map(({ id }) => [id, thingNamed(input.shapes.slabs, id, 'shape').area]),
  );
  const slabs = Object.fromEntries(
    Object.values(input.slabs).map((slab) => [
      slab.id,
      { net: slabNet(slab, thingNamed(areas, slab.id, 'area')) },
    ]),
  );
  const steps = Object.fromEntries(
    Object.values(input.steps).map((flight) => [flight.id, { net: stepsNet(flight) }]),
  );
  const total = totals({ slabs, steps, areas, allowances: input.allowances });

  const problem = truckProblem(input.supplier);
  // A truck that cannot carry one increment is the problem; the order is still shown, one increment a load.
  const terms: TruckTerms =
    problem === null ? input.supplier : { ...input.supplier, truckCuYd: input.supplier.incrementCuYd };
  const truck = truckFigures(total.needed, terms);
  const bags = bagFigures(total.needed, input.bagged, input.laborUsdPerHr);
  const supply = new Usd(truck.cost.value).lte(new Usd(bags.cost.value)) ? 'truck' : 'bags';

  return {
    figures: { slabs, steps, total, truck, bags, 'strength-floor': strengthFigure(input.mix.exposure) },
    data: { supply, loadsCuYd: supply === 'truck' ? truckLoadsCuYd(num(truck.order), terms) : [] },
    problems: problem === null ? [] : [problem],
  };
}
