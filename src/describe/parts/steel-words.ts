import { num } from '../../calculate/figure.ts';
import type { Job, Slab } from '../../calculate/job.ts';
import type { BarFigures, BarStock, MeshFigures } from '../../calculate/reinforcement/index.ts';
import type { Words } from '../../words/index.ts';
import type { Show } from '../show/index.ts';

type Told = { readonly show: Show; readonly words: Words };
type Figures = MeshFigures | BarFigures;

/** What is laid in a slab. */
export function steelWhat({ reinforcement }: Slab, { show, words }: Told): string {
  const { steel: say } = words;
  if (reinforcement.kind === 'none') throw new RangeError('a slab without steel has no words for it');
  if (reinforcement.kind === 'mesh') return say.mesh(reinforcement.style);
  const { material, size, spacingIn, spacingAcrossIn } = reinforcement;
  const bars = say.bars[material](size);
  return spacingAcrossIn === null
    ? say.bothWays(bars, show.size(spacingIn))
    : say.eachWay(bars, show.size(spacingIn), show.size(spacingAcrossIn));
}

/** How much of it is laid: sheets, or so much of a roll or of bar. */
export function steelAmount(figures: Figures, { show, words }: Told): string {
  const { steel: say } = words;
  if ('length' in figures) return say.pieces(show.run(num(figures.length)));
  if (figures.sheets !== undefined) return say.sheets(show.count(num(figures.sheets)));
  if (figures['rolled-out'] === undefined) throw new RangeError('mesh is in sheets or in rolls');
  return say.rolledOut(show.run(num(figures['rolled-out'])));
}

/** Chairs and how high they are. */
export function chairsText(figures: Figures, { show, words }: Told): string {
  return words.steel.chairsOf(show.count(num(figures.chairs)), show.size(num(figures['chair-height'])));
}

/** The stock bars of one material and size: `57 of 20' + 2 of 10'`. */
export function sticksText({ plan }: BarStock, { show, words }: Told): string {
  const countOf = new Map<number, number>();
  for (const { stockIn, count } of plan.bars) countOf.set(stockIn, (countOf.get(stockIn) ?? 0) + count);
  return [...countOf]
    .map(([stockIn, count]) => words.steel.sticks(show.count(count), show.length(stockIn)))
    .join(words.steel.and);
}

/** Who sells the bars of a material. */
export function barSupplier({ material }: Pick<BarStock, 'material'>, { suppliers }: Job['company']) {
  const supplier = material === 'steel' ? suppliers.bars : suppliers.glassFibreBars;
  if (supplier === null) throw new RangeError('bars that nobody sells');
  return supplier;
}
