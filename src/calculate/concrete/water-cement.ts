import type { Exposure } from '../job.ts';

/*
 * Most water to cementitious material, by weight.
 *
 * - Freezing: PCA EB001, Table 11-3, adapted from the ACI 318 of its time, classes F1 to F3 (seen);
 *   ACI 318-19 has 0.45 for F2 (from memory).
 * - Freezing and deicers: ACI 332-20, class RF3, quoted in a ready-mix association's technical advisory on
 *   deicer scaling (seen).
 */
const table: Readonly<Record<Exposure, { readonly mostRatio: number; readonly source: string } | null>> = {
  'no-freezing': null,
  freezing: { mostRatio: 0.45, source: 'PCA EB001, Table 11-3, exposed to freezing and thawing (seen)' },
  'freezing-and-deicers': {
    mostRatio: 0.45,
    source: 'ACI 332-20, class RF3, driveways and steps with deicers (seen)',
  },
};

/** The published limit for an exposure; null where there is none. */
export function waterCementMost(exposure: Exposure) {
  return table[exposure];
}
