/** What the program ends with; listed in README.md. */
export const EXIT = {
  built: 0,
  problemsInInput: 1,
  ourBug: 2,
  /** Also a folder or port that this machine does not let us use. */
  wrongUsage: 3,
  builtWithoutPdfs: 4,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
