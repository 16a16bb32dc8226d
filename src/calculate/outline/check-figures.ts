import {
  COMMON_PRACTICE,
  COMPANY_FIGURE,
  DEFINITION,
  type Figure,
  type FigureInput,
  figure,
  given,
} from '../figure.ts';
import type { TapedShape } from '../job.ts';
import type { TapeLimits } from './base-ring.ts';
import type { ClosedShape } from './close-shape.ts';

type Tree = Readonly<Record<string, Figure>>;
type Inputs = Readonly<Record<string, FigureInput>>;

/** Figures by which the tape checks itself, and which way a walk goes round its corners. */
export type CheckFigures = {
  readonly closure?: Tree;
  readonly diagonals?: Tree;
  readonly 'centre-line'?: Figure;
  readonly turns?: Readonly<Record<string, Tree>>;
  readonly kinks?: Tree;
  readonly joined?: Tree;
};

const CLOSURE_SOURCE = 'J. V. Mahun, Open Access Surveying: closure of a traverse, compass rule';
const TANGENT_SOURCE = 'J. V. Mahun, Open Access Surveying: tangency of lines and arcs (seen)';
/** Below this an angle between tangents is noise [rad]. */
const SMOOTH_RAD = 1e-6;
/** Above this a corner is meant as a corner [rad]: half of a right angle. */
const CORNER_RAD = Math.PI / 4;

export function checkFigures(made: {
  readonly shape: TapedShape;
  readonly closed: ClosedShape;
  readonly inputs: Inputs;
  readonly path: string;
  readonly miss: { readonly to: string; readonly missIn: number } | null;
  readonly limits: TapeLimits;
}): CheckFigures {
  const { closed, inputs, path, miss, limits } = made;
  const kinks = closed.kinks.filter(
    ({ kinkRad }) => Math.abs(kinkRad) > SMOOTH_RAD && Math.abs(kinkRad) < CORNER_RAD,
  );
  return {
    ...factFigures(closed.facts, made.shape, { inputs, path, limits }),
    ...(kinks.length === 0
      ? {}
      : {
          kinks: Object.fromEntries(
            kinks.map(({ vertex, kinkRad }) => [`point-${vertex}`, kinkFigure(kinkRad, inputs)]),
          ),
        }),
    ...joinedFigures(closed, miss, inputs, limits),
  };
}

function factFigures(
  facts: ClosedShape['facts'],
  shape: TapedShape,
  made: { readonly inputs: Inputs; readonly path: string; readonly limits: TapeLimits },
): CheckFigures {
  const { inputs, path, limits } = made;
  const allowed = allowedFigure('closing-error', limits.closingErrorIn);
  switch (facts.kind) {
    case 'plain':
      return {};
    case 'walked':
      return {
        closure: {
          allowed,
          error: inches(
            facts.closure.errorIn,
            'from where the walk ends to where it began',
            inputs,
            CLOSURE_SOURCE,
          ),
          direction: degreesOf(
            facts.closure.directionRad,
            'direction of that gap, from along, to the left',
            inputs,
          ),
          share: figure({
            value: facts.closure.errorRatio,
            unit: 'ratio',
            decimals: 4,
            formula: { method: 'error over the length of all sides' },
            inputs,
            source: CLOSURE_SOURCE,
          }),
        },
      };
    case 'four-sides': {
      const computed = inches(
        facts.otherDiagonalIn,
        'corner 2 to corner 4, from the two triangles',
        inputs,
        DEFINITION,
      );
      const { base } = shape;
      if (facts.missIn === null || base.kind !== 'four-sides' || base.otherDiagonalIn === null) {
        return { diagonals: { other: computed } };
      }
      const tapedIn = given(`${path}.four-sides.other-diagonal`, base.otherDiagonalIn, 'in');
      const miss = figure({
        value: facts.missIn,
        unit: 'in',
        decimals: 2,
        formula: 'tapedIn - computedIn',
        inputs: { tapedIn, computedIn: computed },
      });
      return { diagonals: { other: computed, miss, allowed } };
    }
    case 'strip':
      return {
        'centre-line': inches(facts.lengthIn, 'straights and arcs of the centre line', inputs, DEFINITION),
        ...(facts.turns.length === 0
          ? {}
          : {
              turns: Object.fromEntries(
                facts.turns.map((turn) => [`turn-${turn.number}`, turnFigures(turn, widthOf(shape), inputs)]),
              ),
            }),
      };
  }
}

