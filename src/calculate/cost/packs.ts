import { ceilCount } from '../../units/index.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import type { Suppliers } from '../job.ts';

/** What is sold in packs, whole ones. */
export type PackFigures = {
  readonly 'curing-packs': Figure;
  readonly 'isolation-strips': Figure;
  /** Only where the company names a sealant. */
  readonly 'sealant-tubes'?: Figure;
  /** Only where the company names ties. */
  readonly 'tie-packs'?: Figure;
  /** Only where holes are drilled. */
  readonly 'epoxy-cartridges'?: Figure;
};

/**
 * Packs of curing compound, whole ones: up(need / pack).
 * Strips of isolation, whole ones: up(12 length / strip).
 * Tubes of sealant, whole ones: up(12 length / what one fills).
 * Packs of ties, whole ones: up(ties / pack).
 */
export function packFigures(input: {
  readonly compoundGal: Figure;
  readonly isolationFt: Figure;
  readonly sealedFt: Figure;
  readonly ties: Figure;
  readonly holes: Figure;
  readonly dowels: Suppliers['dowels'];
  readonly sundries: Suppliers['sundries'];
}): PackFigures {
  const { compoundGal, isolationFt, sealedFt, sundries } = input;
  const { sealant } = sundries;
  const at = (key: string) => `company.suppliers.sundries.${key}`;
  return {
    'curing-packs': figure({
      value: ceilCount(num(compoundGal) / sundries.curingPackGal),
      unit: 'each',
      decimals: 0,
      formula: 'ceilStep(compoundGal / packGal, 1)',
      inputs: {
        compoundGal,
        packGal: given(at('curing-pack'), sundries.curingPackGal, 'gal'),
      },
      rounding: 'up',
    }),
    'isolation-strips': figure({
      value: ceilCount((num(isolationFt) * 12) / sundries.isolationStripIn),
      unit: 'each',
      decimals: 0,
      formula: 'ceilStep(isolationFt * 12 / stripIn, 1)',
      inputs: { isolationFt, stripIn: given(at('isolation-strip'), sundries.isolationStripIn, 'in') },
      rounding: 'up',
    }),
    ...(sealant === null
      ? {}
      : {
          'sealant-tubes': figure({
            value: ceilCount((num(sealedFt) * 12) / sealant.fillsIn),
            unit: 'each',
            decimals: 0,
            formula: 'ceilStep(sealedFt * 12 / fillsIn, 1)',
            inputs: { sealedFt, fillsIn: given(at('sealant.fills'), sealant.fillsIn, 'in') },
            rounding: 'up',
          }),
        }),
    ...tiePacks(input.ties, sundries.barTies),
    ...epoxyFigure(input.holes, input.dowels),
  };
}

function tiePacks(
  tieCount: Figure,
  barTies: Suppliers['sundries']['barTies'],
): Pick<PackFigures, 'tie-packs'> {
  if (barTies === null) return {};
  const packCount = given('company.suppliers.sundries.bar-ties.pack', barTies.packCount, 'each');
  return {
    'tie-packs': figure({
      value: ceilCount(num(tieCount) / barTies.packCount),
      unit: 'each',
      decimals: 0,
      formula: 'ceilStep(tieCount / packCount, 1)',
      inputs: { tieCount, packCount },
      rounding: 'up',
    }),
  };
}

/** Cartridges of epoxy, whole ones: up(holes / holes a cartridge). */
function epoxyFigure(holes: Figure, supplier: Suppliers['dowels']): Pick<PackFigures, 'epoxy-cartridges'> {
  if (supplier === null || num(holes) === 0) return {};
  const { holesPerCartridgeCount } = supplier;
  return {
    'epoxy-cartridges': figure({
      value: ceilCount(num(holes) / holesPerCartridgeCount),
      unit: 'each',
      decimals: 0,
      formula: 'ceilStep(holeCount / holesPerCartridge, 1)',
      inputs: {
        holeCount: holes,
        holesPerCartridge: given(
          'company.suppliers.dowels.holes-per-cartridge',
          holesPerCartridgeCount,
          'each',
        ),
      },
      rounding: 'up',
    }),
  };
}
