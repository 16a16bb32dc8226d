import { COMMON_PRACTICE, type Figure, figure, given, num } from '../figure.ts';
import type { Slab } from '../job.ts';
import { compactedSqFtPerHr, liftCount, plateHr } from './compacting.ts';
import type { Compactor } from './compactor.ts';

export type CompactingFigures = {
  readonly lifts: Figure;
  /** Of each lift, all alike, compacted [in]. */
  readonly 'lift-thickness': Figure;
  /** Over each lift, both directions together. */
  readonly passes: Figure;
  /** Of the machine; the hours of the crew are those of the production rates. */
  readonly 'plate-hours': Figure;
};

/** How the base of a slab is compacted. */
export function compactingFigures(slab: Slab, area: Figure, compactor: Compactor): CompactingFigures {
  const { mostIn, widthIn, overlapIn, travelFtPerHr, efficiency, passesEachWay } = compactor;
  const baseIn = given(`build.slabs.${slab.id}.base`, slab.baseIn, 'in');
  const lifts = figure({
    value: liftCount({ thicknessIn: slab.baseIn, mostIn: num(mostIn) }),
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(baseIn / mostIn, 1)',
    inputs: { baseIn, mostIn },
    rounding: 'up',
  });
  const passes = figure({
    value: 2 * num(passesEachWay),
    unit: 'each',
    decimals: 0,
    formula: '2 * passesEachWay',
    inputs: { passesEachWay },
    source: COMMON_PRACTICE,
  });
  return {
    lifts,
    'lift-thickness': figure({
      value: slab.baseIn / num(lifts),
      unit: 'in',
      decimals: 2,
      formula: 'baseIn / lifts',
      inputs: { baseIn, lifts },
    }),
    passes,
    'plate-hours': figure({
      value: plateHr({
        areaSqFt: num(area),
        lifts: num(lifts),
        sqFtPerHr: compactedSqFtPerHr({
          widthIn: num(widthIn),
          overlapIn: num(overlapIn),
          travelFtPerHr: num(travelFtPerHr),
          efficiencyRatio: num(efficiency),
          passes: num(passes),
        }),
      }),
      unit: 'h',
      decimals: 2,
      formula: 'areaSqFt * lifts / ((widthIn - overlapIn) / 12 * travelFtPerHr * efficiency / passes)',
      inputs: { areaSqFt: area, lifts, widthIn, overlapIn, travelFtPerHr, efficiency, passes },
      source: 'US Army FM 5-434 (2000), chapter 11, output of a compactor (memory)',
    }),
  };
}
