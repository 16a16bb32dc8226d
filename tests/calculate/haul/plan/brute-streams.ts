import type { PlanProblem, PlanStream } from '../../../../src/calculate/haul/plan/problem.ts';
import { askedUsd, type Load, mostLb } from './brute-costs.ts';
import {
  drivenOut,
  type Held,
  leastOfEach,
  loadsFor,
  multisets,
  NOISE_LB,
  roomLb,
  type Some,
  tripOf,
} from './brute-sums.ts';

/* Every way to carry one stream: all of it, or full loads that leave a rest. */

/** A stream on loads that hold all of it, laid out as cheaply as may be. */
export function alone(problem: PlanProblem, held: Held, stream: PlanStream): readonly Some[] {
  const loads = loadsFor(problem, stream);
  const smallestLb = Math.min(...loads.map(({ trailer }) => mostLb(trailer, stream)));
  // One more than the smallest trailer needs: a dear pound may go where it is cheap to dump and dear to drive.
  const mostLoads = Math.ceil(stream.weightLb / smallestLb - 1e-9) + 1;
  return leastOfEach(
    problem,
    multisets(loads, mostLoads, (load) => held.most(stream.stream, tripOf(load)))
      .filter((some) => roomLb(some, stream) >= stream.weightLb - NOISE_LB)
      .map((some) => drivenOut(problem, some, { gateUsd: layoutUsd(some, stream), restLb: 0 })),
  );
}

/** Gate fees where the cheapest pounds are filled first. */
function layoutUsd(loads: readonly Load[], stream: PlanStream): number {
  let usd = 0;
  const pounds = loads.flatMap((load) => {
    const fullLb = mostLb(load.trailer, stream);
    const at = (weightLb: number) => askedUsd(load, [{ ...stream, weightLb }]);
    usd += Math.max(load.place.minimumUsd, at(0));
    const usdPerLb = (at(fullLb) - at(0)) / fullLb;
    const paidLb = usdPerLb > 0 ? Math.max(0, load.place.minimumUsd - at(0)) / usdPerLb : fullLb;
    const freeLb = Math.min(fullLb, paidLb);
    return [
      { usdPerLb: 0, lb: freeLb },
      { usdPerLb, lb: fullLb - freeLb },
    ];
  });
  pounds.sort((one, other) => one.usdPerLb - other.usdPerLb);
  let leftLb = stream.weightLb;
  for (const { usdPerLb, lb } of pounds) {
    usd += usdPerLb * Math.min(leftLb, lb);
    leftLb -= Math.min(leftLb, lb);
  }
  return usd;
}

/** Full loads, none or more, that leave a rest of no more than this. */
export function restsOf(
  problem: PlanProblem,
  held: Held,
  stream: PlanStream,
  mostRestLb: number,
): readonly Some[] {
  const loads = loadsFor(problem, stream);
  const smallestLb = Math.min(...loads.map(({ trailer }) => mostLb(trailer, stream)));
  const most = (load: Load) => held.most(stream.stream, tripOf(load));
  return leastOfEach(
    problem,
    multisets(loads, Math.floor(stream.weightLb / smallestLb), most).flatMap((some) => {
      const restLb = stream.weightLb - roomLb(some, stream);
      if (restLb < NOISE_LB || restLb > mostRestLb + NOISE_LB) return [];
      const gateUsd = some.reduce((sum, load) => {
        const asked = askedUsd(load, [{ ...stream, weightLb: mostLb(load.trailer, stream) }]);
        return sum + Math.max(load.place.minimumUsd, asked);
      }, 0);
      return [drivenOut(problem, some, { gateUsd, restLb })];
    }),
  );
}
