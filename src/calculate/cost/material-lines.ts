import type { Decimal } from 'decimal.js';
import type { Rate, RateUnit } from '../../units/index.ts';
import { type Figure, type FigureUnit, given } from '../figure.ts';
import type { Company, Suppliers } from '../job.ts';
import { thingNamed } from '../parts.ts';
import type { CostGroup } from './groups.ts';
import type { HaulCosts } from './haul-lines.ts';
import {
  amountLine,
  type CostLine,
  joinLines,
  type Lines,
  priceOf,
  productLine,
  rateUnitProblems,
} from './line.ts';
import type { PackFigures } from './packs.ts';

export type MaterialFigures = {
  readonly base: {
    readonly total: { readonly 'order-tons': Figure };
    readonly geotextile?: {
      readonly total: { readonly rolls: Figure; readonly 'bought-area': Figure };
    };
  };
  readonly forms: {
    readonly boards: Readonly<Record<string, { readonly shortage: Figure }>>;
    readonly strips: Readonly<Record<string, { readonly shortage: Figure }>>;
    readonly stakes: { readonly shortage: Figure };
  };
  readonly reinforcement: {
    readonly total: {
      readonly sheets: Figure;
      readonly rolls: Figure;
      readonly 'bought-bars': Figure;
      readonly 'bought-glass-fibre': Figure;
      readonly 'bought-glass-fibre-length': Figure;
      readonly 'ordered-bent': Figure;
      readonly chairs: Figure;
      readonly ties: Figure;
    };
  };
  readonly edges: {
    readonly total: {
      readonly isolation: Figure;
      readonly sealed: Figure;
      readonly dowels: Figure;
      readonly ties: Figure;
      readonly holes: Figure;
    };
  };
  readonly concrete: {
    readonly truck: { readonly cost: Figure };
    readonly bags: { readonly count: Figure };
    readonly placing?: { readonly total: { readonly hire: Figure } };
  };
};

/** What curing takes: compound [gal], covers or sheeting [sq ft]. */
export type CuringNeed = { readonly compound: Figure; readonly sheeting: Figure };

/** Everything that is bought and stays: stone, boards, steel, concrete, curing compound, strips. */
export function materialLines(input: {
  readonly figures: MaterialFigures;
  readonly packs: PackFigures;
  readonly curing: CuringNeed;
  readonly supply: 'truck' | 'bags';
  /** Base that places sell at their own price, and what the supplier sells then. */
  readonly boughtBase: Pick<HaulCosts['base'], 'bought' | 'supplier-tons'>;
  readonly suppliers: Pick<
    Suppliers,
    'base' | 'geotextile' | 'mesh' | 'bars' | 'glassFibreBars' | 'dowels' | 'bagged' | 'sundries'
  >;
  readonly ownForms: Company['forms'];
}): Lines {
  const { figures, packs, suppliers, ownForms } = input;
  const { base, reinforcement, concrete } = figures;
  const { curingPriceUsd, isolationPriceUsd, chairPriceUsd } = suppliers.sundries;
  const priced = (key: string) => `company.suppliers.sundries.${key}`;
  return joinLines([
    plain(boughtBaseLines(input.boughtBase)),
    rated(
      'base-stone',
      'base-and-forms',
      input.boughtBase['supplier-tons'] ?? base.total['order-tons'],
      'base',
      suppliers.base.price,
      ['ton'],
      '$/ton',
    ),
    fabricLines(base.geotextile, suppliers.geotextile),
    plain(formLines(figures.forms, ownForms)),
    rated(
      'mesh',
      'base-and-forms',
      reinforcement.total.sheets,
      'mesh',
      suppliers.mesh.price,
      ['sheet', 'each'],
      '$/each',
    ),
    rated(
      'bars',
      'base-and-forms',
      reinforcement.total['bought-bars'],
      'bars',
      suppliers.bars.price,
      ['lb'],
      '$/lb',
    ),
    plain(rollLines(reinforcement.total.rolls, suppliers.mesh)),
    glassFibreLines(reinforcement.total, suppliers.glassFibreBars),
    plain(dowelLines(figures.edges.total, packs, suppliers.dowels)),
    plain(
      bought('chairs', 'base-and-forms', reinforcement.total.chairs, priced('chair-price'), chairPriceUsd),
    ),
    plain(packLines('bar-ties', 'base-and-forms', packs['tie-packs'], suppliers.sundries.barTies)),
    plain(
      bought(
        'isolation-strips',
        'base-and-forms',
        packs['isolation-strips'],
        priced('isolation-price'),
        isolationPriceUsd,
      ),
    ),
    plain(packLines('sealant', 'finish-and-clean', packs['sealant-tubes'], suppliers.sundries.sealant)),
    input.supply === 'truck'
      ? plain(
          amountLine({ name: 'ready-mix', group: 'concrete', kind: 'material', amount: concrete.truck.cost }),
        )
      : rated(
          'bags',
          'concrete',
          concrete.bags.count,
          'bagged',
          suppliers.bagged.price,
          ['bag', 'each'],
          '$/each',
        ),
    plain(
      bought(
        'curing-compound',
        'finish-and-clean',
        packs['curing-packs'],
        priced('curing-price'),
        curingPriceUsd,
      ),
    ),
    plain(sheetingLines(input.curing.sheeting, suppliers.sundries)),
  ]);
}

/** What a company names with a price of its own, or does not; its line is called as its key is. */
function packLines(
  name: 'bar-ties' | 'sealant',
  group: 'base-and-forms' | 'finish-and-clean',
  packs: Figure | undefined,
  product: { readonly priceUsd: Decimal } | null,
): readonly CostLine[] {
  if (packs === undefined || product === null) return [];
  return bought(name, group, packs, `company.suppliers.sundries.${name}.price`, product.priceUsd);
}

