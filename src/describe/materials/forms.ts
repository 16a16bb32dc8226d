import type { Made } from '../made.ts';
import { end, row, start } from '../parts/tables.ts';
import type { SpreadsheetView, TableView } from '../views.ts';
import { formRows } from './form-rows.ts';
import { sheetOrNull } from './sheet.ts';

export function formsTable(made: Made): TableView {
  const say = made.words.materials.forms;
  return {
    caption: say.caption,
    columns: [start(say.board), end(say.need), end(say.onHand), end(say.buy)],
    rows: formRows(made).map(({ name, need, onHand, buy, note }) => ({
      ...row(name, need, onHand, buy),
      note,
    })),
  };
}

export function formsSheet(made: Made): SpreadsheetView | null {
  const { forms: say, formsSheet: asNumber, sheets } = made.words.materials;
  return sheetOrNull({
    name: sheets.forms,
    columns: [
      { heading: say.board, cell: ({ name }) => name },
      { heading: asNumber.needCount, cell: ({ needCount }) => needCount },
      { heading: asNumber.needVolume, cell: ({ needGal }) => needGal },
      { heading: say.need, cell: ({ need }) => need },
      { heading: say.onHand, cell: ({ onHandCount }) => onHandCount },
      { heading: say.buy, cell: ({ buyCount }) => buyCount },
      { heading: asNumber.note, cell: ({ note }) => note },
    ],
    rows: formRows(made),
  });
}
