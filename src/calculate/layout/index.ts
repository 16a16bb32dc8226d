import type { Outline, Point } from '../../geometry/index.ts';
import { COMMON_PRACTICE, type Figure, type FigureInput, figure } from '../figure.ts';
import { type Lies, type OutlineResult, type StringCorner, surfaceToPlan } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { cornerChecks, type SquareCheck, squareCheck } from './checks.ts';
import { type CurveLayout, curvesOf } from './curves.ts';

const CURVE_SOURCE = 'J. V. Mahun, Open Access Surveying: elements of a circular curve (seen)';

export type CurveFigures = {
  readonly radius: Figure;
  readonly sweep: Figure;
  readonly 'arc-length': Figure;
  readonly chord?: Figure;
  readonly rise?: Figure;
  readonly setback?: Figure;
  readonly step?: Figure;
  readonly ties?: Readonly<Record<string, Figure>>;
};

export type SlabLayout = {
  readonly curves?: Readonly<Record<string, CurveFigures>>;
  readonly diagonals?: Readonly<Record<string, Figure>>;
  readonly square?: { readonly first: Figure; readonly second: Figure; readonly between: Figure };
};

/** A curve on the level plan, by the tag its figures have. */
export type CurveOnPlan = {
  readonly tag: string;
  readonly middle: Point;
  readonly centre: Point;
  /** Marks at each step [in]: from the middle of the chord to its end, and off both legs. */
  readonly fromChordIn: readonly number[];
  readonly fromLegsIn: readonly number[];
};

export type LayoutResult = TopicResult<
  { readonly slabs: Readonly<Record<string, SlabLayout>> },
  {
    readonly curves: Readonly<Record<string, readonly CurveOnPlan[]>>;
    readonly corners: Readonly<Record<string, readonly StringCorner[]>>;
    readonly squares: Readonly<Record<string, SquareCheck | null>>;
  }
>;

/**
 * The numbers to set out every slab: its curves, its diagonals, one square corner.
 *
 * Curves are numbered over the job, `c1` the first, so that a tag on the plan is one curve.
 *
 * @param input.stepIn Between two offsets along a chord or a leg, at least.
 * @param input.unitIn What the sides of a 3-4-5 are whole numbers of.
 */
export function calcLayout(input: {
  readonly shapes: Pick<OutlineResult['figures'], 'slabs'>;
  readonly outlines: Readonly<Record<string, Outline>>;
  readonly corners: Readonly<Record<string, readonly StringCorner[]>>;
  readonly lies: Readonly<Record<string, Lies>>;
  readonly stepIn: number;
  readonly unitIn: number;
}): LayoutResult {
  let count = 0;
  const slabs: Record<string, SlabLayout> = {};
  const curvesOn: Record<string, readonly CurveOnPlan[]> = {};
  const cornersOn: Record<string, readonly StringCorner[]> = {};
  const squares: Record<string, SquareCheck | null> = {};
  for (const [id, outline] of Object.entries(input.outlines)) {
    const corners = thingNamed(input.corners, id, 'slab');
    const lies = thingNamed(input.lies, id, 'slab');
    // All of it follows from the shape that has this area.
    const from = { areaSqFt: thingNamed(input.shapes.slabs, id, 'slab').area };
    const curves = curvesOf(outline, corners, input.stepIn).map((curve) => {
      count += 1;
      return { tag: `c${count}`, curve };
    });
    const square = squareCheck(corners, input.unitIn);
    slabs[id] = {
      ...(curves.length === 0
        ? {}
        : { curves: Object.fromEntries(curves.map(({ tag, curve }) => [tag, curveFigures(curve, from)])) }),
      ...diagonals(corners, from),
      ...(square === null ? {} : { square: squareFigures(square) }),
    };
    curvesOn[id] = curves.map(({ tag, curve }) => ({
      tag,
      middle: surfaceToPlan(curve.middle, lies),
      centre: surfaceToPlan(curve.arc.centre, lies),
      fromChordIn: curve.chordOffsets.map(({ offsetIn }) => offsetIn),
      fromLegsIn: curve.legOffsets.map(({ offsetIn }) => offsetIn),
    }));
    cornersOn[id] = corners.map(({ number, at }) => ({ number, at: surfaceToPlan(at, lies) }));
    squares[id] = square;
  }
  return { figures: { slabs }, data: { curves: curvesOn, corners: cornersOn, squares }, problems: [] };
}

type Inputs = Readonly<Record<string, FigureInput>>;

function curveFigures(curve: CurveLayout, from: Inputs): CurveFigures {
  const { arc, chordIn, riseIn, arcLengthIn, setbackIn, ties } = curve;
  const of = (valueIn: number, method: string) =>
    figure({
      value: valueIn,
      unit: 'in',
      decimals: 2,
      formula: { method },
      inputs: from,
      source: CURVE_SOURCE,
    });
  const radius = of(
    arc.radiusIn,
    'from the corners and how they are rounded, or the edge and how it is bent',
  );
  const chord = chordIn === null ? null : of(chordIn, 'from end to end of the arc');
  return {
    radius,
    sweep: figure({
      value: (Math.abs(arc.sweepRad) * 180) / Math.PI,
      unit: 'deg',
      decimals: 2,
      formula: { method: 'angle the arc turns' },
      inputs: from,
      source: CURVE_SOURCE,
    }),
    'arc-length': of(arcLengthIn, 'radius times the angle'),
    ...(chord === null ? {} : { chord }),
    ...(riseIn === null ? {} : { rise: of(riseIn, 'radius times (1 - cos(angle / 2))') }),
    ...(curve.stepIn === null
      ? {}
      : {
          step: of(
            curve.stepIn,
            'between two offsets, sqrt(R² - x²) - sqrt(R² - c² / 4) from the chord, R - sqrt(R² - x²) from a leg; doubled until the marks are few',
          ),
        }),
    ...(setbackIn === null ? {} : { setback: of(setbackIn, 'radius times tan(angle / 2)') }),
    ...(ties.length === 0
      ? {}
      : {
          ties: Object.fromEntries(
            ties.map(({ corner, lengthIn }) => [
              `corner-${corner}`,
              of(lengthIn, `from corner ${corner} to the radius point`),
            ]),
          ),
        }),
  };
}

function diagonals(corners: readonly StringCorner[], from: Inputs): Pick<SlabLayout, 'diagonals'> {
  const checks = cornerChecks(corners);
  if (checks.length === 0) return {};
  return {
    diagonals: Object.fromEntries(
      checks.map((check) => [
        `${check.from}-to-${check.to}`,
        figure({
          value: check.lengthIn,
          unit: 'in',
          decimals: 2,
          formula: { method: `from corner ${check.from} to corner ${check.to}` },
          inputs: from,
        }),
      ]),
    ),
  };
}

function squareFigures({ sidesIn, betweenIn }: SquareCheck) {
  const inches = (value: number, formula: string | { method: string }, inputs: Inputs) =>
    figure({ value, unit: 'in', decimals: 2, formula, inputs, source: COMMON_PRACTICE });
  const method = {
    method: 'the largest multiple of 3, 4 and 5 that fits the two sides, in feet or tenths of a metre',
  };
  const first = inches(sidesIn[0], method, {});
  const second = inches(sidesIn[1], method, {});
  return {
    first,
    second,
    between: inches(betweenIn, 'sqrt(firstIn ^ 2 + secondIn ^ 2)', { firstIn: first, secondIn: second }),
  };
}
