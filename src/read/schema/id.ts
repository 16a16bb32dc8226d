/** Ids appear in figures, file names and paths: lower-case words joined by hyphens, at least one letter. */
export const ID_PATTERN = /^(?=.*[a-z])(?!constructor$)[a-z0-9]+(?:-[a-z0-9]+)*$/;
