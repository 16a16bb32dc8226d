import {
  distanceIn,
  distanceToEdgeIn,
  heightAt,
  type LinePiece,
  type Outline,
  surfaceAlong,
} from '../../geometry/index.ts';
import { type Figure, figure, num } from '../figure.ts';
import type { StringCorner } from '../outline/index.ts';
import { heightFigure, heightsOf } from './place-figures.ts';
import type { SlabSurface } from './surfaces.ts';

/** A string from one sharp corner to the next, at the height of the new top at both. */
export type StringFigures = {
  /** Heights of its ends and its length on the plan [in]. */
  readonly from: Figure;
  readonly to: Figure;
  readonly length: Figure;
  /** How much it falls or climbs [rise over run]. */
  readonly slope: Figure;
  /** How far the new top between its ends is from it, above or below, at the most [in]. */
  readonly 'off-string': Figure;
};

/** As it is listed. */
export type StringLine = {
  /** Numbers of the corners. */
  readonly from: number;
  readonly to: number;
  readonly lengthIn: number;
  /** From the first corner to the second [rise over run]; below 0 where it falls. */
  readonly climb: number;
  /** Where the top is furthest from the string: above it [in], below it where negative, and how far along. */
  readonly off: { readonly aboveIn: number; readonly alongIn: number };
  readonly figures: StringFigures;
};

/** Halfway along, an edge that is straight from corner to corner is no further from its string [in]. */
const ON_EDGE_IN = 1;

/** Strings along the straight edges of a slab, from sharp corner to sharp corner. */
export function stringLines(made: SlabSurface, corners: readonly StringCorner[]): readonly StringLine[] {
  return corners.flatMap((from, index) => {
    const to = corners[(index + 1) % corners.length];
    if (to === undefined || to === from || !isStraight(from, to, made.outline)) return [];
    return [stringLine(made, from, to)];
  });
}

function isStraight(from: StringCorner, to: StringCorner, outline: Outline): boolean {
  const middle = { xIn: (from.at.xIn + to.at.xIn) / 2, yIn: (from.at.yIn + to.at.yIn) / 2 };
  return distanceIn(from.at, to.at) > 0 && distanceToEdgeIn(outline, middle) <= ON_EDGE_IN;
}

function stringLine(made: SlabSurface, from: StringCorner, to: StringCorner): StringLine {
  const { surface, points } = made;
  const lengthIn = distanceIn(from.at, to.at);
  const [fromIn, toIn] = [heightFigure(surface, from.at, points), heightFigure(surface, to.at, points)];
  const climb = (num(toIn) - num(fromIn)) / lengthIn;
  const off = furthest(surfaceAlong(surface, { from: from.at, to: to.at }), {
    startIn: heightAt(surface, from.at),
    climb,
  });
  const length = figure({
    value: lengthIn,
    unit: 'in',
    decimals: 2,
    formula: { method: `on the plan from corner ${from.number} to corner ${to.number}` },
    inputs: {},
  });
  return {
    from: from.number,
    to: to.number,
    lengthIn,
    climb,
    off,
    figures: {
      from: fromIn,
      to: toIn,
      length,
      slope: figure({
        value: Math.abs(climb),
        unit: 'ratio',
        decimals: 4,
        formula: 'max(toIn - fromIn, fromIn - toIn) / lengthIn',
        inputs: { fromIn, toIn, lengthIn: length },
      }),
      'off-string': figure({
        value: Math.abs(off.aboveIn),
        unit: 'in',
        decimals: 2,
        formula: { method: 'the most that the new top is above or below the straight line between its ends' },
        inputs: heightsOf(points),
      }),
    },
  };
}

/** It is furthest at a break, or nowhere. */
function furthest(
  pieces: readonly LinePiece[],
  string: { readonly startIn: number; readonly climb: number },
): StringLine['off'] {
  const breaks = pieces.slice(1).map(({ fromIn, fromHeightIn }) => ({
    aboveIn: fromHeightIn - (string.startIn + string.climb * fromIn),
    alongIn: fromIn,
  }));
  return breaks.reduce<StringLine['off']>(
    (most, one) => (Math.abs(one.aboveIn) > Math.abs(most.aboveIn) ? one : most),
    { aboveIn: 0, alongIn: 0 },
  );
}
