import { COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { Company } from '../job.ts';
import { inputName, inputsByName, sumExpression, sumOf } from '../parts.ts';
import { bulgeCuYd, spillCuYd, unevennessCuYd } from './volumes.ts';

export type Allowances = Pick<Company['allowances'], 'baseUnevennessIn' | 'spillRatio' | 'formBulgeIn'>;

/** The named parts of the allowance [yd3]; of the last two only those that this job has. */
export type AllowanceFigures = {
  readonly unevenness: Figure;
  readonly spill: Figure;
  readonly bulge?: Figure;
};

export type AllowedSlab = {
  readonly id: string;
  readonly isProbed: boolean;
  readonly areaSqFt: Figure;
  readonly depthIn: Figure;
  /** [ft] */
  readonly formedStraight: Figure;
  readonly formedCurved: Figure;
};

/** What is ordered on top of the net, part by part. */
export function allowanceFigures(made: {
  readonly net: Figure;
  readonly slabs: readonly AllowedSlab[];
  readonly allowances: Allowances;
}): AllowanceFigures {
  const { net, slabs, allowances } = made;
  return {
    unevenness: unevennessFigure(slabs, allowances),
    spill: spillFigure(net, allowances),
    ...(allowances.formBulgeIn > 0 ? { bulge: bulgeFigure(slabs, allowances) } : {}),
  };
}

/** Over slabs whose base nobody has probed yet: a probed depth has it in. */
function unevennessFigure(slabs: readonly AllowedSlab[], { baseUnevennessIn }: Allowances): Figure {
  const notProbed = slabs.filter(({ isProbed }) => !isProbed);
  const areas = inputsByName(
    byId(notProbed, ({ areaSqFt }) => areaSqFt),
    'SqFt',
  );
  return figure({
    value: unevennessCuYd({ lowIn: baseUnevennessIn, areaSqFt: sumOf(areas) }),
    unit: 'yd3',
    decimals: 2,
    formula: `baseUnevennessIn * (${sumExpression(areas)}) / 324`,
    inputs: {
      baseUnevennessIn: given('company.allowances.base-unevenness', baseUnevennessIn, 'in'),
      ...areas,
    },
    source: COMPANY_FIGURE,
  });
}

function spillFigure(net: Figure, { spillRatio }: Allowances): Figure {
  return figure({
    value: spillCuYd({ netCuYd: num(net), spillRatio }),
    unit: 'yd3',
    decimals: 2,
    formula: 'spillRatio * netCuYd',
    inputs: { spillRatio: given('company.allowances.spill', spillRatio, 'ratio'), netCuYd: net },
    source: COMPANY_FIGURE,
  });
}

function bulgeFigure(slabs: readonly AllowedSlab[], { formBulgeIn }: Allowances): Figure {
  const faces = slabs.map(({ id, formedStraight, formedCurved, depthIn }) => {
    const names = {
      straight: inputName(id, 'StraightFt'),
      curved: inputName(id, 'CurvedFt'),
      depth: inputName(id, 'DepthIn'),
    };
    return {
      valueSqFt: ((num(formedStraight) + num(formedCurved)) * num(depthIn)) / 12,
      term: `(${names.straight} + ${names.curved}) * ${names.depth} / 12`,
      inputs: {
        [names.straight]: formedStraight,
        [names.curved]: formedCurved,
        [names.depth]: depthIn,
      },
    };
  });
  const faceSqFt = faces.reduce((sumSqFt, { valueSqFt }) => sumSqFt + valueSqFt, 0);
  return figure({
    value: bulgeCuYd({ bulgeIn: formBulgeIn, faceSqFt }),
    unit: 'yd3',
    decimals: 2,
    formula: `formBulgeIn * (${faces.map(({ term }) => term).join(' + ') || '0'}) / 324`,
    inputs: Object.assign(
      { formBulgeIn: given('company.allowances.form-bulge', formBulgeIn, 'in') },
      ...faces.map(({ inputs }) => inputs),
    ),
    source: COMPANY_FIGURE,
  });
}

function byId(
  slabs: readonly AllowedSlab[],
  take: (slab: AllowedSlab) => Figure,
): Readonly<Record<string, Figure>> {
  return Object.fromEntries(slabs.map((slab) => [slab.id, take(slab)]));
}
