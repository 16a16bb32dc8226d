import type { Decimal } from 'decimal.js';
import { roundToCent, Usd } from '../../units/index.ts';
import { COMPANY_FIGURE, type Figure, type FigureInput, figure, given } from '../figure.ts';
import type { Placing } from '../job.ts';
import { usdPerCuYd } from '../usd-per-cu-yd.ts';
import { CARRIED_BY, type CarriedBy, type Fixed, type Offer } from './choose.ts';
import { cuYdPerHr, ftPerHr } from './paces.ts';

/** What all that is carried would cost by one way alone; only by those that get everywhere. */
export type InsteadFigures = { readonly [means in CarriedBy]?: Figure };

export function insteadFigures(
  offers: readonly Offer[],
  fixed: Fixed,
  placing: Placing,
  laborUsdPerHr: Figure,
): InsteadFigures {
  if (offers.length === 0) return {};
  return Object.fromEntries(
    CARRIED_BY.flatMap((means) => {
      const costs = offers.flatMap((offer) => offer[means] ?? []);
      if (costs.length < offers.length) return [];
      const costUsd = costs.reduce<Decimal>((sumUsd, oneUsd) => sumUsd.plus(oneUsd), fixed[means]);
      return [[means, insteadFigure(costUsd, { laborUsdPerHr, ...inputsOf(means, placing) })] as const];
    }),
  );
}

function insteadFigure(costUsd: Decimal, inputs: Readonly<Record<string, FigureInput>>): Figure {
  return figure({
    value: roundToCent(new Usd(costUsd)),
    unit: '$',
    decimals: 2,
    formula: { method: 'labor and hire, were all that the chute does not reach carried this way' },
    inputs,
    source: COMPANY_FIGURE,
    rounding: 'cent',
  });
}

function inputsOf(means: CarriedBy, placing: Placing): Readonly<Record<string, FigureInput>> {
  const at = (key: string) => `company.placing.${means}.${key}`;
  if (means === 'pump') {
    const { pump } = placing;
    if (pump === null) return {};
    return {
      reachIn: given(at('reach'), pump.reachIn, 'in'),
      paceCuYdPerHr: given(at('pace'), cuYdPerHr(pump.pace), 'yd3/h'),
      peopleCount: given(at('people'), pump.peopleCount, 'each'),
      visitUsd: given(at('visit'), pump.visitUsd, '$'),
      keepsCuYd: given(at('keeps'), pump.keepsCuYd, 'yd3'),
      ...(pump.byVolume === null
        ? {}
        : { byVolumeUsd: given(at('by-volume'), usdPerCuYd(pump.byVolume), '$/yd3') }),
    };
  }
  const carrier = placing[means];
  if (carrier === null) return {};
  return {
    holdsCuFt: given(at('holds'), carrier.holdsCuFt, 'cu ft'),
    carrierCount: given(at('count'), carrier.count, 'each'),
    speedFtPerHr: given(at('speed'), ftPerHr(carrier.speed), 'ft/h'),
    turnHr: given(at('turn'), carrier.turnHr, 'h'),
    steepestSlope: given(at('steepest'), carrier.steepestSlope, 'ratio'),
    narrowestIn: given(at('narrowest'), carrier.narrowestIn, 'in'),
    ...(means === 'buggy' && placing.buggy !== null
      ? {
          costUsd: given(
            at('cost'),
            placing.buggy.cost.amountUsd,
            placing.buggy.cost.perUnit === 'day' ? '$/day' : '$/h',
          ),
        }
      : {}),
  };
}
