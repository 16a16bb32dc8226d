import { num } from '../calculate/figure.ts';
import type { JobResults } from '../calculate/index.ts';
import type { Job, PublicWalk } from '../calculate/job.ts';
import { thingNamed } from '../calculate/parts.ts';
import { othersPrice } from '../calculate/price/index.ts';
import type { FallFigures, PublicWalkFigures } from '../calculate/tie-ins/index.ts';
import type { ProposalFacts } from './proposal/index.ts';

type Facts = ProposalFacts['publicWalks'][number];

/** What the homeowner is told of public walks that are not where they should be. */
export function publicWalkFacts(job: Job, results: JobResults): ProposalFacts['publicWalks'] {
  const figures = results.tieIns.figures['public-walks'] ?? {};
  return Object.values(job.tieIns.publicWalks).map((walk) =>
    walkFacts(walk, thingNamed(figures, walk.id, 'public walk')),
  );
}

function walkFacts(walk: PublicWalk, figures: PublicWalkFigures): Facts {
  const { ends } = figures;
  const { left, right } = ends;
  const transitionIn =
    left.transition === undefined || right.transition === undefined
      ? null
      : { left: num(left.transition), right: num(right.transition) };
  return {
    label: walk.label,
    authority: walk.authority,
    word: walk.word,
    way: walk.way,
    settledIn: {
      left: num(left.should) - num(left.now),
      right: num(right.should) - num(right.now),
    },
    mostLipIn: num(figures['most-lip']),
    slopeNow: { left: slopeOf(left['as-it-is']), right: slopeOf(right['as-it-is']) },
    slopeThen: { left: slopeOf(left['as-it-should-be']), right: slopeOf(right['as-it-should-be']) },
    transitionSlope: walk.transitionSlope,
    transitionIn,
    bevelSlope: num(figures.bevel),
    panelIn: walk.lastPanelIn,
    panelAreaSqFt: num(figures['panel-area']),
    ownerPays: ownerPays(walk, figures['owner-pays']),
  };
}

function ownerPays({ panel }: PublicWalk, own: PublicWalkFigures['owner-pays']): Facts['ownerPays'] {
  if (panel === null || own === undefined) return null;
  return { price: othersPrice(panel.priceUsd), shareRatio: panel.ownerRatio, own: othersPrice(own.value) };
}

/** Down to the walk; below 0 where it rises to it. */
export function slopeOf(fall: FallFigures): number {
  return 'falls' in fall ? num(fall.falls) : -num(fall.rises);
}
