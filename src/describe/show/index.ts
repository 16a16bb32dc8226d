export { type Show, showIn } from './show.ts';
export {
  NO_BREAK,
  shortDates,
  showDate,
  showDay,
  showFigure,
  showFormula,
  showInput,
  showRate,
} from './show-figure.ts';
