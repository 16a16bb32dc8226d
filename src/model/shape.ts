import type { TapedShape } from '../calculate/job.ts';
import type { ExistingInput, SlabInput } from '../read/index.ts';
import type { Quantity } from '../units/index.ts';
import { inCoreUnit } from './quantity.ts';

type OutlineInput = Pick<ExistingInput | SlabInput, 'rectangle' | 'corners' | 'rounded' | 'edges' | 'at'>;

/** @throws {RangeError} If neither a rectangle nor corners are given, which the checks refuse. */
export function shapeOf(input: OutlineInput): TapedShape {
  return {
    base: baseOf(input),
    rounded: Object.entries(input.rounded ?? {}).map(([corner, setback]) => ({
      corner: Number(corner),
      setbackIn: inCoreUnit(setback),
    })),
    edges: Object.entries(input.edges ?? {}).map(([edge, kind]) => ({ edge: Number(edge), kind })),
    at: input.at === undefined ? null : pointOf(input.at),
  };
}

function baseOf({ rectangle, corners }: OutlineInput): TapedShape['base'] {
  if (rectangle !== undefined) {
    return {
      kind: 'rectangle',
      lengthIn: inCoreUnit(rectangle.length),
      widthIn: inCoreUnit(rectangle.width),
    };
  }
  if (corners === undefined) throw new RangeError('an outline needs a rectangle or corners');
  return { kind: 'corners', points: corners.map(pointOf) };
}

function pointOf(place: readonly Quantity<'length'>[]): { xIn: number; yIn: number } {
  const [along, across] = place;
  if (along === undefined || across === undefined)
    throw new RangeError(`a place needs two lengths, got ${place.length}`);
  return { xIn: inCoreUnit(along), yIn: inCoreUnit(across) };
}
