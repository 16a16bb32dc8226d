import { createHash } from 'node:crypto';
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PIN_VERSION } from './pin.ts';
import { PRINT_VERSION } from './print-pdf.ts';
import { writeWhole } from './write-whole.ts';

export type CacheKeyParts = {
  /** The whole page: styles, fonts and drawings stand inside it, or their changes go unseen. */
  html: Uint8Array;
  /** `identity` of the running browser, or PINNED_IDENTITY. */
  browserIdentity: string;
  epochSeconds: number;
  twoPass: boolean;
};

/** Name of a PDF by all it depends on: 64 hex digits (sha256). */
export function cacheKey({ html, browserIdentity, epochSeconds, twoPass }: CacheKeyParts): string {
  const head = JSON.stringify([PRINT_VERSION, PIN_VERSION, browserIdentity, epochSeconds, twoPass]);
  return createHash('sha256').update(head).update('\n').update(html).digest('hex');
}

export type PdfCache = {
  /** The PDF, or null if it is not there or not whole. */
  get: (key: string) => Promise<Uint8Array | null>;
  put: (key: string, bytes: Uint8Array) => Promise<void>;
};

/**
 * PDFs kept by key, one file each: a line with length and hash, then the PDF. Holds no paths and no
 * times, so it can be moved, copied and shared.
 *
 * @param folder Made when the first PDF is put in, `<output>/.cache`.
 */
export function openCache(folder: string): PdfCache {
  return {
    async get(key) {
      const entry = await readFile(entryPath(folder, key)).catch(ignoreMissing);
      return entry === null ? null : wholePdf(entry);
    },
    async put(key, bytes) {
      await mkdir(folder, { recursive: true });
      await writeWhole(entryPath(folder, key), Buffer.concat([Buffer.from(headLine(bytes)), bytes]));
    },
  };
}

function entryPath(folder: string, key: string): string {
  if (!/^[0-9a-f]{64}$/.test(key)) throw new RangeError(`a cache key is 64 hex digits, got "${key}"`);
  return join(folder, `${key}.entry`);
}

function headLine(bytes: Uint8Array): string {
  return `pdf ${bytes.length} ${createHash('sha256').update(bytes).digest('hex')}\n`;
}

function wholePdf(entry: Buffer): Uint8Array | null {
  const headEnd = entry.indexOf('\n') + 1;
  const bytes = new Uint8Array(entry.subarray(headEnd));
  return entry.subarray(0, headEnd).toString('latin1') === headLine(bytes) ? bytes : null;
}

function ignoreMissing(error: NodeJS.ErrnoException): null {
  if (error.code === 'ENOENT') return null;
  throw error;
}
