import type { Trailer } from '../job.ts';
import type { TrailerFigures } from './trailer-figures.ts';

/** A trailer that may carry something, with what it may carry. */
export type UsableTrailer = { readonly trailer: Trailer; readonly figures: TrailerFigures };
