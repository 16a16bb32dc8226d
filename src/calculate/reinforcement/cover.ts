import type { CoreProblem } from '../../problems/index.ts';
import { formatInches } from '../../units/index.ts';
import { COMMON_PRACTICE, constant, type Figure, type FigureInput, figure, given } from '../figure.ts';
import type { Reinforcement } from '../job.ts';
import { barTable } from './bar-table.ts';
import { meshTable, wireDiameterIn } from './mesh-table.ts';

type Steel = Exclude<Reinforcement, { kind: 'none' }>;

/** From the top and the edges of the slab to the steel, where the job does not say. */
const usualCover = {
  lengthIn: 2,
  source: `${COMMON_PRACTICE}; 1 1/2 to 2 in from the top in Concrete Construction, Preparing the site, and ACI 318-19 Table 20.5.1.3.1 has 1 1/2 in for #5 and smaller (both seen)`,
};

export function coverIn(steel: Steel): number {
  return steel.coverIn ?? usualCover.lengthIn;
}

export function coverInput(slab: string, steel: Steel): FigureInput {
  return steel.coverIn === null
    ? constant('cover of the steel, top and sides', usualCover.lengthIn, 'in', usualCover.source)
    : given(`build.slabs.${slab}.reinforcement.cover`, steel.coverIn, 'in');
}

/** Both layers of bars or wires, one on the other [in]. */
export function matThicknessIn(steel: Steel): number {
  return steel.kind === 'bars'
    ? 2 * barTable[steel.material][steel.size].diameterIn
    : 2 * wireDiameterIn(meshTable[steel.style].wireNumber);
}

export function coverFigure(slab: string, steel: Steel): Figure {
  return figure({
    value: coverIn(steel),
    unit: 'in',
    decimals: 2,
    formula: 'coverIn',
    inputs: { coverIn: coverInput(slab, steel) },
    source: usualCover.source,
  });
}

/** A chair is as high as what is left below the mat. */
export function chairHeightFigure(slab: string, steel: Steel, thicknessIn: number): Figure {
  const cover = coverInput(slab, steel);
  const mat = matThicknessIn(steel);
  return figure({
    value: thicknessIn - coverIn(steel) - mat,
    unit: 'in',
    decimals: 2,
    formula: 'thicknessIn - coverIn - matIn',
    inputs: {
      thicknessIn: given(`build.slabs.${slab}.thickness`, thicknessIn, 'in'),
      coverIn: cover,
      matIn: constant('both layers of the mat', mat, 'in', 'definition: twice the diameter'),
    },
  });
}

/** A problem where cover and mat together are thicker than the slab. */
export function coverProblem(slab: string, steel: Steel, thicknessIn: number): CoreProblem | null {
  if (coverIn(steel) + matThicknessIn(steel) <= thicknessIn) return null;
  const path = `build.slabs.${slab}.reinforcement`;
  return {
    code: 'cover-too-thick',
    path: steel.coverIn === null ? path : `${path}.cover`,
    parts: {
      cover: formatInches(coverIn(steel), 16),
      mat: formatInches(matThicknessIn(steel), 16),
      thickness: formatInches(thicknessIn, 16),
    },
  };
}
