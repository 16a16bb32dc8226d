import type { PublicText } from '../../problems/text.ts';
import { homeowner as h } from '../homeowner.ts';

/** Words that several documents share; all of them fit for the homeowner. */
export const common = {
  language: 'en',
  page: h`Page`,
  of: h`of`,
  job: h`Job`,
  revision: h`Revision`,
  prepared: h`Prepared`,
  place: h`Place`,
  client: h`For`,
  contents: h`Contents`,
  footJob: (number: PublicText, revision: number, date: PublicText) =>
    h`Job ${number} · revision ${revision} · ${date}`,
  headJob: (document: PublicText, label: PublicText) => h`${document} · ${label}`,
  documents: {
    proposal: h`Proposal`,
    'work-order': h`Crew work order`,
    materials: h`Materials and haul plan`,
    safety: h`Safety sheet`,
    calculation: h`Calculation sheet`,
    binder: h`Binder`,
    'site-walk': h`Site walk`,
  },
  weekdays: [h`Monday`, h`Tuesday`, h`Wednesday`, h`Thursday`, h`Friday`, h`Saturday`, h`Sunday`],
  months: [
    h`January`,
    h`February`,
    h`March`,
    h`April`,
    h`May`,
    h`June`,
    h`July`,
    h`August`,
    h`September`,
    h`October`,
    h`November`,
    h`December`,
  ],
  phases: {
    'tear-out': h`Tear-out and haul`,
    'base-and-forms': h`Base, forms and steel`,
    pour: h`Pour`,
    'strip-and-clean': h`Forms off, backfill, clean up`,
  },
  finishes: {
    broom: h`Broom finish`,
    float: h`Float finish`,
    'exposed-aggregate': h`Exposed aggregate`,
  },
  drawing: {
    scale: (scale: string) => `Scale ${scale}`,
    radius: (length: string) => `R ${length}`,
    north: h`N`,
    newPlan: h`What will be built`,
    oldPlan: h`What goes`,
    areaPlan: (label: PublicText) => h`Plan: ${label}`,
    joint: (number: PublicText) => h`J${number}`,
    curve: (number: PublicText) => h`C${number}`,
  },
} as const;
