import type { CoreProblem } from '../problems/index.ts';

/** What every topic returns: its figures, the plain data others draw or list, and what is wrong. */
export type TopicResult<F, D> = {
  readonly figures: F;
  readonly data: D;
  readonly problems: readonly CoreProblem[];
};
