import type { Drain, PublicWalk, TieIns } from '../calculate/job.ts';
import type { HeightsSection } from '../read/index.ts';
import { inCoreUnit, mapThings } from './quantity.ts';
import { pointOf } from './shape-base.ts';

type DrainInput = NonNullable<HeightsSection['drains']>[string];
type PublicWalkInput = NonNullable<HeightsSection['public-walks']>[string];

/** Nothing where the job says nothing of heights. */
export function tieInsOf(input: HeightsSection | undefined): TieIns {
  return {
    publicWalks: mapThings(input?.['public-walks'] ?? {}, publicWalkOf),
    drains: mapThings(input?.drains ?? {}, drainOf),
    garages: mapThings(input?.garages ?? {}, (id, { label, slab, points, lip, seal }) => ({
      id,
      label,
      slab,
      points,
      lipIn: inCoreUnit(lip),
      sealIn: inCoreUnit(seal),
    })),
    keepDry: mapThings(input?.['keep-dry'] ?? {}, (id, { label, kind, along }) => ({
      id,
      label,
      kind,
      along: along.map(pointOf),
    })),
    bends: input?.['bends-along'] ?? [],
  };
}

function publicWalkOf(id: string, input: PublicWalkInput): PublicWalk {
  const { label, slab, left, right, width, transition, way, authority, word } = input;
  const { 'last-panel': lastPanel, 'panel-price': priceUsd, 'owner-share': ownerShare } = input;
  const endOf = ({ now, should, up }: PublicWalkInput['left']) => ({ now, shouldIn: inCoreUnit(should), up });
  return {
    id,
    label,
    slab,
    ends: { left: endOf(left), right: endOf(right) },
    widthIn: inCoreUnit(width),
    transitionSlope: inCoreUnit(transition),
    lastPanelIn: inCoreUnit(lastPanel),
    way: way ?? null,
    authority,
    word: word ?? null,
    panel:
      priceUsd === undefined || ownerShare === undefined
        ? null
        : { priceUsd, ownerRatio: inCoreUnit(ownerShare) },
  };
}

function drainOf(id: string, { label, at, rim, pipe }: DrainInput): Drain {
  return {
    id,
    label,
    at: at.map(pointOf),
    rimIn: inCoreUnit(rim),
    pipe:
      pipe === undefined
        ? null
        : {
            sizeIn: inCoreUnit(pipe.size),
            invertIn: inCoreUnit(pipe.invert),
            outletIn: inCoreUnit(pipe.outlet),
            lengthIn: inCoreUnit(pipe.length),
            to: pipe.to,
          },
  };
}
