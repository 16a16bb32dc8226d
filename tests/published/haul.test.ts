import {
  baseTon,
  compactedCuYd,
  compactedSqFtPerHr,
  liftCount,
  looseCuYd,
  looseUnitWeightLbPerCuFt,
} from '../../src/calculate/base/index.ts';
import { BREAK_OUT_RATIO } from '../../src/calculate/crew/practice.ts';
import {
  COMMERCIAL_VEHICLE_LB,
  combinationRatingLb,
  isBeyond,
  towedOfHeavyLb,
} from '../../src/calculate/findings/index.ts';
import {
  aggregateWorkingLoadLb,
  boxLimitLbPerCuYd,
  boxVolumeCuYd,
  limitsLb,
  loadCount,
  machineTiedownCount,
  pieceFits,
  roundTripCount,
  SAME_SIDE_RATIO,
  splitWeightLb,
  ticketsUsd,
  ticketUsd,
  tiedownCount,
  tongueLb,
  tripHr,
  volumeOfWeightCuYd,
  weightOfVolumeLb,
} from '../../src/calculate/haul/index.ts';
import { TONGUE_HIGH_RATIO, TONGUE_LOW_RATIO } from '../../src/calculate/haul/trailer.ts';
import type { Material, Steel } from '../../src/calculate/job.ts';
import { LAYERS } from '../../src/calculate/tear-out/coatings.ts';
import { handRateFor, TWO_HAND_LIFT_LB } from '../../src/calculate/tear-out/hand-work.ts';
import {
  flatVolumeCuFt,
  handLaborHr,
  handPieceSideIn,
  loadFactor,
  looseVolume,
  swellRatio,
  unitWeightOfPavingLbPerCuFt,
  weightLb,
  weightLbPerSqFt,
} from '../../src/calculate/tear-out/index.ts';
import { MATERIALS } from '../../src/calculate/tear-out/materials.ts';
import {
  cuFtToCuM,
  cuFtToCuYd,
  cuYdToCuM,
  kgPerCuMToLbPerCuFt,
  lbPerCuFtToLbPerCuYd,
  lbPerCuYdToLbPerCuFt,
  lbToKg,
  lbToTon,
  mToFt,
  mToIn,
  type RateUnit,
  tonToLb,
  Usd,
} from '../../src/units/index.ts';
import { shippedRules } from '../calculate/findings/shipped-rules.ts';
import { runChecks } from './load.ts';

type Flat = { readonly areaSqFt: number; readonly thicknessIn: number };
type Compacting = {
  readonly widthIn: number;
  readonly travelFtPerHr: number;
  readonly efficiencyRatio: number;
  readonly passes: number;
};
type Weighed = Flat & { readonly unitWeightLbPerCuFt: number };

function weightOfSlabLb(slab: Weighed): number {
  return weightLb({ volumeCuFt: flatVolumeCuFt(slab), unitWeightLbPerCuFt: slab.unitWeightLbPerCuFt });
}

/** [yd3/h], strips side by side. */
function compactorOutput(liftIn: number, compactor: Compacting): number {
  return compactedCuYd({ areaSqFt: compactedArea(compactor), thicknessIn: liftIn });
}

function compactedArea({ widthIn, travelFtPerHr, efficiencyRatio, passes }: Compacting): number {
  return compactedSqFtPerHr({ widthIn, overlapIn: 0, travelFtPerHr, efficiencyRatio, passes });
}

function tariff(given: { readonly fee: string; readonly per: RateUnit }, minimum = '0') {
  const fee = { amountUsd: new Usd(given.fee), perUnit: given.per, text: `$${given.fee} per ${given.per}` };
  return { fee, minimumUsd: new Usd(minimum), surcharges: {}, feeWithBase: null };
}

type Rated = { readonly truckGrossLb: number; readonly trailerGrossLb: number };
type Article = { readonly lengthFt: number; readonly weightLb: number; readonly isBlockedInFront: boolean };

