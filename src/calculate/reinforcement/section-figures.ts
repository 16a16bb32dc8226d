import { constant, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { Reinforcement } from '../job.ts';
import type { BarWay } from './bar-runs.ts';
import { BAR_SOURCE, barTable } from './bar-table.ts';
import { meshTable } from './mesh-table.ts';

type Steel = Exclude<Reinforcement, { kind: 'none' }>;

/** How much steel a slab has across a foot of its width, as part of the section and against the drag of the ground. */
export type SectionFigures = {
  readonly area: Figure;
  readonly ratio: Figure;
  /** By the drag of the ground, steel only. */
  readonly 'drag-area'?: Figure;
};

const DRAG_SOURCE =
  'drag of the ground, A = F L w / (2 f): Concrete Construction, Author explains crack-control formula; CRSI, slab-on-grade design examples (both seen)';
const FRICTION = {
  ratio: 1.5,
  source: 'Concrete Construction, Author explains crack-control formula: 1.5 usual (seen)',
};
const WEIGHT = {
  lbPerCuFt: 150,
  source: 'CRSI, slab-on-grade design examples: 100 lb/sq ft for 8 in (seen)',
};
/** Two thirds of the yield strength. */
const STRESS = {
  bars: { psi: 40_000, source: 'CRSI, slab-on-grade design examples: two thirds of 60,000 psi (seen)' },
  mesh: {
    psi: 65_000 * (2 / 3),
    source: 'CRSI, slab-on-grade design examples: two thirds of 65,000 psi for plain wire (seen)',
  },
} as const;

/**
 * Steel of a mat in a foot of width: one bar or wire each spacing.
 *
 * @param made.areaSqIn  Of one bar or wire [sq in], above 0.
 * @param made.spacingIn [in], above 0.
 * @returns [sq in per ft]
 * @throws {RangeError} If a value is not above 0.
 *
 * As = A 12 / s. Source: definition; a wire W1.4 has 0.014 sq in.
 */
export function steelAreaSqInPerFt(made: { areaSqIn: number; spacingIn: number }): number {
  const { areaSqIn, spacingIn } = made;
  for (const [name, value] of Object.entries({ areaSqIn, spacingIn })) {
    if (!(value > 0 && value < Infinity)) throw new RangeError(`${name} must be above 0, got ${value}`);
  }
  return (areaSqIn * 12) / spacingIn;
}

/**
 * Steel that pulls half a slab over the ground: what holds a crack shut between free joints. It keeps no slab
 * from cracking, and means nothing where steel runs through working joints.
 *
 * @param made.frictionRatio F [ratio], above 0.
 * @param made.lengthFt      L, between free joints the way the steel runs [ft], above 0.
 * @param made.weightLbPerSqFt w, of the slab, above 0.
 * @param made.stressPsi     f, allowed in the steel [psi], above 0.
 * @returns A = F L w / (2 f) [sq in per ft of width].
 * @throws {RangeError} If a value is not above 0.
 */
export function dragAreaSqInPerFt(made: {
  frictionRatio: number;
  lengthFt: number;
  weightLbPerSqFt: number;
  stressPsi: number;
}): number {
  for (const [name, value] of Object.entries(made)) {
    if (!(value > 0 && value < Infinity)) throw new RangeError(`${name} must be above 0, got ${value}`);
  }
  return (made.frictionRatio * made.lengthFt * made.weightLbPerSqFt) / (2 * made.stressPsi);
}

/** @param slab.lengthIn Side of the slab the way the steel runs. */
export function sectionFigures(
  steel: Steel,
  way: BarWay,
  slab: { readonly id: string; readonly thicknessIn: number; readonly lengthIn: Figure },
): SectionFigures {
  const one = oneBarOrWire(slab.id, steel, way);
  const thicknessIn = given(`build.slabs.${slab.id}.thickness`, slab.thicknessIn, 'in');
  const area = figure({
    value: steelAreaSqInPerFt({ areaSqIn: num(one.areaSqIn), spacingIn: num(one.spacingIn) }),
    unit: 'sq in/ft',
    decimals: 3,
    formula: 'areaSqIn * 12 / spacingIn',
    inputs: one,
  });
  const ratio = figure({
    value: num(area) / (12 * slab.thicknessIn),
    unit: 'ratio',
    decimals: 4,
    formula: 'areaSqInPerFt / (12 * thicknessIn)',
    inputs: { areaSqInPerFt: area, thicknessIn },
  });
  if (steel.kind === 'bars' && steel.material !== 'steel') return { area, ratio };
  const stress = STRESS[steel.kind];
  return {
    area,
    ratio,
    'drag-area': figure({
      value: dragAreaSqInPerFt({
        frictionRatio: FRICTION.ratio,
        lengthFt: num(slab.lengthIn) / 12,
        weightLbPerSqFt: (WEIGHT.lbPerCuFt * slab.thicknessIn) / 12,
        stressPsi: stress.psi,
      }),
      unit: 'sq in/ft',
      decimals: 3,
      formula: 'frictionRatio * (lengthIn / 12) * (weightLbPerCuFt * thicknessIn / 12) / (2 * stressPsi)',
      inputs: {
        frictionRatio: constant('friction of slab on ground', FRICTION.ratio, 'ratio', FRICTION.source),
        lengthIn: slab.lengthIn,
        weightLbPerCuFt: constant('unit weight of concrete', WEIGHT.lbPerCuFt, 'lb/cu ft', WEIGHT.source),
        thicknessIn,
        stressPsi: constant('stress allowed in the steel', stress.psi, 'psi', stress.source),
      },
      source: DRAG_SOURCE,
    }),
  };
}

function oneBarOrWire(
  slab: string,
  steel: Steel,
  way: BarWay,
): { areaSqIn: FigureInput; spacingIn: FigureInput } {
  if (steel.kind === 'bars') {
    const { areaSqIn } = barTable[steel.material][steel.size];
    return {
      areaSqIn: constant(`area of a #${steel.size} bar`, areaSqIn, 'sq in', BAR_SOURCE[steel.material]),
      spacingIn: spacingInput(slab, steel, way),
    };
  }
  const { wireNumber, wireSpacingIn, source } = meshTable[steel.style];
  return {
    areaSqIn: constant(`area of a wire of ${steel.style}`, wireNumber / 100, 'sq in', source),
    spacingIn: constant(`wire spacing of ${steel.style}`, wireSpacingIn, 'in', source),
  };
}

/** Bar to bar, of those that run one way. */
export function spacingInput(
  slab: string,
  steel: Extract<Steel, { kind: 'bars' }>,
  way: BarWay,
): FigureInput {
  const path = `build.slabs.${slab}.reinforcement`;
  return way === 'across' && steel.spacingAcrossIn !== null
    ? given(`${path}.spacing-across`, steel.spacingAcrossIn, 'in')
    : given(`${path}.spacing`, steel.spacingIn, 'in');
}
