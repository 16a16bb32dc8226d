/*
 * Contraction joint spacing and depth.
 *
 * Multipliers of the thickness: Portland Cement Association, reported in an engineers' forum on
 * joint spacing (seen); its table of whole feet in C. Beall, Masonry and Concrete, fig. 2-15
 * (seen), follows from them but for 5 in with large aggregate, where 12.5 ft is printed as 13.
 */

const PCA =
  'Portland Cement Association, joint spacing multipliers; table in C. Beall, Masonry and Concrete, fig. 2-15 (seen)';

export type SpacingMultiplier = { readonly ratio: number; readonly mix: string; readonly source: string };

const lowSlump: SpacingMultiplier = { ratio: 36, mix: 'slump below 4 in', source: PCA };
const largeAggregate: SpacingMultiplier = { ratio: 30, mix: 'aggregate of 3/4 in and larger', source: PCA };
const smallAggregate: SpacingMultiplier = { ratio: 24, mix: 'aggregate below 3/4 in', source: PCA };

/** Below this slump the published multiplier no longer asks for the aggregate [in]. */
const LOW_SLUMP_IN = 4;
const LARGE_AGGREGATE_IN = 0.75;

/**
 * How many thicknesses apart joints may be, by the mix: the wetter and the finer, the more it shrinks.
 *
 * @throws {RangeError} If slump or aggregate is not above 0.
 */
export function spacingMultiplier(mix: { slumpIn: number; aggregateIn: number }): SpacingMultiplier {
  for (const [name, sizeIn] of Object.entries({ slumpIn: mix.slumpIn, aggregateIn: mix.aggregateIn })) {
    if (!(sizeIn > 0 && sizeIn < Infinity)) throw new RangeError(`${name} must be above 0, got ${sizeIn}`);
  }
  if (mix.slumpIn < LOW_SLUMP_IN) return lowSlump;
  return mix.aggregateIn >= LARGE_AGGREGATE_IN ? largeAggregate : smallAggregate;
}

export const spacingCap = {
  lengthIn: 180,
  source: 'NRMCA CIP 6, Joints in Concrete Slabs on Grade: 15 ft (memory)',
};

/** Walks are cut across every 5 ft, or as far apart as they are wide where that is more. */
export const walkSpacing = {
  lengthIn: 60,
  source:
    'UFGS 03300N, 3.8.3 Walks: contraction joints every 5 ft (seen); not below the width, for square panels',
};

/** Of the length of a panel to its width. */
export const panelRatioLimit = {
  ratio: 1.5,
  source: 'NRMCA CIP 6 and ACI 302.1R: at most 1.5 (seen as repeated on a planning page)',
};

/** Panels are not made narrower than this only to make them squarer. */
export const panelSideLimit = {
  lengthIn: 18,
  source: 'ACI 330R and ACPA practice: no panel side below 1 1/2 to 2 ft (memory)',
};

export const jointDepth = {
  shareOfThickness: 1 / 4,
  leastIn: 1,
  stepIn: 1 / 8,
  source:
    'State ready-mix association, Joints: at least 25 % of the thickness (seen); NRMCA CIP 6: at least 1 in (memory)',
};

/** Of the length of a panel to its width, where it can be had. */
export const panelRatioWanted = {
  ratio: 1.25,
  source: 'PCA and ACI 330R: 1.25 (memory)',
};

/** Corners of panels are not made sharper. */
export const panelAngleLimit = {
  deg: 60,
  source: 'ACI 330R and ACPA practice: no angle of a panel below 60 degrees (memory)',
};

/** A light dry saw cuts before the slab has shrunk: less deep, in slabs up to a thickness. */
export const earlyEntry = {
  depthIn: 1,
  mostThicknessIn: 9,
  source: 'ACI 302.1R: early-entry saw, at least 1 in deep in slabs up to 9 in (memory)',
};
