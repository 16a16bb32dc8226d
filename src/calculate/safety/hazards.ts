import type { Phase } from '../crew/index.ts';
import { PHASES } from '../crew/index.ts';

export type HazardCode =
  | 'silica'
  | 'backing-vehicles'
  | 'wet-cement'
  | 'underground-lines'
  | 'lifting'
  | 'noise'
  | 'trailer-load'
  | 'rebar-ends'
  | 'saw-kickback'
  | 'standing-masonry'
  | 'heat'
  | 'traffic-public'
  | 'carbon-monoxide';

/** What of a job decides which hazards it has: the phases in which each thing happens. */
export type HazardFacts = {
  readonly phases: readonly Phase[];
  readonly breaksOut: boolean;
  readonly hasLoader: boolean;
  readonly digs: boolean;
  readonly hauls: boolean;
  readonly pours: boolean;
  readonly mixesBags: boolean;
  readonly hasBars: boolean;
  readonly takesMasonryDown: boolean;
  readonly isByThePublicWay: boolean;
  readonly silicaPhases: readonly Phase[];
  readonly hasSilicaOffTable: boolean;
  readonly cutOffSawPhases: readonly Phase[];
  readonly loudPhases: readonly Phase[];
  readonly enginePhases: readonly Phase[];
  /** 1 to 12, of the first day. */
  readonly month: number;
};

export type Hazard = {
  readonly code: HazardCode;
  /** severity x presence; the higher, the further up the sheet. */
  readonly rank: number;
  readonly phases: readonly Phase[];
};

type HazardRow = {
  readonly code: HazardCode;
  /** 5 kills at once, 4 kills or maims, 3 lasting harm, 2 days off work. */
  readonly severity: 2 | 3 | 4 | 5;
  /** 3 nearly all day or unguarded, 2 part of the day, 1 possible. */
  readonly presence: (facts: HazardFacts) => 1 | 2 | 3;
  readonly phases: (facts: HazardFacts) => readonly Phase[];
};

const TEAR_OUT: readonly Phase[] = ['tear-out'];
const BASE: readonly Phase[] = ['base-and-forms'];
const POUR: readonly Phase[] = ['pour'];
const HOT_MONTHS = { first: 5, last: 9 };

function when(isSo: boolean, phases: readonly Phase[]): readonly Phase[] {
  return isSo ? phases : [];
}

/**
 * Which hazards there are, and how they weigh. Severity and presence are judgement: common
 * practice, no source. Heat stands for the warm half of the year of the northern states; the
 * weather of the day is the foreman's to look at.
 */
export const HAZARD_ROWS: readonly HazardRow[] = [
  {
    code: 'underground-lines',
    severity: 5,
    presence: ({ digs }) => (digs ? 3 : 2),
    phases: ({ breaksOut, digs, phases }) => [
      ...when(breaksOut || digs, TEAR_OUT),
      ...when(phases.includes('base-and-forms'), BASE),
    ],
  },
  {
    code: 'backing-vehicles',
    severity: 5,
    presence: ({ hauls, pours, mixesBags }) => (hauls && pours && !mixesBags ? 3 : 2),
    phases: ({ hauls, pours, mixesBags }) => [...when(hauls, TEAR_OUT), ...when(pours && !mixesBags, POUR)],
  },
  {
    code: 'silica',
    severity: 4,
    presence: ({ hasSilicaOffTable }) => (hasSilicaOffTable ? 3 : 2),
    phases: ({ silicaPhases }) => silicaPhases,
  },
  { code: 'trailer-load', severity: 5, presence: () => 2, phases: ({ hauls }) => when(hauls, TEAR_OUT) },
  { code: 'saw-kickback', severity: 4, presence: () => 2, phases: ({ cutOffSawPhases }) => cutOffSawPhases },
  {
    code: 'standing-masonry',
    severity: 5,
    presence: () => 2,
    phases: ({ takesMasonryDown }) => when(takesMasonryDown, TEAR_OUT),
  },
  { code: 'wet-cement', severity: 3, presence: () => 3, phases: ({ pours }) => when(pours, POUR) },
  {
    code: 'lifting',
    severity: 3,
    presence: ({ hasLoader }) => (hasLoader ? 2 : 3),
    phases: ({ breaksOut, mixesBags }) => [...when(breaksOut, TEAR_OUT), ...when(mixesBags, POUR)],
  },
  {
    code: 'heat',
    severity: 4,
    presence: () => 2,
    phases: ({ month, phases }) => when(month >= HOT_MONTHS.first && month <= HOT_MONTHS.last, phases),
  },
  { code: 'noise', severity: 3, presence: () => 2, phases: ({ loudPhases }) => loudPhases },
  {
    code: 'rebar-ends',
    severity: 4,
    presence: () => 1,
    phases: ({ hasBars }) => when(hasBars, [...BASE, ...POUR]),
  },
  {
    code: 'traffic-public',
    severity: 4,
    presence: () => 1,
    phases: ({ isByThePublicWay, phases }) => when(isByThePublicWay, phases),
  },
  { code: 'carbon-monoxide', severity: 5, presence: () => 1, phases: ({ enginePhases }) => enginePhases },
];

/** The hazards of a job, the worst first; of equals, the one that stands higher in the table. */
export function rankHazards(facts: HazardFacts): readonly Hazard[] {
  return HAZARD_ROWS.map((row) => {
    const phases = row.phases(facts);
    return {
      code: row.code,
      rank: row.severity * row.presence(facts),
      phases: PHASES.filter((phase) => phases.includes(phase)),
    };
  })
    .filter(({ phases }) => phases.length > 0)
    .toSorted((one, other) => other.rank - one.rank);
}
