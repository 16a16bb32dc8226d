import { compareR, parseTurn, rationalFromDecimalText } from '../../units/index.ts';
import { leaf } from './leaf.ts';
import { quantity } from './quantities.ts';
import { outOfRange, type Range } from './range.ts';
import { refusal } from './refusal.ts';

type Told = readonly [description: string, ...examples: string[]];

/** All the way round, one way or the other. */
const ANY_WAY = { least: '-360 deg', most: '360 deg' } as const;

/** A direction or a rotation, either way round. */
export const bearing = (...told: Told) => quantity('angle', ANY_WAY, ...told);

/** How wide something opens. A whole circle is a shape of its own. */
export const opening = (...told: Told) => quantity('angle', { above: 0, most: '359 deg' }, ...told);

/** Turning further than this folds an outline onto itself. */
const MOST_AT_A_CORNER = '179 deg';

/** How far a corner turns, without its side: that of the corner itself. */
export const partOfCorner = (...told: Told) =>
  quantity('angle', { above: 0, most: MOST_AT_A_CORNER }, ...told);

/** A change of direction with its side: `left`, `45 deg right`; `straight` where 0 is in its range. */
function turn(range: Range<string>, ...[description, ...examples]: Told) {
  return leaf({ kind: 'turn', description, examples }, (text) => {
    const parsed = parseTurn(text);
    if (!parsed.ok) return { finding: refusal(text, 'turn', parsed) };
    const finding = outOfRange(text, range, (end) =>
      compareR(parsed.value.angleDeg, rationalFromDecimalText(String(end).replace(' deg', ''))),
    );
    return finding === null ? { value: parsed.value } : { finding };
  });
}

/** From one side of an outline to the next, which may go straight on. */
export const turnOfSide = (...told: Told) => turn({ most: MOST_AT_A_CORNER }, ...told);

/** At a point of a line. */
export const turnAtOnce = (...told: Told) => turn({ above: 0, most: MOST_AT_A_CORNER }, ...told);

/** Along an arc. */
export const turnOfArc = (...told: Told) => turn({ above: 0, most: '359 deg' }, ...told);
