import { type Figure, num } from '../figure.ts';
import type { DumpPlace, Stream } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import { inputKey, sumOfUsdParts } from '../sum-figure.ts';
import type { Cargo, ExistingFigures, TearOutResult } from '../tear-out/index.ts';
import type { HaulBaseFigures } from './base-figures.ts';
import type { ChalkSteps } from './chalk-steps.ts';
import type { HaulRates } from './cost-figures.ts';
import type { HaulLoad } from './load-table.ts';
import type { MachineFigures } from './machine-figures.ts';
import type { Plan } from './plan/index.ts';
import { type ReChalk, type ReChalkFigures, reChalk } from './re-chalk.ts';
import type { HauledThing } from './split.ts';
import { type HaulStreamFigures, haulStreamFigures, limitedBy } from './stream-figures.ts';
import type { UsableTrailer } from './usable-trailer.ts';
import { type WayFigures, wayFigures } from './way-figures.ts';
import type { SwapFigures, WorkingFigures } from './working-figures.ts';

/** The loads of a plan, with what of them is asked of other topics. */
export type Laden = {
  readonly loads: readonly HaulLoad[];
  readonly tearOut: TearOutResult['figures'];
  readonly cargo: readonly Cargo[];
  readonly shapes: Pick<OutlineResult['figures'], 'existing'>;
  readonly chalk: ChalkSteps;
  /** By id. */
  readonly trailers: Readonly<Record<string, UsableTrailer>>;
  readonly places: Readonly<Record<string, DumpPlace>>;
};

/** What a stream is made of, in the order in which it is loaded. */
export function thingsOf(cargo: readonly Cargo[], stream: Stream): readonly HauledThing[] {
  return cargo
    .filter((one) => one.stream === stream)
    .map((one) => ({
      existingId: one.existingId,
      weightLb: num(one.weight),
      looseLbPerCuFt: num(one['loose-unit-weight']),
      weightLbPerSqFt: one['weight-per-sq-ft'] === null ? null : num(one['weight-per-sq-ft']),
    }));
}

/** Figures of every stream that has a load, and which of payload and box is full first on each trailer. */
export function streamsOf(laden: Laden, streams: readonly Stream[]) {
  const hauled = streams.flatMap((stream) => {
    const loads = laden.loads.filter((load) => load.streams.includes(stream));
    if (loads.length === 0) return [];
    const trailers = trailersOf(loads, laden);
    const torn = thingNamed(laden.tearOut.streams, stream, 'stream');
    const existing = slabsOf(laden, (one) => one.stream === stream);
    return [{ stream, torn, existing, trailers, loads, chalk: laden.chalk }];
  });
  const figures: { [stream in Stream]?: HaulStreamFigures } = {};
  const limits: { [stream in Stream]?: Readonly<Record<string, 'weight' | 'box'>> } = {};
  for (const one of hauled) {
    figures[one.stream] = haulStreamFigures(one);
    limits[one.stream] = Object.fromEntries(
      Object.entries(one.trailers).map(([id, trailer]) => [id, limitedBy(one.torn, trailer.figures)]),
    );
  }
  return { figures, limitedBy: limits };
}

/** What to chalk of everything that is loaded by the square foot, for each trailer that it rides on. */
export function reChalked(laden: Laden) {
  const tables = Object.entries(slabsOf(laden, () => true)).map(([id, torn]) => {
    const loads = laden.loads.filter(({ pieces }) => pieces.some(({ existingId }) => existingId === id));
    const { area } = thingNamed(laden.shapes.existing, id, 'outline');
    const byTrailer = Object.entries(trailersOf(loads, laden)).map(([trailer, { figures }]) => ({
      trailer,
      table: reChalk({ torn, area, trailer: figures, steps: laden.chalk }),
    }));
    return [id, byTrailer] as const;
  });
  return {
    figures: byThing(tables, (made) =>
      Object.fromEntries(made.map(({ trailer, table }) => [trailer, table.figures])),
    ),
    rows: byThing(tables, (made) => made.map(({ trailer, table: { rows } }) => ({ trailer, rows }))),
  };
}

type Tables = readonly { readonly trailer: string; readonly table: ReChalk }[];

