import { constant, type Figure, figure, given, num } from '../figure.ts';
import type { Company, Curing, Pour, Slab } from '../job.ts';
import { inputKey, sumOfParts } from '../sum-figure.ts';
import type { TopicResult } from '../topic.ts';

/** What a gallon covers on a broomed or washed face, of what it covers on a smooth one. */
export const ROUGH_RATIO = 0.75;
const ROUGH_SOURCE =
  'ACI 308R, of the order of 200 sq ft a gallon on a smooth face and 150 on a rough one (from memory)';
/** Sheets lap each other and hang over the edges. */
export const SHEETING_RATIO = 1.1;
const SHEETING_SOURCE = 'common practice, no source: a tenth more for laps and edges';

export type CuringFigures = {
  /** Face to cure, steps with it [sq ft]. */
  readonly area: Figure;
  readonly 'smooth-area': Figure;
  readonly 'rough-area': Figure;
  /** What a gallon covers on a rough face. */
  readonly 'rough-coverage': Figure;
  /** Curing compound in all its coats [gal]; 0 where it is cured otherwise. */
  readonly compound: Figure;
  /** Covers or sheeting [sq ft]; 0 where it is cured with compound. */
  readonly sheeting: Figure;
  /** 1 where a film is sprayed and something has to stick to the face later. */
  readonly 'film-in-the-way': Figure;
};

/** What the concrete is cured with where nobody said. */
export const USUAL_CURING: Curing = 'curing-compound';

/** How the face is kept wet, and what that takes. A broomed or washed face takes more compound. */
export function calcCuring(input: {
  readonly pour: Pick<Pour, 'curing' | 'laterCoat'>;
  readonly slabs: Readonly<Record<string, Pick<Slab, 'id' | 'finish'>>>;
  readonly areas: Readonly<Record<string, { readonly area: Figure }>>;
  /** Of slabs and steps together [sq ft]. */
  readonly curedSqFt: Figure;
  readonly sundries: Pick<
    Company['suppliers']['sundries'],
    'curingCoverageSqFtPerGal' | 'curingRoughCoverageSqFtPerGal'
  >;
}): TopicResult<CuringFigures, { readonly method: Curing }> {
  const { pour, curedSqFt } = input;
  const method = pour.curing ?? USUAL_CURING;
  const hasFilm = method === 'curing-compound';
  const smoothSqFt = smoothArea(input);
  const roughSqFt = figure({
    value: num(curedSqFt) - num(smoothSqFt),
    unit: 'sq ft',
    decimals: 0,
    formula: 'curedSqFt - smoothSqFt',
    inputs: { curedSqFt, smoothSqFt },
  });
  const roughCoverage = roughCoverageFigure(input.sundries);
  const coverageSqFtPerGal = given(
    'company.suppliers.sundries.curing-coverage',
    input.sundries.curingCoverageSqFtPerGal,
    'sq ft/gal',
  );
  const gal = num(smoothSqFt) / num(coverageSqFtPerGal) + num(roughSqFt) / num(roughCoverage);
  const figures: CuringFigures = {
    area: figure({
      value: num(curedSqFt),
      unit: 'sq ft',
      decimals: 0,
      formula: 'curedSqFt',
      inputs: { curedSqFt },
    }),
    'smooth-area': smoothSqFt,
    'rough-area': roughSqFt,
    'rough-coverage': roughCoverage,
    compound: figure({
      value: hasFilm ? gal : 0,
      unit: 'gal',
      decimals: 1,
      formula: hasFilm ? 'smoothSqFt / coverageSqFtPerGal + roughSqFt / roughCoverageSqFtPerGal' : '0',
      inputs: hasFilm
        ? { smoothSqFt, coverageSqFtPerGal, roughSqFt, roughCoverageSqFtPerGal: roughCoverage }
        : {},
    }),
    sheeting: figure({
      value: hasFilm ? 0 : num(curedSqFt) * SHEETING_RATIO,
      unit: 'sq ft',
      decimals: 0,
      formula: hasFilm ? '0' : 'curedSqFt * lapRatio',
      inputs: hasFilm
        ? {}
        : { curedSqFt, lapRatio: constant('laps and edges', SHEETING_RATIO, 'ratio', SHEETING_SOURCE) },
    }),
    'film-in-the-way': figure({
      value: hasFilm && pour.laterCoat !== null ? 1 : 0,
      unit: 'each',
      decimals: 0,
      formula: {
        method: '1 where a film is sprayed and a sealer, a stain or an overlay comes later, else 0',
      },
      inputs: {},
    }),
  };
  return { figures, data: { method }, problems: [] };
}

function smoothArea({ slabs, areas }: Pick<Parameters<typeof calcCuring>[0], 'slabs' | 'areas'>): Figure {
  const parts = Object.values(slabs).flatMap(({ id, finish }) => {
    const area = finish === 'float' ? areas[id]?.area : undefined;
    return area === undefined ? [] : [{ key: inputKey('area', id, 'SqFt'), input: area }];
  });
  return sumOfParts({ parts, unit: 'sq ft', decimals: 0 });
}

function roughCoverageFigure({
  curingCoverageSqFtPerGal,
  curingRoughCoverageSqFtPerGal: own,
}: Parameters<typeof calcCuring>[0]['sundries']): Figure {
  const at = (key: string) => `company.suppliers.sundries.${key}`;
  if (own !== null) {
    const roughCoverageSqFtPerGal = given(at('curing-coverage-rough'), own, 'sq ft/gal');
    return figure({
      value: own,
      unit: 'sq ft/gal',
      decimals: 0,
      formula: 'roughCoverageSqFtPerGal',
      inputs: { roughCoverageSqFtPerGal },
    });
  }
  return figure({
    value: curingCoverageSqFtPerGal * ROUGH_RATIO,
    unit: 'sq ft/gal',
    decimals: 0,
    formula: 'coverageSqFtPerGal * roughRatio',
    inputs: {
      coverageSqFtPerGal: given(at('curing-coverage'), curingCoverageSqFtPerGal, 'sq ft/gal'),
      roughRatio: constant('rough over smooth', ROUGH_RATIO, 'ratio', ROUGH_SOURCE),
    },
    source: ROUGH_SOURCE,
  });
}
