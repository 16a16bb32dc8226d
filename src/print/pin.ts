/** Changes when this file changes what it writes; part of the cache key. */
export const PIN_VERSION = 1;

const LAST_EPOCH_SECONDS = 253_402_300_799; // 9999-12-31T23:59:59Z, four digits of year

/**
 * Make the bytes of a printed PDF depend on the page alone.
 *
 * Chromium writes two things that differ from run to run: the two dates, and the ids of table
 * header cells, which are numbers of a counter of the browser process (even their order depends on
 * load timing, so they are numbered anew by the PDF object they name). Everything keeps its length,
 * so the offsets in the cross-reference table stay right.
 * Source: comparison of the bytes of Chromium 147 and 156 output (Skia/PDF); see DEVELOPERS.md.
 *
 * @param bytes        A PDF as Chromium prints it, with uncompressed objects.
 * @param epochSeconds Date to write [s since 1970-01-01 UTC], a whole number from 0 to the year 9999.
 * @throws {RangeError} If epochSeconds is out of range.
 * @throws {Error} If the PDF is not built as expected; then it must not be trusted to be pinned.
 */
export function pinPdf(bytes: Uint8Array, epochSeconds: number): Uint8Array {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  const pinned = pinNodeIds(pinDates(text, epochSeconds));
  if (pinned.length !== text.length) {
    throw new Error(`pinning changed the length of the PDF from ${text.length} to ${pinned.length} bytes`);
  }
  return new Uint8Array(Buffer.from(pinned, 'latin1'));
}

function pinDates(text: string, epochSeconds: number): string {
  const digits = pdfDateDigits(epochSeconds);
  const seen: string[] = [];
  const pinned = text.replace(/\/(CreationDate|ModDate) \(D:\d{14}\+00'00'\)/g, (_all, key: string) => {
    seen.push(key);
    return `/${key} (D:${digits}+00'00')`;
  });
  if (seen.toSorted().join() !== 'CreationDate,ModDate') {
    throw new Error(
      `the PDF should hold one CreationDate and one ModDate in UTC, found ${seen.join(', ') || 'none'}`,
    );
  }
  return pinned;
}

function pdfDateDigits(epochSeconds: number): string {
  if (!(Number.isInteger(epochSeconds) && epochSeconds >= 0 && epochSeconds <= LAST_EPOCH_SECONDS)) {
    throw new RangeError(`epochSeconds must be whole seconds from 1970 to 9999, got ${epochSeconds}`);
  }
  return new Date(epochSeconds * 1000).toISOString().slice(0, 19).replace(/\D/g, '');
}

type HeaderCell = { oldId: string; objectNumber: number };

const LEAF = /\/Limits \[\(node\d{8}\) \(node\d{8}\)\]\n\/Names \[((?:\(node\d{8}\) \d+ 0 R ?)+)\]/g;
// The two places that use an id; nothing else is touched, so a heading "node00000017" stays.
const USES = /\/ID \(node\d{8}\)|\/Headers \[(?:\(node\d{8}\) ?)+\]/g;

function pinNodeIds(text: string): string {
  const leaves = [...text.matchAll(LEAF)];
  const treeCount = text.match(/\/IDTree \d+ 0 R/g)?.length ?? 0;
  if (leaves.length !== treeCount || leaves.length > 1) {
    throw new Error(
      `the PDF should hold one list of header cell ids, or none without tables, ` +
        `found ${leaves.length} for ${treeCount} id trees`,
    );
  }
  const cells = headerCells(leaves[0]?.[1] ?? '');
  const newIdOf = new Map(cells.map(({ oldId }, index) => [oldId, String(index + 1).padStart(8, '0')]));
  const newId = (oldId: string): string => {
    const id = newIdOf.get(oldId);
    if (id === undefined) throw new Error(`header cell id node${oldId} is used but not in the PDF's list`);
    return id;
  };
  const entries = cells.map(({ oldId, objectNumber }) => `(node${newId(oldId)}) ${objectNumber} 0 R`);
  const limits = `(node${'1'.padStart(8, '0')}) (node${String(cells.length).padStart(8, '0')})`;
  return text
    .replace(USES, (use) => use.replace(/(?<=\(node)\d{8}/g, newId))
    .replace(LEAF, () => `/Limits [${limits}]\n/Names [${entries.join(' ')}]`);
}

/** The header cells of the id list, in the order of their PDF objects: the order of the document. */
function headerCells(list: string): HeaderCell[] {
  const cells = [...list.matchAll(/\(node(\d{8})\) (\d+) 0 R/g)].map(
    ([, oldId = '', objectNumber = '']): HeaderCell => ({ oldId, objectNumber: Number(objectNumber) }),
  );
  if (new Set(cells.map(({ oldId }) => oldId)).size !== cells.length) {
    throw new Error('a header cell id stands twice in the list of the PDF');
  }
  return cells.sort((left, right) => left.objectNumber - right.objectNumber);
}
