/** What waits for the concrete, in the order of the days. */
export const WAITS = ['strip', 'walk', 'cure', 'drive', 'heavy', 'seal'] as const;
export type Wait = (typeof WAITS)[number];

/** The least days after the pour, whatever an estimate of the strength says, and the strength it waits for. */
export type WaitRow = {
  readonly floorDays: number;
  readonly floorSource: string;
  /** An own strength [psi], a share of the mix's, or null where only time counts. */
  readonly strength: { readonly psi: number } | { readonly ratio: number } | null;
  readonly strengthSource: string;
};

const FREEZE_SAFE =
  'PCA EB001, chapter 14: 500 psi, at which concrete stands a frost (seen); that edges and feet do it no harm then: common practice, no source';
const SEVENTY = 'ACI 308R and NRMCA practice, 70 % of the specified strength (from memory)';

export const WAIT_ROWS: Readonly<Record<Wait, WaitRow>> = {
  strip: {
    floorDays: 1,
    floorSource: 'common practice, no source: edge forms off after 12 to 24 h above 50 °F',
    strength: { psi: 500 },
    strengthSource: FREEZE_SAFE,
  },
  walk: {
    floorDays: 2,
    floorSource: 'common practice, no source: 24 h when warm to 48 h when cold',
    strength: { psi: 500 },
    strengthSource: FREEZE_SAFE,
  },
  cure: {
    floorDays: 7,
    floorSource: 'UFGS 03301A, moist curing of Type I, 7 days (seen)',
    strength: { ratio: 0.7 },
    strengthSource: SEVENTY,
  },
  drive: {
    floorDays: 7,
    floorSource: 'NRMCA and PCA practice for passenger cars, about 70 °F (from memory)',
    strength: { ratio: 0.7 },
    strengthSource: SEVENTY,
  },
  heavy: {
    floorDays: 28,
    floorSource: 'common practice, no source: moving vans, refuse trucks and the like after 28 days',
    strength: { ratio: 1 },
    strengthSource: 'common practice, no source: the whole of the specified strength',
  },
  seal: {
    floorDays: 28,
    floorSource: 'NRMCA and PCA practice, a sealer after about 28 days and on a dry slab (from memory)',
    strength: null,
    strengthSource: '',
  },
};
