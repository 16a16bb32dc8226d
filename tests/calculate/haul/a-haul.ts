import { type BaseResult, calcBase } from '../../../src/calculate/base/index.ts';
import { COMPANY_FIGURE, figure } from '../../../src/calculate/figure.ts';
import { CHALK_STEPS, calcHaul, type HaulInput, type HaulResult } from '../../../src/calculate/haul/index.ts';
import type {
  BaseSupplier,
  DumpPlace,
  Existing,
  Slab,
  TapedShape,
  TowVehicle,
  Trailer,
} from '../../../src/calculate/job.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import { calcTearOut, type TearOutResult } from '../../../src/calculate/tear-out/index.ts';
import type { CrewText, PublicText } from '../../../src/calculate/text.ts';
import { type Rate, type RateUnit, Usd } from '../../../src/units/index.ts';
import { anOldSlab, asTaped, TAPE_LIMITS } from '../slabs.ts';

/*
 * A small whole haul with one thing changed. The first trailer carries 9,800 lb less the reserve,
 * the second 7,300.
 */

const forAll = (text: string) => text as PublicText;
const forCrew = (text: string) => text as CrewText;

export function rate(amount: string, perUnit: RateUnit): Rate {
  return { amountUsd: new Usd(amount), perUnit, text: `$${amount} per ${perUnit}` };
}

export function rectangle(lengthFt: number, widthFt: number, edges: TapedShape['edges'] = []): TapedShape {
  return asTaped({ kind: 'rectangle', lengthIn: lengthFt * 12, widthIn: widthFt * 12 }, { edges });
}

export function anExisting(changed: Partial<Existing> = {}): Existing {
  return anOldSlab({
    id: 'drive',
    label: forAll('Old drive'),
    shape: rectangle(25, 20),
    ...changed,
  });
}

export function aSlab(changed: Partial<Slab> = {}): Slab {
  return {
    id: 'drive',
    label: forAll('New drive'),
    use: 'driveway',
    shape: rectangle(25, 20),
    thicknessIn: 4,
    thickenedEdges: [],
    formHeightIn: null,
    probedIn: null,
    baseIn: 0,
    geotextile: false,
    publicWay: false,
    digIn: 0,
    fall: { slope: 0.02, towards: forAll('the street'), directionDeg: null },
    reinforcement: { kind: 'none' },
    edgeJoints: [],
    finish: 'broom',
    jointSpacingIn: null,
    joints: { cut: 'wet-sawn', lines: {}, propose: 'rest', sealed: false },
    board: '2x4',
    curveForm: null,
    shortBoard: 'drop-base',
    note: null,
    crewNote: null,
    ...changed,
  };
}

export const LONG_BOX: Trailer = {
  id: 'long-box',
  label: forCrew('Long box'),
  grossRatingLb: 14_000,
  axleRatingLb: 14_000,
  emptyLb: 4_200,
  box: { lengthIn: 168, widthIn: 84, heightIn: 24 },
};

export const SHORT_BOX: Trailer = {
  id: 'short-box',
  label: forCrew('Short box'),
  grossRatingLb: 10_000,
  axleRatingLb: 10_000,
  emptyLb: 2_700,
  box: { lengthIn: 120, widthIn: 72, heightIn: 18 },
};

export function aTruck(changed: Partial<TowVehicle> = {}): TowVehicle {
  return {
    label: forCrew('Truck'),
    towRatingLb: 20_000,
    combinedRatingLb: 30_000,
    grossRatingLb: 14_000,
    curbLb: 7_000,
    carriesLb: 1_000,
    hitchRatingLb: 3_000,
    cost: rate('1.00', 'mi'),
    ...changed,
  };
}

export function aPlace(changed: Partial<DumpPlace> = {}): DumpPlace {
  return {
    id: 'yard',
    label: forCrew('Yard'),
    address: forCrew('1 Yard Road'),
    accepts: ['clean-concrete', 'concrete-with-steel', 'masonry', 'asphalt', 'soil'],
    fee: rate('40', 'load'),
    minimumUsd: new Usd(0),
    surcharges: {},
    feeWithBase: null,
    mixedLoads: false,
    rejectedUsd: null,
    largestPiece: null,
    open: null,
    openOn: [1, 2, 3, 4, 5, 6, 7],
    distanceMi: 10,
    driveHr: 0.5,
    turnHr: 0.25,
    sellsBase: true,
    base: null,
    ...changed,
  };
}

