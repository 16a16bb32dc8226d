import type { Company, Machine, TowVehicle, Trailer } from '../calculate/job.ts';
import type { FormsSection, MachinesSection, TowVehicleSection, TrailersSection } from '../read/index.ts';
import { inCoreUnit, mapThings } from './quantity.ts';

export function machinesOf(input: MachinesSection): Readonly<Record<string, Machine>> {
  return mapThings(input, (id, { label, kind, cost, cab, wet }) => ({ id, label, kind, cost, cab, wet }));
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

export function formsOf(input: FormsSection): Company['forms'] {
  return {
    boards: mapThings(input.boards, (id, board) => ({
      id,
      heightIn: inCoreUnit(board.height),
      lengthIn: inCoreUnit(board.length),
      onHandCount: board['on-hand'],
      priceUsd: board.price,
    })),
    stakeSpacingIn: inCoreUnit(input['stake-spacing']),
    stakePriceUsd: input['stake-price'],
    stakesOnHandCount: input['stakes-on-hand'],
  };
}
