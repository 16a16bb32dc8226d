import { type CrewText, type OfficeText, type PublicText, shortened } from '../../problems/index.ts';
import { isInFont } from '../font-characters.ts';
import { leaf, type Outcome } from './leaf.ts';

/** Longer than any paragraph of a proposal. */
const MOST_CHARACTERS = 1000;

/** Text a homeowner may read. */
export function publicText(description: string, ...examples: string[]) {
  return leaf(
    { kind: 'text', reader: 'homeowner', description, examples, isBare: true },
    (text) => readText(text) as Outcome<PublicText>,
  );
}

/** Text for the crew; never in a document for the homeowner. */
export function crewText(description: string, ...examples: string[]) {
  return leaf(
    {
      kind: 'text',
      reader: 'crew',
      description: `${description} Only the crew and the office see it.`,
      examples,
      isBare: true,
    },
    (text) => readText(text) as Outcome<CrewText>,
  );
}

/** Text for the office alone. */
export function officeText(description: string, ...examples: string[]) {
  return leaf(
    {
      kind: 'text',
      reader: 'office',
      description: `${description} Only the office sees it.`,
      examples,
      isBare: true,
    },
    (text) => readText(text) as Outcome<OfficeText>,
  );
}

function readText(text: string): Outcome<string> {
  const plain = text.trim().replace(/ *\n+ */g, ' ');
  if (plain === '') return { finding: { code: 'empty-value', parts: { key: '' } } };
  if (plain.length > MOST_CHARACTERS) {
    return {
      finding: {
        code: 'text-too-long',
        parts: { count: String(plain.length), most: String(MOST_CHARACTERS) },
      },
    };
  }
  for (const character of plain) {
    const code = `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
    if (/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u.test(character))
      return { finding: { code: 'control-character', parts: { code } } };
    if (!isInFont(character)) {
      return {
        finding: { code: 'character-not-in-font', parts: { character: shortened(character, 4), code } },
      };
    }
  }
  return { value: plain };
}
