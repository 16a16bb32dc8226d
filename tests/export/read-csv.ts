/** A field as it stands in a CSV file: its text, and whether quotes stand round it. */
export type CsvField = { readonly text: string; readonly isQuoted: boolean };

const field = /"((?:[^"]|"")*)"|([^",\r\n]*)/y;

/**
 * The fields of a CSV file, line by line, by the grammar of RFC 4180 section 2 and nothing beside it: a
 * quote in a bare field, a line end that is not CRLF, or no CRLF at the end is an error.
 */
function readCsv(file: string): readonly (readonly CsvField[])[] {
  const lines: CsvField[][] = [];
  let at = 0;
  while (at < file.length) {
    const line: CsvField[] = [];
    for (let follows = ','; follows === ','; ) {
      field.lastIndex = at;
      const [whole = '', quoted, bare = ''] = field.exec(file) ?? [];
      line.push({ text: quoted?.replaceAll('""', '"') ?? bare, isQuoted: quoted !== undefined });
      at += whole.length;
      follows = file.startsWith('\r\n', at) ? '\r\n' : file.charAt(at);
      if (follows !== ',' && follows !== '\r\n') {
        throw new Error(`neither comma nor CRLF at ${at}: ${JSON.stringify(file.slice(at, at + 20))}`);
      }
      at += follows.length;
    }
    lines.push(line);
  }
  return lines;
}

const BYTE_ORDER_MARK = '\uFEFF';

/** A file with a byte order mark and a line of headings. @throws {Error} If it has not. */
export function readWithHeadings(file: string) {
  if (!file.startsWith(BYTE_ORDER_MARK)) throw new Error('there is no byte order mark');
  const [first = [], ...rows] = readCsv(file.slice(BYTE_ORDER_MARK.length));
  const headings = first.map(({ text }) => text);
  const column = (heading: string): readonly CsvField[] => {
    const at = headings.indexOf(heading);
    return rows.map((row) => {
      const found = row[at];
      if (found === undefined) throw new RangeError(`no field under ${heading}`);
      return found;
    });
  };
  return {
    first,
    headings,
    rows,
    column,
    texts: (heading: string) => column(heading).map(({ text }) => text),
  };
}
