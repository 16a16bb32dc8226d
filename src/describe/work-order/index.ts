import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import type { PublicText } from '../../calculate/text.ts';
import type { Words } from '../../words/index.ts';
import type { Made } from '../made.ts';
import { findingsView } from '../parts/findings-view.ts';
import { frameOf } from '../parts/frame.ts';
import { frameFactsOf } from '../parts/frame-facts.ts';
import { mixWords } from '../parts/mix-words.ts';
import { goneAreas, slabAreasForCrew } from '../parts/plan-areas.ts';
import { type Show, showIn } from '../show/index.ts';
import type { FactView, FiguredDrawing, ListView, WorkOrderView } from '../views.ts';
import { baysView } from './bays.ts';
import { chuteSheet } from './chute-sheet.ts';
import { crewPlan } from './crew-plan.ts';
import { daysView } from './days.ts';
import { drainsTable } from './drains-table.ts';
import { edgesTable } from './edges-table.ts';
import { fixturesView } from './fixtures.ts';
import { flightsTable, splitsTable } from './flight-tables.ts';
import { formPiecesTable, formsTable } from './form-tables.ts';
import { goesTable } from './goes-table.ts';
import { gradesView } from './heights-tables.ts';
import { jointsTable, panelsTable } from './joint-tables.ts';
import { checksTable, curvesTable, turnsTable } from './layout-tables.ts';
import { levelsView } from './levels-table.ts';
import { pieceNotes } from './piece-notes.ts';
import { pourDayView } from './pour-day/index.ts';
import { poursTable } from './pours-table.ts';
import { prePour } from './pre-pour.ts';
import { profilesView } from './profiles.ts';
import { publicWalksTable } from './public-walks-table.ts';
import { reChalkTable } from './re-chalk-table.ts';
import { barsView, steelTable } from './steel.ts';
import { stepTopsTable } from './step-tops-table.ts';
import { garagesTable, keptDryTable } from './surface-tables.ts';
import { loadsTable, slabsTable } from './tables.ts';
import { wallsTable } from './walls-table.ts';

/** The crew work order: outdoors, wet, in gloves. */
export function describeWorkOrder(job: Job, results: JobResults, words: Words): WorkOrderView {
  const show = showIn(job.unitSystem);
  const made = { job, results, show, words };
  const say = words.workOrder;
  const findings = findingsView(
    job,
    results.findings.filter(({ acknowledged }) => acknowledged === null),
    words,
  );
  return {
    frame: frameOf('work-order', frameFactsOf(job), words),
    plan: newPlan(made),
    goesPlan: goesPlan(made),
    facts: facts(job, results, show, words),
    photos: photos(job, words),
    protect: job.site.stays.length === 0 ? null : { heading: say.protect, items: job.site.stays },
    slabs: slabsTable(made),
    curves: curvesTable(made),
    turns: turnsTable(made),
    checks: checksTable(made),
    levels: levelsView(made),
    grades: gradesView(made),
    profiles: profilesView(made),
    flights: flightsTable(made),
    flightSplits: splitsTable(made),
    stepTops: stepTopsTable(made),
    fixtures: fixturesView(made),
    drains: drainsTable(made),
    garages: garagesTable(made),
    keptDry: keptDryTable(made),
    publicWalks: publicWalksTable(made),
    walls: wallsTable(made),
    forms: formsTable(made),
    formPieces: formPiecesTable(made),
    joints: jointsTable(made),
    panels: panelsTable(made),
    pours: poursTable(made),
    edges: edgesTable(made),
    steel: steelTable(made),
    bars: barsView(made),
    goes: goesTable(made),
    bays: baysView(made),
    loads: loadsTable(made),
    pieceNotes: pieceNotes(made),
    reChalk: reChalkTable(made),
    findings: findings.length === 0 ? null : { heading: say.findings, items: findings },
    days: daysView(made),
    pourDay: pourDayView(made),
    prePour: prePour(made),
    prePourSign: {
      heading: say.prePourSign.heading,
      sentence: say.prePourSign.sentence,
      lines: [{ who: say.prePourSign.who, date: say.prePourSign.date }],
    },
    chute: chuteSheet(made),
    surprise: say.surprise,
  };
}

function newPlan(made: Made): FiguredDrawing {
  const { job, results, show, words } = made;
  return crewPlan(
    {
      id: 'work-order-new',
      heading: words.common.drawing.newPlan,
      areas: slabAreasForCrew(job, results, show, words),
    },
    made,
  );
}

function goesPlan(made: Made): FiguredDrawing | null {
  const { job, results, words } = made;
  const areas = goneAreas(job, results);
  if (areas.length === 0) return null;
  return crewPlan(
    {
      id: 'work-order-goes',
      heading: words.common.drawing.oldPlan,
      areas,
      photoPoints: Object.values(job.site.photoPoints).map(({ at, lookingDeg }, index) => ({
        text: `${index + 1}` as PublicText,
        at,
        lookingDeg,
      })),
    },
    made,
  );
}

/** Where the photos are taken from, numbered as on the plan of what is there. */
function photos(job: Job, words: Words): ListView | null {
  const points = Object.values(job.site.photoPoints);
  if (points.length === 0) return null;
  return { heading: words.workOrder.photos, items: points.map(({ label }) => label) };
}

function facts(job: Job, results: JobResults, show: Show, words: Words): readonly FactView[] {
  const say = words.workOrder.facts;
  const { access, locateTicket } = job.site;
  const notes = [
    access.note,
    access.crewNote,
    ...Object.values(job.build.slabs).map(({ label, crewNote }) =>
      crewNote === null ? null : `${label}: ${crewNote}`,
    ),
  ].filter((note) => note !== null);
  return [
    { label: say.address, value: job.address },
    {
      label: say.client,
      value: [job.client.name, job.client.phone].filter((part) => part !== null).join(', '),
    },
    { label: say.truck, value: access.truckStands },
    ...(access.gateCode === null ? [] : [{ label: say.gate, value: access.gateCode }]),
    ...(locateTicket === null ? [] : [{ label: say.ticket, value: locateTicket }]),
    { label: say.mix, value: mixWords(job, results, show, words) },
    ...notes.map((note) => ({ label: say.note, value: note })),
  ];
}
