import { notoSansAdvances } from './noto-sans-advances.ts';

type Weight = keyof typeof notoSansAdvances;

const advanceOf: Record<Weight, ReadonlyMap<string, number>> = {
  400: byCharacter(notoSansAdvances[400]),
  700: byCharacter(notoSansAdvances[700]),
};

/**
 * Width of one line of text in Noto Sans [in on the paper]: the sum of the advances. Kerning, which
 * mostly draws letters together, is left out, so the printed line is seldom wider.
 *
 * @param style.sizePt Text size [pt], above 0.
 * @throws {RangeError} If the size is not above 0, or a character is not in the shipped font. Text from
 *                      people is checked when it is read; what gets here unchecked is our mistake.
 */
export function textWidthIn(text: string, style: { sizePt: number; weight: Weight }): number {
  const { sizePt, weight } = style;
  if (!(sizePt > 0 && sizePt < Infinity)) throw new RangeError(`sizePt must be above 0, got ${sizePt}`);
  return ((thousandthsOf(text, weight) / 1000) * sizePt) / 72;
}

/** More than the texts of a job and their halves; then all are forgotten. */
const KEPT_TEXTS = 10_000;
const measured: Record<Weight, Map<string, number>> = { 400: new Map(), 700: new Map() };

/** The plan of a job asks for the same texts at every scale that is tried. */
function thousandthsOf(text: string, weight: Weight): number {
  const before = measured[weight].get(text);
  if (before !== undefined) return before;
  let thousandths = 0;
  for (const character of text) {
    const advance = advanceOf[weight].get(character);
    if (advance === undefined) {
      const code = character.codePointAt(0)?.toString(16).toUpperCase().padStart(4, '0');
      throw new RangeError(`the shipped font has no character U+${code}, in ${JSON.stringify(text)}`);
    }
    thousandths += advance;
  }
  if (measured[weight].size >= KEPT_TEXTS) measured[weight].clear();
  measured[weight].set(text, thousandths);
  return thousandths;
}

function byCharacter(rows: readonly (readonly [number, string])[]): Map<string, number> {
  return new Map(
    rows.flatMap(([advance, characters]) => [...characters].map((one) => [one, advance] as const)),
  );
}
