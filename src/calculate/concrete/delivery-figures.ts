import { ceilToStep } from '../../units/index.ts';
import {
  COMMON_PRACTICE,
  COMPANY_FIGURE,
  constant,
  type Figure,
  type FigureInput,
  figure,
  given,
  num,
} from '../figure.ts';
import type { ConcreteSupplier } from '../job.ts';
import { mostPerLoadCuYd } from './delivery.ts';

/** What is known of the trucks before anything is ordered. */
export type DeliveryTerms = {
  /** From batching to empty [h]. */
  readonly limit: Figure;
  /** What is placed in an hour [yd3/h]. */
  readonly rate: Figure;
  /** From arriving to the limit [h]; this and the next where the plant says how long a truck drives. */
  readonly 'time-on-site'?: Figure;
  readonly 'most-per-load'?: Figure;
  /** Charged for each yard [h]; only where waiting is. */
  readonly 'wait-per-yard'?: Figure;
};

export type DeliveryFigures = DeliveryTerms & {
  /** Of the largest load [h]. */
  readonly unload: Figure;
  /** From truck to truck [h]. */
  readonly spacing: Figure;
  /** What the largest load is past the limit [h]. */
  readonly 'over-limit'?: Figure;
  /** Left in the load before the last one when the last is called [yd3]. */
  readonly 'call-left'?: Figure;
  /** When the last truck is empty, after the first one came; only where trucks come [h]. */
  readonly 'last-empty'?: Figure;
};

type Supplier = Pick<
  ConcreteSupplier,
  | 'dischargeLimitHr'
  | 'onTheWayHr'
  | 'freeHrPerCuYd'
  | 'waitFee'
  | 'callAheadHr'
  | 'truckCuYd'
  | 'incrementCuYd'
>;

const PATH = 'company.suppliers.concrete';
const OLDER_LIMIT_HR = 1.5;
const OLDER_LIMIT_SOURCE =
  'ASTM C94, older editions: 90 min from water meeting cement to the end of discharge (seen); since 2021 the limit is the one on the ticket';

/** @param volume Placed [yd3]. @param clockHr Of all ways to place it [h]; null where nobody said how. */
export function deliveryTerms(made: {
  readonly supplier: Supplier;
  readonly volume: Figure;
  readonly clockHr: Figure | null;
  readonly placePerHr: FigureInput;
}): DeliveryTerms {
  const { supplier } = made;
  const rate = rateFigure(made);
  const limit = limitFigure(supplier);
  return {
    limit,
    rate,
    ...onSiteFigures(supplier, limit, rate),
    ...waitFigure(supplier, rate),
  };
}

function rateFigure({ volume, clockHr, placePerHr }: Parameters<typeof deliveryTerms>[0]): Figure {
  const shown = { unit: 'yd3/h', decimals: 1, source: COMPANY_FIGURE } as const;
  if (clockHr === null || num(volume) === 0)
    return figure({ ...shown, value: num(placePerHr), formula: 'placePerHr', inputs: { placePerHr } });
  return figure({
    ...shown,
    value: num(volume) / Math.max(num(volume) / num(placePerHr), num(clockHr)),
    formula: 'volumeCuYd / max(volumeCuYd / placePerHr, clockHr)',
    inputs: { volumeCuYd: volume, placePerHr, clockHr },
  });
}

function limitFigure({ dischargeLimitHr }: Supplier): Figure {
  const limitHr =
    dischargeLimitHr === null
      ? constant('older fixed limit of discharge', OLDER_LIMIT_HR, 'h', OLDER_LIMIT_SOURCE)
      : given(`${PATH}.discharge-limit`, dischargeLimitHr, 'h');
  return figure({
    value: num(limitHr),
    unit: 'h',
    decimals: 2,
    formula: 'limitHr',
    inputs: { limitHr },
    source: dischargeLimitHr === null ? OLDER_LIMIT_SOURCE : COMPANY_FIGURE,
  });
}

