export type PdfFacts = {
  pageCount: number;
  /** Width and height of each page [pt, 1/72 in]. */
  pageSizesPt: readonly { widthPt: number; heightPt: number }[];
  title: string | null;
  /** Id of an element that something links to, and the page it begins on, counted from 0. */
  destinations: ReadonlyMap<string, number>;
};

/**
 * Facts of a PDF printed by Chromium, read from its text: Skia leaves its objects uncompressed.
 * Not a PDF reader; a file from another program is refused or misses facts.
 *
 * @throws {Error} If the file is not built as Skia builds it.
 */
export function pdfFacts(bytes: Uint8Array): PdfFacts {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  const objectText = objectReader(text);
  const trailer = text.slice(text.lastIndexOf('trailer'));
  const catalog = objectText(reference(trailer, 'Root'));
  const pages = pageObjects(reference(catalog, 'Pages'), objectText);
  const info = /\/Info \d/.test(trailer) ? objectText(reference(trailer, 'Info')) : '';
  const destinations = /\/Dests \d/.test(catalog) ? objectText(reference(catalog, 'Dests')) : '';
  return {
    pageCount: pages.length,
    pageSizesPt: pages.map((page) => pageSize(objectText(page))),
    title: title(info),
    destinations: namedDestinations(destinations, pages),
  };
}

type ObjectText = (objectNumber: number) => string;

/** Text of an object by its number, found through the cross-reference table at the end of the file. */
function objectReader(text: string): ObjectText {
  const [, tableAt = ''] = /startxref\n(\d+)\n%%EOF\s*$/.exec(text) ?? [];
  const table = /^xref\n0 (\d+)\n/.exec(text.slice(Number(tableAt), Number(tableAt) + 40));
  if (tableAt === '' || table === null) throw new Error('not a PDF with a plain cross-reference table');
  const rowsAt = Number(tableAt) + table[0].length;
  return (objectNumber) => {
    const row = text.slice(rowsAt + objectNumber * 20, rowsAt + objectNumber * 20 + 10);
    const start = Number(row);
    const head = `${objectNumber} 0 obj\n`;
    if (!(objectNumber < Number(table[1]) && text.startsWith(head, start))) {
      throw new Error(`PDF object ${objectNumber} is not where the cross-reference table says`);
    }
    return text.slice(start + head.length, text.indexOf('endobj', start));
  };
}

function reference(dictionary: string, key: string): number {
  const [, objectNumber] = new RegExp(`/${key} (\\d+) 0 R`).exec(dictionary) ?? [];
  if (objectNumber === undefined) throw new Error(`the PDF has no ${key}`);
  return Number(objectNumber);
}

/** Object numbers of the pages in reading order. */
function pageObjects(objectNumber: number, objectText: ObjectText): number[] {
  const node = objectText(objectNumber);
  const [, kids] = /\/Kids \[([^\]]*)\]/.exec(node) ?? [];
  if (kids === undefined) return [objectNumber];
  return [...kids.matchAll(/(\d+) 0 R/g)].flatMap(([, kid]) => pageObjects(Number(kid), objectText));
}

function pageSize(page: string): { widthPt: number; heightPt: number } {
  const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page) ?? [];
  if (width === undefined || height === undefined) throw new Error('a page of the PDF has no MediaBox');
  return { widthPt: Number(width), heightPt: Number(height) };
}

function title(info: string): string | null {
  const [, written] = /\/Title (<[0-9A-Fa-f]*>|\((?:[^\\)]|\\[\s\S])*\))/.exec(info) ?? [];
  return written === undefined ? null : decodedTitle(written);
}

/** Text of a PDF string, given with its brackets, `(text)`, or with its angles, `<FEFF...>`. */
export function decodedTitle(written: string): string {
  const inside = written.slice(1, -1);
  return written.startsWith('<') ? utf16(Buffer.from(inside, 'hex')) : unescapeLiteral(inside);
}

/** Big-endian UTF-16 after a byte order mark. */
function utf16(bytes: Buffer): string {
  return Buffer.from(bytes.subarray(2)).swap16().toString('utf16le');
}

function unescapeLiteral(literal: string): string {
  return literal.replace(/\\(?:([0-7]{3})|([\s\S]))/g, (_all, octal?: string, plain?: string) =>
    octal === undefined ? (plain ?? '') : String.fromCharCode(Number.parseInt(octal, 8)),
  );
}

function namedDestinations(dictionary: string, pages: readonly number[]): Map<string, number> {
  const entries = dictionary.matchAll(/\/([^\s/()<>[\]{}%]+) \[(\d+) 0 R /g);
  return new Map(
    [...entries].map(([, name = '', page]) => [decodeName(name), pageIndex(Number(page), pages)]),
  );
}

function pageIndex(objectNumber: number, pages: readonly number[]): number {
  const index = pages.indexOf(objectNumber);
  if (index === -1) throw new Error(`a destination of the PDF is object ${objectNumber}, which is no page`);
  return index;
}

/** A PDF name writes bytes outside the plain ones as #xx; the bytes are UTF-8. */
function decodeName(name: string): string {
  const latin1 = name.replace(/#([0-9A-Fa-f]{2})/g, (_all, hex: string) =>
    String.fromCharCode(Number.parseInt(hex, 16)),
  );
  return Buffer.from(latin1, 'latin1').toString('utf8');
}
