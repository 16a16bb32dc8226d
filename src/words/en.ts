import { calculation } from './en/calculation.ts';
import { common } from './en/common.ts';
import { crewDays } from './en/crew-days.ts';
import { findings } from './en/findings.ts';
import { flights } from './en/flights.ts';
import { jobsPage } from './en/jobs-page.ts';
import { materials } from './en/materials.ts';
import { pourDay } from './en/pour-day.ts';
import { proposal } from './en/proposal.ts';
import { proposalTieIns } from './en/proposal-tie-ins.ts';
import { safety } from './en/safety.ts';
import { siteWalk } from './en/site-walk.ts';
import { steel } from './en/steel.ts';
import { tieIns } from './en/tie-ins.ts';
import { walls } from './en/walls.ts';
import { workOrder } from './en/work-order.ts';

/** All fixed text of the documents, in English. */
export const en = {
  common,
  proposal,
  proposalTieIns,
  workOrder,
  crewDays,
  pourDay,
  flights,
  walls,
  tieIns,
  materials,
  steel,
  safety,
  calculation,
  siteWalk,
  jobsPage,
  findings,
} as const;
