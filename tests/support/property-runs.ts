const FULL = 20;

export const isFullRun = process.env['FULL_PROPERTIES'] === '1';

/** How often a property is tried: so often in every run, and twenty times that in `npm run test:long`. */
export function runCount(count: number): number {
  return isFullRun ? count * FULL : count;
}
