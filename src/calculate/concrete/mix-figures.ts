import { ceilToStep } from '../../units/index.ts';
import { constant, type Figure, figure, given, num } from '../figure.ts';
import type { Build } from '../job.ts';
import { AIR_SOURCE, AIR_TOLERANCE_RATIO, AIR_TOLERANCE_SOURCE, airTarget } from './air-table.ts';
import { SLUMP_SOURCE, slumpToleranceIn } from './slump.ts';
import { waterCementMost } from './water-cement.ts';

type Mix = Build['mix'];

/** The mix as it is ordered, and between which limits a delivered load is taken. */
export type MixFigures = {
  /** Class ordered [psi]. */
  readonly strength: Figure;
  /** Ordered; 0 where nothing freezes and nobody asks for it. */
  readonly air: Figure;
  /** Published for the exposure and the stone; only where it freezes. */
  readonly 'air-target'?: Figure;
  readonly 'air-least': Figure;
  readonly 'air-most': Figure;
  readonly 'slump-least': Figure;
  readonly 'slump-most': Figure;
  /** Most water to cement; only where one is published for the exposure. */
  readonly 'water-cement-most'?: Figure;
};

/** Strength is sold in classes of so much [psi]: common practice, no source. */
const CLASS_PSI = 500;

export function mixFigures(mix: Mix, strengthFloor: Figure): MixFigures {
  const target = airTargetFigure(mix);
  const air = airFigure(mix, target);
  const water = waterCementMost(mix.exposure);
  return {
    strength: strengthFigure(mix, strengthFloor),
    air,
    ...(target === null ? {} : { 'air-target': target }),
    ...airLimits(air),
    ...slumpLimits(mix.slumpIn),
    ...(water === null
      ? {}
      : {
          'water-cement-most': figure({
            value: water.mostRatio,
            unit: 'ratio',
            decimals: 2,
            formula: 'mostRatio',
            inputs: {
              mostRatio: constant('most water to cement', water.mostRatio, 'ratio', water.source),
            },
            source: water.source,
          }),
        }),
  };
}

/** As the job says, or the least class that the exposure asks for. */
function strengthFigure({ strengthPsi }: Mix, floorPsi: Figure): Figure {
  const shown = { unit: 'psi', decimals: 0 } as const;
  if (strengthPsi !== null) {
    const inputs = { strengthPsi: given('build.mix.strength', strengthPsi, 'psi') };
    return figure({ ...shown, value: strengthPsi, formula: 'strengthPsi', inputs });
  }
  return figure({
    ...shown,
    value: ceilToStep(num(floorPsi), CLASS_PSI),
    formula: 'ceilStep(floorPsi, classPsi)',
    inputs: {
      floorPsi,
      classPsi: constant('strength classes', CLASS_PSI, 'psi', 'common practice, no source'),
    },
    rounding: 'up',
  });
}

function airTargetFigure({ aggregateIn, exposure }: Mix): Figure | null {
  const target = airTarget(aggregateIn, exposure);
  if (target === null) return null;
  return figure({
    value: target,
    unit: 'ratio',
    decimals: 3,
    formula: { method: 'row of the table for the largest stone, the smaller one between two rows' },
    inputs: { aggregateIn: given('build.mix.aggregate', aggregateIn, 'in') },
    source: AIR_SOURCE,
  });
}

function airFigure({ airRatio }: Mix, target: Figure | null): Figure {
  const shown = { unit: 'ratio', decimals: 3 } as const;
  if (airRatio !== null) {
    const inputs = { airRatio: given('build.mix.air', airRatio, 'ratio') };
    return figure({ ...shown, value: airRatio, formula: 'airRatio', inputs });
  }
  if (target === null) return figure({ ...shown, value: 0, formula: '0', inputs: {} });
  return figure({ ...shown, value: num(target), formula: 'targetRatio', inputs: { targetRatio: target } });
}

function airLimits(airRatio: Figure): Pick<MixFigures, 'air-least' | 'air-most'> {
  const toleranceRatio = constant('tolerance of air', AIR_TOLERANCE_RATIO, 'ratio', AIR_TOLERANCE_SOURCE);
  const limit = (value: number, formula: string) =>
    figure({
      value,
      unit: 'ratio',
      decimals: 3,
      formula,
      inputs: { airRatio, toleranceRatio },
      source: AIR_TOLERANCE_SOURCE,
    });
  return {
    'air-least': limit(Math.max(0, num(airRatio) - AIR_TOLERANCE_RATIO), 'max(0, airRatio - toleranceRatio)'),
    'air-most': limit(num(airRatio) + AIR_TOLERANCE_RATIO, 'airRatio + toleranceRatio'),
  };
}

function slumpLimits(slumpIn: number): Pick<MixFigures, 'slump-least' | 'slump-most'> {
  const toleranceIn = slumpToleranceIn(slumpIn);
  const inputs = {
    slumpIn: given('build.mix.slump', slumpIn, 'in'),
    toleranceIn: constant('tolerance of slump', toleranceIn, 'in', SLUMP_SOURCE),
  };
  const limit = (value: number, formula: string) =>
    figure({ value, unit: 'in', decimals: 2, formula, inputs, source: SLUMP_SOURCE });
  return {
    'slump-least': limit(Math.max(0, slumpIn - toleranceIn), 'max(0, slumpIn - toleranceIn)'),
    'slump-most': limit(slumpIn + toleranceIn, 'slumpIn + toleranceIn'),
  };
}
