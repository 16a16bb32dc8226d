export { spreadsheetToCsv } from './csv.ts';
export { drawingToDxf } from './dxf.ts';
export { workbookOf } from './workbook.ts';
