import { type Outline, outlineAreaSqIn, type Ring } from '../../geometry/index.ts';
import { DEFINITION, type Figure, type FigureInput, figure, given } from '../figure.ts';
import type { TapedBase } from '../job.ts';

export const AREA_SOURCE =
  'J. V. Mahun, Open Access Surveying: area by coordinates, arcs added as segments (seen)';
const SECTOR_SOURCE = 'F. A. Griffiths, The Artillerist’s Manual: half of the radius times the arc (seen)';
const STRIP_SOURCE = 'Pappus: width times the length of the centre line';

type Inputs = Readonly<Record<string, FigureInput>>;

/** The tape readings of a base, by the names they have in formulas. */
export function baseInputs(base: TapedBase, path: string): Inputs {
  const at = (key: string, value: number, unit: 'in' | 'deg' = 'in') =>
    given(`${path}.${base.kind}.${key}`, value, unit);
  switch (base.kind) {
    case 'rectangle':
      return { lengthIn: at('length', base.lengthIn), widthIn: at('width', base.widthIn) };
    case 'trapezoid':
      return {
        baseIn: at('base', base.baseIn),
        topIn: at('top', base.topIn),
        depthIn: at('depth', base.depthIn),
        offsetIn: at('offset', base.offsetIn),
      };
    case 'circle':
      return { diameterIn: at('diameter', base.diameterIn) };
    case 'sector':
      return { radiusIn: at('radius', base.radiusIn), angleDeg: at('angle', degrees(base.angleRad), 'deg') };
    case 'corners':
      return numbered(base.points, ({ xIn, yIn }, index) => [
        [`corner${index + 1}AlongIn`, at(`${index}.0`, xIn)],
        [`corner${index + 1}OutIn`, at(`${index}.1`, yIn)],
      ]);
    case 'sides':
      return numbered(base.sides, ({ lengthIn, turnRad }, index) => [
        [`side${index + 1}In`, at(`${index}.length`, lengthIn)],
        ...(index === 0
          ? []
          : ([[`turn${index + 1}Deg`, at(`${index}.turn`, degrees(turnRad), 'deg')]] as const)),
      ]);
    case 'four-sides':
      return {
        ...numbered(base.sidesIn, (sideIn, index) => [[`side${index + 1}In`, at(`sides.${index}`, sideIn)]]),
        diagonalIn: at('diagonal', base.diagonalIn),
      };
    case 'triangles':
      return {
        baseIn: at('base', base.baseIn),
        ...numbered(base.corners, ({ from, distancesIn }, index) =>
          distancesIn.map((distanceIn, which) => [
            `from${from[which] ?? 0}To${index + 3}In`,
            at(`corners.${index}.distances.${which}`, distanceIn),
          ]),
        ),
      };
    case 'strip':
      return stripInputs(base, at);
  }
}

function stripInputs(
  base: Extract<TapedBase, { kind: 'strip' }>,
  at: (key: string, value: number, unit?: 'in' | 'deg') => FigureInput,
): Inputs {
  return {
    widthIn: at('width', base.widthIn),
    ...(base.endWidthIn === null ? {} : { endWidthIn: at('end-width', base.endWidthIn) }),
    ...numbered(base.line, (piece, index) => {
      const number = index + 1;
      if (piece.kind === 'straight')
        return [[`straight${number}In`, at(`line.${index}.straight`, piece.lengthIn)]];
      const key = piece.kind === 'arc' ? 'arc' : 'turn';
      const turn = [`turn${number}Deg`, at(`line.${index}.${key}`, degrees(piece.turnRad), 'deg')] as const;
      if (piece.kind === 'arc')
        return [[`radius${number}In`, at(`line.${index}.radius`, piece.radiusIn)], turn];
      if (piece.rounding === null) return [turn];
      return [turn, [`back${number}In`, at(`line.${index}.back`, piece.rounding.setbackIn)]];
    }),
  };
}

function numbered<T>(
  items: readonly T[],
  of: (item: T, index: number) => readonly (readonly [string, FigureInput])[],
): Inputs {
  return Object.fromEntries(items.flatMap((item, index) => of(item, index)));
}

/** Area of the base as taped, corners sharp and edges straight. */
export function baseAreaFigure(base: TapedBase, ring: Ring, path: string): Figure {
  const inputs = baseInputs(base, path);
  const { formula, source } = areaFormula(base);
  const outline: Outline = { rings: [ring] };
  return figure({
    value: Math.abs(outlineAreaSqIn(outline)) / 144,
    unit: 'sq ft',
    decimals: 2,
    formula,
    inputs,
    source,
  });
}

function areaFormula(base: TapedBase): { formula: string | { method: string }; source: string } {
  switch (base.kind) {
    case 'rectangle':
      return { formula: 'lengthIn * widthIn / 144', source: DEFINITION };
    case 'trapezoid':
      return { formula: '(baseIn + topIn) / 2 * depthIn / 144', source: DEFINITION };
    case 'circle':
      return { formula: { method: 'pi diameter² / 4' }, source: DEFINITION };
    case 'sector':
      return { formula: { method: 'half of the radius times the arc' }, source: SECTOR_SOURCE };
    case 'strip':
      return base.line.some(({ kind }) => kind === 'turn')
        ? { formula: { method: 'area by coordinates over the edges of the strip' }, source: AREA_SOURCE }
        : { formula: { method: 'width times the length of the centre line' }, source: STRIP_SOURCE };
    default:
      return { formula: { method: 'area by coordinates over the corners' }, source: AREA_SOURCE };
  }
}

function degrees(angleRad: number): number {
  return (angleRad * 180) / Math.PI;
}
