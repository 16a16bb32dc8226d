import type { CoreProblem } from '../../problems/index.ts';
import { COMPANY_FIGURE, constant, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { TowVehicle, Trailer } from '../job.ts';
import {
  boxVolumeCuYd,
  governingLimit,
  type Limit,
  limitsLb,
  PAYLOAD_STEP_LB,
  payloadLb,
  TONGUE_HIGH_RATIO,
  TONGUE_LOW_RATIO,
  TONGUE_SOURCE,
  tongueLb,
} from './trailer.ts';

export type TrailerFigures = {
  /** What each rating lets it carry [lb]. */
  readonly 'by-gross-rating': Figure;
  readonly 'by-axle-rating': Figure;
  readonly 'by-tow-rating': Figure;
  readonly 'by-combined-rating': Figure;
  readonly 'by-truck-gross': Figure;
  readonly 'by-hitch': Figure;
  /** The least of them, less the reserve, down to whole tens [lb]. */
  readonly payload: Figure;
  /** [yd3] */
  readonly 'box-volume': Figure;
  /** On the hitch with the full payload: the band to look for [lb]. */
  readonly 'tongue-low': Figure;
  readonly 'tongue-high': Figure;
};

/** Payload and box of one trailer behind one truck, and which rating sets the payload. */
export function trailerFigures(
  trailer: Trailer,
  towVehicle: TowVehicle,
  loadReserveLb: number,
): { readonly figures: TrailerFigures; readonly governing: Limit; readonly problem: CoreProblem | null } {
  const limits = limitsLb(trailer, towVehicle);
  const governing = governingLimit(limits);
  const byLimit = limitFigures(trailer, towVehicle, limits);
  const emptyLb = given(`company.trailers.${trailer.id}.empty`, trailer.emptyLb, 'lb');
  const payload = figure({
    value: payloadLb(limits, loadReserveLb),
    unit: 'lb',
    decimals: 0,
    formula:
      'floorStep(min(byGrossRatingLb, byAxleRatingLb, byTowRatingLb, byCombinedRatingLb, byTruckGrossLb, byHitchLb) - reserveLb, stepLb)',
    inputs: {
      byGrossRatingLb: byLimit['by-gross-rating'],
      byAxleRatingLb: byLimit['by-axle-rating'],
      byTowRatingLb: byLimit['by-tow-rating'],
      byCombinedRatingLb: byLimit['by-combined-rating'],
      byTruckGrossLb: byLimit['by-truck-gross'],
      byHitchLb: byLimit['by-hitch'],
      reserveLb: given('company.load-reserve', loadReserveLb, 'lb'),
      stepLb: constant('payload step', PAYLOAD_STEP_LB, 'lb', 'common practice, no source'),
    },
    source: 'standard towing practice: every rating holds (from memory)',
    rounding: 'down',
  });
  const { lengthIn, widthIn, heightIn } = trailer.box;
  const boxPath = `company.trailers.${trailer.id}.box`;
  const boxVolume = figure({
    value: boxVolumeCuYd(trailer.box),
    unit: 'yd3',
    decimals: 2,
    formula: 'lengthIn * widthIn * heightIn / 1728 / 27',
    inputs: {
      lengthIn: given(`${boxPath}.length`, lengthIn, 'in'),
      widthIn: given(`${boxPath}.width`, widthIn, 'in'),
      heightIn: given(`${boxPath}.height`, heightIn, 'in'),
    },
  });
  const tongue = (name: string, shareRatio: number) =>
    figure({
      value: num(payload) > 0 ? tongueLb(trailer.emptyLb + num(payload), shareRatio) : 0,
      unit: 'lb',
      decimals: 0,
      formula: num(payload) > 0 ? '(emptyLb + payloadLb) * tongueRatio' : { method: 'nothing may be loaded' },
      inputs: {
        emptyLb,
        payloadLb: payload,
        tongueRatio: constant(`tongue share, ${name} end`, shareRatio, 'ratio', TONGUE_SOURCE),
      },
      source: TONGUE_SOURCE,
    });

  return {
    figures: {
      ...byLimit,
      payload,
      'box-volume': boxVolume,
      'tongue-low': tongue('low', TONGUE_LOW_RATIO),
      'tongue-high': tongue('high', TONGUE_HIGH_RATIO),
    },
    governing,
    problem: num(payload) > 0 ? null : noPayload(trailer, governing, limits[governing], loadReserveLb),
  };
}

function limitFigures(
  trailer: Trailer,
  towVehicle: TowVehicle,
  limits: Readonly<Record<Limit, number>>,
): Omit<TrailerFigures, 'payload' | 'box-volume' | 'tongue-low' | 'tongue-high'> {
  const ofTrailer = (key: string, value: number) =>
    given(`company.trailers.${trailer.id}.${key}`, value, 'lb');
  const ofTruck = (key: string, value: number) => given(`company.tow-vehicle.${key}`, value, 'lb');
  const emptyLb = ofTrailer('empty', trailer.emptyLb);
  const curbLb = ofTruck('curb', towVehicle.curbLb);
  const carriesLb = ofTruck('carries', towVehicle.carriesLb);
  const lowRatio = constant('tongue share, low end', TONGUE_LOW_RATIO, 'ratio', TONGUE_SOURCE);
  const highRatio = constant('tongue share, high end', TONGUE_HIGH_RATIO, 'ratio', TONGUE_SOURCE);
  const by = (limit: Limit, formula: string, inputs: Record<string, FigureInput>) =>
    figure({
      value: limits[limit],
      unit: 'lb',
      decimals: 0,
      formula: `${formula} - emptyLb`,
      inputs: { ...inputs, emptyLb },
      source: COMPANY_FIGURE,
    });
  return {
    'by-gross-rating': by('gross-rating', 'grossRatingLb', {
      grossRatingLb: ofTrailer('gross-rating', trailer.grossRatingLb),
    }),
    'by-axle-rating': by('axle-rating', 'axleRatingLb / (1 - tongueRatio)', {
      axleRatingLb: ofTrailer('axle-rating', trailer.axleRatingLb),
      tongueRatio: lowRatio,
    }),
    'by-tow-rating': by('tow-rating', 'towRatingLb', {
      towRatingLb: ofTruck('tow-rating', towVehicle.towRatingLb),
    }),
    'by-combined-rating': by('combined-rating', 'combinedRatingLb - curbLb - carriesLb', {
      combinedRatingLb: ofTruck('combined-rating', towVehicle.combinedRatingLb),
      curbLb,
      carriesLb,
    }),
    'by-truck-gross': by('truck-gross', '(truckGrossRatingLb - curbLb - carriesLb) / tongueRatio', {
      truckGrossRatingLb: ofTruck('gross-rating', towVehicle.grossRatingLb),
      curbLb,
      carriesLb,
      tongueRatio: highRatio,
    }),
    'by-hitch': by('hitch', 'hitchRatingLb / tongueRatio', {
      hitchRatingLb: ofTruck('hitch-rating', towVehicle.hitchRatingLb),
      tongueRatio: highRatio,
    }),
  };
}

function noPayload(trailer: Trailer, governing: Limit, limitLb: number, reserveLb: number): CoreProblem {
  return {
    code: 'no-payload',
    path: `company.trailers.${trailer.id}.empty`,
    parts: {
      trailer: trailer.label,
      limit: governing,
      allowsLb: String(Math.floor(limitLb)),
      emptyLb: String(trailer.emptyLb),
      reserveLb: String(reserveLb),
    },
  };
}
