import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';
import { frameOf } from '../parts/frame.ts';
import { type Show, showDate, showIn } from '../show/index.ts';
import type { ListView, ProposalView } from '../views.ts';
import { areasView } from './areas.ts';
import type { ProposalFacts } from './facts.ts';
import { publicWalksView } from './public-walks.ts';
import { showPrice } from './show-price.ts';
import { calendarTable, hiddenTable, paymentsTable, pricesTable, whatYouGetTable } from './tables.ts';

export type { PriceGroup, ProposalFacts } from './facts.ts';

/** The homeowner proposal. */
export function describeProposal(facts: ProposalFacts, words: Words): ProposalView {
  const say = words.proposal;
  const { frame } = facts;
  const show = showIn(facts.unitSystem);
  const total = showPrice(facts.prices.total);
  return {
    frame: frameOf('proposal', frame, words),
    summary: {
      offer: say.offer(frame.company.name, frame.job.label, frame.job.address, total),
      facts: summaryFacts(facts, words),
      whatYouGet: whatYouGetTable(facts, words),
      price: { label: say.total, value: total },
      next: nextList(facts, words),
      signing: say.signing,
    },
    areas: areasView(facts, words),
    publicWalks: publicWalksView(facts, words),
    removal: removalList(facts, show, words),
    stays: listOrNull(say.stays, facts.stays),
    prices: pricesTable(facts, words),
    payments: paymentsTable(facts, words),
    hidden: hiddenTable(facts, words),
    notIncluded: listOrNull(say.notIncluded, facts.notIncluded),
    calendar: calendarTable(facts, words),
    access: accessList(facts, words),
    beforeWeCome: say.before,
    aboutConcrete: aboutList(facts, words),
    care: careList(facts, words),
    terms: termsView(facts, words),
    standards: say.standards,
    signatures: {
      heading: say.signatures.heading,
      sentence: (facts.hidden.length > 0 ? say.signatures.withHidden : say.signatures.sentence)(
        frame.job.label,
        total,
        frame.job.number,
        frame.job.revision,
      ),
      lines: [
        { who: say.signatures.owner, date: say.signatures.date },
        { who: say.signatures.company(frame.company.name), date: say.signatures.date },
      ],
    },
  };
}

function nextList({ publicWalks }: ProposalFacts, words: Words): ListView<PublicText> {
  const say = words.proposal.next;
  const isOpen = publicWalks.some(({ way }) => way === null);
  return { heading: say.heading, items: [say.read, isOpen ? say.tick : say.sign, say.marks] };
}

function aboutList({ slabs }: ProposalFacts, words: Words): ListView<PublicText> {
  const say = words.proposal.about;
  const hasJoints = slabs.some(({ panelCount }) => panelCount > 1);
  return { heading: say.heading, items: [hasJoints ? say.grooves : say.noGrooves, ...say.items] };
}

/** What to keep in mind once we are gone, with the days where they are known. */
function careList({ calendar }: ProposalFacts, words: Words): ListView<PublicText> {
  const say = words.proposal.care;
  const { curing, sealOn, heavyOn, isEstimated, isTooMild } = calendar;
  const date = (on: string) => showDate(on, words.common);
  return {
    heading: say.heading,
    items: [
      ...(curing === null ? [] : [say.curing[curing.method](date(curing.untilOn))]),
      ...say.items,
      ...(sealOn === null ? [] : [say.sealerOn(date(sealOn))]),
      ...(heavyOn === null ? [] : [say.trucksUntil(date(heavyOn))]),
      ...(isEstimated ? [say.estimated] : []),
      ...(isTooMild ? [say.cold] : []),
    ],
  };
}

