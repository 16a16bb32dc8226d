import { num } from '../../calculate/figure.ts';
import type { Slab } from '../../calculate/job.ts';
import type { BarFigures, MeshFigures } from '../../calculate/reinforcement/index.ts';
import type { Words } from '../../words/index.ts';
import type { Show } from '../show/index.ts';

/** What is laid, and how many of it to take. */
export function steelWords(made: {
  readonly slab: Slab;
  readonly figures: MeshFigures | BarFigures;
  readonly stockIn: number;
  readonly show: Show;
  readonly words: Words;
}): { readonly what: string; readonly amount: string } {
  const { slab, figures, stockIn, show, words } = made;
  const { reinforcement } = slab;
  const say = words.workOrder.steel;
  if (reinforcement.kind === 'bars' && 'sticks' in figures) {
    return {
      what: say.bars(reinforcement.size, show.size(reinforcement.spacingIn)),
      amount: say.sticks(show.count(num(figures.sticks)), show.length(stockIn)),
    };
  }
  if (reinforcement.kind === 'mesh' && 'sheets' in figures) {
    return { what: say.mesh(reinforcement.style), amount: say.sheets(show.count(num(figures.sheets))) };
  }
  throw new RangeError(`no steel figures of the right kind for slab ${slab.id}`);
}
