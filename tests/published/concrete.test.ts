import { Decimal } from 'decimal.js';
import {
  airRange,
  airTarget,
  bagCount,
  cheapestTruckOrder,
  mostPerLoadCuYd,
  type Standard,
  slabCuYd,
  slumpToleranceIn,
  spillCuYd,
  stepsCuYd,
  strengthFloor,
  strengthRows,
  unevennessCuYd,
  waterCementMost,
} from '../../src/calculate/concrete/index.ts';
import { formShortByIn } from '../../src/calculate/forms/index.ts';
import type { BarSize, Exposure, MeshStyle } from '../../src/calculate/job.ts';
import {
  jointDepthIn,
  jointSpacingLimitIn,
  panelRatio,
  spacingMultiplier,
  splitIntoPanels,
} from '../../src/calculate/joints/index.ts';
import { carryTrips } from '../../src/calculate/placing/index.ts';
import {
  barLapIn,
  barTable,
  chairSpacingFt,
  meshTable,
  meshWeightLb,
  sheetsAlong,
  steelAreaSqInPerFt,
} from '../../src/calculate/reinforcement/index.ts';
import { thickenedCuFt } from '../../src/calculate/thickened/index.ts';
import { cuYdToCuFt, cuYdToCuM, mmToIn, sqMToSqFt } from '../../src/units/index.ts';
import { someBars, someMesh } from '../calculate/slabs.ts';
import { runChecks } from './load.ts';

type Spread = { areaSqFt: number; thicknessIn: number; wasteRatio: number };

/** Net and waste, as the sources have it: one share of the net for all allowances together. */
function neededCuYd({ areaSqFt, thicknessIn, wasteRatio }: Spread): number {
  const netCuYd = slabCuYd({ areaSqFt, thicknessIn });
  return netCuYd + spillCuYd({ netCuYd, spillRatio: wasteRatio });
}

/** An order without a short-load fee: up to the increment, nothing more. */
function orderCuYd(given: Spread & { incrementCuYd: number }): number {
  return cheapestTruckOrder(neededCuYd(given), {
    price: { amountUsd: new Decimal(100), perUnit: 'yd3', text: '' },
    incrementCuYd: given.incrementCuYd,
    truckCuYd: 10,
    shortLoadBelowCuYd: 0,
    shortLoadFeeUsd: new Decimal(0),
    fuelFee: null,
    saturdayFee: null,
  });
}

function mesh(style: MeshStyle) {
  const { wireNumber, wireSpacingIn, lbPer100SqFt } = meshTable[style];
  return { areaSqIn: wireNumber / 100, spacingIn: wireSpacingIn, lbPer100SqFt };
}

function spacingLimitFt(given: { thicknessIn: number; slumpIn: number; aggregateIn: number }): number {
  const multiplier = spacingMultiplier(given).ratio;
  return jointSpacingLimitIn({ multiplier, thicknessIn: given.thicknessIn, walkWidthIn: null }) / 12;
}

function panels(given: { lengthFt: number; widthFt: number; limitFt: number }) {
  const box = { lengthIn: given.lengthFt * 12, widthIn: given.widthFt * 12 };
  const { alongCount, acrossCount } = splitIntoPanels(box, given.limitFt * 12);
  const panelLengthIn = box.lengthIn / alongCount;
  const panelWidthIn = box.widthIn / acrossCount;
  return [alongCount, acrossCount, panelRatio({ panelLengthIn, panelWidthIn })];
}

