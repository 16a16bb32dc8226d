import type { PublicWalkWay } from '../../calculate/job.ts';
import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';
import { type Show, showIn } from '../show/index.ts';
import { type ProposalView, type TableView, TICK_BOX } from '../views.ts';
import type { ProposalFacts, PublicWalkFacts } from './facts.ts';
import { showPrice } from './show-price.ts';

type Made = { readonly walk: PublicWalkFacts; readonly show: Show; readonly words: Words };

/** Each public walk that is not where it should be: how it lies, what can be done, and what is signed for. */
export function publicWalksView(facts: ProposalFacts, words: Words): ProposalView['publicWalks'] {
  const show = showIn(facts.unitSystem);
  return facts.publicWalks.map((walk) => {
    const made = { walk, show, words };
    return { facts: factsList(made), ways: waysTable(made), edge: edgeSignature(made) };
  });
}

function factsList({ walk, show, words }: Made): ProposalView['publicWalks'][number]['facts'] {
  const say = words.proposalTieIns;
  const lies = (settledIn: number): PublicText => {
    const size = show.fine(Math.abs(settledIn));
    if (size === show.fine(0)) return say.right;
    return settledIn > 0 ? say.low(size) : say.high(size);
  };
  return {
    heading: say.heading(walk.label),
    items: [
      say.settled(lies(walk.settledIn.left), lies(walk.settledIn.right)),
      say.ground(walk.authority),
      walk.word === null ? say.noWord : say.word(walk.word),
      say.bevel(show.slope(walk.bevelSlope)),
      walk.way === null ? say.open : say.chosen(say.names[walk.way]),
    ],
  };
}

/** The ways that are open here; grinding only where something stands up, an edge only where it is chosen. */
function waysTable(made: Made): TableView<PublicText> {
  const { walk, words } = made;
  const say = words.proposalTieIns;
  const standsUp = Object.values(walk.settledIn).some((settledIn) => settledIn < 0);
  const ways: readonly PublicWalkWay[] = [
    'match',
    'transition',
    'replace',
    ...(standsUp ? (['grind'] as const) : []),
    'hold-back',
    ...(walk.way === 'leave-edge' ? (['leave-edge'] as const) : []),
  ];
  const choiceOf = (way: PublicWalkWay): PublicText => {
    if (walk.way === null) return TICK_BOX as PublicText;
    return walk.way === way ? say.table.chosen : say.table.not;
  };
  return {
    caption: say.table.caption(walk.label),
    columns: [
      { heading: say.table.way, align: 'start' },
      { heading: say.table.means, align: 'start' },
      { heading: say.table.decides, align: 'start' },
      { heading: say.table.choice, align: 'start' },
    ],
    rows: ways.map((way) => ({
      cells: [say.names[way], meaning(way, made), decider(way, made), choiceOf(way)],
      note: null,
      isTotal: false,
    })),
  };
}

function meaning(way: PublicWalkWay, made: Made): PublicText {
  const { walk, show, words } = made;
  const say = words.proposalTieIns.means;
  const lip = show.fineUp(walk.mostLipIn);
  const slopes = slopesText(walk.slopeThen, made);
  const slope = show.slope(walk.transitionSlope);
  switch (way) {
    case 'match':
      return say.match(slopesText(walk.slopeNow, made), lip);
    case 'transition': {
      if (walk.transitionIn === null) return say.noTransition(slope);
      const { left, right } = walk.transitionIn;
      return say.transition(show.length(left), show.length(right), slope);
    }
    case 'replace':
      return withCost(say.replace(slopes), made);
    case 'grind':
      return withCost(say.grind(slopes, lip, show.slope(walk.bevelSlope)), made);
    case 'hold-back':
      return say.holdBack(show.length(walk.panelIn), show.area(walk.panelAreaSqFt));
    case 'leave-edge':
      return say.leaveEdge(lip);
  }
}

function withCost(sentence: PublicText, { walk, show, words }: Made): PublicText {
  const say = words.proposalTieIns;
  if (walk.ownerPays === null) return say.two(sentence, say.noCost);
  const { price, shareRatio, own } = walk.ownerPays;
  return say.two(sentence, say.cost(showPrice(price), show.percent(shareRatio), showPrice(own)));
}

function slopesText(slope: PublicWalkFacts['slopeNow'], { show, words }: Made): PublicText {
  const say = words.proposalTieIns;
  const one = (down: number): PublicText => {
    const size = show.slope(Math.abs(down));
    if (size === show.slope(0)) return say.level;
    return down > 0 ? say.falls(size) : say.rises(size);
  };
  return say.slopes(one(slope.left), one(slope.right));
}

function decider(way: PublicWalkWay, { walk, words }: Made): PublicText {
  const say = words.proposalTieIns;
  return way === 'match' || way === 'transition' ? say.you : say.both(walk.authority);
}

/** Null unless an edge is left. */
function edgeSignature({ walk, show, words }: Made): ProposalView['publicWalks'][number]['edge'] {
  if (walk.way !== 'leave-edge') return null;
  const { edge } = words.proposalTieIns;
  const { owner, date } = words.proposal.signatures;
  return {
    heading: edge.heading(walk.label),
    sentence: edge.sentence(show.fineUp(walk.mostLipIn)),
    lines: [{ who: owner, date }],
  };
}