export function aBaseSupplier(changed: Partial<BaseSupplier> = {}): BaseSupplier {
  return {
    label: forCrew('Base yard'),
    phone: forCrew('555-0100'),
    price: rate('19', 'ton'),
    incrementTon: 0.5,
    deliveryUsd: new Usd(400),
    deliveryTon: 12,
    compactedLbPerCuFt: 130,
    looseOverCompacted: 1.25,
    noticeDays: 1,
    ...changed,
  };
}

/** Nobody is asked for a pace where no machine rides. */
const NO_PACES = {} as HaulInput['production'];

/** Things by their ids, in the order given. */
export function byId<T extends { readonly id: string }>(things: readonly T[]): Readonly<Record<string, T>> {
  return Object.fromEntries(things.map((thing) => [thing.id, thing]));
}

export function tearOut(existing: readonly Existing[], slabs: readonly Slab[] = []): TearOutResult {
  const things = { existing: byId(existing), slabs: byId(slabs) };
  const outline = calcOutline({ ...things, limits: TAPE_LIMITS });
  return calcTearOut({
    ...things,
    hollow: {},
    posts: {},
    oldSteps: {},
    green: {},
    chip: {},
    shapes: outline.figures,
    outlines: outline.data.existing,
  });
}

export function base(
  slabs: readonly Slab[],
  supplier = aBaseSupplier(),
  baseMarginIn = 0,
  compacting: Pick<Parameters<typeof calcBase>[0], 'machines' | 'baseMachine'> = {
    machines: {},
    baseMachine: null,
  },
): BaseResult {
  const bySlabId = byId(slabs);
  return calcBase({
    slabs: bySlabId,
    shapes: calcOutline({ slabs: bySlabId, existing: {}, limits: TAPE_LIMITS }).figures,
    allowances: { baseUnevennessIn: 0.25, spillRatio: 0.03, formBulgeIn: 0, baseMarginIn, ...TAPE_LIMITS },
    supplier,
    posts: {},
    geotextile: null,
    ...compacting,
  });
}

/** $30 an hour, 24 minutes of loading; the rest as in the builders above. */
export function haul(
  made: {
    readonly existing?: readonly Existing[];
    readonly slabs?: readonly Slab[];
    readonly trailers?: readonly Trailer[];
    readonly places?: readonly DumpPlace[];
  } & Partial<
    Pick<
      HaulInput,
      | 'baseSupplier'
      | 'baseRoomLb'
      | 'day'
      | 'towVehicle'
      | 'loadReserveLb'
      | 'loadingHr'
      | 'swapHr'
      | 'driverCount'
      | 'haulByOn'
      | 'yard'
      | 'machines'
      | 'production'
      | 'brokenBy'
      | 'chalk'
    >
  > = {},
): HaulResult {
  const { existing = [anExisting()], slabs = [], trailers = [LONG_BOX], places = [aPlace()] } = made;
  const torn = tearOut(existing, slabs);
  const baseSupplier = made.baseSupplier ?? aBaseSupplier();
  return calcHaul({
    tearOut: torn.figures,
    cargo: torn.data.cargo,
    shapes: calcOutline({ slabs: {}, existing: byId(existing), limits: TAPE_LIMITS }).figures,
    chalk: made.chalk ?? CHALK_STEPS.us,
    base: base(slabs, baseSupplier).figures,
    baseSupplier,
    baseRoomLb: made.baseRoomLb ?? null,
    trailers: byId(trailers),
    towVehicle: made.towVehicle ?? aTruck(),
    loadReserveLb: made.loadReserveLb ?? 0,
    loadingHr: made.loadingHr ?? 0.4,
    swapHr: made.swapHr ?? null,
    driverCount: made.driverCount ?? 1,
    places: byId(places),
    haulByOn: made.haulByOn ?? null,
    yard: made.yard ?? null,
    machines: made.machines ?? {},
    production: made.production ?? NO_PACES,
    brokenBy: made.brokenBy ?? ['breaker'],
    day: made.day ?? { firstOn: '2026-05-04', startsHr: 7, lengthHr: 8 },
    laborUsdPerHr: figure({
      value: new Usd(30),
      unit: '$/h',
      decimals: 2,
      formula: { method: 'given by the test' },
      inputs: {},
      source: COMPANY_FIGURE,
    }),
  });
}
