import { cellsWithin, fallOf, largestBreak, lowPoints } from '../../geometry/index.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import { type AcrossFigures, acrossFigures } from './across-figures.ts';
import { leastFallFromHouse, type Outlets } from './house-fall.ts';
import { heightsOf } from './place-figures.ts';
import type { SlabSurface } from './surfaces.ts';

export type SlopeFigures = {
  /** Of the whole surface: its mean climb along and across, taken together [rise over run]. */
  readonly slope: Figure;
  readonly steepest: Figure;
  readonly flattest: Figure;
  /** The most that the slope changes where two of its planes meet [rise over run]. */
  readonly 'largest-break': Figure;
  /** Of a walk only. */
  readonly across?: AcrossFigures;
  /** The same, where the slab is held to the rules of public ways. */
  readonly 'public-way'?: AcrossFigures;
  /** How deep water stands at the most before it finds a way out [in]. */
  readonly 'stands-deep': Figure;
  /** The least within 10 ft of it; only where an edge stands along the house and it falls away. */
  readonly 'fall-from-house'?: Figure;
  /** Only where it falls towards the house. */
  readonly 'fall-to-house'?: Figure;
  /** How far the slope is from the stated fall; not of a walk, whose fall is across and its slope is not. */
  readonly 'off-stated-fall'?: Figure;
  /** The angle between its mean fall and the stated direction; only where there is one, and not of a walk [deg]. */
  readonly 'off-stated-direction'?: Figure;
};

/** Where an arrow of fall is drawn: within one part of the surface. */
export type Fall = {
  readonly at: { readonly xIn: number; readonly yIn: number };
  /** Anticlockwise from right on the plan. */
  readonly towardsRad: number;
  readonly slope: number;
  readonly areaSqIn: number;
};

/** Slopes that near to one another are one, and one that near to level has no direction [rise over run]. */
const SAME_SLOPE = 1e-6;

/**
 * How a surface slopes within its slab.
 *
 * @param outlets Where drains lead water off.
 */
export function slopeFigures(
  made: SlabSurface,
  outlets: Outlets = [],
): {
  readonly figures: SlopeFigures;
  readonly falls: readonly Fall[];
} {
  const { slab, outline, surface, points } = made;
  const parts = cellsWithin(surface, outline);
  const slopes = parts.map(({ plane }) => fallOf(plane).slope);
  const meanOf = (axis: 'climbX' | 'climbY') =>
    parts.reduce((sum, { plane, areaSqIn }) => sum + plane[axis] * areaSqIn, 0) /
    parts.reduce((sum, { areaSqIn }) => sum + areaSqIn, 0);
  const inputs = heightsOf(points);
  const ratio = (value: number, method: string) =>
    figure({ value, unit: 'ratio', decimals: 4, formula: { method }, inputs });
  const slope = ratio(
    Math.hypot(meanOf('climbX'), meanOf('climbY')),
    'mean climb along and across over the area, the root of the sum of their squares',
  );
  const depthsIn = lowPoints(surface, outline, ['formed', 'joint', 'stays'], outlets).map(
    ({ depthIn }) => depthIn,
  );
  return {
    figures: {
      slope,
      steepest: ratio(Math.max(...slopes), 'the steepest of the planes within the slab'),
      flattest: ratio(Math.min(...slopes), 'the flattest of the planes within the slab'),
      'largest-break': ratio(
        largestBreak(surface, outline),
        'the most that the climbs of two planes differ, square to the line where they meet',
      ),
      ...walkFigures(made),
      'stands-deep': figure({
        value: Math.max(0, ...depthsIn),
        unit: 'in',
        decimals: 2,
        formula: {
          method: 'deepest hollow below the lowest way out, a drain or an edge that is not the house',
        },
        inputs,
      }),
      ...houseFigures(leastFallFromHouse(surface, outline, outlets), ratio),
      ...(slab.use === 'walk'
        ? {}
        : {
            'off-stated-fall': figure({
              value: Math.abs(Number(slope.value) - slab.fall.slope),
              unit: 'ratio',
              decimals: 4,
              formula: 'max(slope - statedSlope, statedSlope - slope)',
              inputs: {
                slope,
                statedSlope: given(`build.slabs.${slab.id}.fall`, slab.fall.slope, 'ratio'),
              },
            }),
            ...directionFigure(slab, { x: meanOf('climbX'), y: meanOf('climbY') }, inputs),
          }),
    },
    falls: onePlaneEach(
      parts.map(({ plane, middle, areaSqIn }) => ({ at: middle, ...fallOf(plane), areaSqIn })),
    ).filter((fall) => fall.slope >= SAME_SLOPE),
  };
}

