import type { CoreProblem } from '../../problems/index.ts';
import { formatInches } from '../../units/index.ts';
import { type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { Steps } from '../job.ts';
import type { LevelsResult } from '../levels/index.ts';
import { thingNamed } from '../parts.ts';
import { lengthFigure } from './length-figure.ts';
import { RISER_MOST } from './limits.ts';
import { equalRisers } from './split.ts';

export type Risen = {
  /** How many risers. */
  readonly risers: FigureInput;
  /** Height of each where the treads are level [in]. */
  readonly riser: FigureInput;
};

/** A flight to build, its risers as the job says them or as its heights give them. */
export type BuiltSteps = Pick<Steps, 'id' | 'label' | 'widthIn' | 'treadIn' | 'landingIn'> & {
  readonly riserCount: number;
  readonly riserIn: number;
  readonly risen: Risen;
};

type Points = NonNullable<LevelsResult['figures']['points']>;

/** Risers that the job says, as inputs of figures. */
export function tapedRisen(steps: {
  readonly id: string;
  readonly riserCount: number;
  readonly riserIn: number;
}): Risen {
  return {
    risers: given(`build.steps.${steps.id}.risers`, steps.riserCount, 'each'),
    riser: given(`build.steps.${steps.id}.riser`, steps.riserIn, 'in'),
  };
}

export type RiseFigures = { readonly rise: Figure; readonly risers: Figure; readonly riser: Figure };

/** The rise of a flight and its equal risers: of what the job says, or between two heights. */
export function riseFigures(
  steps: Steps,
  points: Points,
): { readonly figures: RiseFigures; readonly risen: Risen; readonly problem: CoreProblem | null } {
  const { id, rise } = steps;
  if (rise.kind === 'taped') {
    const risen = tapedRisen({ id, ...rise });
    const taken = (key: 'risers' | 'riser', unit: 'in' | 'each') =>
      figure({
        value: risen[key].value,
        unit,
        decimals: unit === 'in' ? 3 : 0,
        formula: key,
        inputs: { [key]: risen[key] },
      });
    const total = lengthFigure(rise.riserCount * rise.riserIn, 'risers * riserIn', {
      risers: risen.risers,
      riserIn: risen.riser,
    });
    return {
      figures: { rise: total, risers: taken('risers', 'each'), riser: taken('riser', 'in') },
      risen,
      problem: null,
    };
  }
  const [fromIn, toIn] = [rise.from, rise.to].map((point) => thingNamed(points, point, 'point').height);
  if (fromIn === undefined || toIn === undefined) throw new RangeError(`the steps ${id} lack an end`);
  const totalIn = num(toIn) - num(fromIn);
  if (!(totalIn > 0)) {
    const parts = { from: rise.from, to: rise.to, by: formatInches(Math.abs(totalIn), 16) };
    // The other topics run on one riser, and the problem keeps all of it off paper.
    const one = risersOf(id, lengthFigure(num(RISER_MOST), 'highestIn', { highestIn: RISER_MOST }), null);
    return { ...one, problem: { code: 'steps-do-not-rise', path: `build.steps.${id}.to`, parts } };
  }
  const total = lengthFigure(totalIn, 'toIn - fromIn', { toIn, fromIn });
  return { ...risersOf(id, total, rise.riserCount), problem: null };
}

function risersOf(id: string, rise: Figure, ownCount: number | null) {
  const count = ownCount ?? equalRisers({ totalIn: num(rise), mostIn: num(RISER_MOST) }).count;
  const risers = figure({
    value: count,
    unit: 'each',
    decimals: 0,
    ...(ownCount === null
      ? {
          formula: 'ceilStep(riseIn / highestIn, 1)',
          inputs: { riseIn: rise, highestIn: RISER_MOST },
          rounding: 'up' as const,
        }
      : { formula: 'risers', inputs: { risers: given(`build.steps.${id}.risers`, ownCount, 'each') } }),
  });
  const riser = lengthFigure(num(rise) / count, 'riseIn / risers', { riseIn: rise, risers });
  return { figures: { rise, risers, riser }, risen: { risers, riser } };
}
