import { en, type Words } from '../../src/words/index.ts';

/**
 * A language in which every fixed text stands in brackets, also what a text function gives. What
 * is on a page without brackets does not come from the words.
 */
export const pseudo = bracketed(en) as Words;

function bracketed(words: unknown): unknown {
  if (typeof words === 'string') return `[${words}]`;
  if (typeof words === 'function') {
    return (...args: unknown[]): unknown => bracketed((words as (...given: unknown[]) => unknown)(...args));
  }
  if (Array.isArray(words)) return words.map(bracketed);
  if (typeof words !== 'object' || words === null) return words;
  return Object.fromEntries(Object.entries(words).map(([key, value]) => [key, bracketed(value)]));
}

/** A text without what stands in brackets, those in brackets too. */
export function withoutBrackets(text: string): string {
  const shorter = text.replace(/\[[^[\]]*\]/g, ' ');
  return shorter === text ? text : withoutBrackets(shorter);
}

/** Words that note which of their keys are read; a list is one key. */
export function watchedWords(words: Words): { readonly words: Words; readonly read: ReadonlySet<string> } {
  const read = new Set<string>();
  const watched = (target: object, path: string): unknown =>
    new Proxy(target, {
      get(_, key) {
        const value: unknown = Reflect.get(target, key);
        if (typeof key !== 'string' || !Object.hasOwn(target, key)) return value;
        const at = path === '' ? key : `${path}.${key}`;
        if (typeof value !== 'object' || value === null || Array.isArray(value)) {
          read.add(at);
          return value;
        }
        return watched(value, at);
      },
    });
  return { words: watched(words, '') as Words, read };
}

/** Every key of the words; a list is one key. */
export function keysOfWords(words: unknown, path: readonly string[] = []): readonly string[] {
  const isMap = typeof words === 'object' && words !== null && !Array.isArray(words);
  if (!isMap) return [path.join('.')];
  return Object.entries(words).flatMap(([key, child]) => keysOfWords(child, [...path, key]));
}
