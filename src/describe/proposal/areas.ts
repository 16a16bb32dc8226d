import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';
import { planDrawing } from '../parts/plan-drawing.ts';
import { type Show, showIn } from '../show/index.ts';
import type { FactView, ProposalView } from '../views.ts';
import type { ProposalFacts } from './facts.ts';
import { waterItems } from './water.ts';

type Slab = ProposalFacts['slabs'][number];

/** One block an area: its plan, its facts, and what is worth a sentence; steps after the slabs, those that stay last. */
export function areasView(facts: ProposalFacts, words: Words): ProposalView['areas'] {
  const show = showIn(facts.unitSystem);
  const slabs = facts.slabs.map((slab) => ({
    heading: slab.label,
    plan: planDrawing({
      id: `proposal-${slab.id}`,
      heading: words.common.drawing.areaPlan(slab.label),
      areas: [slab.plan],
      photoPoints: [],
      falls: slab.falls.map((fall) => ({ ...fall, text: null })),
      northDeg: null,
      paper: facts.frame.paper,
      width: 'half',
      system: facts.unitSystem,
      show,
      words,
    }),
    facts: slabFacts(slab, facts, show, words),
    points: slabPoints(slab, show, words),
  }));
  const steps = facts.steps.map((flight) => ({
    heading: flight.label,
    plan: null,
    facts: [
      {
        label: words.proposal.areas.stepsFact,
        value: words.proposal.areas.steps(
          flight.riserCount,
          show.fine(flight.riserIn),
          show.size(flight.treadIn),
          show.length(flight.widthIn),
        ),
      },
    ],
    points: [],
  }));
  const drains = facts.drains.map(({ label, to }) => {
    const { drainFact, drainTo, drainOpen } = words.proposal.areas;
    const value = to === null ? drainOpen : drainTo(to);
    return { heading: label, plan: null, facts: [{ label: drainFact, value }], points: [] };
  });
  const garages = facts.garages.map(({ label, lipIn }) => {
    const { garageFact, garageBelow, garageLevel } = words.proposal.areas;
    const size = show.fine(lipIn);
    const value = size === show.fine(0) ? garageLevel : garageBelow(size);
    return { heading: label, plan: null, facts: [{ label: garageFact, value }], points: [] };
  });
  const flights = facts.flights.map((flight) => ({
    heading: flight.label,
    plan: null,
    facts: [{ label: words.proposal.areas.flightFact, value: flightValue(flight, show, words) }],
    points: [],
  }));
  return {
    heading: words.proposal.areas.heading,
    items: [...slabs, ...waterItems(facts, words), ...garages, ...drains, ...steps, ...flights],
  };
}

function flightValue(
  { nowIn, leastIn, mostIn }: ProposalFacts['flights'][number],
  show: Show,
  words: Words,
): PublicText {
  const say = words.proposal.areas;
  const [now, least, most] = [show.fine(nowIn), show.fine(leastIn), show.fine(mostIn)];
  return least === most ? say.flightOne(least, now) : say.flightFrom(least, most, now);
}

function slabFacts(slab: Slab, facts: ProposalFacts, show: Show, words: Words): FactView<PublicText>[] {
  const say = words.proposal.areas;
  return [
    { label: say.area, value: show.area(slab.areaSqFt) },
    { label: say.thickness, value: show.size(slab.thicknessIn) },
    { label: say.base, value: slab.baseIn > 0 ? say.baseValue(show.size(slab.baseIn)) : say.noBase },
    { label: say.fall, value: say.fallValue(show.slope(slab.fall.slope), slab.fall.towards) },
    { label: say.steel, value: steelWords(slab, show, words) },
    {
      label: say.joints,
      value: slab.panelCount > 1 ? say.jointsValue(show.length(slab.longestPanelIn)) : say.noJoints,
    },
    { label: say.finish, value: say.finishes[slab.finish] },
    { label: say.mix, value: say.mixValue(show.strength(facts.mix.strengthPsi)) },
  ];
}

function steelWords(slab: Slab, show: Show, words: Words): PublicText {
  const say = words.proposal.areas;
  switch (slab.reinforcement.kind) {
    case 'none':
      return say.steelNone;
    case 'mesh':
      return say.steelMesh;
    case 'bars':
      return barWords(slab.reinforcement, show, words);
  }
}

function barWords(
  bars: Extract<Slab['reinforcement'], { kind: 'bars' }>,
  show: Show,
  words: Words,
): PublicText {
  const say = words.proposal.areas.bars[bars.material];
  return bars.spacingAcrossIn === null
    ? say.bothWays(show.size(bars.spacingIn))
    : say.eachWay(show.size(bars.spacingIn), show.size(bars.spacingAcrossIn));
}

/** Less is the noise of lengths taken from one another. */
const LEAST_APART_FT = 0.01;

function slabPoints(slab: Slab, show: Show, words: Words): PublicText[] {
  const say = words.proposal.areas;
  const radii = [...new Set(slab.curveRadiiIn.map(show.length))];
  return [
    ...(radii.length > 0 ? [say.curves(radii)] : []),
    ...(slab.falls.length > 0 ? [say.arrows] : []),
    ...(slab.hasFabric ? [say.fabric] : []),
    ...(slab.alongHouseFt > LEAST_APART_FT ? [say.house] : []),
    ...(slab.alongStaysFt > LEAST_APART_FT ? [say.stays] : []),
    ...(slab.joinedBy.dowels ? [say.dowels] : []),
    ...(slab.joinedBy.ties ? [say.ties] : []),
    ...slab.lids.map(say.lid),
    ...slab.pipes.map(say.pipe),
    ...(slab.note === null ? [] : [slab.note]),
  ];
}
