import type { BarSupplier, Suppliers } from '../calculate/job.ts';
import type { SuppliersSection } from '../read/index.ts';
import { cuFtPerCuYd, cuFtPerGal, lbPerTon } from '../units/index.ts';
import { SHIPPED } from './constants.ts';
import { inCoreUnit, inCoreUnitOrNull, inUnitOf } from './quantity.ts';

export function suppliersOf(input: SuppliersSection): Suppliers {
  return {
    concrete: concreteOf(input.concrete),
    bagged: baggedOf(input.bagged),
    base: baseOf(input.base),
    geotextile: input.geotextile === undefined ? null : geotextileOf(input.geotextile),
    mesh: meshOf(input.mesh),
    bars: barsOf(input.bars),
    glassFibreBars: input['glass-fibre-bars'] === undefined ? null : glassFibreOf(input['glass-fibre-bars']),
    dowels: input.dowels === undefined ? null : dowelsOf(input.dowels),
    sundries: sundriesOf(input.sundries),
  };
}

function concreteOf(input: SuppliersSection['concrete']): Suppliers['concrete'] {
  return {
    label: input.label,
    phone: input.phone,
    price: input.price,
    incrementCuYd: inUnitOf(input.increment, cuFtPerCuYd),
    truckCuYd: inUnitOf(input.truck, cuFtPerCuYd),
    shortLoadBelowCuYd: inUnitOf(input['short-load-below'], cuFtPerCuYd),
    shortLoadFeeUsd: input['short-load-fee'],
    fuelFee: input['fuel-fee'] ?? null,
    saturdayFee: input['saturday-fee'] ?? null,
    additives: input.additives ?? {},
    dischargeLimitHr: inCoreUnitOrNull(input['discharge-limit']),
    onTheWayHr: inCoreUnitOrNull(input['on-the-way']),
    freeHrPerCuYd: inCoreUnitOrNull(input['free-per-yard']),
    waitFee: input['wait-fee'] ?? null,
    callAheadHr: inCoreUnitOrNull(input['call-ahead']),
    noticeDays: input.notice,
    freeCancelHr: inCoreUnitOrNull(input['free-cancel']),
  };
}

function baggedOf(input: SuppliersSection['bagged']): Suppliers['bagged'] {
  return {
    label: input.label,
    phone: input.phone,
    price: input.price,
    yieldCuFt: inCoreUnit(input.yield),
    weightLb: inCoreUnit(input.weight),
    mixing: input.mixing,
  };
}

function baseOf(input: SuppliersSection['base']): Suppliers['base'] {
  return {
    label: input.label,
    phone: input.phone,
    price: input.price,
    incrementTon: inUnitOf(input.increment, lbPerTon),
    deliveryUsd: input.delivery,
    deliveryTon: inUnitOf(input['delivery-load'], lbPerTon),
    compactedLbPerCuFt: inCoreUnit(input['compacted-weight']),
    looseOverCompacted: input['loose-over-compacted'],
    noticeDays: input.notice,
  };
}

function geotextileOf(
  input: NonNullable<SuppliersSection['geotextile']>,
): NonNullable<Suppliers['geotextile']> {
  return {
    label: input.label,
    phone: input.phone,
    rollWidthIn: inCoreUnit(input['roll-width']),
    rollLengthIn: inCoreUnit(input['roll-length']),
    lapIn: inCoreUnit(input.lap),
    price: input.price,
  };
}

function meshOf(input: SuppliersSection['mesh']): Suppliers['mesh'] {
  return {
    label: input.label,
    phone: input.phone,
    sheetLengthIn: inCoreUnit(input['sheet-length']),
    sheetWidthIn: inCoreUnit(input['sheet-width']),
    lapIn: inCoreUnit(input.lap),
    price: input.price,
    roll: rollOf(input),
    noticeDays: input.notice ?? SHIPPED.noticeDays,
  };
}

/** Null unless all of it is said, which the checks ask for. */
function rollOf(input: SuppliersSection['mesh']): Suppliers['mesh']['roll'] {
  const { 'roll-length': length, 'roll-width': width, 'roll-price': priceUsd } = input;
  if (length === undefined || width === undefined || priceUsd === undefined) return null;
  return { lengthIn: inCoreUnit(length), widthIn: inCoreUnit(width), priceUsd };
}

function barsOf(input: Omit<SuppliersSection['bars'], 'price'> & Pick<BarSupplier, 'price'>): BarSupplier {
  return {
    label: input.label,
    phone: input.phone,
    stocksIn: [inCoreUnit(input.stock), ...(input['other-stock'] ?? []).map(inCoreUnit)],
    lapDiameters: input.lap,
    kerfIn: inCoreUnitOrNull(input.kerf),
    price: input.price,
    noticeDays: input.notice ?? SHIPPED.noticeDays,
  };
}

function glassFibreOf(
  input: NonNullable<SuppliersSection['glass-fibre-bars']>,
): NonNullable<Suppliers['glassFibreBars']> {
  return { ...barsOf(input), bentPriceUsd: input['bent-price'], bentNoticeDays: input['bent-notice'] };
}

function dowelsOf(input: NonNullable<SuppliersSection['dowels']>): NonNullable<Suppliers['dowels']> {
  return {
    label: input.label,
    phone: input.phone,
    dowelPriceUsd: input['dowel-price'],
    tiePriceUsd: input['tie-price'],
    holesPerCartridgeCount: input['holes-per-cartridge'],
    cartridgePriceUsd: input['cartridge-price'],
    noticeDays: input.notice ?? SHIPPED.noticeDays,
  };
}

function sundriesOf(input: SuppliersSection['sundries']): Suppliers['sundries'] {
  return {
    label: input.label,
    phone: input.phone,
    curingCoverageSqFtPerGal: inCoreUnit(input['curing-coverage']),
    curingRoughCoverageSqFtPerGal: inCoreUnitOrNull(input['curing-coverage-rough']),
    sheetingPrice: input['sheeting-price'] ?? null,
    curingPackGal: inUnitOf(input['curing-pack'], cuFtPerGal),
    curingPriceUsd: input['curing-price'],
    isolationStripIn: inCoreUnit(input['isolation-strip']),
    isolationPriceUsd: input['isolation-price'],
    sealant:
      input.sealant === undefined
        ? null
        : { fillsIn: inCoreUnit(input.sealant.fills), priceUsd: input.sealant.price },
    chairPriceUsd: input['chair-price'],
    barTies:
      input['bar-ties'] === undefined
        ? null
        : { packCount: input['bar-ties'].pack, priceUsd: input['bar-ties'].price },
  };
}
