import { Usd } from '../../units/index.ts';
import { type Figure, num } from '../figure.ts';
import type { BuiltSteps } from '../flights/index.ts';
import type { BagSupplier, Build, ConcreteSupplier } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import type { ThickenedSlab } from '../thickened/index.ts';
import type { TopicResult } from '../topic.ts';
import type { Allowances } from './allowance-figures.ts';
import { type BagFigures, bagFigures } from './bag-figures.ts';
import { strengthFigure } from './strength-figure.ts';
import { type TotalFigures, totals } from './total-figures.ts';
import { type TruckTerms, truckLoadsCuYd } from './truck.ts';
import { type TruckFigures, truckFigures, truckProblem } from './truck-figures.ts';
import { type PouredSlab, type SlabFigures, slabFigures, stepsNet } from './volume-figures.ts';

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

type PouredShape = Pick<ShapeFigures, 'area' | 'formed-straight' | 'formed-curved'>;

export type ConcreteResult = TopicResult<
  {
    readonly slabs: Readonly<Record<string, SlabFigures>>;
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
  readonly shapes: { readonly slabs: Readonly<Record<string, PouredShape>> };
  readonly thickened: Readonly<Record<string, Pick<ThickenedSlab, 'volume'>>>;
  readonly mix: Pick<Build['mix'], 'exposure'>;
  readonly allowances: Allowances;
  readonly supplier: ConcreteSupplier;
  readonly bagged: BagSupplier;
  readonly laborUsdPerHr: Figure;
  /** Whether the pour falls on a Saturday. */
  readonly poursOnSaturday: boolean;
}): ConcreteResult {
  const steps = Object.fromEntries(
    Object.values(input.steps).map((flight) => [flight.id, { net: stepsNet(flight) }]),
  );
  const poured = pouredSlabs(input);
  const slabs = Object.fromEntries(poured.map(({ slab, figures }) => [slab.id, figures]));
  const allowed = poured.map(({ slab, shape, figures }) => ({
    id: slab.id,
    isProbed: slab.probedIn !== null,
    areaSqFt: shape.area,
    depthIn: figures.depth,
    formedStraight: shape['formed-straight'],
    formedCurved: shape['formed-curved'],
  }));
  const total = totals({ slabs, steps, allowed, allowances: input.allowances });

  const { supplier } = input;
  const problem = truckProblem(supplier);
  const terms: TruckTerms = {
    ...supplier,
    // A truck that cannot carry one increment is the problem; the order is still shown, one increment a load.
    truckCuYd: problem === null ? supplier.truckCuYd : supplier.incrementCuYd,
    saturdayFee: input.poursOnSaturday ? supplier.saturdayFee : null,
  };
  const truck = truckFigures(total.needed, terms);
  const bags = bagFigures(total.needed, input.bagged, input.laborUsdPerHr);
  const supply = new Usd(truck.cost.value).lte(new Usd(bags.cost.value)) ? 'truck' : 'bags';

  return {
    figures: { slabs, steps, total, truck, bags, 'strength-floor': strengthFigure(input.mix.exposure) },
    data: { supply, loadsCuYd: supply === 'truck' ? truckLoadsCuYd(num(truck.order), terms) : [] },
    problems: problem === null ? [] : [problem],
  };
}

function pouredSlabs({ slabs, shapes, thickened }: Parameters<typeof calcConcrete>[0]) {
  return Object.values(slabs).map((slab) => {
    const shape = thingNamed(shapes.slabs, slab.id, 'shape');
    return { slab, shape, figures: slabFigures(slab, shape.area, thickened[slab.id]?.volume ?? null) };
  });
}
