import type { Line } from '../../geometry/index.ts';
import { exposedTimes } from '../exposed.ts';
import { type Constant, constant, type Figure, figure, given, num } from '../figure.ts';
import type { Finish } from '../job.ts';
import type { Panel } from '../joints/index.ts';
import { thingNamed } from '../parts.ts';
import type { Rule } from '../rule.ts';
import { inputKey, inputsOf, type Part, sumOfParts } from '../sum-figure.ts';
import { divided } from './divide.ts';
import { type Strip, stripsOf } from './strips.ts';

export { divided } from './divide.ts';
export { type Strip, stripsOf } from './strips.ts';

export type PartFigures = {
  /** Its part of each slab, by the id of the slab. */
  readonly slabs: Readonly<Record<string, Figure>>;
  readonly area: Figure;
  /** The area with what is exposed aggregate counted for more; only where some of it is. */
  readonly counted?: Figure;
  /** What its part of each slab takes, without what is added to an order. */
  readonly concrete: Figure;
};

export type PoursFigures = {
  /** What this crew finishes in one pour, of a broom finish. */
  readonly 'most-area': Figure;
  readonly count: Figure;
  /** By `pour-1` and so on, in the order of the slabs. */
  readonly parts: Readonly<Record<string, PartFigures>>;
  /** By how much the largest is more than that, where no joint divides it. */
  readonly 'over-most': Figure;
};

/** What is placed at once. */
export type PourPart = {
  readonly slabs: readonly { readonly id: string; readonly panels: readonly number[] }[];
  /** The joint of its last slab where it ends, by its place; null where it ends with the slab. */
  readonly endsAt: { readonly id: string; readonly joint: number } | null;
};

export type PoursResult = {
  readonly figures: PoursFigures;
  readonly data: { readonly parts: readonly PourPart[] };
};

type Atom = Strip & { readonly id: string };

/** A finisher's area in one pour, where no rule of the job says another [sq ft]. */
const AREA_A_FINISHER_SQ_FT = 400;
const AREA_SOURCE = 'common practice, no source; 250 to 400 sq ft a finisher and pour with a broom finish';

/**
 * Where to divide what is more than this crew finishes in one pour: at joints of the plan that part a slab in two,
 * or between slabs, never elsewhere. In as few pours as there can be in the order of the slabs, and those even.
 *
 * What is placed up to such a joint ends at a bulkhead. How a stop elsewhere ends: a construction joint is needed
 * where placing stops for more than 30 min (C. Beall, Masonry and Concrete, seen).
 *
 * @returns Null where all of it is one pour, or nothing is poured.
 */
export function calcPours(input: {
  readonly joints: {
    readonly lines: Readonly<Record<string, readonly Line[]>>;
    readonly panels: Readonly<Record<string, readonly Panel[]>>;
  };
  readonly areas: Readonly<Record<string, { readonly area: Figure }>>;
  readonly net: Readonly<Record<string, { readonly net: Figure }>>;
  readonly slabs: Readonly<Record<string, { readonly finish: Finish }>>;
  readonly finishPeople: number;
  readonly rules: readonly Pick<Rule, 'code' | 'limit' | 'source'>[];
  /** How fast all of it can be finished on the day of the pour; null without a forecast. */
  readonly inTime: {
    readonly timeToFinishHr: Figure;
    readonly crewCount: number;
    readonly finishLaborHr: Figure;
  } | null;
}): PoursResult | null {
  const ids = Object.keys(input.joints.panels);
  const counted = ids.map((id) => countedPart(id, thingNamed(input.areas, id, 'slab').area, input));
  const mostArea = mostAreaOf(input, counted);
  if (countedSqFt(counted) <= num(mostArea)) return null;

  const atoms: readonly Atom[] = ids.flatMap((id) =>
    stripsOf(thingNamed(input.joints.lines, id, 'slab'), thingNamed(input.joints.panels, id, 'slab')).map(
      (strip) => ({ ...strip, id }),
    ),
  );
  const ends = divided(
    atoms.map(({ id, areaSqFt }) => areaSqFt * timesOf(thingNamed(input.slabs, id, 'slab').finish)),
    num(mostArea),
  );
  const groups = ends.map((end, index) => atoms.slice(ends[index - 1] ?? 0, end));
  const parts = Object.fromEntries(
    groups.map((group, index) => [`pour-${index + 1}`, partFigures(group, input)]),
  );
  return {
    figures: {
      'most-area': mostArea,
      count: figure({
        value: groups.length,
        unit: 'each',
        decimals: 0,
        formula: {
          method:
            'the fewest rows of neighbouring strips between joints that part a slab, none of more area than one pour',
        },
        inputs: { mostAreaSqFt: mostArea },
      }),
      parts,
      'over-most': overMost(parts, mostArea),
    },
    data: { parts: groups.map(partOf) },
  };
}

