import * as z from 'zod';
import type { LocatedProblem } from '../../problems/index.ts';

// Each schema reads one or a few texts in a run, which is less than compiling it would cost.
z.config({ jitless: true });

/** A problem without its place. */
export type Finding = {
  readonly [C in LocatedProblem['code']]: Pick<Extract<LocatedProblem, { code: C }>, 'code' | 'parts'>;
}[LocatedProblem['code']];

/** What became of a text: its value, or what is wrong with it. */
export type Outcome<T> = { readonly value: T } | { readonly finding: Finding };

/** Who may read a text; a number has no reader of its own. */
type Reader = 'homeowner' | 'crew' | 'office' | null;

/** What the reference in README.md says of a value and no editor needs. */
export const listings = z.registry<{ readonly kind: string; readonly reader: Reader }>();

/** What an editor and the reference show at a key. */
export type Shown = {
  /** What it is, in a word or two: `length`, `whole number`, `$ per ton`. */
  readonly kind: string;
  readonly reader?: Reader;
  readonly description: string;
  readonly examples: readonly string[];
  /** Whether it can be a number without a unit. */
  readonly isBare?: boolean;
};

/** For an editor, which reads `3` and `5550100` as numbers where the reader has every scalar as text. */
export const TEXT_OR_NUMBER = { type: ['string', 'number'] } as const;

/** A text that `read` turns into a value. The problem travels in the issue and is placed by the reader. */
export function leaf<T>(shown: Shown, read: (text: string) => Outcome<T>) {
  const { kind, reader = null, description, examples, isBare = false } = shown;
  return z
    .string()
    .meta({ description, examples: [...examples], ...(isBare ? TEXT_OR_NUMBER : {}) })
    .register(listings, { kind, reader })
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
