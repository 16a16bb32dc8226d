import { readFileSync } from 'node:fs';
import { SourceMap } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** `file:///…/chunk.mjs:12:345`, with or without brackets round it. */
const PLACE_IN_BUNDLE = /((?:file:\/\/)?\/[^\s()]+\.mjs):(\d+):(\d+)/g;

/**
 * Has the stack of an error and of its causes name the sources, not the bundle made of them. Node does that by
 * itself where it reads the maps at each start, which takes a tenth of a check.
 */
export function nameSources(error: unknown): void {
  if (!(error instanceof Error)) return;
  const { stack } = error;
  if (stack !== undefined) {
    error.stack = stack.replace(
      PLACE_IN_BUNDLE,
      (place, file: string, line: string, column: string) =>
        sourcePlace(file, Number(line), Number(column)) ?? place,
    );
  }
  nameSources(error.cause);
}

/** Null where no map stands beside the file. */
function sourcePlace(file: string, line: number, column: number): string | null {
  try {
    const url = file.startsWith('file:') ? file : pathToFileURL(file).href;
    const map = new SourceMap(JSON.parse(readFileSync(fileURLToPath(`${url}.map`), 'utf8')));
    const entry = map.findEntry(line - 1, column - 1);
    if (!('originalSource' in entry)) return null;
    const source = fileURLToPath(new URL(entry.originalSource, url));
    return `${source}:${entry.originalLine + 1}:${entry.originalColumn + 1}`;
  } catch {
    return null;
  }
}