function mostAreaOf(
  { finishPeople, rules, inTime }: Pick<Parameters<typeof calcPours>[0], 'finishPeople' | 'rules' | 'inTime'>,
  slabs: readonly CountedPart[],
): Figure {
  const peopleCount = given('company.production.finish.people', finishPeople, 'each');
  const rule = rules.find(({ code }) => code === 'area-large-for-finishers');
  const each = rule?.limit ?? AREA_A_FINISHER_SQ_FT;
  const byPeople = {
    peopleCount,
    eachSqFt: constant(
      'area that one finisher finishes in a pour',
      each,
      'sq ft',
      rule?.source ?? AREA_SOURCE,
    ),
  };
  const made = (value: number, formula: string, inputs: Figure['inputs']) =>
    figure({ value, unit: 'sq ft', decimals: 0, formula, inputs });
  if (inTime === null) return made(finishPeople * each, 'peopleCount * eachSqFt', byPeople);

  const { timeToFinishHr, finishLaborHr } = inTime;
  return made(
    Math.min(
      finishPeople * each,
      (countedSqFt(slabs) * inTime.crewCount * num(timeToFinishHr)) / num(finishLaborHr),
    ),
    `min(peopleCount * eachSqFt, (${countedExpression(slabs)}) * crewCount * timeToFinishHr / finishLaborHr)`,
    {
      ...byPeople,
      ...countedInputs(slabs),
      crewCount: given('plan.crew', inTime.crewCount, 'each'),
      timeToFinishHr,
      finishLaborHr,
    },
  );
}

function partFigures(
  group: readonly Atom[],
  { areas, net, slabs }: Pick<Parameters<typeof calcPours>[0], 'areas' | 'net' | 'slabs'>,
): PartFigures {
  const bySlab = slabsOf(group).map(({ id, areaSqFt }) => {
    const whole = { key: inputKey('area', id, 'SqFt'), input: thingNamed(areas, id, 'slab').area };
    const part = figure({
      value: areaSqFt,
      unit: 'sq ft',
      decimals: 0,
      formula: { method: 'the areas of its panels here' },
      inputs: inputsOf([whole]),
    });
    return {
      id,
      part: { key: inputKey('part', id, 'SqFt'), input: part },
      whole,
      net: { key: inputKey('net', id, 'CuYd'), input: thingNamed(net, id, 'slab').net },
    };
  });
  const parts = bySlab.map(({ part }) => part);
  const counted = bySlab.map(({ id, part }) => countedPart(id, part.input, { slabs }));
  return {
    slabs: Object.fromEntries(bySlab.map(({ id, part }) => [id, part.input])),
    area: sumOfParts({ parts, unit: 'sq ft', decimals: 0 }),
    ...(counted.every(({ times }) => times === null)
      ? {}
      : {
          counted: figure({
            value: countedSqFt(counted),
            unit: 'sq ft',
            decimals: 0,
            formula: countedExpression(counted),
            inputs: countedInputs(counted),
          }),
        }),
    concrete: figure({
      value: bySlab.reduce(
        (sum, { part, whole, net: of }) => sum + (num(of.input) * num(part.input)) / num(whole.input),
        0,
      ),
      unit: 'yd3',
      decimals: 1,
      formula: bySlab.map(({ part, whole, net: of }) => `${of.key} * ${part.key} / ${whole.key}`).join(' + '),
      inputs: inputsOf(bySlab.flatMap(({ part, whole, net: of }) => [of, part, whole])),
    }),
  };
}

function slabsOf(
  group: readonly Atom[],
): readonly { readonly id: string; readonly areaSqFt: number; readonly panels: readonly number[] }[] {
  return [...new Set(group.map(({ id }) => id))].map((id) => {
    const own = group.filter((atom) => atom.id === id);
    return {
      id,
      areaSqFt: own.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0),
      panels: own.flatMap(({ panels }) => panels).toSorted((one, other) => one - other),
    };
  });
}

function partOf(group: readonly Atom[]): PourPart {
  const last = group.at(-1);
  return {
    slabs: slabsOf(group).map(({ id, panels }) => ({ id, panels })),
    endsAt: last === undefined || last.endsAt === null ? null : { id: last.id, joint: last.endsAt },
  };
}

function overMost(parts: Readonly<Record<string, PartFigures>>, mostAreaSqFt: Figure): Figure {
  const areas = Object.entries(parts).map(([id, { area, counted }]) => ({
    key: inputKey('area', id, 'SqFt'),
    input: counted ?? area,
  }));
  return figure({
    value: Math.max(0, Math.max(...areas.map(({ input }) => num(input))) - num(mostAreaSqFt)),
    unit: 'sq ft',
    decimals: 0,
    formula: `max(0, max(${areas.map(({ key }) => key).join(', ')}) - mostAreaSqFt)`,
    inputs: { ...inputsOf(areas), mostAreaSqFt },
  });
}

/** Area of a slab, and what a square foot of it counts as where that is not 1. */
type CountedPart = Part & { readonly times: Constant | null };

function countedPart(
  id: string,
  areaSqFt: Figure,
  { slabs }: Pick<Parameters<typeof calcPours>[0], 'slabs'>,
): CountedPart {
  const times = exposedTimes(thingNamed(slabs, id, 'slab').finish);
  return { key: inputKey('area', id, 'SqFt'), input: areaSqFt, times };
}

function timesOf(finish: Finish): number {
  const times = exposedTimes(finish);
  return times === null ? 1 : num(times);
}

function countedSqFt(parts: readonly CountedPart[]): number {
  return parts.reduce((sum, { input, times }) => sum + num(input) * (times === null ? 1 : num(times)), 0);
}

function countedExpression(parts: readonly CountedPart[]): string {
  return parts.map(({ key, times }) => (times === null ? key : `${key} * exposedTimes`)).join(' + ');
}

function countedInputs(parts: readonly CountedPart[]): Figure['inputs'] {
  const times = parts.find((one) => one.times !== null)?.times ?? null;
  return { ...inputsOf(parts), ...(times === null ? {} : { exposedTimes: times }) };
}