type Turn = Extract<ClosedShape['facts'], { kind: 'strip' }>['turns'][number];

/** Width on the diagonal for each way to round, and the one taken. */
function turnFigures(turn: Turn, widthIn: number, inputs: Inputs): Tree {
  const width = (valueIn: number, method: string) => inches(valueIn, method, inputs, COMMON_PRACTICE);
  const { sharpIn, equalIn, parallelIn, outerIn, innerIn } = turn.widths;
  return {
    sharp: width(sharpIn, 'width / cos(turn / 2): both corners sharp'),
    equal: width(equalIn, 'the same setback on both corners'),
    parallel: width(parallelIn, 'outer radius is the inner one plus the width'),
    outer: width(outerIn, 'only the outer corner rounded'),
    inner: width(innerIn, 'only the inner corner rounded'),
    chosen: width(turn.chosenWidthIn, 'as the job rounds it'),
    pinch: width(Math.max(0, widthIn - turn.chosenWidthIn), 'how much narrower than the walk the turn is'),
    'inner-setback': width(turn.innerSetbackIn, 'from the inner corner back along both edges'),
    'outer-setback': width(turn.outerSetbackIn, 'from the outer corner back along both edges'),
  };
}

function widthOf({ base }: TapedShape): number {
  return base.kind === 'strip' ? base.widthIn : 0;
}

function joinedFigures(
  closed: ClosedShape,
  miss: { readonly to: string; readonly missIn: number } | null,
  inputs: Inputs,
  limits: TapeLimits,
): CheckFigures {
  const pieces = Object.entries(closed.added).map(
    ([id, { missIn }]) =>
      [id, inches(missIn, 'gap or overlap of the piece, closed by moving it', inputs, DEFINITION)] as const,
  );
  const neighbour =
    miss === null
      ? []
      : [
          [
            miss.to,
            inches(
              miss.missIn,
              'gap or overlap at the joint, closed by moving this slab',
              inputs,
              DEFINITION,
            ),
          ] as const,
        ];
  const all = [...pieces, ...neighbour];
  if (all.length === 0) return {};
  return {
    joined: { ...Object.fromEntries(all), allowed: allowedFigure('joining-gap', limits.joiningGapIn) },
  };
}

/** What the company lets a tape miss by. */
function allowedFigure(key: 'closing-error' | 'joining-gap', valueIn: number): Figure {
  return figure({
    value: valueIn,
    unit: 'in',
    decimals: 2,
    formula: 'allowedIn',
    inputs: { allowedIn: given(`company.allowances.${key}`, valueIn, 'in') },
    source: COMPANY_FIGURE,
  });
}

function kinkFigure(kinkRad: number, inputs: Inputs): Figure {
  return figure({
    value: (Math.abs(kinkRad) * 180) / Math.PI,
    unit: 'deg',
    decimals: 2,
    formula: { method: 'angle between the two tangents where an arc meets its neighbour' },
    inputs,
    source: TANGENT_SOURCE,
  });
}

function inches(valueIn: number, method: string, inputs: Inputs, source: string): Figure {
  return figure({ value: valueIn, unit: 'in', decimals: 2, formula: { method }, inputs, source });
}

function degreesOf(angleRad: number, method: string, inputs: Inputs): Figure {
  return figure({ value: (angleRad * 180) / Math.PI, unit: 'deg', decimals: 1, formula: { method }, inputs });
}
