import type { Carrier, Placing } from '../calculate/job.ts';
import type { PlacingSection } from '../read/index.ts';
import { cuFtPerCuYd } from '../units/index.ts';
import { inCoreUnit, inUnitOf } from './quantity.ts';

const NONE: Placing = { chute: null, wheelbarrow: null, buggy: null, pump: null };

export function placingOf(input: PlacingSection | undefined): Placing {
  if (input === undefined) return NONE;
  const { chute, wheelbarrow, buggy, pump } = input;
  return {
    chute: chute === undefined ? null : { reachIn: inCoreUnit(chute.reach), pace: chute.pace },
    wheelbarrow: wheelbarrow === undefined ? null : carrierOf(wheelbarrow),
    buggy: buggy === undefined ? null : { ...carrierOf(buggy), cost: buggy.cost },
    pump:
      pump === undefined
        ? null
        : {
            reachIn: inCoreUnit(pump.reach),
            pace: pump.pace,
            peopleCount: pump.people,
            visitUsd: pump.visit,
            byVolume: pump['by-volume'] ?? null,
            keepsCuYd: inUnitOf(pump.keeps, cuFtPerCuYd),
          },
  };
}

function carrierOf(input: NonNullable<PlacingSection['wheelbarrow']>): Carrier {
  return {
    holdsCuFt: inCoreUnit(input.holds),
    count: input.count,
    speed: input.speed,
    turnHr: inCoreUnit(input.turn),
    steepestSlope: inCoreUnit(input.steepest),
    narrowestIn: inCoreUnit(input.narrowest),
  };
}
