import type { PublicText } from '../../calculate/text.ts';
import type { Outline } from '../../geometry/index.ts';
import type { Words } from '../../words/index.ts';
import { drawPlan } from '../drawing/index.ts';
import type { Show } from '../show/index.ts';
import type { FiguredDrawing, Paper } from '../views.ts';

export type PlanArea = {
  readonly label: PublicText;
  readonly outline: Outline;
  readonly role: 'goes' | 'new' | 'stays';
  readonly joints: readonly {
    readonly fromXIn: number;
    readonly fromYIn: number;
    readonly toXIn: number;
    readonly toYIn: number;
  }[];
};

/** Paper left for a drawing across the page, inside the margins [in]. */
const SHEET_IN = {
  letter: { page: { widthIn: 7, heightIn: 6.4 }, half: { widthIn: 3.4, heightIn: 3.2 } },
  a4: { page: { widthIn: 6.8, heightIn: 6.6 }, half: { widthIn: 3.3, heightIn: 3.3 } },
} as const;

/** A plan to scale of some areas, as wide as the page or half of it. */
export function planDrawing(made: {
  readonly id: string;
  readonly heading: PublicText;
  readonly areas: readonly PlanArea[];
  readonly paper: Paper;
  readonly width: 'page' | 'half';
  readonly system: 'us' | 'metric';
  readonly show: Show;
  readonly words: Words;
}): FiguredDrawing<PublicText> {
  const { id, heading, areas, paper, width, system, show, words } = made;
  const drawing = drawPlan({
    id,
    title: heading,
    areas: areas.map((area) => ({ ...area, dimension: show.length })),
    sheet: SHEET_IN[paper][width],
    system,
    words: { ...words.common.drawing, lengthOf: show.length },
  });
  return { heading, drawing };
}
