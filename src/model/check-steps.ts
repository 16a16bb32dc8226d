import { checkId, type Finder } from './problems-found.ts';

const TAPED = [
  { key: 'risers', example: '2' },
  { key: 'riser', example: '6 1/2 in' },
] as const;

/** The risers of a flight to build are said, or its two ends are points of the heights. */
export function checkSteps(finder: Finder, path: string): void {
  const { origins, add } = finder;
  const has = (key: string) => origins.has(`${path}.${key}`);
  const ends = ['from', 'to'].filter(has);
  if (ends.length === 0) {
    for (const { key, example } of TAPED) {
      if (!has(key)) add(path, 'missing-key', { key, thing: 'steps', example });
    }
    return;
  }
  if (ends.length === 1) {
    add(`${path}.${ends[0]}`, 'steps-lack-end', { key: ends[0] === 'from' ? 'to' : 'from' });
  } else if (has('riser')) add(`${path}.riser`, 'riser-from-heights', {});
  for (const end of ends)
    checkId(finder, `${path}.${end}`, { thing: 'level-point', below: 'heights.points', mayBeNone: true });
}
