import { z } from 'zod';
import type { LocatedProblem } from '../../problems/index.ts';

/** A problem without its place. */
export type Finding = {
  readonly [C in LocatedProblem['code']]: Pick<Extract<LocatedProblem, { code: C }>, 'code' | 'parts'>;
}[LocatedProblem['code']];

/** What became of a text: its value, or what is wrong with it. */
export type Outcome<T> = { readonly value: T } | { readonly finding: Finding };

/** What an editor shows at a key. */
export type Shown = {
  readonly description: string;
  readonly examples: readonly string[];
  /** Whether it can be a number without a unit. */
  readonly isBare?: boolean;
};

/** For an editor, which reads `3` and `5550100` as numbers where the reader has every scalar as text. */
export const TEXT_OR_NUMBER = { type: ['string', 'number'] } as const;

/** A text that `read` turns into a value. The problem travels in the issue and is placed by the reader. */
export function leaf<T>(shown: Shown, read: (text: string) => Outcome<T>) {
  const { description, examples, isBare = false } = shown;
  return z
    .string()
    .meta({ description, examples: [...examples], ...(isBare ? TEXT_OR_NUMBER : {}) })
    .transform((text, context): T => {
      const outcome = read(text);
      if ('value' in outcome) return outcome.value;
      context.issues.push({ code: 'custom', input: text, params: outcome.finding });
      return z.NEVER;
    });
}

/** Made at its first use: a run that reads one job does not pay for every schema. */
export function lazily<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
