import type { MixFigures } from '../concrete/index.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import type { Build, Slab } from '../job.ts';

/** What a mix is held against; each only where it is said, and where a limit is published for the exposure. */
export type MixChecks = {
  readonly 'strength-shortfall': Figure;
  readonly air: Figure;
  /** Below and above what is published for the stone, by more than the tolerance of delivered concrete. */
  readonly 'air-short-for-stone'?: Figure;
  readonly 'air-over-for-stone'?: Figure;
  readonly 'water-cement-over'?: Figure;
  readonly 'fly-ash': Figure;
  readonly slag: Figure;
  /** Only of a mix that nothing is added to for its flow. */
  readonly 'slump-by-water'?: Figure;
  /** Slabs with steel in concrete with calcium chloride; only where the mix has that. */
  readonly 'chloride-on-steel'?: Figure;
};

type Mix = Build['mix'];

export function mixChecks(made: {
  readonly mix: Mix;
  readonly figures: MixFigures;
  readonly strengthFloorPsi: Figure;
  readonly slabs: readonly Pick<Slab, 'id' | 'reinforcement'>[];
}): MixChecks {
  const { mix, figures, strengthFloorPsi, slabs } = made;
  return {
    'strength-shortfall': figure({
      value: Math.max(0, num(strengthFloorPsi) - num(figures.strength)),
      unit: 'psi',
      decimals: 0,
      formula: 'max(0, floorPsi - strengthPsi)',
      inputs: { floorPsi: strengthFloorPsi, strengthPsi: figures.strength },
    }),
    air: ratio(num(figures.air), 'airRatio', { airRatio: figures.air }),
    ...airForStone(figures),
    ...waterCement(mix, figures['water-cement-most']),
    'fly-ash': share('fly-ash', mix.flyAshRatio),
    slag: share('slag', mix.slagRatio),
    ...(mix.additives.includes('water-reducer') ? {} : { 'slump-by-water': slump(mix.slumpIn) }),
    ...(mix.additives.includes('calcium-chloride') ? { 'chloride-on-steel': onSteel(slabs) } : {}),
  };
}

function airForStone(figures: MixFigures): Pick<MixChecks, 'air-short-for-stone' | 'air-over-for-stone'> {
  const { 'air-target': target, 'air-least': least, 'air-most': most } = figures;
  if (target === undefined) return {};
  const inputs = { targetRatio: target, mostRatio: most, leastRatio: least };
  return {
    'air-short-for-stone': ratio(Math.max(0, num(target) - num(most)), 'max(0, targetRatio - mostRatio)', {
      targetRatio: inputs.targetRatio,
      mostRatio: inputs.mostRatio,
    }),
    'air-over-for-stone': ratio(Math.max(0, num(least) - num(target)), 'max(0, leastRatio - targetRatio)', {
      targetRatio: inputs.targetRatio,
      leastRatio: inputs.leastRatio,
    }),
  };
}

function waterCement(
  { waterCementRatio }: Mix,
  most: Figure | undefined,
): Pick<MixChecks, 'water-cement-over'> {
  if (waterCementRatio === null || most === undefined) return {};
  return {
    'water-cement-over': ratio(
      Math.max(0, waterCementRatio - num(most)),
      'max(0, waterCementRatio - mostRatio)',
      {
        waterCementRatio: given('build.mix.water-cement', waterCementRatio, 'ratio'),
        mostRatio: most,
      },
    ),
  };
}

function share(key: 'fly-ash' | 'slag', value: number): Figure {
  return ratio(value, 'shareRatio', { shareRatio: given(`build.mix.${key}`, value, 'ratio') });
}

function slump(slumpIn: number): Figure {
  const inputs = { slumpIn: given('build.mix.slump', slumpIn, 'in') };
  return figure({ value: slumpIn, unit: 'in', decimals: 2, formula: 'slumpIn', inputs });
}

function onSteel(slabs: readonly Pick<Slab, 'id' | 'reinforcement'>[]): Figure {
  return figure({
    value: slabs.filter(({ reinforcement }) => reinforcement.kind !== 'none').length,
    unit: 'each',
    decimals: 0,
    formula: { method: 'slabs with bars or mesh' },
    inputs: {},
  });
}

function ratio(value: number, formula: string, inputs: Parameters<typeof figure>[0]['inputs']): Figure {
  return figure({ value, unit: 'ratio', decimals: 4, formula, inputs });
}
