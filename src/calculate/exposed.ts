import { type Constant, constant } from './figure.ts';
import type { Finish } from './job.ts';

/** 400 sq ft a finisher and pour with a broom finish, against 250 of exposed aggregate. */
const TIMES_EACH = 1.6;

/** How many square feet of a broom finish one of exposed aggregate counts as; null for another finish. */
export function exposedTimes(finish: Finish): Constant | null {
  if (finish !== 'exposed-aggregate') return null;
  return constant(
    'area of a broom finish that exposed aggregate counts as',
    TIMES_EACH,
    'ratio',
    'common practice, no source; 150 to 250 sq ft a finisher and pour of exposed aggregate, 250 to 400 with a broom finish',
  );
}
