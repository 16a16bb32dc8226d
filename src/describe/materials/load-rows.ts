import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { loadedWords } from '../parts/loaded-words.ts';

/** One load, each quantity as a number in the core's unit and as the pages show it. */
export type LoadRow = {
  /** From 1, in driving order. */
  readonly number: number;
  readonly from: string;
  /** Null where the load is measured by weight alone, as soil is. */
  readonly areaSqFt: number | null;
  readonly area: string;
  readonly weightLb: number;
  readonly weight: string;
  readonly fillIn: number;
  readonly fill: string;
  readonly trailer: string;
  readonly place: string;
  readonly back: string;
};

/** Every load in driving order: what the page's table and the spreadsheet beside it are both made of. */
export function loadRows({ job, results, show, words }: Made): readonly LoadRow[] {
  const say = words.materials.loads;
  return results.haul.data.loads.map((load, index) => ({
    number: index + 1,
    from: loadedWords(load, job, say.soil),
    areaSqFt: load.areaSqFt,
    area: load.areaSqFt === null ? say.noFill : show.area(load.areaSqFt),
    weightLb: load.weightLb,
    weight: show.weight(load.weightLb),
    fillIn: load.fillIn,
    fill: show.size(load.fillIn),
    trailer: thingNamed(job.company.trailers, load.trailer, 'trailer').label,
    place: thingNamed(job.company.places, load.place, 'place').label,
    back: load.returns === 'base' ? say.base(show.tons(load.baseLb)) : say.empty,
  }));
}
