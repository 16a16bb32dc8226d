import { calcBase } from './base/index.ts';
import { calcBreaking } from './breaking/index.ts';
import { calcClearances } from './clearances/index.ts';
import { calcConcrete } from './concrete/index.ts';
import { calcCost } from './cost/index.ts';
import { calcCrew, calcLaborRate, type WorkFigures } from './crew/index.ts';
import { calcCuring } from './curing/index.ts';
import { calcEdges } from './edges/index.ts';
import { calcFixtures } from './fixtures/index.ts';
import { calcFlights } from './flights/index.ts';
import { calcForms } from './forms/index.ts';
import { calcGrades } from './grades/index.ts';
import { calcHaul, type HaulResult, type WorkingDay } from './haul/index.ts';
import type { Job, Site, TapedShape } from './job.ts';
import { calcJoints } from './joints/index.ts';
import { calcLayout } from './layout/index.ts';
import { calcLevels } from './levels/index.ts';
import { calcOutline, type TapeLimits } from './outline/index.ts';
import { calcPrice } from './price/index.ts';
import { calcProfiles } from './profiles/index.ts';
import { calcReinforcement } from './reinforcement/index.ts';
import { remember } from './remember.ts';
import { calcSafety } from './safety/index.ts';
import { calcStrength } from './strength/index.ts';
import { calcTearOut } from './tear-out/index.ts';
import type { PublicText } from './text.ts';
import { calcThickened } from './thickened/index.ts';
import { calcTieIns } from './tie-ins/index.ts';

/** All topics, each remembering its inputs; one set lives as long as one run over a job. */
export type Topics = ReturnType<typeof newTopics>;

export function newTopics() {
  return {
    slabShapes: remember(shapesById),
    existingShapes: remember(shapesById),
    outline: remember(calcOutline),
    layout: remember(calcLayout),
    levels: remember(calcLevels),
    tieIns: remember(calcTieIns),
    grades: remember(calcGrades),
    thickened: remember(calcThickened),
    tearOut: remember(calcTearOut),
    breaking: remember(calcBreaking),
    flights: remember(calcFlights),
    clearances: remember(calcClearances),
    profiles: remember(calcProfiles),
    fixtures: remember(calcFixtures),
    base: remember(calcBase),
    forms: remember(calcForms),
    joints: remember(calcJoints),
    edges: remember(calcEdges),
    reinforcement: remember(calcReinforcement),
    laborRate: remember(calcLaborRate),
    concrete: remember(calcConcrete),
    haul: remember(calcHaul),
    strength: remember(calcStrength),
    crew: remember(calcCrew),
    curing: remember(calcCuring),
    cost: remember(calcCost),
    price: remember(calcPrice),
    safety: remember(calcSafety),
    trailersOf: remember(trailersOf),
    tapeLimits: remember((limits: TapeLimits) => limits),
    hauled: remember(hauled),
    brokenBy: remember(brokenBy),
    workingDay: remember((day: WorkingDay) => day),
  };
}

type Shaped = { readonly id: string; readonly label: PublicText; readonly shape: TapedShape };

/** Label and shape of each thing, as parts of one input: an edit of a thickness leaves every shape as it was. */
export function shapeParts(
  things: Readonly<Record<string, Shaped>>,
): Readonly<Record<string, Shaped['label' | 'shape']>> {
  return Object.fromEntries(
    Object.values(things).flatMap(({ id, label, shape }) => [
      [`${id}.label`, label],
      [`${id}.shape`, shape],
    ]),
  );
}

function shapesById(parts: ReturnType<typeof shapeParts>): Readonly<Record<string, Shaped>> {
  const ids = [...new Set(Object.keys(parts).map((key) => key.slice(0, key.lastIndexOf('.'))))];
  return Object.fromEntries(
    ids.map((id) => {
      const label = parts[`${id}.label`] as PublicText;
      return [id, { id, label, shape: parts[`${id}.shape`] as TapedShape }];
    }),
  );
}

/** Old steps are broken with the breaker. */
function brokenBy({ existing, hollow, oldSteps }: Pick<Site, 'existing' | 'hollow' | 'oldSteps'>) {
  const ways = new Set(
    [...Object.values(existing), ...Object.values(hollow)].map(({ breakOut }) => breakOut),
  );
  if (Object.keys(oldSteps).length > 0) ways.add('breaker');
  return [...ways].sort();
}

function hauled({ total, working }: Pick<HaulResult['figures'], 'total' | 'working'>): WorkFigures['haul'] {
  const { trips, hours } = total;
  return working === undefined ? { trips, hours } : { trips, hours, trucks: working.trucks };
}

function trailersOf(input: { readonly all: Job['company']['trailers']; readonly ids: readonly string[] }) {
  return Object.fromEntries(Object.entries(input.all).filter(([id]) => input.ids.includes(id)));
}
