import { parseTimeOfDay } from '../units/index.ts';
import { childrenOf } from './paths.ts';
import { type Finder, textAt } from './problems-found.ts';

const TIMES = 'pour.weather.times';
const COVERS = ['wet-cover', 'sheeting'];
const PARTS_OF_DAY: Readonly<Record<string, string>> = {
  morning: '8:00',
  noon: '12:00',
  afternoon: '16:00',
};

/** Times of the pour and its forecast that stand in the wrong order. */
export function checkPour(finder: Finder): void {
  checkAfter(finder, 'pour.noise-allowed.from', 'pour.noise-allowed.to');
  checkAfter(finder, 'pour.weather.sunrise', 'pour.weather.sunset');
  checkSheeting(finder);
  if (!finder.origins.has(TIMES)) return;
  const times = childrenOf(TIMES, finder.origins).map((index) => `${TIMES}.${index}.at`);
  if (times.length === 0) finder.add(TIMES, 'nobody-named', {});
  for (const [index, path] of times.entries()) {
    const before = times[index - 1];
    if (before !== undefined) checkAfter(finder, before, path);
  }
}

/** Covers and sheeting cost money, which nothing else would show. */
function checkSheeting({ origins, add }: Finder): void {
  const method = textAt('pour.curing', origins) ?? '';
  const price = 'company.suppliers.sundries.sheeting-price';
  if (COVERS.includes(method) && !origins.has(price))
    add('pour.curing', 'sheeting-without-price', { method });
}

/** Of times that could be read; each other one has a problem of its own. */
function checkAfter({ origins, add }: Finder, fromPath: string, toPath: string): void {
  const [from, to] = [fromPath, toPath].map((path) => {
    const written = textAt(path, origins) ?? '';
    const parsed = parseTimeOfDay(PARTS_OF_DAY[written.toLowerCase()] ?? written);
    return parsed.ok ? { minutes: parsed.value.minutes, text: written } : null;
  });
  if (from == null || to == null || from.minutes < to.minutes) return;
  add(toPath, 'time-not-after', { from: from.text, to: to.text });
}
