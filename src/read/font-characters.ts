/**
 * The characters of the shipped font, as runs from the first to the last code point.
 * Read from the cmap of Noto Sans, latin subset (@fontsource/noto-sans 5.3.0, weights 400 and
 * 700 alike); seen. Whatever is not in here would be drawn by a font of the machine, or not at all.
 */
const RUNS = [
  [0x20, 0x7e],
  [0xa0, 0xac],
  [0xae, 0xff],
  [0x131, 0x131],
  [0x152, 0x153],
  [0x2bb, 0x2bc],
  [0x2c6, 0x2c6],
  [0x2da, 0x2da],
  [0x2dc, 0x2dc],
  [0x2002, 0x2002],
  [0x2009, 0x2009],
  [0x2013, 0x2014],
  [0x2018, 0x201a],
  [0x201c, 0x201e],
  [0x2022, 0x2022],
  [0x2026, 0x2026],
  [0x2032, 0x2033],
  [0x2039, 0x203a],
  [0x2044, 0x2044],
  [0x20ac, 0x20ac],
  [0x2122, 0x2122],
  [0x2212, 0x2212],
] as const;

export function isInFont(character: string): boolean {
  const code = character.codePointAt(0) ?? -1;
  return RUNS.some(([first, last]) => first <= code && code <= last);
}
