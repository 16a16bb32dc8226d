import type { TapedBase } from '../calculate/job.ts';
import type { StripInput } from '../read/index.ts';
import { SHIPPED } from './constants.ts';
import { inCoreUnit, inCoreUnitOrNull, turnRadOf } from './quantity.ts';

type Strip = Extract<TapedBase, { kind: 'strip' }>;

/** @throws {RangeError} If a piece of its line is not one thing, which the checks refuse. */
export function stripOf(input: StripInput): Strip {
  const { start, end, left, right } = input;
  return {
    kind: 'strip',
    widthIn: inCoreUnit(input.width),
    endWidthIn: inCoreUnitOrNull(input['end-width']),
    line: input.line.map(pieceOf),
    edges: {
      start: start ?? SHIPPED.edge,
      end: end ?? SHIPPED.edge,
      left: left ?? SHIPPED.edge,
      right: right ?? SHIPPED.edge,
    },
  };
}

function pieceOf({ straight, arc, radius, turn, rounded, back }: StripInput['line'][number]) {
  if (straight !== undefined) return { kind: 'straight', lengthIn: inCoreUnit(straight) } as const;
  if (arc !== undefined && radius !== undefined)
    return { kind: 'arc', radiusIn: inCoreUnit(radius), turnRad: turnRadOf(arc) } as const;
  if (turn === undefined)
    throw new RangeError('a piece of a line is straight, an arc with a radius or a turn');
  const rounding =
    rounded === undefined || back === undefined ? null : { how: rounded, setbackIn: inCoreUnit(back) };
  return { kind: 'turn', turnRad: turnRadOf(turn), rounding } as const;
}
