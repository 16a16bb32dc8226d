import type { CoreProblem } from '../../problems/index.ts';
import { formatFeetInches, formatInches } from '../../units/index.ts';
import { type Figure, figure, given, num } from '../figure.ts';
import type { Steps } from '../job.ts';
import { lengthFigure } from './length-figure.ts';
import type { RiseFigures } from './rise.ts';
import { formedRiserIn, strideIn } from './split.ts';

/** Tops of the forms of one tread, or of the landing, above the surface at the foot [in]. */
export type TopFigures = { readonly front: Figure; readonly back?: Figure };

export type StepsFigures = RiseFigures & {
  readonly width: Figure;
  readonly tread: Figure;
  /** Nothing where the flight has no landing of its own. */
  readonly landing?: Figure;
  /** Two risers and a tread [in]. */
  readonly stride: Figure;
  readonly 'tread-slope': Figure;
  /** How much a tread rises from front to back, and the height to form each riser [in]. */
  readonly 'tread-rise': Figure;
  readonly 'form-riser': Figure;
  /** The highest riser from edge to edge, and how far it is above the lowest [in]. */
  readonly highest: Figure;
  readonly difference: Figure;
  /** Along the ground, with the landing [in]. */
  readonly run: Figure;
  /** What is left of the room, where the job says how much there is [in]. */
  readonly 'room-left'?: Figure;
  /** tread-1 is the lowest; the landing, or what the flight ends on, comes last. */
  readonly tops: Readonly<Record<string, TopFigures>>;
};

/**
 * A flight to build: what is held against the rules, and the heights to form it at.
 *
 * Where treads rise from front to back, n - 1 of them take their part of the rise, so that the forms of the
 * risers are lower; from edge to edge every riser but the lowest is then a form and the rise of a tread.
 */
export function stepsFigures(steps: Steps, made: RiseFigures): StepsFigures {
  const { id, widthIn, treadIn, landingIn, treadSlope, roomIn } = steps;
  const { rise, risers, riser } = made;
  const at = (key: string) => `build.steps.${id}.${key}`;
  const tread = given(at('tread'), treadIn, 'in');
  const landing = given(at('landing'), landingIn, 'in');
  const slope = given(at('tread-fall'), treadSlope, 'ratio');
  const count = num(risers);

  const treadRise = lengthFigure(treadIn * treadSlope, 'treadIn * treadSlope', {
    treadIn: tread,
    treadSlope: slope,
  });
  const formRiser = lengthFigure(
    formedRiserIn({ totalIn: num(rise), count, treadRiseIn: num(treadRise) }),
    '(riseIn - (risers - 1) * treadRiseIn) / risers',
    { riseIn: rise, risers, treadRiseIn: treadRise },
  );
  const inputs = { formIn: formRiser, treadRiseIn: treadRise };
  const [highest, difference] =
    count > 1
      ? [
          lengthFigure(num(formRiser) + num(treadRise), 'formIn + treadRiseIn', inputs),
          lengthFigure(num(treadRise), 'treadRiseIn', { treadRiseIn: treadRise }),
        ]
      : [lengthFigure(num(formRiser), 'formIn', { formIn: formRiser }), lengthFigure(0, '0', {})];
  const run = lengthFigure((count - 1) * treadIn + landingIn, '(risers - 1) * treadIn + landingIn', {
    risers,
    treadIn: tread,
    landingIn: landing,
  });
  return {
    rise,
    risers,
    riser,
    width: lengthFigure(widthIn, 'widthIn', { widthIn: given(at('width'), widthIn, 'in') }),
    tread: lengthFigure(treadIn, 'treadIn', { treadIn: tread }),
    ...(landingIn === 0 ? {} : { landing: lengthFigure(landingIn, 'landingIn', { landingIn: landing }) }),
    stride: lengthFigure(
      strideIn({ riserIn: num(riser), treadIn }),
      '2 * riserIn + treadIn',
      { riserIn: riser, treadIn: tread },
      'Masonry and Concrete (2004), fig. 8-5 (seen)',
    ),
    'tread-slope': figure({
      value: treadSlope,
      unit: 'ratio',
      decimals: 4,
      formula: 'treadSlope',
      inputs: { treadSlope: slope },
    }),
    'tread-rise': treadRise,
    'form-riser': formRiser,
    highest,
    difference,
    run,
    ...(roomIn === null
      ? {}
      : {
          'room-left': lengthFigure(Math.max(0, roomIn - num(run)), 'max(0, roomIn - runIn)', {
            roomIn: given(at('room'), roomIn, 'in'),
            runIn: run,
          }),
        }),
    tops: topFigures(count, { formRiser, treadRise, hasLanding: landingIn > 0 }),
  };
}

function topFigures(
  count: number,
  made: { readonly formRiser: Figure; readonly treadRise: Figure; readonly hasLanding: boolean },
): Readonly<Record<string, TopFigures>> {
  const { formRiser, treadRise } = made;
  const inputs = { formIn: formRiser, treadRiseIn: treadRise };
  const tops = Array.from({ length: count }, (_, index): readonly [string, TopFigures] => {
    const front = lengthFigure(
      (index + 1) * num(formRiser) + index * num(treadRise),
      `${index + 1} * formIn + ${index} * treadRiseIn`,
      inputs,
    );
    if (index === count - 1) return [made.hasLanding ? 'landing' : 'top', { front }];
    const back = lengthFigure(num(front) + num(treadRise), 'frontIn + treadRiseIn', {
      frontIn: front,
      treadRiseIn: treadRise,
    });
    return [`tread-${index + 1}`, { front, back }];
  });
  return Object.fromEntries(tops);
}

/** Where the treads alone would rise as high as the whole flight; null where they do not. */
export function treadProblem(
  { id, treadIn, treadSlope }: Steps,
  { rise, risers }: RiseFigures,
): CoreProblem | null {
  const treadsIn = (num(risers) - 1) * treadIn * treadSlope;
  if (treadsIn < num(rise)) return null;
  const parts = { treads: formatInches(treadsIn, 16), rise: formatInches(num(rise), 16) };
  return { code: 'treads-rise-too-much', path: `build.steps.${id}.tread-fall`, parts };
}

/** The noise of a chain of doubles [in]. */
const NOISE_IN = 1e-9;

/** Where a flight has neither a tread nor a landing; null where there is something to pour. */
export function bodyProblem({ id, landingIn }: Steps, { risers }: RiseFigures): CoreProblem | null {
  if (num(risers) > 1 || landingIn > 0) return null;
  return { code: 'steps-of-nothing', path: `build.steps.${id}.landing`, parts: {} };
}

/** Where the treads and the landing are longer than the room for them; null where they fit. */
export function roomProblem({ id, roomIn }: Steps, { run }: StepsFigures): CoreProblem | null {
  if (roomIn === null || num(run) <= roomIn + NOISE_IN) return null;
  const parts = { run: formatFeetInches(num(run), 16), room: formatFeetInches(roomIn, 16) };
  return { code: 'steps-without-room', path: `build.steps.${id}.room`, parts };
}
