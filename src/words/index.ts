import type { en } from './en.ts';

export { en } from './en.ts';

/** The same words in another language: every literal widened to its kind of text. */
type Widened<T> = T extends (...args: infer A) => infer R
  ? (...args: A) => R extends string ? Widened<R> : R
  : T extends string
    ? T extends { readonly audience: 'homeowner' }
      ? T
      : string
    : T extends readonly (infer Item)[]
      ? readonly Widened<Item>[]
      : { readonly [K in keyof T]: Widened<T[K]> };

/** A dictionary: a language that lacks a key of English does not compile. */
export type Words = Widened<typeof en>;
