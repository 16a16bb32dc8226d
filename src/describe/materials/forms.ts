import { num } from '../../calculate/figure.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Job } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Words } from '../../words/index.ts';
import { end, row, start } from '../parts/tables.ts';
import type { Show } from '../show/index.ts';
import type { TableView } from '../views.ts';

type Made = { readonly job: Job; readonly results: JobResults; readonly show: Show; readonly words: Words };
type Stock = JobResults['forms']['figures']['boards'][string];

/** Boards, strips and stakes: need against what the company has; and what it uses up. */
export function formsTable(made: Made): TableView {
  const { job, results, show, words } = made;
  const say = words.materials.forms;
  const { boards: ownBoards, strips: ownStrips } = job.company.forms;
  const { boards, strips } = results.forms.figures;
  return {
    caption: say.caption,
    columns: [start(say.board), end(say.need), end(say.onHand), end(say.buy)],
    rows: [
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
    ],
  };
}

function stockRow(name: string, stock: Stock, onHandCount: number, { show, words }: Made) {
  const say = words.materials.forms;
  const [from, pieces, cuts] = [stock['cut-from'], stock.pieces, stock.cuts].map((one) =>
    show.count(num(one)),
  );
  const isLeast = num(stock['cut-from']) === num(stock['cut-least']);
  return {
    ...row(name, show.count(num(stock.needed)), show.count(onHandCount), show.count(num(stock.shortage))),
    note:
      num(stock.pieces) === 0 || from === undefined || pieces === undefined || cuts === undefined
        ? null
        : (isLeast ? say.cutLeast : say.cut)(from, pieces, cuts),
  };
}

function stakesRow({ job, results, show, words }: Made) {
  const say = words.materials.forms;
  const { stakes } = results.forms.figures;
  const atForms = stakes['at-forms'];
  return {
    ...row(
      say.stakes,
      show.count(num(stakes.needed)),
      show.count(job.company.forms.stakesOnHandCount),
      show.count(num(stakes.shortage)),
    ),
    note: atForms === undefined ? null : say.kickers(show.count(num(stakes.needed) - num(atForms))),
  };
}

/** What nobody counts the stock of. */
function usedUp({ results, show, words }: Made): TableView['rows'] {
  const say = words.materials.forms;
  const { screws, release } = results.forms.figures.total;
  return [
    ...(screws === undefined ? [] : [row(say.screws, show.count(num(screws)), '', '')]),
    ...(release === undefined ? [] : [row(say.release, show.liquid(num(release)), '', '')]),
  ];
}
