import type { LevelPoint, PublicWalk, Slab } from '../../../src/calculate/job.ts';
import { calcLayout } from '../../../src/calculate/layout/index.ts';
import { calcLevels } from '../../../src/calculate/levels/index.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import type { CrewText, PublicText } from '../../../src/calculate/text.ts';
import { calcTieIns } from '../../../src/calculate/tie-ins/index.ts';
import { pointsAt, type Spots } from '../grades/a-grade.ts';
import { aSlab, byId, NO_TIE_INS, rectangle, TAPE_LIMITS } from '../slabs.ts';

/** A drive of 40 by 18 ft that comes down 10 in to a walk which has settled 2 in at its left end, 1 at its right. */
export const SPOTS = {
  'garage-left': [0, 216, 100],
  'garage-right': [0, 0, 100],
  'walk-left': [480, 216, 88],
  'walk-right': [480, 0, 89],
} as const satisfies Spots;

export function aWalk(changed: Partial<PublicWalk> = {}): PublicWalk {
  return {
    id: 'city',
    label: 'City walk' as PublicText,
    slab: 'drive',
    ends: {
      left: { now: 'walk-left', shouldIn: 90, up: 'garage-left' },
      right: { now: 'walk-right', shouldIn: 90, up: 'garage-right' },
    },
    widthIn: 60,
    transitionSlope: 1 / 12,
    lastPanelIn: 60,
    way: 'match',
    authority: 'City' as PublicText,
    word: null,
    panel: null,
    ...changed,
  };
}

const AT_ORIGIN = aSlab({ shape: rectangle(480, 216, { at: { xIn: 0, yIn: 0 } }) });

/** What tie-ins and grades are made from: one slab and points with heights. */
export function onSlab(slab: Slab, points: readonly LevelPoint[]) {
  const slabs = byId(slab);
  const outline = calcOutline({ slabs, existing: {}, limits: TAPE_LIMITS });
  const layout = calcLayout({
    shapes: outline.figures,
    outlines: outline.data.slabs,
    corners: outline.data.corners,
    lies: outline.data.lies,
    stepIn: 12,
    unitIn: 12,
  });
  const heights = {
    datum: 'Nail' as CrewText,
    notes: [],
    closingErrorIn: null,
    points: byId(...points),
  };
  const given = { heights, plans: outline.data.plans, corners: layout.data.corners };
  const levels = calcLevels({ ...given, existing: {} });
  return { ...given, points: levels.figures.points, slabs };
}

export function tied(
  walk: PublicWalk,
  points: readonly LevelPoint[] = pointsAt(SPOTS, 'fixed', { kind: 'stays' }),
) {
  const graded = onSlab(AT_ORIGIN, points);
  return { graded, made: calcTieIns({ ...graded, tieIns: { ...NO_TIE_INS, publicWalks: byId(walk) } }) };
}
