import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';

type Stock = JobResults['forms']['figures']['boards'][string];

/** One kind of form material, each quantity as a number and as the page shows it. */
export type FormRow = {
  readonly name: string;
  /** Null where it is measured by volume. */
  readonly needCount: number | null;
  /** Null where it is counted. */
  readonly needGal: number | null;
  readonly need: string;
  /** Null where nobody counts the stock of it. */
  readonly onHandCount: number | null;
  readonly onHand: string;
  readonly buyCount: number | null;
  readonly buy: string;
  readonly note: string | null;
};

/** Boards, strips and stakes: need against what the company has; and what it uses up. */
export function formRows(made: Made): readonly FormRow[] {
  const { job, results, show, words } = made;
  const say = words.materials.forms;
  const { boards: ownBoards, strips: ownStrips } = job.company.forms;
  const { boards, strips } = results.forms.figures;
  return [
    ...Object.entries(boards).map(([id, stock]) => {
      const { heightIn, onHandCount } = thingNamed(ownBoards, id, 'form board');
      return stockRow(say.boardName(id, show.size(heightIn)), stock, onHandCount, made);
    }),
    ...Object.entries(strips).map(([id, stock]) => {
      const { thicknessIn, onHandCount } = thingNamed(ownStrips, id, 'form strip');
      return stockRow(say.stripName(id, show.size(thicknessIn)), stock, onHandCount, made);
    }),
    stakesRow(made),
    ...usedUp(made),
  ];
}

function stockRow(name: string, stock: Stock, onHandCount: number, { show, words }: Made): FormRow {
  const say = words.materials.forms;
  const [from, pieces, cuts] = [stock['cut-from'], stock.pieces, stock.cuts].map((one) =>
    show.count(num(one)),
  );
  const isLeast = num(stock['cut-from']) === num(stock['cut-least']);
  const counts = { needCount: num(stock.needed), onHandCount, buyCount: num(stock.shortage) };
  return {
    ...counted(name, counts, show),
    note:
      num(stock.pieces) === 0 || from === undefined || pieces === undefined || cuts === undefined
        ? null
        : (isLeast ? say.cutLeast : say.cut)(from, pieces, cuts),
  };
}

function stakesRow({ job, results, show, words }: Made): FormRow {
  const say = words.materials.forms;
  const { stakes } = results.forms.figures;
  const atForms = stakes['at-forms'];
  const counts = {
    needCount: num(stakes.needed),
    onHandCount: job.company.forms.stakesOnHandCount,
    buyCount: num(stakes.shortage),
  };
  return {
    ...counted(say.stakes, counts, show),
    note: atForms === undefined ? null : say.kickers(show.count(num(stakes.needed) - num(atForms))),
  };
}

function counted(
  name: string,
  counts: { readonly needCount: number; readonly onHandCount: number; readonly buyCount: number },
  show: Made['show'],
): Omit<FormRow, 'note'> {
  return {
    name,
    ...counts,
    needGal: null,
    need: show.count(counts.needCount),
    onHand: show.count(counts.onHandCount),
    buy: show.count(counts.buyCount),
  };
}

/** What nobody counts the stock of. */
function usedUp({ results, show, words }: Made): readonly FormRow[] {
  const say = words.materials.forms;
  const { screws, release } = results.forms.figures.total;
  const uncounted = { onHandCount: null, onHand: '', buyCount: null, buy: '', note: null };
  const counts = screws === undefined ? [] : [num(screws)];
  const gallons = release === undefined ? [] : [num(release)];
  return [
    ...counts.map((needCount) => ({
      name: say.screws,
      needCount,
      needGal: null,
      need: show.count(needCount),
      ...uncounted,
    })),
    ...gallons.map((needGal) => ({
      name: say.release,
      needCount: null,
      needGal,
      need: show.liquid(needGal),
      ...uncounted,
    })),
  ];
}