runChecks('concrete', {
  'slab yd3': (given) => slabCuYd({ areaSqFt: given.areaSqFt, thicknessIn: given.thicknessIn }),
  'metric slab m3': (given) =>
    cuYdToCuM(slabCuYd({ areaSqFt: sqMToSqFt(given.areaSqM), thicknessIn: mmToIn(given.thicknessMm) })),
  'needed yd3': neededCuYd,
  'needed of a volume cu ft': (given) => {
    const netCuYd = given.netCuFt / 27;
    return cuYdToCuFt(netCuYd + spillCuYd({ netCuYd, spillRatio: given.wasteRatio }));
  },
  'order yd3': orderCuYd,
  'unevenness over net': (given) =>
    unevennessCuYd({ lowIn: given.lowIn, areaSqFt: 100 }) /
    slabCuYd({ areaSqFt: 100, thicknessIn: given.thicknessIn }),
  'steps cu ft': (given) => cuYdToCuFt(stepsCuYd(given)),
  'steps yd3': (given) => stepsCuYd(given),
  bags: (given) => bagCount({ neededCuYd: given.neededCuYd, yieldCuFt: given.yieldCuFt }),
  'strength of a standard psi': (given: { exposure: Exposure; standard: Standard }) =>
    strengthRows(given.exposure).find((row) => row.standard === given.standard)?.leastPsi ?? Number.NaN,
  'air range of UFGS': (given) => {
    const { leastRatio, mostRatio } = airRange(given.aggregateIn);
    return [leastRatio, mostRatio];
  },
  'air to order': (given: { aggregateIn: number; exposure: Exposure }) =>
    airTarget(given.aggregateIn, given.exposure) ?? Number.NaN,
  'most water to cement': (given: { exposure: Exposure }) =>
    waterCementMost(given.exposure)?.mostRatio ?? Number.NaN,
  'slump tolerance in': (given) => slumpToleranceIn(given.slumpIn),
  'most a load can be yd3': (given) =>
    mostPerLoadCuYd({
      onSiteHr: (given.limitMin - given.onTheWayMin) / 60,
      rateCuYdPerHr: given.rateCuYdPerHr,
      truckCuYd: given.truckCuYd,
      incrementCuYd: given.incrementCuYd,
    }),
  barrows: (given) => carryTrips({ volumeCuYd: given.volumeCuYd, holdsCuFt: given.holdsCuFt }),
  'thickened cu ft': (given) => thickenedCuFt(given),
  'strength floor': (given: { exposure: Exposure }) => {
    const { leastPsi, source } = strengthFloor(given.exposure);
    return [leastPsi, source];
  },
  'mesh lb per 100 sq ft': (given) => mesh(given.style).lbPer100SqFt,
  'mesh lb': (given) => {
    const sheet = { lengthIn: given.sheetFt[0] * 12, widthIn: given.sheetFt[1] * 12 };
    return meshWeightLb({ sheetCount: given.sheets, sheet, lbPer100SqFt: mesh(given.style).lbPer100SqFt });
  },
  'mesh sq in per ft': (given) => steelAreaSqInPerFt(mesh(given.style)),
  'sheets along': (given) =>
    sheetsAlong({ sideIn: given.sideFt * 12, sheetIn: given.sheetFt * 12, lapIn: given.lapIn }),
  'steel sq in per ft': (given) =>
    steelAreaSqInPerFt({ areaSqIn: given.areaSqIn, spacingIn: given.spacingIn }),
  bar: (given: { size: BarSize }) => {
    const { diameterIn, areaSqIn, lbPerFt } = barTable.steel[given.size];
    return [diameterIn, areaSqIn, lbPerFt];
  },
  'bar lb per ft': (given: { size: BarSize }) => barTable.steel[given.size].lbPerFt,
  'bars lb': (given: { size: BarSize; lengthFt: number }) =>
    barTable.steel[given.size].lbPerFt * given.lengthFt,
  'bars sq in per ft': (given: { size: BarSize; spacingIn: number }) =>
    steelAreaSqInPerFt({ areaSqIn: barTable.steel[given.size].areaSqIn, spacingIn: given.spacingIn }),
  'lap in': (given: { size: BarSize; lapDiameters: number }) =>
    barLapIn({ lapDiameters: given.lapDiameters, diameterIn: barTable.steel[given.size].diameterIn }),
  'chair spacing ft': (given: { size: BarSize }) => chairSpacingFt(someBars({ size: given.size })),
  'chair spacing ft of mesh': (given: { style: MeshStyle }) =>
    chairSpacingFt(someMesh({ style: given.style })),
  'joint spacing ft': spacingLimitFt,
  'joint spacing ft without the cap': (given) => (spacingMultiplier(given).ratio * given.thicknessIn) / 12,
  'joint spacing multiplier': (given) => spacingMultiplier(given).ratio,
  'joint spacing of a walk ft': (given) =>
    jointSpacingLimitIn({ multiplier: 24, thicknessIn: given.thicknessIn, walkWidthIn: given.widthFt * 12 }) /
    12,
  'joint depth in': (given) => jointDepthIn(given.thicknessIn),
  panels,
  'form short by in': (given) =>
    formShortByIn({ thicknessIn: given.thicknessIn, boardHeightIn: given.boardHeightIn }),
});