/** By the sum alone: the rating in combination is no more than that of the truck. */
function combinationLb(rated: Rated): number {
  return combinationRatingLb({ ...rated, combinedLb: rated.truckGrossLb });
}

/** The limits are those of the shipped rules. */
function licenceGroups(rated: Rated): string {
  const towedLb = towedOfHeavyLb({ combinationLb: combinationLb(rated), ...rated });
  const groups = [
    ...(isOver('licence-group-a', towedLb) ? ['A'] : []),
    ...(isOver('licence-group-b', rated.truckGrossLb) ? ['B'] : []),
  ];
  return groups.join(' and ') || 'none';
}

function isOver(code: string, ratingLb: number): boolean {
  const rule = shippedRules('general').find((one) => one.code === code);
  return rule !== undefined && isBeyond(ratingLb, rule.limit, rule.direction);
}

function inInches({ lengthFt, weightLb: articleLb, isBlockedInFront }: Article) {
  return { lengthIn: lengthFt * 12, weightLb: articleLb, isBlockedInFront };
}

/** Ratings so high that only the trailer's own counts. */
const STRONG_TRUCK = {
  towRatingLb: 99_000,
  combinedRatingLb: 99_000,
  grossRatingLb: 40_000,
  curbLb: 8_000,
  carriesLb: 0,
  hitchRatingLb: 9_000,
};

