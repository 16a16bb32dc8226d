import type { Outline } from '../../geometry/index.ts';
import { type Pace, Usd } from '../../units/index.ts';
import { type Figure, given } from '../figure.ts';
import type { BuiltSteps } from '../flights/index.ts';
import type { BagSupplier, Build, ConcreteSupplier, Placing } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import {
  type CarriedBy,
  cuYdPerHr,
  type PlacingAccess,
  type PlacingFigures,
  type PlacingPlan,
  planPlacing,
} from '../placing/index.ts';
import type { ThickenedSlab } from '../thickened/index.ts';
import type { TopicResult } from '../topic.ts';
import { usdPerCuYd } from '../usd-per-cu-yd.ts';
import type { Allowances } from './allowance-figures.ts';
import { type BagFigures, bagFigures } from './bag-figures.ts';
import { byTruck } from './by-truck.ts';
import type { Arrival } from './delivery.ts';
import type { DeliveryFigures } from './delivery-figures.ts';
import { type MixFigures, mixFigures } from './mix-figures.ts';
import { placedThings } from './placed-things.ts';
import { strengthFigure } from './strength-figure.ts';
import { placedTotals, type TotalFigures, withPump } from './total-figures.ts';
import type { TruckFigures } from './truck-figures.ts';
import { type PouredSlab, type SlabFigures, slabFigures, stepsNet } from './volume-figures.ts';

export { airRange, airTarget } from './air-table.ts';
export type { BagFigures } from './bag-figures.ts';
export { bagCount, baggedCostUsd } from './bags.ts';
export { type Arrival, mostPerLoadCuYd } from './delivery.ts';
export type { DeliveryFigures } from './delivery-figures.ts';
export { type MixFigures, mixFigures } from './mix-figures.ts';
export { slumpToleranceIn } from './slump.ts';
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
export { waterCementMost } from './water-cement.ts';

type PouredShape = Pick<ShapeFigures, 'area' | 'formed-straight' | 'formed-curved'>;

export type ConcreteResult = TopicResult<
  {
    readonly slabs: Readonly<Record<string, SlabFigures>>;
    readonly steps: Readonly<Record<string, { readonly net: Figure }>>;
    readonly total: TotalFigures;
    /** Only where the company and the job say enough of it. */
    readonly placing?: PlacingFigures;
    readonly delivery: DeliveryFigures;
    readonly truck: TruckFigures;
    readonly bags: BagFigures;
    readonly 'strength-floor': Figure;
    readonly mix: MixFigures;
  },
  {
    readonly supply: 'truck' | 'bags';
    /** Loads to call for; none where bags are cheaper. */
    readonly loadsCuYd: readonly number[];
    readonly arrivals: readonly Arrival[];
    /** How each slab, and each flight by `steps--` and its id, is placed beyond the chute; null where nobody said. */
    readonly placedBy: Readonly<Record<string, CarriedBy | null>> | null;
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
  readonly mix: Build['mix'];
  readonly allowances: Allowances;
  readonly supplier: ConcreteSupplier;
  readonly bagged: BagSupplier;
  readonly laborUsdPerHr: Figure;
  /** Whether the pour falls on a Saturday. */
  readonly poursOnSaturday: boolean;
  /** Of the slabs, level, as drawn. */
  readonly plans: Readonly<Record<string, Outline>>;
  readonly access: PlacingAccess;
  readonly placing: Placing;
  /** How fast the crew places what arrives. */
  readonly placePace: Pace;
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
  const placed = placedTotals({ slabs, steps, allowed, allowances: input.allowances });
  const plan = planPlacing({
    ...input,
    things: placedThings({ slabs, steps }, placed, input.plans),
    concreteUsdPerCuYd: usdPerCuYd(input.supplier.price),
  });
  const total = withPump(placed, plan?.isPumped === true ? input.placing.pump : null);
  const made = byTruck({
    ...input,
    needed: total.needed,
    placed: placed.placed,
    clockHr: plan?.figures.total['clock-hours'] ?? null,
    additives: input.mix.additives,
    placePerHr: given('company.production.place.pace', cuYdPerHr(input.placePace), 'yd3/h'),
  });
  const floor = strengthFigure(input.mix.exposure);
  const bags = bagFigures(total.needed, input.bagged, input.laborUsdPerHr);
  const truckUsd = [made.truck.cost, ...placingCosts(plan)].reduce(
    (sumUsd, { value }) => sumUsd.plus(value),
    new Usd(0),
  );
  const supply = truckUsd.lte(new Usd(bags.cost.value)) ? 'truck' : 'bags';

  return {
    figures: {
      slabs,
      steps,
      total,
      ...(plan === null ? {} : { placing: plan.figures }),
      delivery: made.delivery,
      truck: made.truck,
      bags,
      'strength-floor': floor,
      mix: mixFigures(input.mix, floor),
    },
    data: {
      supply,
      arrivals: supply === 'truck' ? made.arrivals : [],
      loadsCuYd: supply === 'truck' ? made.arrivals.map(({ loadCuYd }) => loadCuYd) : [],
      placedBy: plan?.by ?? null,
    },
    problems: made.problems,
  };
}

function placingCosts(plan: PlacingPlan | null): readonly Figure[] {
  return plan === null ? [] : [plan.figures.total['labor-cost'], plan.figures.total.hire];
}

function pouredSlabs({ slabs, shapes, thickened, allowances }: Parameters<typeof calcConcrete>[0]) {
  return Object.values(slabs).map((slab) => {
    const shape = thingNamed(shapes.slabs, slab.id, 'shape');
    const edges = thickened[slab.id]?.volume ?? null;
    return { slab, shape, figures: slabFigures(slab, shape.area, edges, allowances.baseUnevennessIn) };
  });
}
