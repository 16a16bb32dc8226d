/** Whether a text can be SOURCE_DATE_EPOCH: whole seconds since 1970-01-01. */
export function isWholeSeconds(text: string): boolean {
  return /^\d{1,12}$/.test(text);
}

/**
 * The stamp inside a PDF and a workbook [s since 1970-01-01]: SOURCE_DATE_EPOCH, else the job's own date;
 * never the clock.
 */
export function epochOf(preparedOn: string, env: NodeJS.ProcessEnv = process.env): number {
  const fromEnv = env['SOURCE_DATE_EPOCH'];
  if (fromEnv !== undefined && isWholeSeconds(fromEnv)) return Number(fromEnv);
  return Date.parse(`${preparedOn}T00:00:00Z`) / 1000;
}