/** How far the mean fall points off the stated direction; nothing where none is stated or there is no fall. */
function directionFigure(
  { id, fall }: SlabSurface['slab'],
  climb: { readonly x: number; readonly y: number },
  heights: Readonly<Record<string, Figure>>,
): Pick<SlopeFigures, 'off-stated-direction'> {
  if (fall.directionDeg === null || Math.hypot(climb.x, climb.y) < SAME_SLOPE) return {};
  const fallsRad = Math.atan2(-climb.y, -climb.x);
  const statedRad = ((90 - fall.directionDeg) * Math.PI) / 180;
  const turnRad = fallsRad - statedRad;
  return {
    'off-stated-direction': figure({
      value: (Math.abs(Math.atan2(Math.sin(turnRad), Math.cos(turnRad))) * 180) / Math.PI,
      unit: 'deg',
      decimals: 0,
      formula: {
        method: 'the angle on the plan between the mean fall over the area and the stated direction',
      },
      inputs: {
        ...heights,
        statedDeg: given(`build.slabs.${id}.fall.direction`, fall.directionDeg, 'deg'),
      },
    }),
  };
}

function walkFigures(made: SlabSurface): Pick<SlopeFigures, 'across' | 'public-way'> {
  const { use, publicWay } = made.slab;
  if (use !== 'walk' && !publicWay) return {};
  const figures = acrossFigures(made);
  if (figures === null) return {};
  return {
    ...(use === 'walk' ? { across: figures } : {}),
    ...(publicWay ? { 'public-way': use === 'walk' ? ofPublicWay(figures) : figures } : {}),
  };
}

/** The same two slopes once more, held against the limits of a way that the public uses. */
function ofPublicWay({ slope, along }: AcrossFigures): AcrossFigures {
  const again = (ratio: Figure) =>
    figure({
      value: num(ratio),
      unit: 'ratio',
      decimals: ratio.decimals,
      formula: 'walkRatio',
      inputs: { walkRatio: ratio },
    });
  return { slope: again(slope), along: again(along) };
}

/** Triangles that lean alike are one part, and its arrow stands in the largest of them. */
function onePlaneEach(falls: readonly Fall[]): readonly Fall[] {
  const leansLike = (one: Fall, other: Fall) =>
    Math.hypot(
      one.slope * Math.cos(one.towardsRad) - other.slope * Math.cos(other.towardsRad),
      one.slope * Math.sin(one.towardsRad) - other.slope * Math.sin(other.towardsRad),
    ) < SAME_SLOPE;
  const largestFirst = falls.toSorted((one, other) => other.areaSqIn - one.areaSqIn);
  return largestFirst.flatMap((fall, index) => {
    if (largestFirst.slice(0, index).some((before) => leansLike(before, fall))) return [];
    const alike = largestFirst.filter((other) => leansLike(fall, other));
    return [{ ...fall, areaSqIn: alike.reduce((sum, { areaSqIn }) => sum + areaSqIn, 0) }];
  });
}

function houseFigures(
  fall: number | null,
  ratio: (value: number, method: string) => Figure,
): Pick<SlopeFigures, 'fall-from-house' | 'fall-to-house'> {
  if (fall === null) return {};
  // Level with the house is no fall towards it, whatever the noise of a double says.
  return fall >= -SAME_SLOPE
    ? {
        'fall-from-house': ratio(Math.max(0, fall), 'the least fall square to the house, within 10 ft of it'),
      }
    : { 'fall-to-house': ratio(-fall, 'the most fall towards the house, square to it and within 10 ft') };
}
