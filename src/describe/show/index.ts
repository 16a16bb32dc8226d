export { type Show, showIn } from './show.ts';
export { showDate, showFigure, showFormula, showInput } from './show-figure.ts';