runChecks('haul', {
  'piece fits': ({
    mostSideIn,
    mostThicknessIn,
    ...piece
  }: {
    lengthIn: number;
    widthIn: number;
    thicknessIn: number;
    mostSideIn: number;
    mostThicknessIn: number;
  }) => pieceFits(piece, { sideIn: mostSideIn, thicknessIn: mostThicknessIn }),
  'weight per sq ft': weightLbPerSqFt,
  'lb per yd3 to lb per cu ft': (given: { lbPerCuYd: number }) => lbPerCuYdToLbPerCuFt(given.lbPerCuYd),
  'kg per m3 to lb per cu ft': (given: { kgPerCuM: number }) => kgPerCuMToLbPerCuFt(given.kgPerCuM),
  'paving rate to lb per yd3': (given: { rateLb: number }) =>
    lbPerCuFtToLbPerCuYd(unitWeightOfPavingLbPerCuFt(given.rateLb)),
  'material unit weight': (given: { material: keyof typeof MATERIALS }) =>
    MATERIALS[given.material].unitWeightLbPerCuFt,
  'material loose weight': (given: { material: keyof typeof MATERIALS }) => {
    const { unitWeightLbPerCuFt, swellRatio: swell } = MATERIALS[given.material];
    return lbPerCuFtToLbPerCuYd(unitWeightLbPerCuFt * loadFactor(swell));
  },
  'material swell': (given: { material: keyof typeof MATERIALS }) => MATERIALS[given.material].swellRatio,
  'layer unit weight': (given: { layer: keyof typeof LAYERS }) => LAYERS[given.layer].unitWeightLbPerCuFt,
  'layer weight per sq ft': (given: { layer: keyof typeof LAYERS; thicknessIn: number }) =>
    weightLbPerSqFt({ ...LAYERS[given.layer], thicknessIn: given.thicknessIn }),

  swell: swellRatio,
  'load factor': (given: { inPlace: number; loose: number }) => loadFactor(swellRatio(given)),
  'load factor of swell': (given: { swell: number }) => loadFactor(given.swell),
  'loose volume': (given: { volume: number; swell: number }) => looseVolume(given.volume, given.swell),
  'loose volume of weights': (given: { volume: number; inPlace: number; loose: number }) =>
    looseVolume(given.volume, swellRatio(given)),
  'volume in place': (given: { looseVolume: number; loadFactorPrinted: number }) =>
    given.looseVolume * loadFactor(1 / given.loadFactorPrinted - 1),
  'volume of weight': (given: { weightLb: number; lbPerCuYd: number }) =>
    volumeOfWeightCuYd(given.weightLb, given.lbPerCuYd),
  'weight of volume': (given: { volumeCuYd: number; lbPerCuYd: number }) =>
    weightOfVolumeLb(given.volumeCuYd, given.lbPerCuYd),
  'tons of volume': (given: { volumeCuYd: number; lbPerCuYd: number }) =>
    lbToTon(weightOfVolumeLb(given.volumeCuYd, given.lbPerCuYd)),

  'slab volume': flatVolumeCuFt,
  'slab removal': (slab: Weighed) => {
    const slabLb = weightOfSlabLb(slab);
    return [cuFtToCuYd(flatVolumeCuFt(slab)), slabLb, lbToTon(slabLb)];
  },
  'slab loose volume': (slab: Flat & { swell: number }) =>
    cuFtToCuYd(looseVolume(flatVolumeCuFt(slab), slab.swell)),
  'slab volume in metric': (slab: Flat) => cuFtToCuM(flatVolumeCuFt(slab)),
  'slab weight in metric': (slab: Weighed) => lbToKg(weightOfSlabLb(slab)),
  'tons in place': (given: { volumeCuFt: number; unitWeightLbPerCuFt: number }) => lbToTon(weightLb(given)),
  'lb to tons': (given: { weightLb: number }) => lbToTon(given.weightLb),

  'trip hours': tripHr,
  'trip minutes': (trip: { loadingMin: number; outMin: number; turnMin: number; backMin: number }) =>
    60 *
    tripHr({
      loadingHr: trip.loadingMin / 60,
      outHr: trip.outMin / 60,
      turnHr: trip.turnMin / 60,
      backHr: trip.backMin / 60,
    }),
  'round trips': roundTripCount,
  loads: loadCount,
  'box limit': (given: { payloadLb: number; boxCuYd: number }) =>
    boxLimitLbPerCuYd(given.payloadLb, given.boxCuYd),
  'loads of slab': (given: Weighed & { payloadLb: number; boxCuYd: number }) =>
    loadCount({
      weightLb: weightOfSlabLb(given),
      looseCuYd: 0,
      payloadLb: given.payloadLb,
      boxCuYd: given.boxCuYd,
    }),
  split: (given: { weightLb: number; loads: number }) => {
    const loads = splitWeightLb(given.weightLb, given.loads, 1);
    return [...loads, loads.reduce((sum, load) => sum + load, 0)];
  },

  'payload by gross rating': (given: { grossRatingLb: number; emptyLb: number }) => {
    const trailer = { grossRatingLb: given.grossRatingLb, axleRatingLb: 99_000, emptyLb: given.emptyLb };
    return limitsLb(trailer, STRONG_TRUCK)['gross-rating'];
  },
  'box volume': (box: { lengthFt: number; widthFt: number; heightFt: number }) =>
    boxVolumeCuYd({ lengthIn: box.lengthFt * 12, widthIn: box.widthFt * 12, heightIn: box.heightFt * 12 }),
  'tongue band': (given: { grossLb: number }) => [
    tongueLb(given.grossLb, TONGUE_LOW_RATIO),
    tongueLb(given.grossLb, TONGUE_HIGH_RATIO),
  ],

  'combination rating': combinationLb,
  'commercial vehicle': (rated: Rated) => combinationLb(rated) >= COMMERCIAL_VEHICLE_LB,
  'licence groups': licenceGroups,
  'aggregate working load': (given: { cargoLb: number }) => aggregateWorkingLoadLb(given.cargoLb),
  'counted working load': (given: { tiedowns: number; workingLoadLb: number; cargoLb: number }) => [
    given.tiedowns * given.workingLoadLb * SAME_SIDE_RATIO,
    aggregateWorkingLoadLb(given.cargoLb),
  ],
  'tie-downs': (article: Article) => tiedownCount(inInches(article)),
  'tie-downs of a machine': (article: Article) => machineTiedownCount(inInches(article)),

  ticket: (given: { fee: string; per: RateUnit; minimum: string; weightLb: number; looseCuYd: number }) => {
    const load = { weightLb: given.weightLb, looseCuYd: given.looseCuYd, streams: [], withBase: false };
    return ticketUsd(tariff(given, given.minimum), load).toNumber();
  },
  'tickets of debris': (given: { fee: string; per: RateUnit; weightLb: number; payloadLb: number }) => {
    const count = loadCount({
      weightLb: given.weightLb,
      looseCuYd: 0,
      payloadLb: given.payloadLb,
      boxCuYd: 1,
    });
    const loads = splitWeightLb(given.weightLb, count, 1).map((loadLb) => ({
      weightLb: loadLb,
      looseCuYd: 1,
      streams: [],
      withBase: false,
    }));
    return ticketsUsd(tariff(given), loads).toNumber();
  },

  'piece weight': (piece: {
    lengthIn: number;
    widthIn: number;
    thicknessIn: number;
    unitWeightLbPerCuFt: number;
  }) => ((piece.lengthIn * piece.widthIn) / 144) * weightLbPerSqFt(piece),
  'hand piece': (slab: { thicknessIn: number; unitWeightLbPerCuFt: number }) =>
    handPieceSideIn({ limitLb: TWO_HAND_LIFT_LB, weightLbPerSqFt: weightLbPerSqFt(slab) }),
  'hand labor of slab': (slab: Flat & { steel: Steel }) => {
    const rate = handRateFor({ material: 'concrete', steel: slab.steel, thicknessIn: slab.thicknessIn });
    if (rate === null) return 'no rate';
    const volumeCuFt = flatVolumeCuFt(slab);
    return [rate.fastHrPerCuM, rate.slowHrPerCuM].map((hrPerCuM) => handLaborHr({ volumeCuFt, hrPerCuM }));
  },
  'hand rate': (slab: { material: Material; steel: Steel; thicknessMm: number }) => {
    const rate = handRateFor({ ...slab, thicknessIn: mToIn(slab.thicknessMm / 1000) });
    return rate === null ? 'no rate' : [rate.fastHrPerCuM, rate.slowHrPerCuM];
  },
  'break-out ratio': (slab: { steel: Steel }) => BREAK_OUT_RATIO[slab.steel],
  'hand labor of a yard': (given: { hrPerCuM: number }) =>
    handLaborHr({ volumeCuFt: 27, hrPerCuM: given.hrPerCuM }),

  base: (given: Flat & { compactedLbPerCuFt: number; looseOverCompacted: number }) => {
    const compacted = compactedCuYd(given);
    return [
      compacted,
      looseCuYd(compacted, given.looseOverCompacted),
      baseTon(compacted, given.compactedLbPerCuFt),
    ];
  },
  'base loose unit weight': (given: { compactedLbPerCuFt: number; looseOverCompacted: number }) =>
    looseUnitWeightLbPerCuFt(given.compactedLbPerCuFt, given.looseOverCompacted),
  'base loads by weight': (given: Flat & { compactedLbPerCuFt: number; payloadLb: number }) =>
    loadCount({
      weightLb: tonToLb(baseTon(compactedCuYd(given), given.compactedLbPerCuFt)),
      looseCuYd: 0,
      payloadLb: given.payloadLb,
      boxCuYd: 1,
    }),

  'compacted area': compactedArea,
  'compactor output': (given: Compacting & { liftIn: number }) => compactorOutput(given.liftIn, given),
  'compactor output in metric': (
    given: Pick<Compacting, 'efficiencyRatio' | 'passes'> & {
      widthM: number;
      speedKmPerHr: number;
      liftCm: number;
    },
  ) => {
    const { efficiencyRatio, passes } = given;
    const widthIn = mToIn(given.widthM);
    const travelFtPerHr = mToFt(given.speedKmPerHr * 1000);
    return cuYdToCuM(
      compactorOutput(mToIn(given.liftCm / 100), { widthIn, travelFtPerHr, efficiencyRatio, passes }),
    );
  },
  lifts: liftCount,
});
