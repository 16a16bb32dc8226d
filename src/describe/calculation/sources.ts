/** The sources of a sheet, numbered as they are met, so that a figure names one by its number. */
export type Sources = {
  /** The number of a source; the same text has the same number. */
  readonly numberOf: (source: string) => string;
  /** All met so far, the first under number 1. */
  readonly list: () => readonly string[];
};

/** An empty list of sources. */
export function numberedSources(): Sources {
  const numbers = new Map<string, number>();
  return {
    numberOf: (source) => {
      const known = numbers.get(source) ?? numbers.size + 1;
      numbers.set(source, known);
      return String(known);
    },
    list: () => [...numbers.keys()],
  };
}
