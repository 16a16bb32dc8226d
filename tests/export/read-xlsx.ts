import { strFromU8, unzipSync } from 'fflate';

export type XlsxCell = {
  readonly value: string | number;
  readonly isBold: boolean;
  /** Its number format, null where it has none. */
  readonly format: string | null;
};

export type XlsxSheet = {
  readonly headings: readonly (XlsxCell | null)[];
  /** Below the headings; each row as long as the headings. */
  readonly rows: readonly (readonly (XlsxCell | null)[])[];
  /** Rows at the top that stay in view. */
  readonly frozenRows: number;
  /** In characters, a column each. */
  readonly widths: readonly number[];
  /** The cells under a heading. @throws {RangeError} If there is no such heading. */
  readonly column: (heading: string) => readonly (XlsxCell | null)[];
  /** What stands under a heading, with null where a cell is empty. */
  readonly values: (heading: string) => readonly (string | number | null)[];
};

/**
 * The sheets of a workbook by name, in order, by the elements of SpreadsheetML that a table of texts and
 * numbers needs, and nothing beside them: a formula, or a cell of another type, is an error.
 */
export function readWorkbook(bytes: Uint8Array): ReadonlyMap<string, XlsxSheet> {
  const files = unzipSync(bytes);
  const xml = (path: string) => {
    const file = files[path];
    if (file === undefined) throw new Error(`the workbook has no ${path}`);
    return strFromU8(file);
  };
  const texts = elements(xml('xl/sharedStrings.xml'), 'si').map(({ inner }) => plain(inner));
  const styles = stylesIn(xml('xl/styles.xml'));
  const targets = new Map(
    elements(xml('xl/_rels/workbook.xml.rels'), 'Relationship').map(({ of }) => [of('Id'), of('Target')]),
  );
  return new Map(
    elements(xml('xl/workbook.xml'), 'sheet').map(({ of }) => {
      const sheet = xml(`xl/${targets.get(of('r:id'))}`);
      return [unescaped(of('name')), sheetIn(sheet, texts, styles)];
    }),
  );
}

/** The day that stands at the first entry of a zip archive, as 2026-05-04. */
export function zipDayOf(bytes: Uint8Array): string {
  const date = new DataView(bytes.buffer, bytes.byteOffset).getUint16(12, true);
  const [year, month, day] = [1980 + (date >> 9), (date >> 5) & 15, date & 31];
  return [year, month, day].map((part) => String(part).padStart(2, '0')).join('-');
}

type Style = Pick<XlsxCell, 'isBold' | 'format'>;

function sheetIn(xml: string, texts: readonly string[], styles: readonly Style[]): XlsxSheet {
  if (/<f[\s>/]/.test(xml)) throw new Error('there is a formula');
  const lines = elements(xml, 'row').map(({ inner }) => cellsIn(inner, texts, styles));
  const [headings = [], ...below] = lines;
  const rows = below.map((line) => headings.map((_, at) => line[at] ?? null));
  const column = (heading: string) => {
    const at = headings.findIndex((cell) => cell?.value === heading);
    if (at < 0) throw new RangeError(`no heading ${heading}`);
    return rows.map((row) => row[at] ?? null);
  };
  const [pane] = elements(xml, 'pane');
  return {
    headings,
    rows,
    frozenRows: pane?.of('state') === 'frozen' ? Number(pane.of('ySplit')) : 0,
    widths: elements(xml, 'col').map(({ of }) => Number(of('width'))),
    column,
    values: (heading) => column(heading).map((cell) => cell?.value ?? null),
  };
}

function cellsIn(row: string, texts: readonly string[], styles: readonly Style[]): (XlsxCell | null)[] {
  const line: (XlsxCell | null)[] = [];
  for (const { of, inner } of elements(row, 'c')) {
    const at =
      [...of('r').replace(/\d+$/, '')].reduce((sum, one) => 26 * sum + one.charCodeAt(0) - 64, 0) - 1;
    while (line.length < at) line.push(null);
    const type = of('t');
    if (type !== '' && type !== 's') throw new Error(`a cell of type ${type}`);
    const written = plain(inner);
    const value = type === 's' ? texts[Number(written)] : Number(written);
    if (value === undefined || Number.isNaN(value)) throw new Error(`a cell of ${type} has ${written}`);
    line[at] = { value, ...(styles[Number(of('s'))] ?? { isBold: false, format: null }) };
  }
  return line;
}

function stylesIn(xml: string): readonly Style[] {
  const formats = new Map(elements(xml, 'numFmt').map(({ of }) => [of('numFmtId'), of('formatCode')]));
  const isBold = elements(xml, 'font').map(({ inner }) => inner.includes('<b/>'));
  const [cells] = elements(xml, 'cellXfs');
  return elements(cells?.inner ?? '', 'xf').map(({ of }) => ({
    isBold: isBold[Number(of('fontId'))] ?? false,
    format: formats.get(of('numFmtId')) ?? null,
  }));
}

/** Elements of a name that do not hold one of the same name. */
function elements(xml: string, name: string) {
  const found = xml.matchAll(new RegExp(`<${name}((?:\\s[^>]*?)?)(?:/>|>(.*?)</${name}>)`, 'gs'));
  return [...found].map(([, attributes = '', inner = '']) => ({
    inner,
    of: (key: string) => new RegExp(`\\s${key}="([^"]*)"`).exec(attributes)?.[1] ?? '',
  }));
}

/** The text of an element without its tags, as a spreadsheet program reads it. */
function plain(xml: string): string {
  const text = unescaped(xml.replaceAll(/<[^>]*>/g, ''));
  return text.replaceAll(/_x([0-9A-F]{4})_/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}

function unescaped(text: string): string {
  const marks: Readonly<Record<string, string>> = { lt: '<', gt: '>', quot: '"', apos: "'", amp: '&' };
  return text.replaceAll(/&(lt|gt|quot|apos|amp);/g, (_, name: string) => marks[name] ?? '');
}