/** A price is there wherever sheeting is needed; the reader of the files sees to it. */
function sheetingLines(areaSqFt: Figure, { sheetingPrice }: Suppliers['sundries']): readonly CostLine[] {
  if (sheetingPrice === null) return [];
  return productLine({
    name: 'curing-sheeting',
    group: 'finish-and-clean',
    kind: 'material',
    quantity: { key: 'areaSqFt', input: areaSqFt },
    price: {
      key: 'priceUsd',
      input: priceOf('company.suppliers.sundries.sheeting-price', sheetingPrice, '$/sq ft'),
    },
  });
}

function boughtBaseLines(base: Pick<HaulCosts['base'], 'bought'>): readonly CostLine[] {
  return Object.entries(base.bought ?? {}).flatMap(([place, { cost }]) =>
    amountLine({
      name: `base-stone-${place}`,
      group: 'base-and-forms',
      kind: 'material',
      amount: cost,
    }),
  );
}

/** By the roll, or by the area of the whole rolls. */
function fabricLines(
  fabric: MaterialFigures['base']['geotextile'],
  supplier: Suppliers['geotextile'],
): Lines {
  if (fabric === undefined || supplier === null) return plain([]);
  const byArea = supplier.price.perUnit === 'sq ft';
  return rated(
    'geotextile',
    'base-and-forms',
    byArea ? fabric.total['bought-area'] : fabric.total.rolls,
    'geotextile',
    supplier.price,
    ['roll', 'sq ft'],
    byArea ? '$/sq ft' : '$/each',
  );
}

function rollLines(rolls: Figure, { roll }: Suppliers['mesh']): readonly CostLine[] {
  if (roll === null) return [];
  return bought('mesh-rolls', 'base-and-forms', rolls, 'company.suppliers.mesh.roll-price', roll.priceUsd);
}

/** By the foot or the pound of whole bars; and by the piece that comes bent. */
function glassFibreLines(
  total: MaterialFigures['reinforcement']['total'],
  supplier: Suppliers['glassFibreBars'],
): Lines {
  if (supplier === null) return plain([]);
  const byLength = supplier.price.perUnit === 'ft';
  return joinLines([
    rated(
      'glass-fibre-bars',
      'base-and-forms',
      byLength ? total['bought-glass-fibre-length'] : total['bought-glass-fibre'],
      'glass-fibre-bars',
      supplier.price,
      ['ft', 'lb'],
      byLength ? '$/ft' : '$/lb',
    ),
    plain(
      bought(
        'glass-fibre-bent',
        'base-and-forms',
        total['ordered-bent'],
        'company.suppliers.glass-fibre-bars.bent-price',
        supplier.bentPriceUsd,
      ),
    ),
  ]);
}

function dowelLines(
  { dowels, ties }: MaterialFigures['edges']['total'],
  { 'epoxy-cartridges': epoxy }: PackFigures,
  supplier: Suppliers['dowels'],
): readonly CostLine[] {
  if (supplier === null) return [];
  const at = (key: string) => `company.suppliers.dowels.${key}`;
  return [
    ...bought('dowels', 'base-and-forms', dowels, at('dowel-price'), supplier.dowelPriceUsd),
    ...bought('tie-bars', 'base-and-forms', ties, at('tie-price'), supplier.tiePriceUsd),
    ...(epoxy === undefined
      ? []
      : bought('epoxy', 'base-and-forms', epoxy, at('cartridge-price'), supplier.cartridgePriceUsd)),
  ];
}

function formLines(forms: MaterialFigures['forms'], own: Company['forms']): readonly CostLine[] {
  const boards = Object.entries(forms.boards).flatMap(([id, { shortage }]) => {
    const { priceUsd } = thingNamed(own.boards, id, 'form board');
    return bought(
      `form-boards-${id}`,
      'base-and-forms',
      shortage,
      `company.forms.boards.${id}.price`,
      priceUsd,
    );
  });
  const strips = Object.entries(forms.strips).flatMap(([id, { shortage }]) => {
    const { priceUsd } = thingNamed(own.strips, id, 'form strip');
    return bought(
      `form-strips-${id}`,
      'base-and-forms',
      shortage,
      `company.forms.strips.${id}.price`,
      priceUsd,
    );
  });
  const { shortage } = forms.stakes;
  return [
    ...boards,
    ...strips,
    ...bought('stakes', 'base-and-forms', shortage, 'company.forms.stake-price', own.stakePriceUsd),
  ];
}

function bought(name: string, group: CostGroup, count: Figure, path: string, priceUsd: Rate['amountUsd']) {
  return productLine({
    name,
    group,
    kind: 'material',
    quantity: { key: 'count', input: count },
    price: { key: 'priceUsd', input: given(path, priceUsd, '$/each') },
  });
}

const QUANTITY_KEY: Partial<Record<FigureUnit, string>> = {
  '$/ton': 'quantityTon',
  '$/lb': 'weightLb',
  '$/ft': 'lengthFt',
  '$/sq ft': 'areaSqFt',
};

function rated(
  name: string,
  group: CostGroup,
  quantity: Figure,
  supplier: string,
  rate: Rate,
  allowed: readonly RateUnit[],
  unit: FigureUnit,
): Lines {
  const path = `company.suppliers.${supplier}.price`;
  return {
    lines: productLine({
      name,
      group,
      kind: 'material',
      quantity: { key: QUANTITY_KEY[unit] ?? 'count', input: quantity },
      price: { key: 'priceUsd', input: priceOf(path, rate, unit) },
    }),
    problems: rateUnitProblems(path, rate, allowed),
  };
}

function plain(lines: readonly CostLine[]): Lines {
  return { lines, problems: [] };
}
