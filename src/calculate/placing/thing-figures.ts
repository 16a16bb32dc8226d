import { COMMON_PRACTICE, COMPANY_FIGURE, type Figure, figure, given } from '../figure.ts';
import type { Placing } from '../job.ts';
import type { CarriedBy } from './choose.ts';
import { type CarriedPart, effortOf } from './offers.ts';
import { cuYdPerHr, ftPerHr } from './paces.ts';
import type { Reach } from './reach.ts';

export type PlacedFigures = {
  /** All of it, allowances too [yd3]. */
  readonly volume: Figure;
  /** To its farthest corner, with what the way is longer than straight [ft]. */
  readonly farthest: Figure;
  readonly 'chute-share': Figure;
  /** What the chute does not reach [yd3]. */
  readonly carried: Figure;
  /** One way [ft]; only where something is carried. */
  readonly way?: Figure;
  /** Only where it is carried in trips. */
  readonly trips?: Figure;
  readonly 'labor-hours'?: Figure;
  readonly 'clock-hours'?: Figure;
};

export type Part = {
  readonly id: string;
  /** All of it, allowances too [yd3]. */
  readonly volume: Figure;
  readonly reach: Reach;
  readonly carried: CarriedPart;
};

/** @param means Null where the chute does all of it, or nothing gets there. */
export function thingFigures(
  { volume, reach, carried: part }: Part,
  means: CarriedBy | null,
  placing: Placing,
): PlacedFigures {
  const one = (value: number, unit: Figure['unit'], decimals: number, method: string) =>
    figure({ value, unit, decimals, formula: { method }, inputs: {}, source: COMMON_PRACTICE });
  const share = one(
    reach.chuteRatio,
    'ratio',
    3,
    'area of the slab that lies within the reach of the chute, over its area; all of it where the truck drives along',
  );
  const carried = figure({
    value: part.volumeCuYd,
    unit: 'yd3',
    decimals: 2,
    formula: 'volumeCuYd * (1 - chuteRatio)',
    inputs: { volumeCuYd: volume, chuteRatio: share },
  });
  const common = {
    volume,
    farthest: one(
      reach.farthestFt,
      'ft',
      1,
      'from the truck to the farthest corner, and what the way is longer',
    ),
    'chute-share': share,
    carried,
  };
  if (part.volumeCuYd === 0) return common;
  const way = one(
    reach.wayFt,
    'ft',
    1,
    'from the truck to the middle of what the chute does not reach, and what the way is longer',
  );
  if (means === null) return { ...common, way };
  return { ...common, way, ...effortFigures(part, means, placing, { carried, way }) };
}

function effortFigures(
  part: CarriedPart,
  means: CarriedBy,
  placing: Placing,
  made: { readonly carried: Figure; readonly way: Figure },
): Pick<PlacedFigures, 'trips' | 'labor-hours' | 'clock-hours'> {
  const effort = effortOf(part, means, placing);
  const at = (key: string) => `company.placing.${means}.${key}`;
  const hour = (value: number, formula: string, inputs: Parameters<typeof figure>[0]['inputs']) =>
    figure({ value, unit: 'h', decimals: 2, formula, inputs, source: COMPANY_FIGURE });
  if (means === 'pump') {
    const { pump } = placing;
    if (pump === null) throw new RangeError('a pump that is not there was chosen');
    const clock = hour(effort.clockHr, 'carriedCuYd / paceCuYdPerHr', {
      carriedCuYd: made.carried,
      paceCuYdPerHr: given(at('pace'), cuYdPerHr(pump.pace), 'per h'),
    });
    return {
      'clock-hours': clock,
      'labor-hours': hour(effort.laborHr, 'clockHr * peopleCount', {
        clockHr: clock,
        peopleCount: given(at('people'), pump.peopleCount, 'each'),
      }),
    };
  }
  const carrier = placing[means];
  if (carrier === null) throw new RangeError(`a ${means} that is not there was chosen`);
  const trips = figure({
    value: effort.trips,
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(carriedCuYd * 27 / holdsCuFt, 1)',
    inputs: { carriedCuYd: made.carried, holdsCuFt: given(at('holds'), carrier.holdsCuFt, 'cu ft') },
    source: COMPANY_FIGURE,
    rounding: 'up',
  });
  const labor = hour(effort.laborHr, 'trips * (2 * wayFt / speedFtPerHr + turnHr)', {
    trips,
    wayFt: made.way,
    speedFtPerHr: given(at('speed'), ftPerHr(carrier.speed), 'ft/h'),
    turnHr: given(at('turn'), carrier.turnHr, 'h'),
  });
  return {
    trips,
    'labor-hours': labor,
    'clock-hours': hour(effort.clockHr, 'laborHr / carrierCount', {
      laborHr: labor,
      carrierCount: given(at('count'), carrier.count, 'each'),
    }),
  };
}
