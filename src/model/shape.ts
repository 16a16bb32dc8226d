import type { PlacedBase, TapedShape } from '../calculate/job.ts';
import type { OutlineInput, SimpleBaseInput } from '../read/index.ts';
import type { Quantity } from '../units/index.ts';
import { SHIPPED } from './constants.ts';
import { inCoreUnit, inRadians, mapThings } from './quantity.ts';
import { baseOf, pointOf, simpleBaseOf } from './shape-base.ts';
import { bendsOf, roundingsOf } from './shape-changes.ts';

/** @throws {RangeError} If it is not one base, or a bend says nothing, which the checks refuse. */
export function shapeOf(input: OutlineInput): TapedShape {
  const { taped } = input;
  return {
    base: baseOf(input),
    rounded: roundingsOf(input),
    bent: bendsOf(input.bent ?? {}),
    edges: Object.entries(input.edges ?? {}).map(([edge, kind]) => ({ edge: Number(edge), kind })),
    cutOuts: mapThings(input['cut-outs'] ?? {}, (id, cutOut) => ({
      id,
      label: cutOut.label,
      ...placedBaseOf(cutOut),
      around: cutOut.around,
    })),
    added: mapThings(input.added ?? {}, (id, piece) => ({ id, label: piece.label, ...placedBaseOf(piece) })),
    taped: taped === undefined ? null : { how: taped.how, slope: inCoreUnit(taped.slope), runs: taped.runs },
    at: input.at === undefined ? null : pointOf(input.at),
    turnedRad: turnedRadOf(input.turned),
  };
}

type PlacedInput = SimpleBaseInput & {
  readonly at: readonly Quantity<'length'>[];
  readonly turned?: Quantity<'angle'> | undefined;
};

function placedBaseOf(input: PlacedInput): PlacedBase {
  return { base: simpleBaseOf(input), at: pointOf(input.at), turnedRad: turnedRadOf(input.turned) };
}

function turnedRadOf(turned: Quantity<'angle'> | undefined): number {
  return turned === undefined ? SHIPPED.turnedRad : inRadians(turned.value);
}