function onSiteFigures(
  { onTheWayHr, truckCuYd, incrementCuYd }: Supplier,
  limit: Figure,
  rate: Figure,
): Pick<DeliveryTerms, 'time-on-site' | 'most-per-load'> {
  if (onTheWayHr === null) return {};
  const onSite = figure({
    value: Math.max(0, num(limit) - onTheWayHr),
    unit: 'h',
    decimals: 2,
    formula: 'max(0, limitHr - onTheWayHr)',
    inputs: { limitHr: limit, onTheWayHr: given(`${PATH}.on-the-way`, onTheWayHr, 'h') },
  });
  return {
    'time-on-site': onSite,
    'most-per-load': figure({
      value: mostPerLoadCuYd({
        onSiteHr: num(onSite),
        rateCuYdPerHr: num(rate),
        truckCuYd,
        incrementCuYd,
      }),
      unit: 'yd3',
      decimals: 2,
      formula:
        'max(incrementCuYd, min(floorStep(truckCuYd, incrementCuYd), floorStep(onSiteHr * rateCuYdPerHr, incrementCuYd)))',
      inputs: {
        onSiteHr: onSite,
        rateCuYdPerHr: rate,
        truckCuYd: given(`${PATH}.truck`, truckCuYd, 'yd3'),
        incrementCuYd: given(`${PATH}.increment`, incrementCuYd, 'yd3'),
      },
      source: COMMON_PRACTICE,
      rounding: 'down',
    }),
  };
}

function waitFigure(
  { freeHrPerCuYd, waitFee }: Supplier,
  rate: Figure,
): Pick<DeliveryTerms, 'wait-per-yard'> {
  if (freeHrPerCuYd === null || waitFee === null) return {};
  return {
    'wait-per-yard': figure({
      value: Math.max(0, 1 / num(rate) - freeHrPerCuYd),
      unit: 'h',
      decimals: 3,
      formula: 'max(0, 1 / rateCuYdPerHr - freeHr)',
      inputs: {
        rateCuYdPerHr: rate,
        freeHr: given(`${PATH}.free-per-yard`, freeHrPerCuYd, 'h'),
      },
      source: COMPANY_FIGURE,
    }),
  };
}

/** What follows once the loads are known; of no load all are 0. */
export function deliveryFigures(
  terms: DeliveryTerms,
  loads: { readonly largest: Figure; readonly beforeLast: Figure | null },
  { onTheWayHr, callAheadHr }: Supplier,
): DeliveryFigures {
  const { rate, limit } = terms;
  const unload = figure({
    value: num(loads.largest) / num(rate),
    unit: 'h',
    decimals: 2,
    formula: 'largestCuYd / rateCuYdPerHr',
    inputs: { largestCuYd: loads.largest, rateCuYdPerHr: rate },
  });
  return {
    ...terms,
    unload,
    spacing: spacingFigure(unload),
    ...(onTheWayHr === null || num(loads.largest) === 0
      ? {}
      : { 'over-limit': overLimit(unload, limit, given(`${PATH}.on-the-way`, onTheWayHr, 'h')) }),
    ...(callAheadHr === null || loads.beforeLast === null
      ? {}
      : {
          'call-left': callLeft(loads.beforeLast, rate, given(`${PATH}.call-ahead`, callAheadHr, 'h')),
        }),
  };
}

function spacingFigure(unload: Figure): Figure {
  return figure({
    value: ceilToStep(num(unload) * 12, 1) / 12,
    unit: 'h',
    decimals: 2,
    formula: 'ceilStep(unloadHr * 12, 1) / 12',
    inputs: { unloadHr: unload },
    source: COMMON_PRACTICE,
    rounding: 'up',
  });
}

function overLimit(unloadHr: Figure, limitHr: Figure, onTheWayHr: FigureInput): Figure {
  return figure({
    value: Math.max(0, num(onTheWayHr) + num(unloadHr) - num(limitHr)),
    unit: 'h',
    decimals: 2,
    formula: 'max(0, onTheWayHr + unloadHr - limitHr)',
    inputs: { onTheWayHr, unloadHr, limitHr },
  });
}

function callLeft(beforeLastCuYd: Figure, rateCuYdPerHr: Figure, callAheadHr: FigureInput): Figure {
  return figure({
    value: Math.min(num(beforeLastCuYd), num(callAheadHr) * num(rateCuYdPerHr)),
    unit: 'yd3',
    decimals: 2,
    formula: 'min(beforeLastCuYd, callAheadHr * rateCuYdPerHr)',
    inputs: { beforeLastCuYd, callAheadHr, rateCuYdPerHr },
    source: COMMON_PRACTICE,
  });
}
