import { decodedTitle } from './pdf-facts.ts';

/** A bookmark as Skia writes it: its title, in brackets as text or in angles as UTF-16, then its place. */
const BOOKMARK = /<<\/Title (?:\(((?:[^\\)]|\\[\s\S])*)\)|<FEFF([0-9A-F]*)>)(?=\n\/Dest \[)/g;
const MOST_FRAGMENTS = 4;

/**
 * Writes a bookmark's title once where Chromium writes it several times: a heading that is pushed to
 * the next page counts as broken over the pages it was tried on, and its title is repeated for each.
 *
 * Only a title that is no heading of the page as it stands, and is one as its part, is changed. The
 * length stays the same, so the cross-reference table stays right: spaces follow the shorter title.
 * Source: output of Chromium 147 (Skia/PDF), read as bytes.
 *
 * @param bytes    A PDF as Chromium prints it, with uncompressed objects.
 * @param headings Text of all headings of the page.
 */
export function mendBookmarks(bytes: Uint8Array, headings: readonly string[]): Uint8Array {
  const known = new Set(headings.map(withoutSpaces));
  const isHeading = (title: string): boolean => known.has(withoutSpaces(decodedTitle(title)));
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  const mended = text.replace(BOOKMARK, (all, literal: string | undefined, hex: string | undefined) => {
    const whole = literal ?? hex ?? '';
    const titled = (part: string): string => (literal === undefined ? `<FEFF${part}>` : `(${part})`);
    if (isHeading(titled(whole))) return all;
    const part = partsOf(whole).find((each) => isHeading(titled(each)));
    return part === undefined ? all : `<</Title ${titled(part)}`.padEnd(all.length, ' ');
  });
  return new Uint8Array(Buffer.from(mended, 'latin1'));
}

/** What a text may be a repetition of. */
function partsOf(text: string): readonly string[] {
  return Array.from({ length: MOST_FRAGMENTS - 1 }, (_, index) => index + 2)
    .filter((times) => text.length % times === 0)
    .map((times) => ({ times, part: text.slice(0, text.length / times) }))
    .filter(({ times, part }) => part.repeat(times) === text)
    .map(({ part }) => part);
}

function withoutSpaces(text: string): string {
  return text.replace(/\s+/g, '');
}
