import { type Outline, type Point } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { type Figure, figure } from '../figure.ts';
import type { Heights, Job, KeptDry, Slab, Use } from '../job.ts';
import type { LevelsFigures } from '../levels/index.ts';
import type { OutlineResult, StringCorner } from '../outline/index.ts';
import { thingNamed } from '../parts.ts';
import type { TiedPoints } from '../tie-ins/index.ts';
import type { TopicResult } from '../topic.ts';
import { type DigVolumeFigures, digVolumes } from './dig-volume.ts';
import { fallProblems } from './fall-problems.ts';
import type { Outlets } from './house-fall.ts';
import { type JointFigures, jointFigures } from './joint-figures.ts';
import { type OldGround, type OldPart, oldGround, oldPartsUnder } from './old-ground.ts';
import { placeAt } from './place-at.ts';
import { heightsOf, type PlaceFigures } from './place-figures.ts';
import { placesOf } from './places.ts';
import { gradePoint } from './points.ts';
import { type Fall, type SlopeFigures, slopeFigures } from './slope-figures.ts';
import { type StringFigures, type StringLine, stringLines } from './string-figures.ts';
import { type SlabSurface, slabSurfaces } from './surfaces.ts';
import { shareTowards } from './water-towards.ts';

export { placeAt } from './place-at.ts';
export { heightFigure, type PlaceFigures } from './place-figures.ts';
export type { Fall } from './slope-figures.ts';
export type { SlabSurface } from './surfaces.ts';

export type SlabGrades = SlopeFigures &
  Partial<DigVolumeFigures> & {
    /** Its sharp corners by their numbers, `corner-1`, and its middle. */
    readonly places: Readonly<Record<string, PlaceFigures>>;
    /** By the numbers of two corners: `corner-1-to-2`; only where a straight edge runs between them. */
    readonly strings?: Readonly<Record<string, StringFigures>>;
    /** By the lines that are kept dry: the share of its area whose water runs there; only where there are some. */
    readonly towards?: Readonly<Record<string, Figure>>;
    /** The deepest of its places [in]; only where the digging is known. */
    readonly 'deepest-dig'?: Figure;
  };

export type GradesFigures = {
  /** By what a slab is for, so that a rule can be about driveways alone: `grades.driveway.drive.steepest`. */
  readonly [use in Use]?: Readonly<Record<string, SlabGrades>>;
} & {
  /** Of each thing that goes and whose top is known. */
  readonly old?: Readonly<Record<string, { readonly gone: Figure }>>;
  /** By the ids of two slabs that share a joint: `drive-to-walk`. */
  readonly joints?: Readonly<Record<string, JointFigures>>;
};

/** A slab with a surface, as it is drawn and listed. */
export type GradedSlab = SlabSurface & {
  readonly figures: SlabGrades;
  /** Where its places are on the plan, under the names of their figures. */
  readonly places: Readonly<Record<string, Point>>;
  /** What is there now under it; null where that is not known. */
  readonly parts: readonly OldPart[] | null;
  readonly falls: readonly Fall[];
  readonly strings: readonly StringLine[];
};

export type GradesResult = TopicResult<
  GradesFigures,
  {
    readonly slabs: Readonly<Record<string, GradedSlab>>;
    /** What is dug under each slab whose digging is known [cu ft], 0 where nothing is. */
    readonly soil: Readonly<Record<string, Figure>>;
  }
>;

type GradesInput = {
  readonly heights: Heights | null;
  readonly points: LevelsFigures['points'];
  /** What surfaces run through because of what is chosen at a tie-in; nothing where it is left out. */
  readonly tied?: TiedPoints;
  /** Where drains lead water off: the places of each; none where it is left out. */
  readonly outlets?: Outlets;
  /** Lines that no water may run to; none where it is left out. */
  readonly keepDry?: Job['tieIns']['keepDry'];
  readonly slabs: Job['build']['slabs'];
  readonly existing: Job['site']['existing'];
  readonly plans: OutlineResult['data']['plans'];
  /** On the plan. */
  readonly corners: Readonly<Record<string, readonly StringCorner[]>>;
};

/**
 * The new surface of each slab from the heights of the job: how it slopes, where water stands, how high
 * its corners are, and how deep to dig for it. Nothing where the job says nothing of heights.
 *
 * All on the level plan, thicknesses upright: on a slope of 5 % that is 0.1 % off square to the slab.
 */
export function calcGrades(input: GradesInput): GradesResult {
  const { heights } = input;
  if (heights === null) return { figures: {}, data: { slabs: {}, soil: {} }, problems: [] };
  const points = Object.values(heights.points).map((point) => {
    const tied = input.tied?.moved.find((one) => one.point.id === point.id);
    return gradePoint(
      point,
      tied?.height ?? thingNamed(input.points ?? {}, point.id, 'point').height,
      tied?.path,
    );
  });
  const lines = (input.tied?.lines ?? []).map((line) =>
    line.map(({ point, height, path }) => gradePoint(point, height, path)),
  );
  const made = slabSurfaces({
    slabs: Object.values(input.slabs),
    plans: input.plans.slabs,
    corners: input.corners,
    points: [...points.filter(({ point }) => point.kind !== 'existing'), ...lines.flat()],
    lines,
  });
  const old = oldGround({
    existing: input.existing,
    plans: input.plans.existing,
    points: points.filter(({ point }) => point.kind === 'existing'),
  });
  const allThings = Object.keys(input.existing).map((id) => thingNamed(input.plans.existing, id, 'thing'));
  const slabs = made.surfaces.map((one) =>
    gradedSlab(one, thingNamed(input.corners, one.slab.id, 'slab'), {
      old,
      allThings,
      input,
    }),
  );
  const problems: CoreProblem[] = [...made.problems, ...old.problems, ...made.surfaces.flatMap(fallProblems)];
  return {
    figures: figuresOf(slabs, old),
    data: {
      slabs: Object.fromEntries(slabs.map((slab) => [slab.slab.id, slab])),
      soil: Object.fromEntries(
        slabs.flatMap(({ slab, figures }) =>
          figures['dig-volume'] === undefined ? [] : [[slab.id, figures['dig-volume']]],
        ),
      ),
    },
    problems: once(problems),
  };
}

