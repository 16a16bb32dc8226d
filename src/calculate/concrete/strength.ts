import type { Exposure } from '../job.ts';

/*
 * Least specified strength of exterior flatwork, 28 days, as published. None of the three is a
 * table for every driveway and walk everywhere; the local code comes first.
 *
 * - IBC 1904.2, concrete that is not structural, by freeze-thaw class F0 to F3: quoted in an
 *   engineers' article, "Concrete durability and IBC Chapter 19" (seen). Flatwork is wetted often,
 *   so freezing is class F2.
 * - IRC Table R402.2, porches and steps exposed to the weather, by weathering region negligible,
 *   moderate, severe: reproduced in a code guide (seen). The table has no row for driveways or walks.
 * - ACI 332-20, class RF3, driveways, steps and porches where deicers are expected: quoted in a
 *   ready-mix association's technical advisory on deicer scaling (seen), with a water-cement
 *   ratio of at most 0.45. The edition of 2014 had 4000 psi.
 */

export type Standard = 'ibc' | 'irc' | 'aci332';
export type StrengthRow = { readonly standard: Standard; readonly leastPsi: number; readonly source: string };

const IRC = 'IRC Table R402.2, steps and porches exposed to weather';

const strengthTable: Readonly<Record<Exposure, readonly StrengthRow[]>> = {
  'no-freezing': [
    { standard: 'ibc', leastPsi: 2500, source: 'IBC 1904.2, not structural, class F0 (seen)' },
    { standard: 'irc', leastPsi: 2500, source: `${IRC}, negligible weathering (seen)` },
  ],
  freezing: [
    { standard: 'ibc', leastPsi: 3500, source: 'IBC 1904.2, not structural, class F2 (seen)' },
    { standard: 'irc', leastPsi: 3000, source: `${IRC}, moderate weathering (seen)` },
  ],
  'freezing-and-deicers': [
    { standard: 'ibc', leastPsi: 3500, source: 'IBC 1904.2, not structural, class F3 (seen)' },
    { standard: 'irc', leastPsi: 3500, source: `${IRC}, severe weathering (seen)` },
    {
      standard: 'aci332',
      leastPsi: 4500,
      source: 'ACI 332-20, class RF3, driveways and steps with deicers (seen)',
    },
  ],
};

/** The published least strengths for an exposure. */
export function strengthRows(exposure: Exposure): readonly StrengthRow[] {
  return strengthTable[exposure];
}

/** The greatest of them: the row to name as the basis; the first one where two are as great. */
export function strengthFloor(exposure: Exposure): StrengthRow {
  return strengthTable[exposure].reduce((most, row) => (row.leastPsi > most.leastPsi ? row : most));
}
