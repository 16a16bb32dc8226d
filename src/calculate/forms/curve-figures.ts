import { COMMON_PRACTICE, constant, type Figure, figure, given, num } from '../figure.ts';
import type { Strip } from '../job.ts';
import { BEND_SOURCE, leastBendFt } from './bend-table.ts';
import { TAPE_STEP_IN } from './cut-stock.ts';
import { type LaidForm, stripLengthIn } from './lay.ts';
import { SETBACK_SOURCE } from './practice.ts';

/** One curve that a strip is bent along. */
export type CurveFigures = {
  readonly radius: Figure;
  readonly 'arc-length': Figure;
  readonly 'end-laps': Figure;
  /** Along the curve and onto the forms at its ends, without the laps of strips with each other. */
  readonly 'strip-length': Figure;
  readonly strips: Figure;
  /** What the curve is wider than the strip bends; below 0 it breaks. */
  readonly 'radius-short-by': Figure;
};

export function curveFigures(made: {
  readonly laid: LaidForm;
  readonly strip: Strip;
  readonly leastRadiusIn: Figure;
  readonly curvedFt: Figure;
}): CurveFigures {
  const { laid, strip, leastRadiusIn, curvedFt } = made;
  const path = `company.forms.strips.${strip.id}`;
  const lapIn = given(`${path}.lap`, strip.lapIn, 'in');
  const radiusIn = figure({
    value: laid.form.radiusIn ?? 0,
    unit: 'in',
    decimals: 2,
    formula: { method: 'smallest radius along the curve' },
    inputs: { curvedFt },
  });
  const arcIn = figure({
    value: laid.form.lengthIn,
    unit: 'in',
    decimals: 4,
    formula: { method: 'length along the curve, the sum of radius times angle' },
    inputs: { curvedFt },
  });
  const endLapCount = figure({
    value: laid.endLapCount,
    unit: 'each',
    decimals: 0,
    formula: { method: 'ends of the curve at which another form goes on; one where it closes on itself' },
    inputs: {},
  });
  const stripIn = figure({
    value: stripLengthIn({ arcIn: num(arcIn), endLapCount: laid.endLapCount, lapIn: strip.lapIn }),
    unit: 'in',
    decimals: 4,
    formula: 'ceilStep(arcIn + endLapCount * lapIn, tapeStepIn)',
    inputs: {
      arcIn,
      endLapCount,
      lapIn,
      tapeStepIn: constant('what a tape is read to', TAPE_STEP_IN, 'in', COMMON_PRACTICE),
    },
    rounding: 'up',
  });
  return {
    radius: radiusIn,
    'arc-length': arcIn,
    'end-laps': endLapCount,
    'strip-length': stripIn,
    strips: figure({
      value: laid.wholeCount + (laid.pieceIn === null ? 0 : 1),
      unit: 'each',
      decimals: 0,
      formula: 'max(1, ceilStep((stripIn - lapIn) / (stockIn - lapIn), 1))',
      inputs: { stripIn, lapIn, stockIn: given(`${path}.length`, strip.lengthIn, 'in') },
      rounding: 'up',
    }),
    'radius-short-by': figure({
      value: Math.max(0, num(leastRadiusIn) - num(radiusIn)),
      unit: 'in',
      decimals: 2,
      formula: 'max(0, leastRadiusIn - radiusIn)',
      inputs: { radiusIn, leastRadiusIn },
      source: leastRadiusIn.source,
    }),
  };
}

/** The smallest radius a strip is bent to [in]: the company's, or the table's for its thickness. */
export function leastRadius(strip: Strip): Figure {
  const path = `company.forms.strips.${strip.id}`;
  if (strip.leastRadiusIn !== null) {
    return figure({
      value: strip.leastRadiusIn,
      unit: 'in',
      decimals: 2,
      formula: 'leastRadiusIn',
      inputs: { leastRadiusIn: given(`${path}.least-radius`, strip.leastRadiusIn, 'in') },
      source: 'company figure',
    });
  }
  const rowFt = leastBendFt(strip);
  return figure({
    value: rowFt * 12,
    unit: 'in',
    decimals: 2,
    formula: 'tableFt * 12',
    inputs: {
      tableFt: constant(
        `smallest radius bent ${strip.bent === 'across-grain' ? 'across' : 'along'} the grain, by thickness`,
        rowFt,
        'ft',
        BEND_SOURCE,
      ),
      thicknessIn: given(`${path}.thickness`, strip.thicknessIn, 'in'),
    },
    source: BEND_SOURCE,
  });
}

/** How far the last stake of a straight stands back where a strip begins: the thickness of the strip. */
export function setbackFigure(strip: Strip): Figure {
  return figure({
    value: strip.thicknessIn,
    unit: 'in',
    decimals: 3,
    formula: 'stripThicknessIn',
    inputs: {
      stripThicknessIn: given(`company.forms.strips.${strip.id}.thickness`, strip.thicknessIn, 'in'),
    },
    source: SETBACK_SOURCE,
  });
}
