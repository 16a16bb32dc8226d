import {
  type EdgeKind,
  edgeLengthsByKindIn,
  type Outline,
  outlinePerimeterIn,
  type RoundedCorner,
} from '../../geometry/index.ts';
import { type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { TapedShape } from '../job.ts';
import { AREA_SOURCE, baseAreaFigure, baseInputs } from './base-figures.ts';
import type { TapeLimits } from './base-ring.ts';
import { type CheckFigures, checkFigures } from './check-figures.ts';
import type { ClosedShape } from './close-shape.ts';
import { slopeRatio, stretches } from './place.ts';

export type ShapeFigures = CheckFigures & {
  readonly area: Figure;
  readonly perimeter: Figure;
  readonly 'formed-straight': Figure;
  readonly 'formed-curved': Figure;
  readonly 'along-house': Figure;
  readonly 'along-stays': Figure;
  readonly 'along-joint': Figure;
  readonly 'lost-to-corners': Figure;
  /** What the area is made of, where it is more than a base with rounded corners. */
  readonly parts?: Readonly<Record<string, Figure>>;
};

const CURVE_SOURCE = 'J. V. Mahun, Open Access Surveying: elements of a circular curve (seen)';

/** The figures of one closed shape: area in sq ft, lengths in ft. All of the surface, which material follows. */
export function shapeFigures(made: {
  readonly shape: TapedShape;
  readonly closed: ClosedShape;
  readonly surface: Outline;
  readonly path: string;
  readonly miss: { readonly to: string; readonly missIn: number } | null;
  readonly limits: TapeLimits;
}): ShapeFigures {
  const { shape, closed, surface, path } = made;
  const base = baseAreaFigure(shape.base, closed.base, path);
  // The tape readings stand once, at the base; what else follows from them names it.
  const inputs = { baseSqFt: base, ...slopeInput(shape, path) };
  const lost = lostToCorners(closed.corners, roundingInputs(shape, path));
  const lengths = edgeLengthsByKindIn(surface);
  const edge = (kind: EdgeKind, part: 'straight' | 'curved' | 'both') => {
    const { straightIn, curvedIn } = lengths[kind];
    const lengthIn = part === 'straight' ? straightIn : part === 'curved' ? curvedIn : straightIn + curvedIn;
    return figure({
      value: lengthIn / 12,
      unit: 'ft',
      decimals: 2,
      formula: { method: `length of the ${part === 'both' ? '' : `${part} `}edges of kind "${kind}"` },
      inputs,
    });
  };

  return {
    ...areaFigures(made, base, lost),
    perimeter: figure({
      value: outlinePerimeterIn(surface) / 12,
      unit: 'ft',
      decimals: 2,
      formula: { method: 'length of all edges, arcs along the arc' },
      inputs,
      source: CURVE_SOURCE,
    }),
    'formed-straight': edge('formed', 'straight'),
    'formed-curved': edge('formed', 'curved'),
    'along-house': edge('house', 'both'),
    'along-stays': edge('stays', 'both'),
    'along-joint': edge('joint', 'both'),
    'lost-to-corners': lost,
    ...checkFigures({ ...made, inputs }),
  };
}

/** The area is the base and what was added to it and taken off, once and in that order. */
function areaFigures(
  made: { readonly shape: TapedShape; readonly closed: ClosedShape; readonly path: string },
  base: Figure,
  lostSqFt: Figure,
): Pick<ShapeFigures, 'area' | 'parts'> {
  const { shape, closed, path } = made;
  const { taped } = shape;
  const bent = bentFigure(shape, closed, path);
  const added = Object.entries(closed.added).map(
    ([id, { areaSqIn }]) => [id, partFigure(areaSqIn, shape.added[id]?.base, `${path}.added.${id}`)] as const,
  );
  const cutOuts = Object.entries(closed.cutOuts).map(
    ([id, { areaSqIn }]) =>
      [id, partFigure(areaSqIn, shape.cutOuts[id]?.base, `${path}.cut-outs.${id}`)] as const,
  );
  const sumOf = (parts: readonly (readonly [string, Figure])[]) =>
    parts.reduce((sum, [, part]) => sum + num(part), 0);
  const named = (what: string, parts: readonly (readonly [string, Figure])[]) =>
    Object.fromEntries(parts.map(([, part], index) => [`${what}${index + 1}SqFt`, part]));
  const addedInputs = named('added', added);
  const leftOutInputs = named('leftOut', cutOuts);
  const plus = ['baseSqFt', ...(bent === null ? [] : ['bentSqFt']), ...Object.keys(addedInputs)].join(' + ');
  const minus = ['lostSqFt', ...Object.keys(leftOutInputs)].join(' - ');
  const levelSqFt =
    num(base) + (bent === null ? 0 : num(bent)) + sumOf(added) - num(lostSqFt) - sumOf(cutOuts);
  const isLevel = taped === null || taped.how === 'on-slope';
  const parts = {
    base,
    ...(bent === null ? {} : { bent }),
    ...Object.fromEntries(added.map(([id, part]) => [`added-${id}`, part])),
    ...Object.fromEntries(cutOuts.map(([id, part]) => [`left-out-${id}`, part])),
  };
  return {
    area: figure({
      value: isLevel ? levelSqFt : levelSqFt * slopeRatio(taped.slope),
      unit: 'sq ft',
      decimals: 2,
      formula: isLevel ? `${plus} - ${minus}` : `(${plus} - ${minus}) * sqrt(1 + slope ^ 2)`,
      inputs: {
        baseSqFt: base,
        ...(bent === null ? {} : { bentSqFt: bent }),
        ...addedInputs,
        lostSqFt,
        ...leftOutInputs,
        ...(isLevel ? {} : { slope: given(`${path}.taped.slope`, taped.slope, 'ratio') }),
      },
      source: AREA_SOURCE,
    }),
    parts,
  };
}

function bentFigure(shape: TapedShape, closed: ClosedShape, path: string): Figure | null {
  if (shape.bent.length === 0) return null;
  return figure({
    value: closed.bentSqIn / 144,
    unit: 'sq ft',
    decimals: 3,
    formula: { method: 'sum over the bent edges of the segment between chord and arc' },
    inputs: Object.fromEntries(
      shape.bent.flatMap(({ edge, by }): (readonly [string, FigureInput])[] => {
        const at = `${path}.bent.${edge}`;
        if (by.kind === 'rise') return [[`rise${edge}In`, given(`${at}.rise`, by.riseIn, 'in')]];
        if (by.kind === 'radius') return [[`radius${edge}In`, given(`${at}.radius`, by.radiusIn, 'in')]];
        return [
          [`along${edge}In`, given(`${at}.through.0`, by.at.xIn, 'in')],
          [`across${edge}In`, given(`${at}.through.1`, by.at.yIn, 'in')],
        ];
      }),
    ),
    source: AREA_SOURCE,
  });
}

function partFigure(areaSqIn: number, base: TapedShape['base'] | undefined, path: string): Figure {
  return figure({
    value: areaSqIn / 144,
    unit: 'sq ft',
    decimals: 2,
    formula: { method: 'area of the piece as taped' },
    inputs: base === undefined ? {} : baseInputs(base, path),
    source: AREA_SOURCE,
  });
}

function slopeInput(shape: TapedShape, path: string): Record<string, FigureInput> {
  const { taped } = shape;
  if (taped === null || stretches(taped).surface.alongRatio * stretches(taped).surface.acrossRatio === 1)
    return {};
  return { slope: given(`${path}.taped.slope`, taped.slope, 'ratio') };
}

/** The tape readings that round the corners. */
function roundingInputs(shape: TapedShape, path: string): Record<string, FigureInput> {
  return Object.fromEntries(
    shape.rounded.flatMap(({ corner, by }): (readonly [string, FigureInput])[] => {
      switch (by.kind) {
        case 'setback':
          return [[`setback${corner}In`, given(`${path}.rounded.${corner}`, by.setbackIn, 'in')]];
        case 'radius':
          return [[`radius${corner}In`, given(`${path}.rounded-to-radius.${corner}`, by.radiusIn, 'in')]];
        case 'chord': {
          const at = `${path}.rounded-by-chord.${corner}`;
          return [
            [`chord${corner}In`, given(`${at}.chord`, by.chordIn, 'in')],
            [`rise${corner}In`, given(`${at}.rise`, by.riseIn, 'in')],
          ];
        }
        case 'two-arcs': {
          const at = `${path}.rounded-by-two-arcs.${corner}`;
          return [
            [`firstRadius${corner}In`, given(`${at}.first-radius`, by.firstRadiusIn, 'in')],
            [`firstTurn${corner}Deg`, given(`${at}.first-turn`, (by.firstTurnRad * 180) / Math.PI, 'deg')],
            [`secondRadius${corner}In`, given(`${at}.second-radius`, by.secondRadiusIn, 'in')],
          ];
        }
      }
    }),
  );
}

function lostToCorners(corners: readonly RoundedCorner[], inputs: Record<string, FigureInput>): Figure {
  return figure({
    value: corners.reduce((sumSqIn, corner) => sumSqIn + corner.areaLostSqIn, 0) / 144,
    unit: 'sq ft',
    decimals: 3,
    formula: { method: 'sum over the rounded corners of R² (tan(d/2) - d/2), d the deflection' },
    inputs,
    source: CURVE_SOURCE,
  });
}
