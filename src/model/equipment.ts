import type { Company, Machine, TowVehicle, Trailer } from '../calculate/job.ts';
import type {
  FormsSection,
  MachinesSection,
  TowVehicleSection,
  TrailersSection,
  YardSection,
} from '../read/index.ts';
import { mToFt, type Pace, rationalToNumber } from '../units/index.ts';
import { SHIPPED } from './constants.ts';
import { inCoreUnit, inCoreUnitOrNull, inPerMi, inUnitOf, mapThings } from './quantity.ts';

export function machinesOf(input: MachinesSection): Readonly<Record<string, Machine>> {
  return mapThings(input, (id, machine) => ({
    id,
    label: machine.label,
    kind: machine.kind,
    cost: machine.cost,
    cab: machine.cab,
    wet: machine.wet,
    liftsLb: inCoreUnitOrNull(machine.lifts),
    plate: {
      widthIn: inCoreUnitOrNull(machine['plate-width']),
      travelFtPerHr: machine.travel === undefined ? null : ftPerHrOf(machine.travel),
      liftIn: inCoreUnitOrNull(machine.lift),
      passesEachWay: machine.passes ?? null,
    },
    tiedDown:
      machine['tied-down'] === undefined
        ? null
        : {
            weightLb: inCoreUnit(machine['tied-down'].weight),
            lengthIn: inCoreUnit(machine['tied-down'].length),
          },
  }));
}

function ftPerHrOf({ perHour, unit }: Pace): number {
  const perHr = rationalToNumber(perHour);
  return unit === 'm' ? mToFt(perHr) : perHr;
}

export function trailersOf(input: TrailersSection): Readonly<Record<string, Trailer>> {
  return mapThings(input, (id, trailer) => ({
    id,
    label: trailer.label,
    grossRatingLb: inCoreUnit(trailer['gross-rating']),
    axleRatingLb: inCoreUnit(trailer['axle-rating']),
    emptyLb: inCoreUnit(trailer.empty),
    box: {
      lengthIn: inCoreUnit(trailer.box.length),
      widthIn: inCoreUnit(trailer.box.width),
      heightIn: inCoreUnit(trailer.box.height),
    },
  }));
}

export function towVehicleOf(input: TowVehicleSection): TowVehicle {
  return {
    label: input.label,
    towRatingLb: inCoreUnit(input['tow-rating']),
    combinedRatingLb: inCoreUnit(input['combined-rating']),
    grossRatingLb: inCoreUnit(input['gross-rating']),
    curbLb: inCoreUnit(input.curb),
    carriesLb: inCoreUnit(input.carries),
    hitchRatingLb: inCoreUnit(input['hitch-rating']),
    cost: input.cost,
  };
}

export function yardOf(input: YardSection | undefined): Company['yard'] {
  return input === undefined
    ? null
    : {
        distanceMi: inUnitOf(input.distance, inPerMi),
        driveHr: inCoreUnit(input.drive),
        tieDownHr: inCoreUnit(input['tie-down']),
      };
}

export function formsOf(input: FormsSection): Company['forms'] {
  return {
    boards: mapThings(input.boards, (id, board) => ({
      id,
      heightIn: inCoreUnit(board.height),
      lengthIn: inCoreUnit(board.length),
      onHandCount: board['on-hand'],
      priceUsd: board.price,
    })),
    strips: mapThings(input.strips ?? {}, (id, strip) => ({
      id,
      thicknessIn: inCoreUnit(strip.thickness),
      heightIn: inCoreUnitOrNull(strip.height),
      lengthIn: inCoreUnit(strip.length),
      lapIn: inCoreUnit(strip.lap),
      bent: strip.bent ?? SHIPPED.bent,
      leastRadiusIn: inCoreUnitOrNull(strip['least-radius']),
      onHandCount: strip['on-hand'],
      priceUsd: strip.price,
    })),
    runPastIn: inCoreUnitOrNull(input['run-past']),
    sawKerfIn: inCoreUnitOrNull(input['saw-kerf']),
    stakeSpacingIn: inCoreUnit(input['stake-spacing']),
    stakeSpacingCurvedIn: inCoreUnitOrNull(input['stake-spacing-curved']),
    stakePriceUsd: input['stake-price'],
    stakesOnHandCount: input['stakes-on-hand'],
    kickerSpacingIn: inCoreUnitOrNull(input['kicker-spacing']),
    screwsPerStakeCount: input['screws-per-stake'] ?? null,
    releaseCoverageSqFtPerGal: inCoreUnitOrNull(input['release-coverage']),
  };
}
