import type { Build } from '../../src/calculate/job.ts';

/** A mix for a driveway where salt is spread, with one thing changed. */
export function aMix(changed: Partial<Build['mix']> = {}): Build['mix'] {
  return {
    strengthPsi: 4500,
    airRatio: 0.06,
    slumpIn: 4,
    aggregateIn: 0.75,
    exposure: 'freezing-and-deicers',
    waterCementRatio: null,
    flyAshRatio: 0,
    slagRatio: 0,
    additives: [],
    ...changed,
  };
}
