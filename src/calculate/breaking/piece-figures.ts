import { boundsOf, gridLines, lineLengthIn, type Outline } from '../../geometry/index.ts';
import { ceilCount } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { Machine } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';
import { handPieceSideIn } from '../tear-out/index.ts';

export type GridFigures = {
  /** Sides of the box around the thing, along and across its own lines [in]. */
  readonly 'box-along': Figure;
  readonly 'box-across': Figure;
  readonly 'pieces-along': Figure;
  readonly 'pieces-across': Figure;
  /** [in] */
  readonly 'piece-along': Figure;
  readonly 'piece-across': Figure;
  /** Of the lines between the pieces [ft]; the edges are cut free by the saw cut of the tear-out. */
  readonly 'cut-length': Figure;
};

/** Side of the largest square piece that a machine lifts [in]. */
export function machinePieceFigure(machine: Machine & { readonly liftsLb: number }, perSqFt: Figure): Figure {
  return figure({
    value: handPieceSideIn({ limitLb: machine.liftsLb, weightLbPerSqFt: num(perSqFt) }),
    unit: 'in',
    decimals: 1,
    formula: '12 * sqrt(liftsLb / weightLbPerSqFt)',
    inputs: {
      liftsLb: given(`company.machines.${machine.id}.lifts`, machine.liftsLb, 'lb'),
      weightLbPerSqFt: perSqFt,
    },
    source: COMPANY_FIGURE,
  });
}

/**
 * The grid a thing is sawn along: equal pieces of its box, none with a side above the limit.
 *
 * n = ceil(side / limit) each way. A piece weighs at most what the limit was made from, since none
 * is larger than the square of it.
 *
 * @param outline Along its own lines, as taped: not turned on the plan.
 */
export function gridFigures(made: {
  readonly outline: Outline;
  readonly shape: Pick<ShapeFigures, 'perimeter'>;
  readonly mostIn: Figure;
}): GridFigures {
  const { outline, shape, mostIn } = made;
  const bounds = boundsOf(outline);
  const boxAlong = boxFigure('along', bounds.maxXIn - bounds.minXIn, shape);
  const boxAcross = boxFigure('across', bounds.maxYIn - bounds.minYIn, shape);
  const along = countFigure(boxAlong, mostIn);
  const across = countFigure(boxAcross, mostIn);
  const lines = gridLines({ outline, bounds, xCount: num(along), yCount: num(across) });
  return {
    'box-along': boxAlong,
    'box-across': boxAcross,
    'pieces-along': along,
    'pieces-across': across,
    'piece-along': sideFigure(boxAlong, along),
    'piece-across': sideFigure(boxAcross, across),
    'cut-length': figure({
      value: lines.reduce((sumIn, line) => sumIn + lineLengthIn(line), 0) / 12,
      unit: 'ft',
      decimals: 1,
      formula: { method: 'lines between the pieces of the box, cut where they leave the outline' },
      inputs: { boxAlongIn: boxAlong, boxAcrossIn: boxAcross, alongCount: along, acrossCount: across },
    }),
  };
}

function boxFigure(way: string, sideIn: number, shape: Pick<ShapeFigures, 'perimeter'>): Figure {
  return figure({
    value: sideIn,
    unit: 'in',
    decimals: 2,
    formula: { method: `side of the box around the outline, ${way} its own lines` },
    inputs: shape.perimeter.inputs,
  });
}

function countFigure(boxSideIn: Figure, mostIn: Figure): Figure {
  return figure({
    value: ceilCount(num(boxSideIn) / num(mostIn)),
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(boxSideIn / mostIn, 1)',
    inputs: { boxSideIn, mostIn },
    rounding: 'up',
  });
}

function sideFigure(boxSideIn: Figure, pieceCount: Figure): Figure {
  return figure({
    value: num(boxSideIn) / num(pieceCount),
    unit: 'in',
    decimals: 1,
    formula: 'boxSideIn / pieceCount',
    inputs: { boxSideIn, pieceCount },
  });
}
