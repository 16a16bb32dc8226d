import type { LinePiece } from '../../geometry/index.ts';
import { baselineDropIn, boxesOverlap, textBox } from './boxes.ts';
import { lineWeightsMm, type PaperPoint, type Primitive, type TextPrimitive } from './drawing.ts';
import {
  axisGapIn,
  beyondGapIn,
  type ProfileFrame,
  profileLetterStyle,
  profileTextStyle,
  rowsIn,
} from './profile-frame.ts';
import type { ProfileView } from './profile-view.ts';
import { spreadApart } from './spread.ts';
import { textWidthIn } from './text-width.ts';

const tickIn = 0.06;
const airIn = 0.03;
/** From one letter to the next, and from the name of one line to the next. */
const lettersApartIn = 0.2;
const namesApartIn = 0.15;

/** Heights at the left, distances below. */
export function axisPrimitives({ words }: ProfileView, placed: ProfileFrame): readonly Primitive[] {
  const { at, leftIn, rightIn, plotBottomIn, heightTicksIn, distanceTicksIn } = placed;
  const footIn = plotBottomIn + axisGapIn;
  const heights = heightTicksIn.flatMap((heightIn): Primitive[] => {
    const { yIn } = at(0, heightIn);
    return [
      thin({ xIn: leftIn - tickIn, yIn }, { xIn: leftIn, yIn }),
      text(words.heightOf(heightIn), { xIn: leftIn - tickIn - airIn, yIn: yIn + dropIn }, 'end'),
    ];
  });
  const distances = distanceTicksIn.flatMap((alongIn): Primitive[] => {
    const { xIn } = at(alongIn, 0);
    return [
      thin({ xIn, yIn: footIn }, { xIn, yIn: footIn + tickIn }),
      text(words.lengthOf(alongIn), { xIn, yIn: footIn + tickIn + 0.14 }, 'middle'),
    ];
  });
  return [
    thin({ xIn: leftIn, yIn: rowsIn.plot }, { xIn: leftIn, yIn: footIn }),
    thin({ xIn: leftIn, yIn: footIn }, { xIn: rightIn, yIn: footIn }),
    ...heights,
    ...distances,
  ];
}

/** Letters of the stations with their heights, and the slopes between them where there is room. */
export function stationPrimitives(view: ProfileView, placed: ProfileFrame): readonly Primitive[] {
  const { at } = placed;
  const ends = view.stations.map(({ alongIn, heightIn }) => at(alongIn, heightIn));
  const letterXsIn = spreadApart(
    ends.map(({ xIn }) => xIn),
    lettersApartIn,
    view.sheet.widthIn - lettersApartIn,
  );
  const letters = view.stations.flatMap(({ letter }, index): Primitive[] => {
    const [end, xIn] = [ends[index] ?? { xIn: 0, yIn: 0 }, letterXsIn[index] ?? 0];
    const bend = { xIn: end.xIn, yIn: rowsIn.letterFoot + 0.06 };
    return [
      {
        kind: 'text',
        xIn,
        yIn: rowsIn.letters,
        text: letter,
        anchor: 'middle',
        ...profileLetterStyle,
        turnDeg: 0,
      },
      thin({ xIn, yIn: rowsIn.letterFoot }, bend),
      thin(bend, end),
    ];
  });
  const heights = view.stations.map(({ heightIn }, index) =>
    text(view.words.heightOf(heightIn), { xIn: letterXsIn[index] ?? 0, yIn: rowsIn.heights }, 'middle'),
  );
  return [...letters, ...apart(heights), ...slopeTexts(view, placed)];
}

function slopeTexts({ slopes }: ProfileView, { at }: ProfileFrame): readonly TextPrimitive[] {
  return slopes.flatMap(({ text: words, fromIn, toIn }) => {
    const [leftIn, rightIn] = [at(fromIn, 0).xIn, at(toIn, 0).xIn];
    if (textWidthIn(words, profileTextStyle) + 4 * airIn > rightIn - leftIn) return [];
    return [text(words, { xIn: (leftIn + rightIn) / 2, yIn: rowsIn.slopes }, 'middle')];
  });
}

