/** A place in a file of the user's, counted from 1. */
export type SourceSpot = {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** Characters to underline. */
  readonly length: number;
};

/** A file or a folder as a whole, where no line of it can be shown. */
export type WholeFile = { readonly file: string; readonly line: null };

/** Where a value of the job came from, and how it was written there. */
export type Origin = {
  readonly spot: SourceSpot | null;
  readonly text: string;
  readonly from: 'job' | 'company' | 'shipped';
};

/** Job path (`build.slabs.drive.thickness`) to where it was written. */
export type Origins = ReadonlyMap<string, Origin>;

/** What the core finds wrong with a job: a code, the parts of its message, and a job path. */
export type CoreProblem = {
  readonly code: string;
  readonly path: string;
  readonly parts: Readonly<Record<string, string>>;
};
