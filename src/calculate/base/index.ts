import { ceilToStep } from '../../units/index.ts';
import { COMMON_PRACTICE, COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { BaseSupplier, Company, Job, Slab, Suppliers } from '../job.ts';
import type { OutlineResult, ShapeFigures } from '../outline/index.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import type { PostFigures } from '../tear-out/index.ts';
import type { TopicResult } from '../topic.ts';
import { type CompactingFigures, compactingFigures } from './compacting-figures.ts';
import { type Compactor, compactorOf } from './compactor.ts';
import { fabricOf } from './fabric.ts';
import type { GeotextileFigures } from './geotextile-figures.ts';
import { baseAreaSqFt, baseTon, compactedCuYd, looseCuYd, looseUnitWeightLbPerCuFt } from './volume.ts';

export { compactedSqFtPerHr, liftCount, plateHr } from './compacting.ts';
export { fabricAreaSqFt, withLapsSqFt } from './geotextile.ts';
export { baseAreaSqFt, baseTon, compactedCuYd, looseCuYd, looseUnitWeightLbPerCuFt } from './volume.ts';

export type SlabBaseFigures = {
  /** With the working margin along the formed edges [sq ft]. */
  readonly area: Figure;
  /** [yd3] */
  readonly compacted: Figure;
  /** Short tons. */
  readonly tons: Figure;
} & CompactingFigures;

export type BaseFigures = {
  /** Only of slabs that get a base. */
  readonly slabs: Readonly<Record<string, SlabBaseFigures>>;
  /** What fills the holes that posts leave, by their id; short tons, tamped by hand. */
  readonly holes: Readonly<Record<string, { readonly tons: Figure }>>;
  /** Only where a slab has fabric below its base. */
  readonly geotextile?: GeotextileFigures;
  /** Of slabs and holes together. */
  readonly total: {
    /** [yd3] */
    readonly compacted: Figure;
    /** [yd3] */
    readonly loose: Figure;
    readonly tons: Figure;
    /** Up to the increment of the supplier. */
    readonly 'order-tons': Figure;
    /** Of the base as it rides in a box [lb/cu ft]. */
    readonly 'loose-unit-weight': Figure;
    /** Of the compactor [h]. */
    readonly 'plate-hours': Figure;
  };
};

export type BaseResult = TopicResult<BaseFigures, Readonly<Record<never, never>>>;

/**
 * The base under the slabs: area with its margin, compacted and loose volume, tons, order; lifts,
 * passes and hours of the compactor. What fills the holes of posts is ordered with it: the same
 * stone, common practice, no source. Fabric below it where a slab has any.
 *
 * @throws {RangeError} If the outline of a slab is missing.
 */
export function calcBase(input: {
  readonly slabs: Job['build']['slabs'];
  readonly shapes: OutlineResult['figures'];
  readonly posts: Readonly<Record<string, Pick<PostFigures, 'hole-fill'>>>;
  readonly allowances: Company['allowances'];
  readonly supplier: BaseSupplier;
  readonly geotextile: Suppliers['geotextile'];
  readonly machines: Company['machines'];
  /** Id of the machine that the base is made with; null for none. */
  readonly baseMachine: string | null;
}): BaseResult {
  const { allowances, supplier } = input;
  const from = { allowances, supplier, compactor: compactorOf(input) };
  const slabs = Object.fromEntries(
    Object.values(input.slabs)
      .filter((slab) => slab.baseIn > 0)
      .map((slab) => [slab.id, slabFigures(slab, thingNamed(input.shapes.slabs, slab.id, 'outline'), from)]),
  );
  const holes = Object.fromEntries(
    Object.entries(input.posts).map(([id, { 'hole-fill': compacted }]) => {
      return [id, { compacted, tons: tonsFigure(compacted, supplier) }];
    }),
  );
  const fabric = fabricOf({
    slabs: input.slabs,
    bases: slabs,
    shapes: input.shapes.slabs,
    supplier: input.geotextile,
  });
  return {
    figures: {
      slabs,
      holes: Object.fromEntries(Object.entries(holes).map(([id, { tons }]) => [id, { tons }])),
      ...(fabric.figures === null ? {} : { geotextile: fabric.figures }),
      total: totalFigures(slabs, holes, supplier),
    },
    data: {},
    problems: fabric.problems,
  };
}

function slabFigures(
  slab: Slab,
  shape: ShapeFigures,
  from: {
    readonly allowances: Company['allowances'];
    readonly supplier: BaseSupplier;
    readonly compactor: Compactor;
  },
): SlabBaseFigures {
  const { baseMarginIn } = from.allowances;
  const area = figure({
    value: baseAreaSqFt({
      areaSqFt: num(shape.area),
      formedStraightFt: num(shape['formed-straight']),
      formedCurvedFt: num(shape['formed-curved']),
      marginIn: baseMarginIn,
    }),
    unit: 'sq ft',
    decimals: 1,
    formula: 'areaSqFt + marginIn / 12 * (formedStraightFt + formedCurvedFt)',
    inputs: {
      areaSqFt: shape.area,
      marginIn: given('company.allowances.base-margin', baseMarginIn, 'in'),
      formedStraightFt: shape['formed-straight'],
      formedCurvedFt: shape['formed-curved'],
    },
    source: COMMON_PRACTICE,
  });
  const compacted = figure({
    value: compactedCuYd({ areaSqFt: num(area), thicknessIn: slab.baseIn }),
    unit: 'yd3',
    decimals: 2,
    formula: 'areaSqFt * baseIn / 12 / 27',
    inputs: { areaSqFt: area, baseIn: given(`build.slabs.${slab.id}.base`, slab.baseIn, 'in') },
  });
  const tons = tonsFigure(compacted, from.supplier);
  return { area, compacted, tons, ...compactingFigures(slab, area, from.compactor) };
}

function tonsFigure(compacted: Figure, supplier: BaseSupplier): Figure {
  return figure({
    value: baseTon(num(compacted), supplier.compactedLbPerCuFt),
    unit: 'ton',
    decimals: 2,
    formula: 'compactedCuYd * 27 * compactedLbPerCuFt / 2000',
    inputs: { compactedCuYd: compacted, compactedLbPerCuFt: compactedWeight(supplier) },
    source: COMPANY_FIGURE,
  });
}

function totalFigures(
  slabs: Readonly<Record<string, SlabBaseFigures>>,
  holes: Readonly<Record<string, { readonly compacted: Figure; readonly tons: Figure }>>,
  supplier: BaseSupplier,
): BaseFigures['total'] {
  // Two hyphens stand in no id, so that posts called like a slab are another part.
  const parts: Readonly<Record<string, { readonly compacted: Figure; readonly tons: Figure }>> = {
    ...slabs,
    ...Object.fromEntries(Object.entries(holes).map(([id, hole]) => [`posts--${id}`, hole])),
  };
  const compacted = sumFigure({
    parts: pick(parts, 'compacted'),
    unitSuffix: 'CuYd',
    unit: 'yd3',
    decimals: 2,
  });
  const tons = sumFigure({ parts: pick(parts, 'tons'), unitSuffix: 'Ton', unit: 'ton', decimals: 2 });
  const looseOverCompacted = given(
    'company.suppliers.base.loose-over-compacted',
    supplier.looseOverCompacted,
    'ratio',
  );
  return {
    compacted,
    loose: figure({
      value: looseCuYd(num(compacted), supplier.looseOverCompacted),
      unit: 'yd3',
      decimals: 2,
      formula: 'compactedCuYd * looseOverCompacted',
      inputs: { compactedCuYd: compacted, looseOverCompacted },
      source: COMPANY_FIGURE,
    }),
    tons,
    'order-tons': figure({
      value: ceilToStep(num(tons), supplier.incrementTon),
      unit: 'ton',
      decimals: 2,
      formula: 'ceilStep(tons, incrementTon)',
      inputs: {
        tons,
        incrementTon: given('company.suppliers.base.increment', supplier.incrementTon, 'ton'),
      },
      source: COMPANY_FIGURE,
      rounding: 'up',
    }),
    'loose-unit-weight': figure({
      value: looseUnitWeightLbPerCuFt(supplier.compactedLbPerCuFt, supplier.looseOverCompacted),
      unit: 'lb/cu ft',
      decimals: 1,
      formula: 'compactedLbPerCuFt / looseOverCompacted',
      inputs: { compactedLbPerCuFt: compactedWeight(supplier), looseOverCompacted },
      source: COMPANY_FIGURE,
    }),
    'plate-hours': sumFigure({
      parts: pick(slabs, 'plate-hours'),
      unitSuffix: 'Hr',
      unit: 'h',
      decimals: 2,
    }),
  };
}

function compactedWeight(supplier: BaseSupplier) {
  return given('company.suppliers.base.compacted-weight', supplier.compactedLbPerCuFt, 'lb/cu ft');
}