function byThing<T>(
  tables: readonly (readonly [string, Tables])[],
  of: (made: Tables) => T,
): Readonly<Record<string, T>> {
  return Object.fromEntries(tables.flatMap(([id, made]) => (made.length === 0 ? [] : [[id, of(made)]])));
}

export type ReChalkTree = Readonly<
  Record<string, Readonly<Record<string, Readonly<Record<string, ReChalkFigures>>>>>
>;

/** Trips, hours and cost of every trailer to every place that it goes to. */
export function waysOf(
  laden: Laden,
  how: { readonly rates: HaulRates; readonly working: WorkingFigures | null },
): Readonly<Record<string, WayFigures>> {
  const ids = [...new Set(laden.loads.map(wayId))];
  return Object.fromEntries(
    ids.map((id) => {
      const loads = laden.loads.filter((load) => wayId(load) === id);
      const place = thingNamed(laden.places, loads[0]?.place ?? '', 'place');
      return [id, wayFigures(loads, place, how)];
    }),
  );
}

function wayId({ trailer, place }: Pick<HaulLoad, 'trailer' | 'place'>): string {
  return `${trailer}-to-${place}`;
}

function trailersOf(
  loads: readonly HaulLoad[],
  { trailers }: Laden,
): Readonly<Record<string, UsableTrailer>> {
  return Object.fromEntries(
    Object.entries(trailers).filter(([id]) => loads.some(({ trailer }) => trailer === id)),
  );
}

function slabsOf(
  { cargo, tearOut }: Laden,
  isAsked: (one: Cargo) => boolean,
): Readonly<Record<string, ExistingFigures>> {
  return Object.fromEntries(
    cargo.flatMap((one) =>
      one.existingId === null || one['weight-per-sq-ft'] === null || !isAsked(one)
        ? []
        : [[one.existingId, thingNamed(tearOut.existing, one.existingId, 'existing thing')]],
    ),
  );
}

/** Debris and base together, with what a driver waits who swaps trailers, and machines that ride. */
export function totalsOf(
  ways: Readonly<Record<string, WayFigures>>,
  base: HaulBaseFigures,
  besides: {
    readonly swapped: SwapFigures | null;
    readonly rides: Readonly<Record<string, MachineFigures>>;
  },
) {
  const { swapped, rides } = besides;
  const more = {
    trips: {},
    hours: { ...(swapped === null ? {} : { waiting: swapped.hours }), ...pick(rides, 'hours') },
    miles: pick(rides, 'miles'),
  };
  const sum = (
    name: 'trips' | 'hours' | 'miles',
    own: Figure,
    shown: Omit<Parameters<typeof sumFigure>[0], 'parts'>,
  ) =>
    sumFigure({
      parts: { ...pick(ways, name), base: own, ...more[name] },
      ...shown,
    });
  const ofWays = (name: 'fees' | 'cost') =>
    Object.entries(ways).map(([id, figures]) => ({ key: inputKey(name, id, 'Usd'), input: figures[name] }));
  return {
    trips: sum('trips', base['own-trips'], { unitSuffix: 'Trips', unit: 'each', decimals: 0 }),
    hours: sum('hours', base.hours, { unitSuffix: 'Hr', unit: 'h', decimals: 1 }),
    miles: sum('miles', base.miles, { unitSuffix: 'Mi', unit: 'mi', decimals: 0 }),
    fees: sumOfUsdParts(ofWays('fees')),
    cost: sumOfUsdParts([
      ...ofWays('cost'),
      { key: inputKey('cost', 'base', 'Usd'), input: base.cost },
      ...(swapped === null ? [] : [{ key: inputKey('cost', 'waiting', 'Usd'), input: swapped.cost }]),
      ...Object.entries(rides).map(([id, { cost }]) => ({
        key: inputKey('cost', id, 'Usd'),
        input: cost,
      })),
    ]),
  };
}

/** Where base is fetched and on what. */
export function baseFrom(
  loads: readonly HaulLoad[],
  plan: Plan,
): readonly { readonly trailer: string; readonly place: string }[] {
  const fetched = [...loads.filter(({ returns }) => returns === 'base'), ...plan.baseTrips].map(
    ({ trailer, place }) => ({ trailer, place }),
  );
  return [...new Map(fetched.map((one) => [`${one.trailer} ${one.place}`, one])).values()];
}
