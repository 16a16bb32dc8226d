import type { Flight, FlightFoot } from '../calculate/job.ts';
import type { SiteSection } from '../read/index.ts';
import { inCoreUnit } from './quantity.ts';
import { pointOf } from './shape-base.ts';

type FlightInput = NonNullable<SiteSection['flights']>[string];

export function flightOf(id: string, input: FlightInput): Flight {
  const { label, risers, tread, width, topping } = input;
  return {
    id,
    label,
    risersIn: risers.map(inCoreUnit),
    treadIn: inCoreUnit(tread),
    widthIn: inCoreUnit(width),
    foot: footOf(input),
    topping:
      topping === undefined
        ? null
        : {
            thinnestIn: inCoreUnit(topping.thinnest),
            thickestIn: inCoreUnit(topping.thickest),
            landingIn: inCoreUnit(topping.landing),
          },
  };
}

/** @throws {RangeError} If neither is said, which the checks refuse. */
function footOf({ foot, 'foot-ends': ends }: FlightInput): FlightFoot {
  if (foot !== undefined) {
    const { left, middle, right } = foot;
    return {
      kind: 'typed',
      changeIn: { left: inCoreUnit(left), middle: inCoreUnit(middle), right: inCoreUnit(right) },
    };
  }
  const [left, right] = (ends ?? []).map(pointOf);
  if (left === undefined || right === undefined) throw new RangeError('a flight without a foot');
  return { kind: 'ends', left, right };
}
