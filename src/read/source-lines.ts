import type { ReadLine } from '../problems/index.ts';
import { loadFile } from './load-file.ts';

/** Lines of the files that were read, for code frames; each file is opened once, when asked for. */
export function sourceLines(): ReadLine {
  const files = new Map<string, readonly string[]>();
  return (file, line) => {
    let lines = files.get(file);
    if (lines === undefined) {
      const loaded = loadFile(file);
      lines = 'text' in loaded ? loaded.text.split(/\r?\n/) : [];
      files.set(file, lines);
    }
    return lines[line - 1] ?? null;
  };
}
