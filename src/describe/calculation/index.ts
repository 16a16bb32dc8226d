import { type Figure, type FigureTree, walkFigures } from '../../calculate/figure.ts';
import type { Origins } from '../../problems/index.ts';
import type { Words } from '../../words/index.ts';
import { type FrameFacts, frameOf } from '../parts/frame.ts';
import { showFigure } from '../show/index.ts';
import type { CalculationView, FactView, FindingView, FrameView } from '../views.ts';
import { figureGroups } from './figure-rows.ts';
import { placesFrom } from './places.ts';
import { numberedSources } from './sources.ts';

/** What the calculation sheet shows: every figure of every topic, with where its inputs stand. */
export type CalculationFacts = {
  readonly frame: FrameFacts;
  readonly topics: Readonly<Record<string, FigureTree>>;
  readonly origins: Origins;
  readonly margin: {
    readonly cost: Figure;
    /** Of the cost: what follows from nothing else, by its label. */
    readonly others: readonly { readonly label: string; readonly cost: Figure }[];
    readonly overhead: Figure;
    readonly margin: Figure;
    readonly share: Figure;
    readonly total: Figure;
  };
  readonly findings: readonly FindingView[];
  /** How the client is reached; the office's alone. */
  readonly contact: readonly string[];
};

/** The calculation sheet: how a reader audits any number in any other document. */
export function describeCalculation(facts: CalculationFacts, words: Words): CalculationView {
  const say = words.calculation;
  const sources = numberedSources();
  const sheet = { idOf: figureIds(facts.topics), placeOf: placesFrom(facts.origins), sources, say };
  const topics = Object.entries(facts.topics)
    .map(([topic, tree]) => ({
      id: topic,
      heading: topicHeading(topic, say.topics),
      groups: figureGroups(topic, tree, sheet),
    }))
    .filter(({ groups }) => groups.length > 0);
  return {
    frame: withContact(frameOf('calculation', facts.frame, words), facts.contact, words),
    warning: say.warning,
    reading: say.reading,
    findings: facts.findings.length === 0 ? null : { heading: say.findings, items: facts.findings },
    margin: { heading: say.margin.heading, facts: marginFacts(facts.margin, say.margin) },
    headings: say.headings,
    topics,
    sources: { heading: say.sources, items: sources.list() },
  };
}

/** The title block with one cell more, where there is something to put in it. */
function withContact(frame: FrameView, contact: readonly string[], words: Words): FrameView {
  if (contact.length === 0) return frame;
  const cell = { label: words.calculation.contact, value: contact.join(', ') };
  return { ...frame, block: { ...frame.block, cells: [...frame.block.cells, cell] } };
}

/** Identity of each figure object to its id, its path by names. */
export function figureIds(topics: Readonly<Record<string, FigureTree>>): ReadonlyMap<Figure, string> {
  const ids = new Map<Figure, string>();
  for (const [topic, tree] of Object.entries(topics)) {
    for (const { id, figure } of walkFigures(tree, topic)) {
      if (!ids.has(figure)) ids.set(figure, id);
    }
  }
  return ids;
}

function topicHeading(topic: string, headings: Readonly<Record<string, string>>): string {
  return Object.hasOwn(headings, topic) ? (headings[topic] ?? topic) : topic;
}

function marginFacts(margin: CalculationFacts['margin'], say: Words['calculation']['margin']): FactView[] {
  return [
    { label: say.cost, value: showFigure(margin.cost) },
    ...margin.others.map(({ label, cost }) => ({ label: say.other(label), value: showFigure(cost) })),
    { label: say.overhead, value: showFigure(margin.overhead) },
    { label: say.margin, value: showFigure(margin.margin) },
    { label: say.share, value: showFigure(margin.share) },
    { label: say.total, value: showFigure(margin.total) },
  ];
}
