import { COMMON_PRACTICE, COMPANY_FIGURE, type Figure, figure, given, num } from '../figure.ts';
import type { Company, Slab } from '../job.ts';
import type { OutlineResult } from '../outline/index.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { boardCount, formShortByIn, stakeCount } from './counts.ts';

export { boardCount, formShortByIn, stakeCount } from './counts.ts';

type FormedSlab = Pick<Slab, 'id' | 'thicknessIn' | 'board'>;

export type SlabForms = {
  readonly length: Figure;
  readonly 'short-by': Figure;
  readonly boards: Figure;
  readonly stakes: Figure;
};

export type NeededAndShort = { readonly needed: Figure; readonly shortage: Figure };

export type FormsResult = TopicResult<
  {
    readonly slabs: Readonly<Record<string, SlabForms>>;
    readonly boards: Readonly<Record<string, NeededAndShort>>;
    readonly stakes: NeededAndShort;
  },
  Readonly<Record<string, never>>
>;

/**
 * Boards and stakes for the formed edges of every slab, and what of them the company lacks.
 * Edges along the house, along concrete that stays and along a joint take no board.
 */
export function calcForms(input: {
  readonly slabs: Readonly<Record<string, FormedSlab>>;
  readonly shapes: Pick<OutlineResult['figures'], 'slabs'>;
  readonly forms: Company['forms'];
}): FormsResult {
  const { slabs, shapes, forms } = input;
  const formed = Object.fromEntries(
    Object.values(slabs).map((slab) => [slab.id, slabForms(slab, shapes.slabs, forms)]),
  );
  const stakesNeeded = sumFigure({
    parts: pick(formed, 'stakes'),
    unitSuffix: 'Count',
    unit: 'each',
    decimals: 0,
  });
  return {
    figures: {
      slabs: formed,
      boards: boardsNeeded(slabs, formed, forms.boards),
      stakes: {
        needed: stakesNeeded,
        shortage: shortage(stakesNeeded, 'company.forms.stakes-on-hand', forms.stakesOnHandCount),
      },
    },
    data: {},
    problems: [],
  };
}

function slabForms(
  slab: FormedSlab,
  shapes: OutlineResult['figures']['slabs'],
  forms: Company['forms'],
): SlabForms {
  const shape = thingNamed(shapes, slab.id, 'shape');
  const board = thingNamed(forms.boards, slab.board, 'form board');
  const boardPath = `company.forms.boards.${board.id}`;

  const straightFt = shape['formed-straight'];
  const curvedFt = shape['formed-curved'];
  const length = figure({
    value: num(straightFt) + num(curvedFt),
    unit: 'ft',
    decimals: 2,
    formula: 'straightFt + curvedFt',
    inputs: { straightFt, curvedFt },
  });
  const lengthFt = num(length);

  return {
    length,
    'short-by': figure({
      value: formShortByIn({ thicknessIn: slab.thicknessIn, boardHeightIn: board.heightIn }),
      unit: 'in',
      decimals: 3,
      formula: 'max(0, thicknessIn - boardHeightIn)',
      inputs: {
        thicknessIn: given(`build.slabs.${slab.id}.thickness`, slab.thicknessIn, 'in'),
        boardHeightIn: given(`${boardPath}.height`, board.heightIn, 'in'),
      },
    }),
    boards: figure({
      value: boardCount({ lengthFt, boardLengthIn: board.lengthIn }),
      unit: 'each',
      decimals: 0,
      formula: 'ceilStep(lengthFt * 12 / boardLengthIn, 1)',
      inputs: { lengthFt: length, boardLengthIn: given(`${boardPath}.length`, board.lengthIn, 'in') },
      source: COMMON_PRACTICE,
      rounding: 'up',
    }),
    stakes: figure({
      value: stakeCount({ lengthFt, stakeSpacingIn: forms.stakeSpacingIn }),
      unit: 'each',
      decimals: 0,
      formula:
        lengthFt > 0
          ? 'ceilStep(lengthFt * 12 / stakeSpacingIn, 1) + 1'
          : { method: 'nothing is formed, so no stake' },
      inputs: {
        lengthFt: length,
        stakeSpacingIn: given('company.forms.stake-spacing', forms.stakeSpacingIn, 'in'),
      },
      source: COMPANY_FIGURE,
      rounding: 'up',
    }),
  };
}

function boardsNeeded(
  slabs: Readonly<Record<string, FormedSlab>>,
  formed: Readonly<Record<string, SlabForms>>,
  boards: Company['forms']['boards'],
): Record<string, NeededAndShort> {
  const used = [...new Set(Object.values(slabs).map((slab) => slab.board))];
  return Object.fromEntries(
    used.map((id) => {
      const onIt = Object.fromEntries(
        Object.values(slabs)
          .filter((slab) => slab.board === id)
          .map((slab) => [slab.id, thingNamed(formed, slab.id, 'slab').boards]),
      );
      const needed = sumFigure({ parts: onIt, unitSuffix: 'Count', unit: 'each', decimals: 0 });
      const { onHandCount } = thingNamed(boards, id, 'form board');
      return [id, { needed, shortage: shortage(needed, `company.forms.boards.${id}.on-hand`, onHandCount) }];
    }),
  );
}

function shortage(needed: Figure, onHandPath: string, onHandCount: number): Figure {
  return figure({
    value: Math.max(0, num(needed) - onHandCount),
    unit: 'each',
    decimals: 0,
    formula: 'max(0, neededCount - onHandCount)',
    inputs: { neededCount: needed, onHandCount: given(onHandPath, onHandCount, 'each') },
  });
}
