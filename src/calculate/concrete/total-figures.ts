import { COMPANY_FIGURE, type Figure, figure, given } from '../figure.ts';
import type { Pump } from '../job.ts';
import { inputsByName, pick, sumExpression, sumOf } from '../parts.ts';
import {
  type AllowanceFigures,
  type Allowances,
  type AllowedSlab,
  allowanceFigures,
} from './allowance-figures.ts';

/** What has to arrive in the forms: net and the allowances on it [yd3]. */
export type PlacedFigures = AllowanceFigures & { readonly net: Figure; readonly placed: Figure };

export type TotalFigures = PlacedFigures & {
  /** What stays in the pump; only where one comes. */
  readonly pump?: Figure;
  readonly needed: Figure;
};

/** Net of all slabs and steps, and the named allowances on it. */
export function placedTotals(made: {
  readonly slabs: Readonly<Record<string, { readonly net: Figure }>>;
  readonly steps: Readonly<Record<string, { readonly net: Figure }>>;
  readonly allowed: readonly AllowedSlab[];
  readonly allowances: Allowances;
}): PlacedFigures {
  const netInputs = {
    ...inputsByName(pick(made.slabs, 'net'), 'SlabCuYd'),
    ...inputsByName(pick(made.steps, 'net'), 'StepsCuYd'),
  };
  const net = figure({
    value: sumOf(netInputs),
    unit: 'yd3',
    decimals: 2,
    formula: sumExpression(netInputs),
    inputs: netInputs,
  });
  const parts = allowanceFigures({ net, slabs: made.allowed, allowances: made.allowances });
  const placedInputs = { netCuYd: net, ...inputsByName({ ...parts }, 'CuYd') };
  return {
    net,
    ...parts,
    placed: figure({
      value: sumOf(placedInputs),
      unit: 'yd3',
      decimals: 2,
      formula: sumExpression(placedInputs),
      inputs: placedInputs,
      source: 'NRMCA CIP 8 as republished by a producer: order 4 to 10 % above the plan dimensions (seen)',
    }),
  };
}

/** What is ordered for: what is placed, and what stays in the pump where one comes. */
export function withPump(placed: PlacedFigures, pump: Pump | null): TotalFigures {
  const kept =
    pump === null
      ? {}
      : {
          pump: figure({
            value: pump.keepsCuYd,
            unit: 'yd3',
            decimals: 2,
            formula: 'keepsCuYd',
            inputs: { keepsCuYd: given('company.placing.pump.keeps', pump.keepsCuYd, 'yd3') },
            source: COMPANY_FIGURE,
          }),
        };
  const inputs = { placedCuYd: placed.placed, ...inputsByName(kept, 'CuYd') };
  const needed = figure({
    value: sumOf(inputs),
    unit: 'yd3',
    decimals: 2,
    formula: sumExpression(inputs),
    inputs,
  });
  return { ...placed, ...kept, needed };
}
