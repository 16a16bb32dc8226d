import { roundToCent } from '../../units/index.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import type { LevelPoint, PublicWalk, PublicWalkWay } from '../job.ts';
import type { WalkEnd } from '../tie-in-things.ts';
import {
  type FallFigures,
  fallFigures,
  inches,
  ratio,
  runFigure,
  type WalkEndFigures,
  walkEndFigures,
} from './walk-end-figures.ts';

export type PublicWalkFigures = {
  readonly ends: Readonly<Record<WalkEnd, WalkEndFigures>>;
  /** Along the edge of the walk, from end to end [in]. */
  readonly length: Figure;
  /** How the joint runs from left to right, as it is and as it should be. */
  readonly 'along-now': FallFigures;
  readonly 'along-should': FallFigures;
  readonly 'most-lip': Figure;
  /** A bevel over the whole width of the walk would slope so much across it [rise over run]. */
  readonly bevel: Figure;
  /** What is poured later where the last panel is held back [sq ft]. */
  readonly 'panel-area': Figure;
  /** What the homeowner pays of the public panel [$]. */
  readonly 'owner-pays'?: Figure;
  /** 1 where nobody has chosen a way, and where the authority said nothing to one that needs its word. */
  readonly undecided: Figure;
  readonly 'without-word': Figure;
  /** What stays upright at the joint [in]: where an edge is left. */
  readonly 'edge-left'?: Figure;
  /** What becomes an edge once the walk is set right [in]: where the slab meets it as it is. */
  readonly 'lip-later'?: Figure;
  /** How a ground bevel slopes across the walk: where it is ground. */
  readonly 'bevel-ground'?: Figure;
};

/** Ways in which something is done to the public walk itself, or that wait for it. */
const NEEDS_WORD: readonly PublicWalkWay[] = ['replace', 'grind', 'hold-back', 'leave-edge'];

type PointFigure = { readonly point: LevelPoint; readonly height: Figure };

/**
 * The ways to meet a public walk that is not where it should be, with numbers.
 *
 * @param pointOf A point of the heights and the figure of its height.
 */
export function publicWalkFigures(walk: PublicWalk, pointOf: (id: string) => PointFigure): PublicWalkFigures {
  const endOf = (end: WalkEnd) =>
    walkEndFigures(walk, end, { now: pointOf(walk.ends[end].now), up: pointOf(walk.ends[end].up) });
  const [left, right] = [endOf('left'), endOf('right')];
  const length = runFigure(pointOf(walk.ends.left.now).point, pointOf(walk.ends.right.now).point);
  const mostLip = inches(Math.max(num(left.lip), num(right.lip)), 'max(leftIn, rightIn)', {
    leftIn: left.lip,
    rightIn: right.lip,
  });
  const path = `heights.public-walks.${walk.id}`;
  const bevel = ratio(num(mostLip) / walk.widthIn, 'lipIn / widthIn', {
    lipIn: mostLip,
    widthIn: given(`${path}.width`, walk.widthIn, 'in'),
  });
  return {
    ends: { left, right },
    length,
    'along-now': fallFigures(left.now, right.now, length),
    'along-should': fallFigures(left.should, right.should, length),
    'most-lip': mostLip,
    bevel,
    'panel-area': panelArea(walk, length),
    ...ownerPays(walk),
    ...chosenFigures(walk, mostLip, bevel),
  };
}

function panelArea({ id, lastPanelIn }: PublicWalk, length: Figure): Figure {
  return figure({
    value: (num(length) * lastPanelIn) / 144,
    unit: 'sq ft',
    decimals: 1,
    formula: 'lengthIn * panelIn / 144',
    inputs: {
      lengthIn: length,
      panelIn: given(`heights.public-walks.${id}.last-panel`, lastPanelIn, 'in'),
    },
  });
}

function ownerPays({ id, panel }: PublicWalk): Pick<PublicWalkFigures, 'owner-pays'> {
  if (panel === null) return {};
  const path = `heights.public-walks.${id}`;
  return {
    'owner-pays': figure({
      value: roundToCent(panel.priceUsd.times(panel.ownerRatio)),
      unit: '$',
      decimals: 2,
      formula: 'roundCent(priceUsd * share)',
      inputs: {
        priceUsd: given(`${path}.panel-price`, panel.priceUsd, '$'),
        share: given(`${path}.owner-share`, panel.ownerRatio, 'ratio'),
      },
      rounding: 'cent',
    }),
  };
}

/** What the rules ask of the way that is chosen. */
function chosenFigures(
  { way, word }: PublicWalk,
  mostLip: Figure,
  bevel: Figure,
): Pick<PublicWalkFigures, 'undecided' | 'without-word' | 'edge-left' | 'lip-later' | 'bevel-ground'> {
  const flag = (isSo: boolean, method: string) =>
    figure({ value: isSo ? 1 : 0, unit: 'each', decimals: 0, formula: { method }, inputs: {} });
  const isWordless = way !== null && NEEDS_WORD.includes(way) && word === null;
  const same = { lipIn: mostLip };
  return {
    undecided: flag(way === null, '1 where no way is chosen'),
    'without-word': flag(isWordless, '1 where the way needs a word of the authority and there is none'),
    ...(way === 'leave-edge' ? { 'edge-left': inches(num(mostLip), 'lipIn', same) } : {}),
    ...(way === 'match' ? { 'lip-later': inches(num(mostLip), 'lipIn', same) } : {}),
    ...(way === 'grind' ? { 'bevel-ground': ratio(num(bevel), 'slope', { slope: bevel }) } : {}),
  };
}
