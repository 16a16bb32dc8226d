import { calcBase } from './base/index.ts';
import { calcConcrete } from './concrete/index.ts';
import { calcCost } from './cost/index.ts';
import { calcCrew, calcLaborRate } from './crew/index.ts';
import { calcForms } from './forms/index.ts';
import { calcHaul } from './haul/index.ts';
import type { Job } from './job.ts';
import { calcJoints } from './joints/index.ts';
import { calcOutline } from './outline/index.ts';
import { calcPrice } from './price/index.ts';
import { calcReinforcement } from './reinforcement/index.ts';
import { remember } from './remember.ts';
import { calcSafety } from './safety/index.ts';
import { calcTearOut } from './tear-out/index.ts';

/** All topics, each remembering its inputs; one set lives as long as one run over a job. */
export type Topics = ReturnType<typeof newTopics>;

export function newTopics() {
  return {
    outline: remember(calcOutline),
    tearOut: remember(calcTearOut),
    base: remember(calcBase),
    forms: remember(calcForms),
    joints: remember(calcJoints),
    reinforcement: remember(calcReinforcement),
    laborRate: remember(calcLaborRate),
    concrete: remember(calcConcrete),
    haul: remember(calcHaul),
    crew: remember(calcCrew),
    cost: remember(calcCost),
    price: remember(calcPrice),
    safety: remember(calcSafety),
    trailersOf: remember(trailersOf),
  };
}

function trailersOf(input: { readonly all: Job['company']['trailers']; readonly ids: readonly string[] }) {
  return Object.fromEntries(Object.entries(input.all).filter(([id]) => input.ids.includes(id)));
}
