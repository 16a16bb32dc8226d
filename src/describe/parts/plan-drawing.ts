import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';
import {
  type Drawing,
  type PlanArea as DrawnArea,
  drawPlan,
  type Fall,
  type PhotoPoint,
} from '../drawing/index.ts';
import type { Show } from '../show/index.ts';
import type { FiguredDrawing, Paper } from '../views.ts';

/** An area of a plan, in words that everybody may read. */
export type PlanArea = Pick<DrawnArea, 'outline' | 'isForeshortened' | 'role' | 'bars'> & {
  readonly label: PublicText;
  readonly joints: readonly (DrawnArea['joints'][number] & { readonly tag: PublicText | null })[];
  readonly tags: readonly (DrawnArea['tags'][number] & { readonly text: PublicText })[];
  readonly corners: readonly (DrawnArea['corners'][number] & { readonly text: PublicText })[];
  readonly panels?: readonly (NonNullable<DrawnArea['panels']>[number] & { readonly text: PublicText })[];
  readonly holes: readonly (DrawnArea['holes'][number] & { readonly label: PublicText })[];
  readonly bays: Pick<DrawnArea['bays'], 'lines'> & {
    readonly marks: readonly (DrawnArea['bays']['marks'][number] & {
      readonly number: PublicText;
      readonly area: PublicText;
    })[];
    readonly hooks: readonly (DrawnArea['bays']['hooks'][number] & { readonly text: PublicText })[];
  };
};

/** Paper left for a drawing across the page, inside the margins [in]. */
const SHEET_IN = {
  letter: {
    page: { widthIn: 7, heightIn: 6.4 },
    half: { widthIn: 3.4, heightIn: 3.2 },
    tall: { widthIn: 3.4, heightIn: 4.2 },
  },
  a4: {
    page: { widthIn: 6.8, heightIn: 6.6 },
    half: { widthIn: 3.3, heightIn: 3.3 },
    tall: { widthIn: 3.3, heightIn: 4.2 },
  },
} as const;

/** The most a drawing as wide as the page may take [in]. */
export function sheetOf(paper: Paper): { readonly widthIn: number; readonly heightIn: number } {
  return SHEET_IN[paper].page;
}

/** A plan to scale of some areas, as wide as the page or half of it. */
export function planDrawing(made: {
  readonly id: string;
  readonly heading: PublicText;
  readonly areas: readonly PlanArea[];
  readonly photoPoints: readonly (PhotoPoint & { readonly text: PublicText })[];
  /** None where it is left out. */
  readonly falls?: readonly (Fall & { readonly text: PublicText | null })[];
  /** Without dimensions and radii; with them if not given. */
  readonly isPlain?: boolean;
  /** Clockwise from up the plan; null where it was not taken. */
  readonly northDeg: number | null;
  readonly paper: Paper;
  /** Half of the page may be taller where words beside it are few. */
  readonly width: 'page' | 'half' | 'tall';
  readonly system: 'us' | 'metric';
  readonly show: Show;
  readonly words: Words;
}): FiguredDrawing<PublicText> {
  const { falls = [], isPlain = false, show, words, ...given } = made;
  const { id, heading, areas, photoPoints, northDeg, paper, width, system } = given;
  const key = JSON.stringify({ ...given, falls, isPlain });
  const known = drawnIn(words).get(key);
  if (known !== undefined) return { heading, drawing: known };
  const drawing = drawPlan({
    id,
    title: heading,
    areas: areas.map((area) => ({ ...area, dimension: show.length })),
    photoPoints,
    falls,
    isPlain,
    northDeg,
    sheet: SHEET_IN[paper][width],
    system,
    words: { ...words.common.drawing, lengthOf: show.length },
  });
  remember(drawnIn(words), key, drawing);
  return { heading, drawing };
}

/**
 * Finding room for every label takes longer than the rest of a document, and most edits of a job
 * leave its plans as they were: a plan that was drawn is not drawn again.
 */
const drawnByWords = new WeakMap<Words, Map<string, Drawing>>();
const MOST_KEPT = 64;

function drawnIn(words: Words): Map<string, Drawing> {
  const drawn = drawnByWords.get(words) ?? new Map<string, Drawing>();
  drawnByWords.set(words, drawn);
  return drawn;
}

function remember(drawn: Map<string, Drawing>, key: string, drawing: Drawing): void {
  const [oldest] = drawn.keys();
  if (drawn.size >= MOST_KEPT && oldest !== undefined) drawn.delete(oldest);
  drawn.set(key, drawing);
}
