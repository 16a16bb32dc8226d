import * as fc from 'fast-check';
import { type Figure, figure, num } from '../../src/calculate/figure.ts';
import type { Existing, Job, Slab, TapedShape } from '../../src/calculate/job.ts';
import { calcOutline } from '../../src/calculate/outline/index.ts';
import type { PublicText } from '../../src/calculate/text.ts';
import { runCount } from '../support/property-runs.ts';

/** A driveway of 40 by 18 ft, 4 in thick, with everything a slab has and one thing changed. */
/** No garage, no public walk, no drain. */
export const NO_TIE_INS: Job['tieIns'] = { publicWalks: {}, drains: {}, garages: {}, keepDry: {}, bends: [] };

export function aSlab(changed: Partial<Slab> = {}): Slab {
  return {
    id: 'drive',
    label: 'Driveway' as PublicText,
    use: 'driveway',
    shape: rectangle(480, 216),
    thicknessIn: 4,
    thickenedEdges: [],
    formHeightIn: null,
    probedIn: null,
    baseIn: 4,
    geotextile: false,
    publicWay: false,
    digIn: 0,
    fall: { slope: 1 / 48, towards: 'street' as PublicText, directionDeg: null },
    reinforcement: { kind: 'none' },
    edgeJoints: [],
    finish: 'broom',
    jointSpacingIn: null,
    joints: { cut: 'wet-sawn', lines: {}, propose: 'rest', sealed: false },
    board: 'two-by-four',
    curveForm: null,
    shortBoard: 'drop-base',
    note: null,
    crewNote: null,
    ...changed,
  };
}

type Bars = Extract<Slab['reinforcement'], { kind: 'bars' }>;
type Mesh = Extract<Slab['reinforcement'], { kind: 'mesh' }>;

/** #4 bars of steel at 18 in both ways, with one thing changed. */
export function someBars(changed: Partial<Bars> = {}): Bars {
  return {
    kind: 'bars',
    material: 'steel',
    size: 4,
    spacingIn: 18,
    spacingAcrossIn: null,
    coverIn: null,
    corners: 'crossed',
    ...changed,
  };
}

/** Sheets of 6x6-W2.9, with one thing changed. */
export function someMesh(changed: Partial<Mesh> = {}): Mesh {
  return { kind: 'mesh', style: '6x6-w2.9', from: 'sheets', coverIn: null, ...changed };
}

/** An old slab as big as {@link aSlab}, of plain concrete 4 in thick, with one thing changed. */
export function anOldSlab(changed: Partial<Existing> = {}): Existing {
  return {
    id: 'old',
    label: 'Old slab' as PublicText,
    shape: rectangle(480, 216),
    material: 'concrete',
    thicknessIn: 4,
    thicknessIs: 'measured',
    thickestIn: null,
    coating: null,
    soilStuckIn: 0,
    steel: 'none',
    breakOut: 'breaker',
    unitWeightLbPerCuFt: null,
    ...changed,
  };
}

export function rectangle(lengthIn: number, widthIn: number, changed: Partial<TapedShape> = {}): TapedShape {
  return {
    ...asTaped({ kind: 'rectangle', lengthIn, widthIn }),
    ...changed,
  };
}

/** A base and nothing else, beside the shape before it. */
export function asTaped(base: TapedShape['base'], changed: Partial<TapedShape> = {}): TapedShape {
  return {
    base,
    rounded: [],
    bent: [],
    edges: [],
    cutOuts: {},
    added: {},
    taped: null,
    at: null,
    turnedRad: 0,
    ...changed,
  };
}

/** What a company allows a tape. */
export const TAPE_LIMITS = { closingErrorIn: 2, joiningGapIn: 1 } as const;

/** An L: the box without its upper right part. */
export function lShape(sides: {
  lengthIn: number;
  widthIn: number;
  legIn: number;
  armIn: number;
}): TapedShape {
  const { lengthIn, widthIn, legIn, armIn } = sides;
  const points = [
    { xIn: 0, yIn: 0 },
    { xIn: lengthIn, yIn: 0 },
    { xIn: lengthIn, yIn: armIn },
    { xIn: legIn, yIn: armIn },
    { xIn: legIn, yIn: widthIn },
    { xIn: 0, yIn: widthIn },
  ];
  return asTaped({ kind: 'corners', points });
}

export function byId<T extends { readonly id: string }>(...things: readonly T[]): Record<string, T> {
  return Object.fromEntries(things.map((thing) => [thing.id, thing]));
}

/** The slabs with their shapes and outlines, as the outline topic makes them. */
export function outlined(...slabs: readonly Slab[]) {
  const result = calcOutline({ slabs: byId(...slabs), existing: {}, limits: TAPE_LIMITS });
  if (result.problems.length > 0) throw new Error(JSON.stringify(result.problems));
  const { slabs: outlines, lies } = result.data;
  return { slabs: byId(...slabs), shapes: result.figures, outlines, lies };
}

/** The figure of a record that a test knows to be there. */
export function at<T>(record: Readonly<Record<string, T>>, id: string): T {
  const found = record[id];
  if (found === undefined) throw new Error(`${id} is missing; there are ${Object.keys(record).join(', ')}`);
  return found;
}

export function values<K extends string>(figures: Readonly<{ [key in K]?: Figure }>): Record<K, number> {
  const entries = Object.entries<Figure | undefined>(figures).flatMap(([key, made]) =>
    made === undefined ? [] : [[key, num(made)]],
  );
  return Object.fromEntries(entries) as Record<K, number>;
}

export function dollarsAnHour(amount: number): Figure {
  return figure({ value: amount, unit: '$/h', decimals: 2, formula: { method: 'test' }, inputs: {} });
}

/** Sixteenths of an inch, as they are taped. */
export const tapedIn = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((sixteenths) => sixteenths / 16);

/** Rectangles, rectangles with rounded corners, and L shapes. */
export const anyShape: fc.Arbitrary<TapedShape> = fc.oneof(
  fc.tuple(tapedIn(30, 900), tapedIn(30, 400)).map(([lengthIn, widthIn]) => rectangle(lengthIn, widthIn)),
  fc.tuple(tapedIn(60, 900), tapedIn(60, 400), tapedIn(1, 29)).map(([lengthIn, widthIn, setbackIn]) =>
    rectangle(lengthIn, widthIn, {
      rounded: [1, 2, 3, 4].map((corner) => ({ corner, by: { kind: 'setback' as const, setbackIn } })),
    }),
  ),
  fc
    .tuple(tapedIn(100, 900), tapedIn(100, 400), fc.double({ min: 0.2, max: 0.8, noNaN: true }))
    .map(([lengthIn, widthIn, share]) =>
      lShape({ lengthIn, widthIn, legIn: lengthIn * share, armIn: widthIn * share }),
    ),
);

/** So that a failure can be run again; fast-check prints it with the counterexample. */
export const propertyRuns = { numRuns: runCount(200), seed: 20260504 } as const;
