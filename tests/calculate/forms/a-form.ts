import { Decimal } from 'decimal.js';
import { type Figure, figure } from '../../../src/calculate/figure.ts';
import type { FormsResult } from '../../../src/calculate/forms/index.ts';
import { calcForms } from '../../../src/calculate/forms/index.ts';
import type { Company, Slab, Strip } from '../../../src/calculate/job.ts';
import { type EdgeKind, edgeLengthsByKindIn, type Outline, type Ring } from '../../../src/geometry/index.ts';

type Corner = readonly [xIn: number, yIn: number, edge?: EdgeKind, bulge?: number];

/** A ring by its corners, each with what stands at the edge that starts there, and its bulge. */
export function ring(...corners: readonly Corner[]): Ring {
  return corners.map(([xIn, yIn, edge = 'formed', bulge = 0]) => ({ xIn, yIn, edge, bulge }));
}

export function box(lengthIn: number, widthIn: number, kinds: readonly EdgeKind[] = []): Outline {
  const [a = 'formed', b = 'formed', c = 'formed', d = 'formed'] = kinds;
  return { rings: [ring([0, 0, a], [lengthIn, 0, b], [lengthIn, widthIn, c], [0, widthIn, d])] };
}

export const QUARTER = Math.tan(Math.PI / 8);

/** 480 x 216 in along the house, its corner 3 rounded 60 in. */
export const roundedDrive: Outline = {
  rings: [ring([0, 0, 'house'], [480, 0], [480, 156, 'formed', QUARTER], [420, 216], [0, 216])],
};

export function aStrip(changed: Partial<Strip> = {}): Strip {
  return {
    id: 'hardboard',
    thicknessIn: 0.25,
    heightIn: null,
    lengthIn: 96,
    lapIn: 12,
    bent: 'across-grain',
    leastRadiusIn: null,
    onHandCount: 1,
    priceUsd: new Decimal('4.60'),
    ...changed,
  };
}

type Forms = Company['forms'];

export function someForms(changed: Partial<Forms> = {}): Forms {
  return {
    boards: {
      'two-by-four': {
        id: 'two-by-four',
        heightIn: 3.5,
        lengthIn: 192,
        onHandCount: 5,
        priceUsd: new Decimal('11.40'),
      },
      'two-by-six': {
        id: 'two-by-six',
        heightIn: 5.5,
        lengthIn: 144,
        onHandCount: 20,
        priceUsd: new Decimal('14.10'),
      },
    },
    strips: { hardboard: aStrip() },
    runPastIn: null,
    sawKerfIn: null,
    stakeSpacingIn: 36,
    stakeSpacingCurvedIn: null,
    stakePriceUsd: new Decimal('1.10'),
    stakesOnHandCount: 60,
    kickerSpacingIn: null,
    screwsPerStakeCount: null,
    releaseCoverageSqFtPerGal: null,
    ...changed,
  };
}

type Formed = Partial<Pick<Slab, 'thicknessIn' | 'formHeightIn' | 'board' | 'curveForm'>> & {
  readonly outline: Outline;
};

/** The forms of slabs given by their outlines, by id. */
export function formsOf(slabs: Readonly<Record<string, Formed>>, forms: Forms = someForms()): FormsResult {
  const entries = Object.entries(slabs);
  return calcForms({
    slabs: Object.fromEntries(
      entries.map(
        ([id, { thicknessIn = 4, formHeightIn = null, board = 'two-by-four', curveForm = null }]) => [
          id,
          { id, thicknessIn, formHeightIn, board, curveForm },
        ],
      ),
    ),
    shapes: {
      slabs: Object.fromEntries(
        entries.map(([id, { outline }]) => {
          const { straightIn, curvedIn } = edgeLengthsByKindIn(outline).formed;
          return [id, { 'formed-straight': feet(straightIn), 'formed-curved': feet(curvedIn) }];
        }),
      ),
    },
    outlines: Object.fromEntries(entries.map(([id, { outline }]) => [id, outline])),
    forms,
  });
}

function feet(lengthIn: number): Figure {
  return figure({ value: lengthIn / 12, unit: 'ft', decimals: 2, formula: { method: 'test' }, inputs: {} });
}
