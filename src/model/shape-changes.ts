import type { TapedShape } from '../calculate/job.ts';
import type { BendInput, OutlineInput } from '../read/index.ts';
import { inCoreUnit, inRadians } from './quantity.ts';
import { pointOf } from './shape-base.ts';

type Roundings = TapedShape['rounded'];
type Bends = TapedShape['bent'];

/** Corners rounded in any of the four ways, in the order of their numbers. */
export function roundingsOf(input: OutlineInput): Roundings {
  const all: Roundings = [
    ...byNumber(input.rounded, (setback) => ({ kind: 'setback', setbackIn: inCoreUnit(setback) })),
    ...byNumber(input['rounded-to-radius'], (radius) => ({ kind: 'radius', radiusIn: inCoreUnit(radius) })),
    ...byNumber(input['rounded-by-chord'], ({ chord, rise }) => ({
      kind: 'chord',
      chordIn: inCoreUnit(chord),
      riseIn: inCoreUnit(rise),
    })),
    ...byNumber(input['rounded-by-two-arcs'], (arcs) => ({
      kind: 'two-arcs',
      firstRadiusIn: inCoreUnit(arcs['first-radius']),
      firstTurnRad: inRadians(arcs['first-turn'].value),
      secondRadiusIn: inCoreUnit(arcs['second-radius']),
    })),
  ];
  return all.toSorted((one, other) => one.corner - other.corner);
}

function byNumber<T>(
  corners: Readonly<Record<string, T>> | undefined,
  by: (given: T) => Roundings[number]['by'],
): Roundings {
  return Object.entries(corners ?? {}).map(([corner, given]) => ({ corner: Number(corner), by: by(given) }));
}

export function bendsOf(input: Readonly<Record<string, BendInput>>): Bends {
  return Object.entries(input).map(([edge, bend]) => ({ edge: Number(edge), by: bendOf(bend) }));
}

/** @throws {RangeError} If it says no size, or no side where it needs one, which the checks refuse. */
function bendOf({ rise, radius, through, bends }: BendInput): Bends[number]['by'] {
  if (through !== undefined) return { kind: 'through', at: pointOf(through) };
  if (bends === undefined) throw new RangeError('a bend by its rise or radius needs its side');
  if (rise !== undefined) return { kind: 'rise', riseIn: inCoreUnit(rise), bends };
  if (radius === undefined) throw new RangeError('a bend needs a rise, a radius or a point');
  return { kind: 'radius', radiusIn: inCoreUnit(radius), bends };
}
