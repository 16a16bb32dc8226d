import { cornerFactor, type Ring } from '../../geometry/index.ts';
import { type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { Hollow } from '../job.ts';
import type { ShapeFigures } from '../outline/index.ts';
import { type PartFigures, partFigures } from './part-figures.ts';
import { ownUnitWeight } from './volume-figures.ts';

export type HollowFigures = {
  /** How a ring in from the outline shortens: 4 for a rectangle, pi for a circle. */
  readonly 'corner-factor': Figure;
  /** Within the walls [sq ft]. */
  readonly 'inside-area': Figure;
  /** Of the middle of the walls, all round [ft]. */
  readonly 'centre-line': Figure;
  readonly walls: PartFigures;
  readonly footing?: PartFigures;
  readonly fill?: PartFigures;
};

/**
 * What the walls, the footing and the fill of a hollow thing weigh and fill, each by itself.
 *
 * A ring moved in by d has the area A - P d + c d² and the length P - 2 c d, with c the corner factor:
 * exact for straight edges, for circles and for corners rounded smoothly. So the inside is the outline
 * moved in by the thickness of the walls, their middle is half of that in, and a footing of width w
 * under the middle is the ring of area length x w, on either side alike.
 *
 * @param outer The outer face, anticlockwise; the walls have room in it.
 */
export function hollowFigures(hollow: Hollow, shape: ShapeFigures, outer: Ring): HollowFigures {
  const path = `site.existing.${hollow.id}`;
  const { walls, footing, fill } = hollow;
  const wallIn = given(`${path}.walls.thickness`, walls.thicknessIn, 'in');
  const factor = figure({
    value: cornerFactor(outer),
    unit: 'ratio',
    decimals: 4,
    formula: { method: 'sum of tan(turn / 2) over the corners, and of half the sweep over the arcs' },
    inputs: shape.perimeter.inputs,
  });
  const inside = figure({
    value:
      num(shape.area) - (num(shape.perimeter) * num(wallIn)) / 12 + num(factor) * (num(wallIn) / 12) ** 2,
    unit: 'sq ft',
    decimals: 2,
    formula: 'areaSqFt - perimeterFt * wallIn / 12 + cornerFactor * (wallIn / 12) ^ 2',
    inputs: { areaSqFt: shape.area, perimeterFt: shape.perimeter, wallIn, cornerFactor: factor },
  });
  const centreLine = figure({
    value: num(shape.perimeter) - (num(factor) * num(wallIn)) / 12,
    unit: 'ft',
    decimals: 2,
    formula: 'perimeterFt - cornerFactor * wallIn / 12',
    inputs: { perimeterFt: shape.perimeter, cornerFactor: factor, wallIn },
  });
  return {
    'corner-factor': factor,
    'inside-area': inside,
    'centre-line': centreLine,
    walls: wallsFigures(hollow, shape, inside),
    ...(footing === null ? {} : { footing: footingFigures(path, footing, centreLine) }),
    ...(fill === null ? {} : { fill: fillFigures(path, fill, inside) }),
  };
}

function wallsFigures(hollow: Hollow, shape: ShapeFigures, inside: Figure): PartFigures {
  const path = `site.existing.${hollow.id}`;
  const heightIn = given(`${path}.walls.height`, hollow.walls.heightIn, 'in');
  const volume = volumeFigure(
    ((num(shape.area) - num(inside)) * num(heightIn)) / 12,
    '(areaSqFt - insideSqFt) * heightIn / 12',
    { areaSqFt: shape.area, insideSqFt: inside, heightIn },
  );
  return partFigures(volume, {
    material: hollow.material,
    own: ownUnitWeight(path, hollow.unitWeightLbPerCuFt),
  });
}

function footingFigures(
  path: string,
  footing: NonNullable<Hollow['footing']>,
  centreLine: Figure,
): PartFigures {
  const widthIn = given(`${path}.footing.width`, footing.widthIn, 'in');
  const thicknessIn = given(`${path}.footing.thickness`, footing.thicknessIn, 'in');
  const volume = volumeFigure(
    ((num(centreLine) * num(widthIn)) / 12) * (num(thicknessIn) / 12),
    'centreLineFt * widthIn / 12 * (thicknessIn / 12)',
    { centreLineFt: centreLine, widthIn, thicknessIn },
  );
  return partFigures(volume, { material: 'concrete', own: null });
}

function fillFigures(path: string, fill: NonNullable<Hollow['fill']>, inside: Figure): PartFigures {
  const depthIn = given(`${path}.fill.depth`, fill.depthIn, 'in');
  const volume = volumeFigure((num(inside) * num(depthIn)) / 12, 'insideSqFt * depthIn / 12', {
    insideSqFt: inside,
    depthIn,
  });
  return partFigures(volume, { material: fill.material, own: null });
}

function volumeFigure(value: number, formula: string, inputs: Readonly<Record<string, FigureInput>>): Figure {
  return figure({ value, unit: 'cu ft', decimals: 2, formula, inputs });
}
