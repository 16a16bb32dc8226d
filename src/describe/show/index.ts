export { type Show, showIn } from './show.ts';
export { shortDates, showDate, showFigure, showFormula, showInput } from './show-figure.ts';
