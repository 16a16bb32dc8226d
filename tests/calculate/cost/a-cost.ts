import { calcCost } from '../../../src/calculate/cost/index.ts';
import type { Company } from '../../../src/calculate/job.ts';
import type { CrewText, OfficeText } from '../../../src/calculate/text.ts';
import { rational } from '../../../src/units/index.ts';
import { crewOf, fig, machine, machines, production, rate, usd } from '../crew/a-plan.ts';

const called = { label: 'Supplier' as CrewText, phone: '555-0100' as CrewText };

export const suppliers: Pick<
  Company['suppliers'],
  'base' | 'geotextile' | 'mesh' | 'bars' | 'glassFibreBars' | 'dowels' | 'bagged' | 'sundries'
> = {
  base: {
    ...called,
    price: rate('24.50', 'ton'),
    incrementTon: 1,
    deliveryUsd: usd('90.00'),
    deliveryTon: 15,
    compactedLbPerCuFt: 130,
    looseOverCompacted: 1.2,
    noticeDays: 1,
  },
  geotextile: null,
  bagged: {
    ...called,
    price: rate('6.45', 'bag'),
    yieldCuFt: 0.6,
    weightLb: 80,
    mixing: { perHour: rational(12), unit: 'each', text: '12 each per h' },
  },
  mesh: {
    ...called,
    sheetLengthIn: 240,
    sheetWidthIn: 60,
    lapIn: 8,
    price: rate('31.00', 'sheet'),
    roll: null,
    noticeDays: 1,
  },
  bars: {
    ...called,
    stocksIn: [240],
    lapDiameters: 40,
    kerfIn: null,
    price: rate('0.92', 'lb'),
    noticeDays: 1,
  },
  glassFibreBars: null,
  dowels: null,
  sundries: {
    ...called,
    curingCoverageSqFtPerGal: 200,
    curingRoughCoverageSqFtPerGal: null,
    sheetingPrice: null,
    curingPackGal: 1,
    curingPriceUsd: usd('28.00'),
    isolationStripIn: 120,
    isolationPriceUsd: usd('4.75'),
    sealant: { fillsIn: 240, priceUsd: usd('9.50') },
    chairPriceUsd: usd('0.35'),
    barTies: { packCount: 400, priceUsd: usd('6.50') },
  },
};

export const ownForms: Company['forms'] = {
  boards: {
    'two-by-four': { id: 'two-by-four', heightIn: 3.5, lengthIn: 192, onHandCount: 6, priceUsd: usd('9.80') },
  },
  strips: {
    hardboard: {
      id: 'hardboard',
      thicknessIn: 0.25,
      heightIn: null,
      lengthIn: 96,
      lapIn: 12,
      bent: 'across-grain',
      leastRadiusIn: null,
      onHandCount: 0,
      priceUsd: usd('4.60'),
    },
  },
  runPastIn: null,
  sawKerfIn: null,
  stakeSpacingIn: 36,
  stakeSpacingCurvedIn: null,
  stakePriceUsd: usd('1.15'),
  stakesOnHandCount: 30,
  kickerSpacingIn: null,
  screwsPerStakeCount: null,
  releaseCoverageSqFtPerGal: null,
};

type Input = Parameters<typeof calcCost>[0];
type SteelBought = Input['reinforcement']['total'];

type JoinedBy = Input['edges']['total'];

/** Nothing across any edge but what is said. */
export function joinedBy(changed: Partial<JoinedBy> = {}): JoinedBy {
  return {
    isolation: fig(0, 'ft'),
    sealed: fig(0, 'ft'),
    dowels: fig(0, 'each'),
    ties: fig(0, 'each'),
    holes: fig(0, 'each'),
    ...changed,
  };
}

/** Nothing is bought but what is said. */
export function steelBought(changed: Partial<SteelBought> = {}): SteelBought {
  return {
    sheets: fig(0, 'each'),
    rolls: fig(0, 'each'),
    'bought-bars': fig(0, 'lb'),
    'bought-glass-fibre': fig(0, 'lb'),
    'bought-glass-fibre-length': fig(0, 'ft'),
    'ordered-bent': fig(0, 'each'),
    chairs: fig(0, 'each'),
    ties: fig(0, 'each'),
    ...changed,
  };
}

/** What `aCrew` does, with amounts that are easy to multiply by hand. */
export function aCostInput(changed: Partial<Input> = {}): Input {
  const crew = crewOf();
  return {
    laborUsdPerHr: fig(usd('40.00'), '$/h'),
    crew: crew.figures,
    firstPhasesShareDay: crew.data.firstPhasesShareDay,
    haul: {
      base: { deliveries: fig(1, 'each'), 'delivery-cost': fig(usd('90.00'), '$') },
      total: { hours: fig(6, 'h'), miles: fig(62.5, 'mi'), fees: fig(usd('184.355'), '$') },
    },
    base: { total: { 'order-tons': fig(17, 'ton') } },
    forms: {
      boards: { 'two-by-four': { shortage: fig(2, 'each') } },
      strips: { hardboard: { shortage: fig(0, 'each') } },
      stakes: { shortage: fig(10, 'each') },
    },
    reinforcement: {
      total: steelBought({ sheets: fig(9, 'each'), chairs: fig(100, 'each') }),
    },
    concrete: { truck: { cost: fig(usd('1850.00'), '$') }, bags: { count: fig(450, 'each') } },
    edges: { total: joinedBy({ isolation: fig(18, 'ft') }) },
    supply: 'truck',
    production: production(),
    machines,
    towVehicle: { cost: rate('0.85', 'mi') },
    suppliers,
    ownForms,
    otherCosts: { permit: { id: 'permit', label: 'Permit' as OfficeText, costUsd: usd('75.00') } },
    curing: { compound: fig(3.6, 'gal'), sheeting: fig(0, 'sq ft') },
    ...changed,
  };
}

export function costOfJob(changed: Partial<Input> = {}) {
  return calcCost(aCostInput(changed));
}

export { machine, machines, production, rate, usd };
