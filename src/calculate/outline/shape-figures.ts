import {
  type EdgeKind,
  edgeLengthsByKindIn,
  type Outline,
  outlineAreaSqIn,
  outlinePerimeterIn,
  type RoundedCorner,
} from '../../geometry/index.ts';
import { type Figure, type FigureInput, figure, given } from '../figure.ts';
import type { TapedShape } from '../job.ts';

export type CornerFigures = {
  readonly setback: Figure;
  readonly radius: Figure;
  readonly 'arc-length': Figure;
};

export type ShapeFigures = {
  readonly area: Figure;
  readonly perimeter: Figure;
  readonly 'formed-straight': Figure;
  readonly 'formed-curved': Figure;
  readonly 'along-house': Figure;
  readonly 'along-stays': Figure;
  readonly 'along-joint': Figure;
  readonly 'lost-to-corners': Figure;
  readonly corners: Readonly<Record<string, CornerFigures>>;
};

const AREA_SOURCE = 'J. V. Mahun, Open Access Surveying: area by coordinates, arcs added as segments (seen)';
const CURVE_SOURCE = 'J. V. Mahun, Open Access Surveying: elements of a circular curve (seen)';

/** The figures of one closed shape: area in sq ft, lengths in ft, setbacks and radii in in. */
export function shapeFigures(made: {
  readonly shape: TapedShape;
  readonly outline: Outline;
  readonly corners: readonly RoundedCorner[];
  readonly path: string;
}): ShapeFigures {
  const { shape, outline, corners, path } = made;
  const sides = sideInputs(shape, path);
  const lost = lostToCorners(corners, sides);
  const lengths = edgeLengthsByKindIn(outline);
  const edge = (kind: EdgeKind, part: 'straight' | 'curved' | 'both') => {
    const { straightIn, curvedIn } = lengths[kind];
    const lengthIn = part === 'straight' ? straightIn : part === 'curved' ? curvedIn : straightIn + curvedIn;
    return figure({
      value: lengthIn / 12,
      unit: 'ft',
      decimals: 2,
      formula: { method: `length of the ${part === 'both' ? '' : `${part} `}edges of kind "${kind}"` },
      inputs: sides,
    });
  };

  return {
    area: areaFigure(shape, outline, sides, lost),
    perimeter: figure({
      value: outlinePerimeterIn(outline) / 12,
      unit: 'ft',
      decimals: 2,
      formula: { method: 'length of all edges, arcs along the arc' },
      inputs: sides,
      source: CURVE_SOURCE,
    }),
    'formed-straight': edge('formed', 'straight'),
    'formed-curved': edge('formed', 'curved'),
    'along-house': edge('house', 'both'),
    'along-stays': edge('stays', 'both'),
    'along-joint': edge('joint', 'both'),
    'lost-to-corners': lost,
    corners: Object.fromEntries(
      corners.map((corner) => [`corner-${corner.corner}`, cornerFigures(corner, path)]),
    ),
  };
}

function sideInputs(shape: TapedShape, path: string): Record<string, FigureInput> {
  const { base } = shape;
  if (base.kind === 'rectangle') {
    return {
      lengthIn: given(`${path}.rectangle.length`, base.lengthIn, 'in'),
      widthIn: given(`${path}.rectangle.width`, base.widthIn, 'in'),
    };
  }
  return Object.fromEntries(
    base.points.flatMap(({ xIn, yIn }, index) => [
      [`corner${index + 1}AlongIn`, given(`${path}.corners.${index}.0`, xIn, 'in')],
      [`corner${index + 1}OutIn`, given(`${path}.corners.${index}.1`, yIn, 'in')],
    ]),
  );
}

function areaFigure(
  shape: TapedShape,
  outline: Outline,
  sides: Record<string, FigureInput>,
  lostToCornersSqFt: Figure,
): Figure {
  return figure({
    value: outlineAreaSqIn(outline) / 144,
    unit: 'sq ft',
    decimals: 2,
    formula:
      shape.base.kind === 'rectangle'
        ? 'lengthIn * widthIn / 144 - lostToCornersSqFt'
        : { method: 'area by coordinates over the corners, less what the rounded corners lose' },
    inputs: { ...sides, lostToCornersSqFt },
    source: AREA_SOURCE,
  });
}

function lostToCorners(corners: readonly RoundedCorner[], sides: Record<string, FigureInput>): Figure {
  return figure({
    value: corners.reduce((sumSqIn, corner) => sumSqIn + corner.areaLostSqIn, 0) / 144,
    unit: 'sq ft',
    decimals: 3,
    formula: { method: 'sum over the rounded corners of R² (tan(d/2) - d/2), d the deflection' },
    inputs: sides,
    source: CURVE_SOURCE,
  });
}

function cornerFigures(corner: RoundedCorner, path: string): CornerFigures {
  const { setbackIn, radiusIn, deflectionRad, arcLengthIn } = corner;
  const taped = given(`${path}.rounded.${corner.corner}`, setbackIn, 'in');
  const setback = figure({
    value: setbackIn,
    unit: 'in',
    decimals: 2,
    formula: 'setbackIn',
    inputs: { setbackIn: taped },
  });
  const radius = figure({
    value: radiusIn,
    unit: 'in',
    decimals: 2,
    formula: { method: `setback / tan(d / 2), d = ${((deflectionRad * 180) / Math.PI).toFixed(3)} degrees` },
    inputs: { setbackIn: setback },
    source: CURVE_SOURCE,
  });
  const arcLength = figure({
    value: arcLengthIn,
    unit: 'in',
    decimals: 2,
    formula: { method: `radius x d, d = ${((deflectionRad * 180) / Math.PI).toFixed(3)} degrees` },
    inputs: { radiusIn: radius },
    source: CURVE_SOURCE,
  });
  return { setback, radius, 'arc-length': arcLength };
}
