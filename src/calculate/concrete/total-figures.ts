import { type Figure, figure } from '../figure.ts';
import { inputsByName, pick, sumExpression, sumOf } from '../parts.ts';
import {
  type AllowanceFigures,
  type Allowances,
  type AllowedSlab,
  allowanceFigures,
} from './allowance-figures.ts';

export type TotalFigures = AllowanceFigures & { readonly net: Figure; readonly needed: Figure };

/** Net of all slabs and steps, the named allowances on it, and what is needed. */
export function totals(made: {
  readonly slabs: Readonly<Record<string, { readonly net: Figure }>>;
  readonly steps: Readonly<Record<string, { readonly net: Figure }>>;
  readonly allowed: readonly AllowedSlab[];
  readonly allowances: Allowances;
}): TotalFigures {
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
  const neededInputs = { netCuYd: net, ...inputsByName({ ...parts }, 'CuYd') };
  return {
    net,
    ...parts,
    needed: figure({
      value: sumOf(neededInputs),
      unit: 'yd3',
      decimals: 2,
      formula: sumExpression(neededInputs),
      inputs: neededInputs,
      source: 'NRMCA CIP 8 as republished by a producer: order 4 to 10 % above the plan dimensions (seen)',
    }),
  };
}
