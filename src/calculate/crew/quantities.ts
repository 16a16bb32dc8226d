import { type Figure, figure, given, num } from '../figure.ts';
import type { BuiltSteps } from '../flights/index.ts';
import type { BreakOut, Finish, Reinforcement, Site } from '../job.ts';
import { inputKey, inputsOf, type Part, sumOfParts } from '../sum-figure.ts';
import { plainSlabQuantity } from './break-quantity.ts';
import { brokenOthers, brokenParts, dugParts, type HollowVolumes, type StandingPart } from './standing.ts';
import type { CrewTask } from './tasks.ts';

type Areas = Readonly<Record<string, { readonly area: Figure }>>;

/** The figures of other topics that say how much there is to do. */
export type WorkFigures = {
  readonly shapes: { readonly slabs: Areas; readonly existing: Areas };
  readonly tearOut: {
    readonly hollow: HollowVolumes;
    readonly posts: Parameters<typeof brokenOthers>[1]['posts'] &
      Readonly<Record<string, { readonly 'tamped-area': Figure }>>;
    readonly 'old-steps': Parameters<typeof brokenOthers>[1]['old-steps'];
    readonly soil: Readonly<Record<string, { readonly volume: Figure /* cu ft in the ground */ }>>;
    readonly total: { readonly 'saw-cut': Figure };
  };
  readonly breaking: { readonly total: { readonly 'cut-length': Figure } };
  readonly base: { readonly slabs: Areas };
  readonly forms: { readonly slabs: Readonly<Record<string, { readonly length: Figure }>> };
  readonly joints: { readonly total: { readonly sawn: Figure } };
  readonly edges: { readonly total: { readonly holes: Figure } };
  readonly concrete: {
    readonly total: { readonly needed: Figure };
    readonly bags: { readonly 'mixing-hours': Figure };
    /** Where it is known how concrete gets from the truck to its place. */
    readonly placing?: {
      readonly total: { readonly 'clock-hours': Figure; readonly 'labor-hours': Figure };
    };
  };
  /** Trips, driver hours, and the trucks that drive at once; one if not given. */
  readonly haul: { readonly trips: Figure; readonly hours: Figure; readonly trucks?: Figure };
};

export type WorkThings = {
  readonly existing: Site['existing'];
  readonly hollow: Site['hollow'];
  readonly oldSteps: Site['oldSteps'];
  readonly chip: Site['chip'];
  readonly slabs: Readonly<
    Record<string, { readonly reinforcement: Reinforcement; readonly finish: Finish }>
  >;
  readonly steps: Readonly<Record<string, BuiltSteps>>;
};

/** How much there is of every task, in the unit of its pace; 0 where there is none of it. */
export function taskQuantities(work: WorkFigures, things: WorkThings): Record<CrewTask, Figure> {
  const { shapes, tearOut, breaking, base, forms, joints, edges, concrete, haul } = work;
  const goneBy = (way: BreakOut) =>
    Object.fromEntries(Object.entries(things.existing).filter(([, { breakOut }]) => breakOut === way));
  const standing = (way: 'breaker' | 'jackhammer') => brokenParts(things.hollow, tearOut.hollow, way);
  const formed = Object.entries(forms.slabs).map(([id, { length }]) => part('length', id, 'Ft', length));
  const hasSteel = (id: string) => (things.slabs[id]?.reinforcement.kind ?? 'none') !== 'none';
  const formedFt = () => sumOfParts({ parts: formed, unit: 'ft', decimals: 1 });
  return {
    'set-up': once(),
    'saw-cut': sumOfParts({
      parts: [
        { key: 'edgesFt', input: tearOut.total['saw-cut'] },
        { key: 'gridFt', input: breaking.total['cut-length'] },
      ],
      unit: 'ft',
      decimals: 1,
    }),
    'break-out': plainSlabQuantity(shapes.existing, goneBy('breaker'), {
      steelCounts: true,
      standing: [...standing('breaker'), ...brokenOthers(things.oldSteps, tearOut)],
    }),
    'break-out-by-hand': plainSlabQuantity(shapes.existing, goneBy('jackhammer'), {
      steelCounts: true,
      standing: standing('jackhammer'),
    }),
    'saw-and-lift': plainSlabQuantity(shapes.existing, goneBy('saw-and-lift'), {
      steelCounts: false,
      standing: [],
    }),
    chip: chipQuantity(things.chip),
    dig: digQuantity(tearOut.soil, dugParts(things.hollow, tearOut.hollow)),
    haul: taken('tripCount', haul.trips),
    base: baseQuantity(base.slabs, tearOut.posts),
    form: formedFt(),
    drill: taken('holeCount', edges.total.holes),
    reinforce: areaSum(Object.entries(shapes.slabs).filter(([id]) => hasSteel(id))),
    place: taken('neededCuYd', concrete.total.needed),
    finish: finishQuantity(shapes.slabs, things.steps),
    cure: finishQuantity(shapes.slabs, things.steps),
    'saw-joints': taken('lengthFt', joints.total.sawn),
    strip: formedFt(),
    backfill: formedFt(),
    clean: once(),
  };
}

