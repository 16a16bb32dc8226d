import type { Flight } from '../calculate/job.ts';
import type { SiteSection } from '../read/index.ts';
import { inCoreUnit } from './quantity.ts';

type FlightInput = NonNullable<SiteSection['flights']>[string];

export function flightOf(id: string, input: FlightInput): Flight {
  const { label, risers, tread, width, foot, topping } = input;
  return {
    id,
    label,
    risersIn: risers.map(inCoreUnit),
    treadIn: inCoreUnit(tread),
    widthIn: inCoreUnit(width),
    foot: {
      left: inCoreUnit(foot.left),
      middle: inCoreUnit(foot.middle),
      right: inCoreUnit(foot.right),
    },
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