/** What each line is, beside the end of the last slab, or beside the start of the first. */
export function lineNames(
  view: ProfileView,
  { at, names, plotBottomIn }: ProfileFrame,
): readonly Primitive[] {
  const isLeft = names.side === 'left';
  const reach = view.reaches.at(isLeft ? 0 : -1);
  const top = reach?.top.at(isLeft ? 0 : -1);
  if (reach === undefined || top === undefined) return [];
  const { profileLines: say } = view.words;
  const old = reach.old.at(isLeft ? 0 : -1);
  const endIn = isLeft ? top.fromIn : top.toIn;
  const topIn = heightAtEnd(top, isLeft);
  const named = [
    { name: say.top, heightIn: topIn },
    { name: say.slabBottom, heightIn: topIn - reach.thicknessIn },
    ...(reach.baseIn > 0
      ? [{ name: say.baseBottom, heightIn: topIn - reach.thicknessIn - reach.baseIn }]
      : []),
    ...(old === undefined ? [] : [{ name: say.now, heightIn: heightAtEnd(old.top, isLeft) }]),
    ...(old === undefined || old.goneIn === 0
      ? []
      : [{ name: say.left, heightIn: heightAtEnd(old.top, isLeft) - old.goneIn }]),
  ].toSorted((one, other) => other.heightIn - one.heightIn);
  const ends = named.map(({ heightIn }) => at(endIn, heightIn));
  const placedIn = spreadApart(
    ends.map(({ yIn }) => yIn),
    namesApartIn,
    plotBottomIn,
  );
  const towardsEnd = isLeft ? 1 : -1;
  return [
    ...named.flatMap(({ name }, index): Primitive[] => {
      const [end, yIn] = [ends[index] ?? { xIn: 0, yIn: 0 }, placedIn[index] ?? 0];
      return [
        thin(
          { xIn: end.xIn - towardsEnd * airIn, yIn: end.yIn },
          { xIn: names.xIn + towardsEnd * airIn, yIn },
        ),
        text(name, { xIn: names.xIn, yIn: yIn + dropIn }, isLeft ? 'end' : 'start'),
      ];
    }),
    ...beyondName(view, at),
  ];
}

function heightAtEnd({ fromHeightIn, toHeightIn }: LinePiece, isStart: boolean): number {
  return isStart ? fromHeightIn : toHeightIn;
}

/** Beside the end of the ground past the last slab. */
function beyondName({ beyond, words }: ProfileView, at: ProfileFrame['at']): readonly Primitive[] {
  const last = beyond.at(-1);
  if (last === undefined) return [];
  const { xIn, yIn } = at(last.alongIn, last.heightIn);
  return [text(words.profileLines.beyond, { xIn: xIn + beyondGapIn, yIn: yIn + dropIn }, 'start')];
}

/** Of texts in a row, those that are clear of the one kept before. */
function apart(texts: readonly TextPrimitive[]): readonly TextPrimitive[] {
  const kept: TextPrimitive[] = [];
  for (const one of texts) {
    const last = kept.at(-1);
    if (last === undefined || !boxesOverlap(textBox(last, airIn), textBox(one, airIn))) kept.push(one);
  }
  return kept;
}

const dropIn = baselineDropIn(profileTextStyle.sizePt);

function thin(from: PaperPoint, to: PaperPoint): Primitive {
  return { kind: 'line', from, to, weightMm: lineWeightsMm.thin, dash: 'solid' };
}

function text(words: string, at: PaperPoint, anchor: TextPrimitive['anchor']): TextPrimitive {
  return { kind: 'text', ...at, text: words, anchor, ...profileTextStyle, turnDeg: 0 };
}
