export { type Show, showIn } from './show.ts';
export { shortDates, showDate, showFigure, showFormula, showInput, showRate } from './show-figure.ts';
