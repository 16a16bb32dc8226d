import { plainText } from './number-text.ts';
import { type ParseCode, type ParseResult, refused, taken } from './parse-result.ts';
import { parseQuantity } from './quantity.ts';
import { type Rational, rational } from './rational.ts';

/** A change of direction: how much, from 0, and to which side. Going straight is 0 degrees to the left. */
export type Turn = {
  readonly angleDeg: Rational;
  readonly side: 'left' | 'right';
  readonly text: string;
};

const SQUARE_DEG = rational(90);
const SIDE_FIRST = /^(left|right)(?: (.+))?$/;
const SIDE_LAST = /^(.+?) ?(left|right)$/;
const EXAMPLES = ['left', '45 deg right', 'straight'] as const;

/**
 * Reads a turn: `left` and `right` (square, 90 degrees), `45 deg left`, `right 30 deg`, `straight`.
 *
 * The side is a word, never a sign: `-45 deg` is refused. An angle without its side, and a side
 * beside a bare number, are `without-unit`.
 */
export function parseTurn(text: string): ParseResult<Turn> {
  const plain = plainText(text);
  if (plain === 'straight') return taken({ angleDeg: rational(0), side: 'left', text });
  const { side, angleText } = split(plain);
  if (side !== null && angleText === '') return taken({ angleDeg: SQUARE_DEG, side, text });

  const angle = parseQuantity('angle', angleText);
  if (!angle.ok) return refused(angle.code, formsFor(plain, angle.code));
  if (side === null) return refused('without-unit', formsFor(plain, 'without-unit'));
  if (angle.value.value.n < 0n) return refused('not-a-number', formsFor(plain, 'not-a-number'));
  return taken({ angleDeg: angle.value.value, side, text });
}

/** Angle and side of `45 deg left` and `left 45 deg`; the angle empty or the side null where it lacks. */
function split(plain: string): { readonly side: 'left' | 'right' | null; readonly angleText: string } {
  const [, firstSide, after = ''] = SIDE_FIRST.exec(plain) ?? [];
  if (firstSide !== undefined) return { side: sideOf(firstSide), angleText: after };
  const [, before = plain, lastSide] = SIDE_LAST.exec(plain) ?? [];
  return { side: lastSide === undefined ? null : sideOf(lastSide), angleText: before };
}

function sideOf(word: string): 'left' | 'right' {
  return word === 'left' ? 'left' : 'right';
}

/** What was probably meant, in forms that are taken; the text itself stays refused. */
function formsFor(plain: string, code: ParseCode): readonly string[] {
  const lower = plain.toLowerCase().replace(/[^a-z\d]+$/, '');
  const isLeft = /\bleft\b/.test(lower);
  // With both words, or a sign that might stand for the other one, either side may be meant.
  const isUnclear = isLeft === /\bright\b/.test(lower) || lower.startsWith('-');
  const side = isUnclear ? null : isLeft ? 'left' : 'right';
  const rest = lower.replace(/\b(?:turn|to|the|left|right)\b/g, ' ').replace(/^[ -]+/, '');
  if (rest.trim() === '' && side !== null) return [side, `90 deg ${side}`];
  const angle = angleMeant(rest.trim());
  if (code === 'wrong-kind' || angle === null) return EXAMPLES;
  if (side === null) return [`${angle} left`, `${angle} right`];
  return [`${angle} ${side}`, `${side} ${angle}`];
}

/** `45 deg` for `45`, `45 degrees` and the like; null where no angle can be made out. */
function angleMeant(text: string): string | null {
  const parsed = parseQuantity('angle', text);
  const [form] = parsed.ok ? [parsed.value.text] : parsed.forms;
  const isMeant = parsed.ok || parsed.code === 'without-unit' || parsed.code === 'unknown-unit';
  return isMeant && form !== undefined && parseQuantity('angle', form).ok ? form : null;
}