function summaryFacts(facts: ProposalFacts, words: Words): ProposalView['summary']['facts'] {
  const say = words.proposal;
  const { calendar } = facts;
  const date = (on: string) => showDate(on, words.common);
  return [
    { label: say.preparedFor, value: facts.frame.job.client },
    { label: say.startsOn, value: date(calendar.startsOn) },
    { label: say.finishesOn, value: date(calendar.finishesOn) },
    { label: say.walkOn, value: date(calendar.walkOn) },
    ...(calendar.hasDriveway ? [{ label: say.driveOn, value: date(calendar.driveOn) }] : []),
    { label: say.validUntil, value: date(facts.validUntil) },
  ];
}

function removalList(facts: ProposalFacts, show: Show, words: Words): ListView<PublicText> | null {
  const say = words.proposal.removal;
  const { things, hollow, posts, oldSteps, green, chip, soilUnder, totalLb } = facts.removal;
  const items = [
    ...things.map((thing) => removalItem(thing, show, words)),
    ...hollow.map((thing) => hollowItem(thing, show, words)),
    ...posts.map(({ label, count }) => say.posts(label, show.count(count))),
    ...oldSteps.map(({ label, riserCount, widthIn }) =>
      say.oldSteps(label, show.count(riserCount), show.length(widthIn)),
    ),
    ...green.map(({ label, looseCuYd }) => say.green(label, show.volume(looseCuYd))),
    ...(soilUnder.length > 0 ? [say.soil(soilUnder)] : []),
  ];
  const chipped = chip.map(({ label, areaSqFt, thicknessIn }) =>
    say.chip(label, show.area(areaSqFt), show.size(thicknessIn)),
  );
  if (items.length === 0) return chipped.length === 0 ? null : { heading: say.heading, items: chipped };
  return {
    heading: say.heading,
    items: [
      ...items,
      ...chipped,
      (things.some(({ thickestIn }) => thickestIn !== null) ? say.totalUpTo : say.total)(show.tons(totalLb)),
    ],
  };
}

function removalItem(
  thing: ProposalFacts['removal']['things'][number],
  show: Show,
  words: Words,
): PublicText {
  const say = words.proposal.removal;
  const { label, thickestIn, coating } = thing;
  const [area, thickness] = [show.area(thing.areaSqFt), show.size(thing.thicknessIn)];
  const sentence =
    thickestIn === null
      ? say.item(label, area, thickness)
      : say.assumed(label, area, thickness, show.size(thickestIn));
  return coating === null ? sentence : say.withCoating(sentence, say.coatings[coating]);
}

function hollowItem(thing: ProposalFacts['removal']['hollow'][number], show: Show, words: Words): PublicText {
  const say = words.proposal.removal;
  const { label, hasFooting, fill } = thing;
  const parts = [
    say.walls(show.length(thing.heightIn), show.size(thing.wallIn)),
    ...(hasFooting ? [say.footing] : []),
    ...(fill === null ? [] : [say.fills[fill]]),
  ];
  return say.hollow(label, parts);
}

function accessList(facts: ProposalFacts, words: Words): ListView<PublicText> {
  const say = words.proposal.access;
  const { truckStands, note } = facts.access;
  return {
    heading: say.heading,
    items: [
      say.truck(truckStands),
      ...(note === null ? [] : [note]),
      ...(facts.calendar.hasDriveway ? [say.cars] : []),
    ],
  };
}

function termsView(facts: ProposalFacts, words: Words): ProposalView['terms'] {
  const say = words.proposal.terms;
  const { company } = facts;
  return {
    heading: say.heading,
    clauses: [
      { question: say.valid, answer: say.validAnswer(showDate(facts.validUntil, words.common)) },
      { question: say.warranty, answer: company.warranty },
      { question: say.changes, answer: say.changesAnswer },
      { question: say.cancel, answer: say.cancelAnswer },
      { question: say.permit, answer: say.permitAnswer },
      { question: say.licence, answer: say.licenceAnswer(company.licence, company.insurance) },
      ...company.clauses,
    ],
  };
}

function listOrNull(heading: PublicText, items: readonly PublicText[]): ListView<PublicText> | null {
  return items.length === 0 ? null : { heading, items };
}
