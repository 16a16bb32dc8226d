import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import type { Words } from '../../words/index.ts';
import { frameOf } from '../parts/frame.ts';
import { frameFactsOf } from '../parts/frame-facts.ts';
import { showIn } from '../show/index.ts';
import type { MaterialsView, SpreadsheetView } from '../views.ts';
import { concreteView } from './concrete.ts';
import { fleetSheet, fleetTable } from './fleet.ts';
import { formsSheet, formsTable } from './forms.ts';
import { baseFacts, fleetNotes, loadNotes, loadsTable } from './loads.ts';
import { loadsSpreadsheet } from './loads-spreadsheet.ts';
import { placesTable } from './places.ts';
import { shoppingSheet, shoppingView } from './shopping.ts';
import { steelSheet, steelTable, stockSheet, stockTable } from './steel.ts';
import { perLoadSheet, streamsSheet, streamsTable } from './streams.ts';
import { tieDownsView } from './tie-downs.ts';
import { tripsSheet, tripsTable } from './trips.ts';
import { whyTable } from './why.ts';

/** The materials and haul plan: for who orders and drives. */
export function describeMaterials(job: Job, results: JobResults, words: Words): MaterialsView {
  const made = { job, results, show: showIn(job.unitSystem), words };
  return {
    frame: frameOf('materials', frameFactsOf(job), words),
    loads: loadsTable(made),
    loadNotes: loadNotes(made),
    trips: tripsTable(made),
    why: whyTable(made),
    places: placesTable(made),
    streams: streamsTable(made),
    fleet: fleetTable(made),
    fleetNotes: fleetNotes(made),
    tieDowns: tieDownsView(made),
    base: baseFacts(made),
    concrete: concreteView(made),
    steel: steelTable(made),
    stock: stockTable(made),
    forms: formsTable(made),
    shopping: shoppingView(made),
  };
}

/** What is hauled, laid and bought, as sheets of a workbook in the order of the page, without empty ones. */
export function materialsSpreadsheets(
  job: Job,
  results: JobResults,
  words: Words,
): { readonly loads: SpreadsheetView | null; readonly materials: readonly SpreadsheetView[] } {
  const made = { job, results, show: showIn(job.unitSystem), words };
  const loads = loadsSpreadsheet(made);
  const sheets = [
    loads,
    tripsSheet(made),
    streamsSheet(made),
    perLoadSheet(made),
    fleetSheet(made),
    steelSheet(made),
    stockSheet(made),
    formsSheet(made),
    shoppingSheet(made),
  ];
  return { loads, materials: sheets.filter((sheet) => sheet !== null) };
}