function gradedSlab(
  made: SlabSurface,
  corners: readonly StringCorner[],
  ground: {
    readonly old: OldGround;
    readonly allThings: readonly Outline[];
    readonly input: WaterInput;
  },
): GradedSlab {
  const { outline } = made;
  const places = placesOf(outline, corners);
  const strings = stringLines(made, corners);
  const parts = oldPartsUnder(outline, ground.old, ground.allThings);
  const placeFigures = Object.fromEntries(
    Object.entries(places).map(([name, at]) => [name, placeAt(made, parts, at)]),
  );
  const { slopes, towards } = waterOn(made, ground.input);
  return {
    ...made,
    places,
    parts,
    falls: slopes.falls,
    strings,
    figures: {
      ...slopes.figures,
      ...(towards === null ? {} : { towards }),
      places: placeFigures,
      ...(strings.length === 0
        ? {}
        : {
            strings: Object.fromEntries(
              strings.map(({ from, to, figures }) => [`corner-${from}-to-${to}`, figures]),
            ),
          }),
      ...(parts === null || parts.length === 0
        ? {}
        : { 'deepest-dig': deepest(placeFigures), ...digVolumes(made, parts) }),
    },
  };
}

type KeptDryLines = Job['tieIns']['keepDry'];
const NOTHING_DRY: KeptDryLines = {};

type Water = {
  readonly slopes: ReturnType<typeof slopeFigures>;
  /** Null where no line is kept dry. */
  readonly towards: Readonly<Record<string, Figure>> | null;
};
/** What decides where water goes on a slab, besides the slab itself. */
type WaterInput = Pick<GradesInput, 'heights' | 'points' | 'tied' | 'outlets' | 'keepDry'>;
const waterByOutline = new WeakMap<
  Outline,
  { readonly slab: Slab; readonly input: WaterInput; readonly water: Water }
>();

/**
 * Where water goes on a slab takes longest of all, and nothing of it follows from what lies below: scenarios
 * that leave a slab and the heights as they are find it made.
 */
function waterOn(made: SlabSurface, input: WaterInput): Water {
  const known = waterByOutline.get(made.outline);
  if (known?.slab === made.slab && isSameWater(known.input, input)) return known.water;
  const { outlets = [], keepDry = NOTHING_DRY } = input;
  const lines = Object.values(keepDry);
  const water = {
    slopes: slopeFigures(made, outlets),
    towards: lines.length === 0 ? null : towardsFigures(made, lines, outlets),
  };
  waterByOutline.set(made.outline, { slab: made.slab, input, water });
  return water;
}

function isSameWater(one: WaterInput, other: WaterInput): boolean {
  return (
    one.heights === other.heights &&
    one.points === other.points &&
    one.tied === other.tied &&
    one.outlets === other.outlets &&
    one.keepDry === other.keepDry
  );
}

function towardsFigures(
  { surface, outline, points }: SlabSurface,
  lines: readonly KeptDry[],
  outlets: Outlets,
): Readonly<Record<string, Figure>> {
  return Object.fromEntries(
    lines.map(({ id, along }) => [
      id,
      figure({
        value: shareTowards(along, surface, outline, outlets),
        unit: 'ratio',
        decimals: 2,
        formula: {
          method:
            'share of the places of a grid from which water, followed down the surface and 10 ft past its edge, meets the line',
        },
        inputs: heightsOf(points),
      }),
    ]),
  );
}

function deepest(places: Readonly<Record<string, PlaceFigures>>): Figure {
  const digs = Object.fromEntries(
    Object.entries(places).flatMap(([name, { dig }]) =>
      dig === undefined ? [] : [[`${name.replace('-', '_')}In`, dig]],
    ),
  );
  return figure({
    value: Math.max(...Object.values(digs).map(({ value }) => Number(value))),
    unit: 'in',
    decimals: 2,
    formula: `max(${Object.keys(digs).join(', ')})`,
    inputs: digs,
  });
}

function figuresOf(slabs: readonly GradedSlab[], old: OldGround): GradesFigures {
  const uses = [...new Set(slabs.map(({ slab }) => slab.use))];
  const byUse = uses.map((use) => [
    use,
    Object.fromEntries(
      slabs.filter(({ slab }) => slab.use === use).map(({ slab, figures }) => [slab.id, figures]),
    ),
  ]);
  const joints = slabs.flatMap((one, index) =>
    slabs.slice(index + 1).flatMap((other) => {
      const figures = jointFigures(one, other);
      return figures === null ? [] : [[`${one.slab.id}-to-${other.slab.id}`, figures] as const];
    }),
  );
  return {
    ...Object.fromEntries(byUse),
    ...(old.things.length === 0
      ? {}
      : { old: Object.fromEntries(old.things.map(({ id, gone }) => [id, { gone }])) }),
    ...(joints.length === 0 ? {} : { joints: Object.fromEntries(joints) }),
  };
}

/** Two points that disagree on a joint disagree on both its slabs. */
function once(problems: readonly CoreProblem[]): readonly CoreProblem[] {
  const keys = problems.map(({ path, parts }) => JSON.stringify([path, parts]));
  return problems.filter((_, index) => keys.indexOf(keys[index] ?? '') === index);
}
