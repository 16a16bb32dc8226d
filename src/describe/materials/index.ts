import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import type { Words } from '../../words/index.ts';
import { frameOf } from '../parts/frame.ts';
import { frameFactsOf } from '../parts/frame-facts.ts';
import { steelWords } from '../parts/steel-words.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import { type Show, showIn } from '../show/index.ts';
import type { MaterialsView, TableView } from '../views.ts';
import { concreteView } from './concrete.ts';
import { formsTable } from './forms.ts';
import { baseFacts, fleetTable, loadNotes, loadsTable, streamsTable } from './loads.ts';
import { shoppingView } from './shopping.ts';

export { loadsSpreadsheet } from './loads-spreadsheet.ts';

/** The materials and haul plan: for who orders and drives. */
export function describeMaterials(job: Job, results: JobResults, words: Words): MaterialsView {
  const made = { job, results, show: showIn(job.unitSystem), words };
  return {
    frame: frameOf('materials', frameFactsOf(job), words),
    loads: loadsTable(made),
    loadNotes: loadNotes(made),
    streams: streamsTable(made),
    fleet: fleetTable(made),
    base: baseFacts(made),
    concrete: concreteView(made),
    steel: steelTable(made),
    forms: formsTable(made),
    shopping: shoppingView(made),
  };
}

type Made = { readonly job: Job; readonly results: JobResults; readonly show: Show; readonly words: Words };

function steelTable({ job, results, show, words }: Made): TableView | null {
  const say = words.materials.steel;
  const { suppliers } = job.company;
  const rows = Object.values(job.build.slabs).flatMap((slab) => {
    const figures = results.reinforcement.figures.slabs[slab.id];
    if (figures === undefined) return [];
    const { what, amount } = steelWords({ slab, figures, stockIn: suppliers.bars.stockIn, show, words });
    return [row(slab.label, what, amount, show.weight(num(figures.weight)), show.count(num(figures.chairs)))];
  });
  return tableOrNull(
    say.caption,
    [start(say.slab), start(say.what), end(say.amount), end(say.weight), end(say.chairs)],
    rows,
  );
}
