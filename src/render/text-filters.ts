import nunjucks from 'nunjucks';
import { TICK_BOX, WRITE_LINE } from '../describe/views.ts';

/** Markup that was escaped by us; printed as it is. Made in this folder only, never in a template. */
export function markup(html: string): nunjucks.runtime.SafeString {
  return new nunjucks.runtime.SafeString(html);
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (char) => ENTITIES[char] ?? char);
}

/** n/d at a word start or after `6 `; not a date (5/4/2026), a path or a part of a word. */
const FRACTION = /(?<![\w/.,-])(\d{1,2}\/(?:2|4|8|16|32|64))(?![\w/]|[.,]\d)/g;

/**
 * Text with its common fractions drawn as such. Escapes first, then wraps the fraction alone: with
 * the whole number inside, Noto Sans would raise that as well. A length stays on one line.
 *
 * @example fractions('6 3/8″ & up') // 6&nbsp;<span class="frac">3/8</span>″ &amp; up, with U+00A0 itself
 */
export function fractions(text: string): nunjucks.runtime.SafeString {
  return markup(withFractions(requireText(text)));
}

function withFractions(text: string): string {
  return escapeHtml(text).replace(FRACTION, '<span class="frac">$1</span>').replace(WITHIN_LENGTH, NO_BREAK);
}

const UNITS = '%|in|ft|sq|mm|m[²³]?|yd³|lb|kg|t|tons?|gal|L|psi|MPa|°[FC]|mph|km\\/h|h|min|mi|km';
/** Spaces at which no line ends: within `5′ 6 3/8″`, before the unit of `12.25 yd³` and `644 sq ft`, within `3/16″ / ft`. */
const WITHIN_LENGTH = new RegExp(
  [
    '(?<=\\d′) (?=\\d)',
    '(?<=\\d) (?=<span class="frac">)',
    `(?<=\\d) (?=(?:${UNITS})(?![\\p{L}\\d]))`,
    '(?<=\\d sq) (?=ft)',
    '(?<=[″m]) (?=\\/ (?:ft|m)(?![\\p{L}\\d]))',
    '(?<=[″m] \\/) (?=(?:ft|m)(?![\\p{L}\\d]))',
  ].join('|'),
  'gu',
);
const NO_BREAK = '\u00a0';

/** Names and formulas that may break after a dot, a slash or a hyphen; `slabs.drive.area`. */
export function breakable(text: string): nunjucks.runtime.SafeString {
  return markup(withFractions(requireText(text)).replace(/(?<=[A-Za-z])([._-])(?=[A-Za-z])/g, '$1<wbr>'));
}

/**
 * The digits of a phone number for a `tel:` address, a leading + kept; empty for anything that is
 * not plainly a phone number, so that no other text becomes an address.
 */
export function telephone(text: string): string {
  return /^\+?[\d ().-]{3,30}$/.test(requireText(text)) ? text.replace(/(?!^\+)\D/g, '') : '';
}

/** What a row says, without its boxes and lines: the spoken name of a box in it. */
export function spoken(cells: readonly string[]): string {
  return Array.from(cells)
    .filter((cell) => cell !== TICK_BOX && cell !== WRITE_LINE && cell !== '')
    .join(', ');
}

/**
 * The address of a page of this site.
 *
 * @throws {Error} If it leads out of the site: a scheme, an absolute path, a step upwards.
 */
export function sitePath(path: string): string {
  const isInside = /^[\w-][\w.-]*(\/[\w-][\w.-]*)*$/.test(requireText(path));
  if (!isInside) throw new Error(`not a path inside the site: ${JSON.stringify(path)}`);
  return path;
}

function requireText(text: unknown): string {
  if (typeof text !== 'string') throw new TypeError(`expected a text, got ${String(text)}`);
  return text;
}
