import type { TapedBase, TapedShape } from '../calculate/job.ts';
import type { OutlineInput, SimpleBaseInput } from '../read/index.ts';
import type { Quantity } from '../units/index.ts';
import { SHIPPED } from './constants.ts';
import { inCoreUnit, inCoreUnitOrNull, inRadians, turnRadOf } from './quantity.ts';
import { stripOf } from './shape-strip.ts';

/** @throws {RangeError} If there is none, or a list has not its length, which the checks refuse. */
export function baseOf(input: OutlineInput): TapedBase {
  const { sides, triangles, strip, 'four-sides': fourSides } = input;
  if (sides !== undefined) return sidesOf(sides);
  if (fourSides !== undefined) return fourSidesOf(fourSides);
  if (triangles !== undefined) return trianglesOf(triangles);
  if (strip !== undefined) return stripOf(strip);
  return simpleBaseOf(input);
}

/** @throws {RangeError} If there is none, which the checks refuse. */
export function simpleBaseOf(input: SimpleBaseInput): TapedBase {
  const { rectangle, trapezoid, circle, sector, corners } = input;
  if (rectangle !== undefined) {
    const { length, width } = rectangle;
    return { kind: 'rectangle', lengthIn: inCoreUnit(length), widthIn: inCoreUnit(width) };
  }
  if (trapezoid !== undefined) {
    return {
      kind: 'trapezoid',
      baseIn: inCoreUnit(trapezoid.base),
      topIn: inCoreUnit(trapezoid.top),
      depthIn: inCoreUnit(trapezoid.depth),
      offsetIn: inCoreUnitOrNull(trapezoid.offset) ?? SHIPPED.trapezoidOffsetIn,
    };
  }
  if (circle !== undefined) return { kind: 'circle', diameterIn: inCoreUnit(circle.diameter) };
  if (sector !== undefined) {
    const { radius, angle } = sector;
    return { kind: 'sector', radiusIn: inCoreUnit(radius), angleRad: inRadians(angle.value) };
  }
  if (corners === undefined) throw new RangeError('an outline needs one of its bases');
  return { kind: 'corners', points: corners.map(pointOf) };
}

function sidesOf(sides: NonNullable<OutlineInput['sides']>): TapedBase {
  return {
    kind: 'sides',
    sides: sides.map(({ turn, length }) => ({
      lengthIn: inCoreUnit(length),
      turnRad: turn === undefined ? 0 : turnRadOf(turn),
    })),
  };
}

function fourSidesOf(input: NonNullable<OutlineInput['four-sides']>): TapedBase {
  const [first, second, third, fourth] = input.sides.map(inCoreUnit);
  if (first === undefined || second === undefined || third === undefined || fourth === undefined)
    throw new RangeError(`four sides are needed, got ${input.sides.length}`);
  return {
    kind: 'four-sides',
    sidesIn: [first, second, third, fourth],
    diagonalIn: inCoreUnit(input.diagonal),
    otherDiagonalIn: inCoreUnitOrNull(input['other-diagonal']),
  };
}

function trianglesOf({ base, corners }: NonNullable<OutlineInput['triangles']>): TapedBase {
  return {
    kind: 'triangles',
    baseIn: inCoreUnit(base),
    corners: corners.map(({ from, distances, side = SHIPPED.triangleSide }) => ({
      from: two(from),
      distancesIn: two(distances.map(inCoreUnit)),
      side,
    })),
  };
}

/** @throws {RangeError} If it is not two lengths, which the reader refuses. */
export function pointOf(place: readonly Quantity<'length'>[]): NonNullable<TapedShape['at']> {
  const [xIn, yIn] = two(place.map(inCoreUnit));
  return { xIn, yIn };
}

function two(values: readonly number[]): readonly [number, number] {
  const [first, second] = values;
  if (first === undefined || second === undefined || values.length > 2)
    throw new RangeError(`two values are needed, got ${values.length}`);
  return [first, second];
}
