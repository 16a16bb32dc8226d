import { readFile } from 'node:fs/promises';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A stroked line of one straight piece, from the lower left corner of the page [pt]. */
export type PdfStroke = { readonly from: PdfPoint; readonly to: PdfPoint };
export type PdfPoint = { readonly xPt: number; readonly yPt: number };

type Matrix = readonly [number, number, number, number, number, number];

/** The straight lines that a page of a PDF strokes, one piece each; page counted from 1. */
export async function readStrokes(path: string, pageNumber: number): Promise<readonly PdfStroke[]> {
  const pdf = await getDocument({ data: new Uint8Array(await readFile(path)), verbosity: 0 }).promise;
  try {
    const { fnArray, argsArray } = await (await pdf.getPage(pageNumber)).getOperatorList();
    const strokes: PdfStroke[] = [];
    const kept: Matrix[] = [];
    let now: Matrix = [1, 0, 0, 1, 0, 0];
    for (const [index, operator] of fnArray.entries()) {
      const given = argsArray[index] as unknown;
      if (operator === OPS.save) kept.push(now);
      else if (operator === OPS.restore) now = kept.pop() ?? now;
      else if (operator === OPS.transform) now = times(now, given as Matrix);
      else if (operator === OPS.constructPath) strokes.push(...straightOf(given as PathArguments, now));
    }
    return strokes;
  } finally {
    await pdf.destroy();
  }
}

/** What is done with a path, and its pieces as numbers in a row: 0 x y moves, 1 x y draws a line. */
type PathArguments = readonly [number, readonly [ArrayLike<number> | null], unknown];

function straightOf([painted, [pieces]]: PathArguments, matrix: Matrix): PdfStroke[] {
  if (painted !== OPS.stroke || pieces === null || pieces.length !== 6) return [];
  const [first, fromX = 0, fromY = 0, second, toX = 0, toY = 0] = Array.from(pieces);
  if (first !== 0 || second !== 1) return [];
  return [{ from: moved(matrix, fromX, fromY), to: moved(matrix, toX, toY) }];
}

function moved([a, b, c, d, e, f]: Matrix, x: number, y: number): PdfPoint {
  return { xPt: a * x + c * y + e, yPt: b * x + d * y + f };
}

/** First the second one, then the first. */
function times([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}
