import type { CoreProblem } from '../../problems/index.ts';
import { ceilCount, formatInches } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { GeotextileSupplier, Slab } from '../job.ts';
import { pick, sumFigure } from '../parts.ts';
import { fabricAreaSqFt, withLapsSqFt } from './geotextile.ts';

export type GeotextileFigures = {
  /** Ground and sides of the box under each slab that has it [sq ft]. */
  readonly slabs: Readonly<Record<string, { readonly area: Figure }>>;
  readonly lap: Figure;
  readonly total: {
    readonly area: Figure;
    /** Off the roll [sq ft]. */
    readonly 'with-laps': Figure;
    /** Whole ones. */
    readonly rolls: Figure;
    /** Of the whole rolls [sq ft]. */
    readonly 'bought-area': Figure;
  };
};

const SUPPLIER = 'company.suppliers.geotextile';
const BOX_SOURCE =
  'masonry trade magazine, April 2007, p. 52 (seen): geotextile laps at least 12 in and covers the sides of the box';

/** What of a slab the fabric under it follows from. */
type FabricBox = { readonly slab: Slab; readonly baseArea: Figure; readonly perimeter: Figure };

/** Fabric under all slabs that have it, off one kind of roll; whole rolls are bought. */
export function geotextileFigures(
  boxes: readonly FabricBox[],
  supplier: GeotextileSupplier,
): GeotextileFigures {
  const { rollWidthIn, rollLengthIn, lapIn } = supplier;
  const slabs = Object.fromEntries(boxes.map((box) => [box.slab.id, { area: boxFigure(box) }]));
  const roll = {
    rollWidthIn: given(`${SUPPLIER}.roll-width`, rollWidthIn, 'in'),
    rollLengthIn: given(`${SUPPLIER}.roll-length`, rollLengthIn, 'in'),
  };
  const lap = figure({
    value: lapIn,
    unit: 'in',
    decimals: 2,
    formula: 'lapIn',
    inputs: { lapIn: given(`${SUPPLIER}.lap`, lapIn, 'in') },
    source: COMPANY_FIGURE,
  });
  const area = sumFigure({
    parts: pick(slabs, 'area'),
    unitSuffix: 'SqFt',
    unit: 'sq ft',
    decimals: 1,
  });
  const withLaps = figure({
    value: withLapsSqFt({ areaSqFt: num(area), rollWidthIn, rollLengthIn, lapIn }),
    unit: 'sq ft',
    decimals: 1,
    formula: 'areaSqFt * rollWidthIn / (rollWidthIn - lapIn) * rollLengthIn / (rollLengthIn - lapIn)',
    inputs: { areaSqFt: area, ...roll, lapIn: lap },
  });
  const rolls = figure({
    value: ceilCount((num(withLaps) * 144) / (rollWidthIn * rollLengthIn)),
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(withLapsSqFt * 144 / (rollWidthIn * rollLengthIn), 1)',
    inputs: { withLapsSqFt: withLaps, ...roll },
    rounding: 'up',
  });
  const boughtArea = figure({
    value: (num(rolls) * rollWidthIn * rollLengthIn) / 144,
    unit: 'sq ft',
    decimals: 1,
    formula: 'rolls * rollWidthIn * rollLengthIn / 144',
    inputs: { rolls, ...roll },
  });
  return { slabs, lap, total: { area, 'with-laps': withLaps, rolls, 'bought-area': boughtArea } };
}

function boxFigure({ slab, baseArea, perimeter }: FabricBox): Figure {
  return figure({
    value: fabricAreaSqFt({
      baseAreaSqFt: num(baseArea),
      perimeterFt: num(perimeter),
      baseIn: slab.baseIn,
    }),
    unit: 'sq ft',
    decimals: 1,
    formula: 'baseAreaSqFt + baseIn / 12 * perimeterFt',
    inputs: {
      baseAreaSqFt: baseArea,
      baseIn: given(`build.slabs.${slab.id}.base`, slab.baseIn, 'in'),
      perimeterFt: perimeter,
    },
    source: BOX_SOURCE,
  });
}

/** Fabric asked for where no base lies on it. */
export function withoutBaseProblem({ id, label }: Slab): CoreProblem {
  return { code: 'fabric-without-base', path: `build.slabs.${id}.geotextile`, parts: { slab: label } };
}

/** A lap that leaves nothing of the roll; null where it leaves some. */
export function rollLapProblem(supplier: GeotextileSupplier): CoreProblem | null {
  const { rollWidthIn, rollLengthIn, lapIn } = supplier;
  const leastIn = Math.min(rollWidthIn, rollLengthIn);
  if (lapIn < leastIn) return null;
  const parts = { lap: formatInches(lapIn, 16), roll: formatInches(leastIn, 16) };
  return { code: 'roll-lap-too-long', path: `${SUPPLIER}.lap`, parts };
}
