import { COMPANY_FIGURE, type Figure, figure, given } from '../figure.ts';
import type { Green } from '../job.ts';

export type GreenFigures = {
  /** [lb] */
  readonly weight: Figure;
  /** As it lies in the box [yd3]. */
  readonly 'loose-volume': Figure;
  /** In the box [lb/cu ft]. */
  readonly 'loose-unit-weight': Figure;
};

/**
 * Shrubs and the like, by their volume as loaded and a weight that the job gives. No table stands behind
 * it: published weights of brush differ by whether it is chipped, wet or leafed.
 */
export function greenFigures({ id, looseCuYd, looseLbPerCuFt }: Green): GreenFigures {
  const path = `site.green.${id}`;
  const volume = given(`${path}.loose-volume`, looseCuYd, 'yd3');
  const weight = given(`${path}.loose-weight`, looseLbPerCuFt, 'lb/cu ft');
  return {
    weight: figure({
      value: looseCuYd * 27 * looseLbPerCuFt,
      unit: 'lb',
      decimals: 0,
      formula: 'looseCuYd * 27 * looseLbPerCuFt',
      inputs: { looseCuYd: volume, looseLbPerCuFt: weight },
      source: COMPANY_FIGURE,
    }),
    'loose-volume': figure({
      value: looseCuYd,
      unit: 'yd3',
      decimals: 1,
      formula: 'looseCuYd',
      inputs: { looseCuYd: volume },
      source: COMPANY_FIGURE,
    }),
    'loose-unit-weight': figure({
      value: looseLbPerCuFt,
      unit: 'lb/cu ft',
      decimals: 1,
      formula: 'looseLbPerCuFt',
      inputs: { looseLbPerCuFt: weight },
      source: COMPANY_FIGURE,
    }),
  };
}
