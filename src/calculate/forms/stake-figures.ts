import { ceilCount } from '../../units/index.ts';
import { COMPANY_FIGURE, constant, type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { Board, Company, Strip } from '../job.ts';
import { stakeCount } from './counts.ts';
import type { LaidForm } from './lay.ts';
import { BENT_BOARD_STAKES, STRIP_STAKES } from './practice.ts';

export type StakeFigures = {
  readonly 'stakes-straight': Figure;
  readonly 'stakes-curved': Figure;
  readonly stakes: Figure;
};

/** What holds the forms of a slab up and lets them go; each only where the company says how much. */
export type FormSundries = { readonly kickers?: Figure; readonly screws?: Figure; readonly release?: Figure };

/** Stakes behind the laid forms of a slab, straights and curves apart. */
export function stakeFigures(
  laid: readonly LaidForm[],
  made: { straightFt: Figure; curvedFt: Figure; board: Board; strip: Strip | null; forms: Company['forms'] },
): StakeFigures {
  const { straightFt, curvedFt, board, strip, forms } = made;
  const curveSpacingIn = curvedSpacing(forms.stakeSpacingCurvedIn, strip !== null);
  const stakes = (
    kind: LaidForm['form']['kind'],
    spacingIn: FigureInput,
    inputs: Record<string, FigureInput>,
  ) =>
    figure({
      value: laid
        .filter(({ form }) => form.kind === kind)
        .reduce((sum, one) => sum + stakeCount({ ...one, spacingIn: num(spacingIn) }), 0),
      unit: 'each',
      decimals: 0,
      formula: { method: 'at each end and each meeting of two boards or strips, and between at the spacing' },
      inputs: { spacingIn, ...inputs },
      source: 'constant' in spacingIn ? spacingIn.source : COMPANY_FIGURE,
      rounding: 'up',
    });
  const straightCount = stakes('straight', given('company.forms.stake-spacing', forms.stakeSpacingIn, 'in'), {
    straightFt,
    boardLengthIn: given(`company.forms.boards.${board.id}.length`, board.lengthIn, 'in'),
  });
  const curvedCount = stakes('curve', curveSpacingIn, { curvedFt });
  return {
    'stakes-straight': straightCount,
    'stakes-curved': curvedCount,
    stakes: figure({
      value: num(straightCount) + num(curvedCount),
      unit: 'each',
      decimals: 0,
      formula: 'straightCount + curvedCount',
      inputs: { straightCount, curvedCount },
    }),
  };
}

/** Stake to stake on the curves of a slab: the company's, or what is published for how they are formed. */
export function curvedSpacing(ownIn: number | null, isStripped: boolean): FigureInput {
  if (ownIn !== null) return given('company.forms.stake-spacing-curved', ownIn, 'in');
  const { spacingIn, source } = isStripped ? STRIP_STAKES : BENT_BOARD_STAKES;
  return constant('stake spacing on curves', spacingIn, 'in', source);
}

/** Braces, screws and form release of a slab, each where the company says how much. */
export function sundries(made: {
  length: Figure;
  stakes: Figure;
  board: Board;
  forms: Company['forms'];
}): FormSundries {
  const { length, stakes, board, forms } = made;
  const { kickerSpacingIn, screwsPerStakeCount, releaseCoverageSqFtPerGal } = forms;
  const common = { source: COMPANY_FIGURE };
  return {
    ...(kickerSpacingIn === null
      ? {}
      : {
          kickers: figure({
            ...common,
            value: ceilCount((num(length) * 12) / kickerSpacingIn),
            unit: 'each',
            decimals: 0,
            formula: 'ceilStep(lengthFt * 12 / kickerSpacingIn, 1)',
            inputs: {
              lengthFt: length,
              kickerSpacingIn: given('company.forms.kicker-spacing', kickerSpacingIn, 'in'),
            },
            rounding: 'up',
          }),
        }),
    ...(screwsPerStakeCount === null
      ? {}
      : {
          screws: figure({
            ...common,
            value: num(stakes) * screwsPerStakeCount,
            unit: 'each',
            decimals: 0,
            formula: 'stakeCount * screwsPerStakeCount',
            inputs: {
              stakeCount: stakes,
              screwsPerStakeCount: given('company.forms.screws-per-stake', screwsPerStakeCount, 'each'),
            },
          }),
        }),
    ...(releaseCoverageSqFtPerGal === null
      ? {}
      : {
          release: figure({
            ...common,
            value: (num(length) * board.heightIn) / 12 / releaseCoverageSqFtPerGal,
            unit: 'gal',
            decimals: 3,
            formula: 'lengthFt * boardHeightIn / 12 / coverageSqFtPerGal',
            inputs: {
              lengthFt: length,
              boardHeightIn: given(`company.forms.boards.${board.id}.height`, board.heightIn, 'in'),
              coverageSqFtPerGal: given(
                'company.forms.release-coverage',
                releaseCoverageSqFtPerGal,
                'sq ft/gal',
              ),
            },
          }),
        }),
  };
}
