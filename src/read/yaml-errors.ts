import type { YAMLParseError } from 'yaml';
import { type LocatedProblem, problemAt, type SourceSpot } from '../problems/index.ts';

type SpotOf = (start: number, end: number) => SourceSpot;

/** After a slip the parser guesses; a few messages help, twenty do not. */
const MOST_SHOWN = 5;

/** What the YAML parser found, in our words, one problem a line. */
export function syntaxProblems(
  errors: readonly YAMLParseError[],
  text: string,
  spotOf: SpotOf,
): LocatedProblem[] {
  const byLine = new Map<number, LocatedProblem>();
  for (const error of errors.toSorted((one, other) => one.pos[0] - other.pos[0])) {
    const { line } = spotOf(...error.pos);
    if (!byLine.has(line)) byLine.set(line, problemOf(error, text, spotOf));
  }
  return [...byLine.values()].slice(0, MOST_SHOWN);
}

function problemOf(error: YAMLParseError, text: string, spotOf: SpotOf): LocatedProblem {
  const [start, end] = error.pos;
  const here = spotOf(start, end);
  const line = lineAround(text, start);
  switch (error.code) {
    case 'TAB_AS_INDENT':
      return problemAt(here, 'tab-indent', {});
    case 'MULTIPLE_DOCS':
      return problemAt(here, 'more-than-one-document', {});
    case 'BAD_SCALAR_START':
      return problemAt(here, 'first-character', { character: text.charAt(start) });
    case 'BLOCK_AS_IMPLICIT_KEY':
      return /:\s.*:(\s|$)/.test(line)
        ? problemAt(here, 'colon-in-text', {})
        : problemAt(nextLine(text, start, spotOf), 'indent', {});
    case 'MULTILINE_IMPLICIT_KEY': {
      const written = /^\s*(\S*:\S.*?)\s*$/.exec(line)?.[1];
      return written === undefined
        ? problemAt(here, 'indent', {})
        : problemAt(here, 'colon-without-space', { text: written });
    }
    case 'BAD_INDENT': {
      const opened = Math.max(text.lastIndexOf('[', start - 1), text.lastIndexOf('{', start - 1));
      return error.message.startsWith('Flow') && opened >= 0
        ? problemAt(spotOf(opened, opened + 1), 'bracket-not-closed', {})
        : problemAt(here, 'indent', {});
    }
    case 'UNEXPECTED_TOKEN':
      if (error.message.includes('scalar at node end') && /['"]/.test(text.charAt(start - 1))) {
        return problemAt(here, 'text-after-quote', {});
      }
      break;
    case 'MISSING_CHAR':
      if (error.message.includes('quote')) {
        const quote = text.lastIndexOf(error.message.includes('"') ? '"' : "'");
        return problemAt(quote < 0 ? here : spotOf(quote, quote + 1), 'quote-not-closed', {});
      }
      break;
    default:
  }
  return problemAt(here, 'not-yaml', { reason: error.message });
}

function lineAround(text: string, offset: number): string {
  const end = text.indexOf('\n', offset);
  return text.slice(text.lastIndexOf('\n', offset - 1) + 1, end < 0 ? text.length : end);
}

/** The first words of the line below. */
function nextLine(text: string, offset: number, spotOf: SpotOf): SourceSpot {
  const end = text.indexOf('\n', offset);
  const words = end < 0 ? null : /^\s*(\S+)/.exec(text.slice(end));
  if (words === null) return spotOf(offset, offset + 1);
  const start = end + words[0].length - (words[1] ?? '').length;
  return spotOf(start, end + words[0].length);
}