/**
 * Faces of a flight that are finished: treads, landing and risers [sq ft].
 *
 * A = width ((risers - 1) tread + landing + risers riser) / 144, lengths in in.
 * The last riser ends at the landing, so there is one tread less than risers.
 */
export function stepsFacesSqFt(steps: Omit<BuiltSteps, 'id' | 'label' | 'risen'>): number {
  const alongIn = (steps.riserCount - 1) * steps.treadIn + steps.landingIn + steps.riserCount * steps.riserIn;
  return (steps.widthIn * alongIn) / 144;
}

function digQuantity(soil: WorkFigures['tearOut']['soil'], fills: readonly StandingPart[]): Figure {
  const parts = [
    ...Object.entries(soil).map(([id, { volume }]) => part('volume', id, 'CuFt', volume)),
    ...fills.map(({ name, volume }) => part('volume', name, 'CuFt', volume)),
  ];
  return figure({
    value: parts.reduce((sumCuFt, { input }) => sumCuFt + num(input), 0) / 27,
    unit: 'yd3',
    decimals: 2,
    formula: parts.length === 0 ? '0' : `(${parts.map(({ key }) => key).join(' + ')}) / 27`,
    inputs: inputsOf(parts),
  });
}

function finishQuantity(areas: Areas, steps: WorkThings['steps']): Figure {
  const slabParts = Object.entries(areas).map(([id, { area }]) => part('area', id, 'SqFt', area));
  const flights = Object.values(steps).map(flightOf);
  return figure({
    value: [...slabParts.map(({ input }) => num(input)), ...flights.map(({ areaSqFt }) => areaSqFt)].reduce(
      (sumSqFt, areaSqFt) => sumSqFt + areaSqFt,
      0,
    ),
    unit: 'sq ft',
    decimals: 0,
    formula: [...slabParts.map(({ key }) => key), ...flights.map(({ term }) => term)].join(' + ') || '0',
    inputs: inputsOf([...slabParts, ...flights.flatMap(({ parts }) => parts)]),
  });
}

function flightOf(steps: BuiltSteps): { areaSqFt: number; term: string; parts: readonly Part[] } {
  const names = {
    width: inputKey('width', steps.id, 'In'),
    risers: inputKey('risers', steps.id, 'Count'),
    riser: inputKey('riser', steps.id, 'In'),
    tread: inputKey('tread', steps.id, 'In'),
    landing: inputKey('landing', steps.id, 'In'),
  };
  const { width, risers, riser, tread, landing } = names;
  const at = (key: string) => `build.steps.${steps.id}.${key}`;
  return {
    areaSqFt: stepsFacesSqFt(steps),
    term: `${width} * ((${risers} - 1) * ${tread} + ${landing} + ${risers} * ${riser}) / 144`,
    parts: [
      { key: width, input: given(at('width'), steps.widthIn, 'in') },
      { key: risers, input: steps.risen.risers },
      { key: riser, input: steps.risen.riser },
      { key: tread, input: given(at('tread'), steps.treadIn, 'in') },
      { key: landing, input: given(at('landing'), steps.landingIn, 'in') },
    ],
  };
}

function chipQuantity(chip: Site['chip']): Figure {
  const parts = Object.values(chip).map(({ id, areaSqFt }): Part => {
    return {
      key: inputKey('area', id, 'SqFt'),
      input: given(`site.chip.${id}.area`, areaSqFt, 'sq ft'),
    };
  });
  return sumOfParts({ parts, unit: 'sq ft', decimals: 0 });
}

/** The base of the slabs, and every lift in the hole of a post as so much base: common practice, no source. */
function baseQuantity(slabs: Areas, posts: WorkFigures['tearOut']['posts']): Figure {
  const parts = [
    ...Object.entries(slabs).map(([id, { area }]) => part('area', id, 'SqFt', area)),
    ...Object.entries(posts).map(([id, { 'tamped-area': area }]) =>
      part('area', `posts--${id}`, 'SqFt', area),
    ),
  ];
  return sumOfParts({ parts, unit: 'sq ft', decimals: 0 });
}

function areaSum(areas: readonly (readonly [string, { readonly area: Figure }])[]): Figure {
  const parts = areas.map(([id, { area }]) => part('area', id, 'SqFt', area));
  return sumOfParts({ parts, unit: 'sq ft', decimals: 0 });
}

function part(what: string, id: string, unitSuffix: string, input: Figure): Part {
  return { key: inputKey(what, id, unitSuffix), input };
}

function taken(key: string, from: Figure): Figure {
  return figure({
    value: from.value,
    unit: from.unit,
    decimals: from.decimals,
    formula: key,
    inputs: { [key]: from },
  });
}

function once(): Figure {
  return figure({ value: 1, unit: 'each', decimals: 0, formula: '1', inputs: {} });
}
