import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';
import { planDrawing } from '../parts/plan-drawing.ts';
import { type Show, showIn } from '../show/index.ts';
import type { ProposalView } from '../views.ts';
import type { ProposalFacts } from './facts.ts';

type Slab = ProposalFacts['slabs'][number];

/**
 * One plan of all slabs with an arrow where water runs, and a sentence for each. A single slab has its arrows
 * on its own plan, and without any arrow there is nothing to see.
 */
export function waterItems(facts: ProposalFacts, words: Words): ProposalView['areas']['items'] {
  const { slabs } = facts;
  if (slabs.length < 2 || slabs.every(({ falls }) => falls.length === 0)) return [];
  const say = words.proposal.water;
  const show = showIn(facts.unitSystem);
  return [
    {
      heading: say.heading,
      plan: planDrawing({
        id: 'proposal-water',
        heading: say.heading,
        areas: slabs.map(({ plan }) => ({ ...plan, joints: [], holes: [] })),
        photoPoints: [],
        falls: slabs.flatMap(({ falls }) => falls.map((fall) => ({ ...fall, text: null }))),
        isPlain: true,
        northDeg: null,
        paper: facts.frame.paper,
        width: 'tall',
        system: facts.unitSystem,
        show,
        words,
      }),
      facts: slabs.map((slab) => ({ label: slab.label, value: waterSentence(slab, show, words) })),
      points: [say.arrows],
    },
  ];
}

function waterSentence({ fall, water }: Slab, show: Show, words: Words): PublicText {
  const { planned, measured, atHouse, stands } = words.proposal.water;
  const { 'from-it': fromIt, 'to-it': toIt } = atHouse;
  if (water === null) return planned(fall.towards, show.slope(fall.slope));
  const runs = measured(fall.towards, show.slope(water.slope));
  const beside = water.atHouse === null ? runs : (water.atHouse === 'to-it' ? toIt : fromIt)(runs);
  const deep = show.size(water.standsDeepIn);
  return deep === show.size(0) ? beside : stands(beside, deep);
}
