import { nearestName } from '../problems/index.ts';
import { parseTimeOfDay } from '../units/index.ts';
import { childrenOf } from './paths.ts';
import { checkNamedOnce, type Finder, textAt } from './problems-found.ts';

/** What does not fit together at a place that takes rubble: lists, surcharges, base and hours. */
export function checkPlaces(finder: Finder): void {
  for (const id of childrenOf('company.places', finder.origins)) {
    const path = `company.places.${id}`;
    checkList(finder, `${path}.accepts`);
    checkList(finder, `${path}.open-on`);
    checkSurcharges(finder, path);
    checkFeeWithBase(finder, path);
    checkHours(finder, `${path}.open`);
  }
}

function checkList(finder: Finder, path: string): void {
  if (!finder.origins.has(path)) return;
  if (childrenOf(path, finder.origins).length === 0) finder.add(path, 'nobody-named', {});
  checkNamedOnce(finder, path);
}

function checkSurcharges({ origins, add }: Finder, path: string): void {
  const known = childrenOf(`${path}.accepts`, origins).flatMap(
    (index) => textAt(`${path}.accepts.${index}`, origins) ?? [],
  );
  for (const stream of childrenOf(`${path}.surcharges`, origins)) {
    if (known.includes(stream) || known.length === 0) continue;
    const nearest = nearestName(stream, known);
    add(`${path}.surcharges.${stream}`, 'surcharge-not-accepted', { stream, nearest, known });
  }
}

function checkFeeWithBase({ origins, add }: Finder, path: string): void {
  if (textAt(`${path}.sells-base`, origins) !== 'no') return;
  for (const key of ['fee-with-base', 'base'])
    if (origins.has(`${path}.${key}`)) add(`${path}.${key}`, 'base-not-sold', {});
}

/** Of times that could be read; each other one has a problem of its own. */
function checkHours({ origins, add }: Finder, path: string): void {
  const timeAt = (key: string) => {
    const text = textAt(`${path}.${key}`, origins);
    const parsed = text === null ? null : parseTimeOfDay(text);
    return parsed?.ok === true ? parsed.value : null;
  };
  const [from, to, lastLoad] = [timeAt('from'), timeAt('to'), timeAt('last-load')];
  if (from === null || to === null) return;
  if (!(from.minutes < to.minutes))
    add(`${path}.to`, 'closes-before-opening', { from: from.text, to: to.text });
  else if (lastLoad !== null && !(lastLoad.minutes > from.minutes && lastLoad.minutes <= to.minutes))
    add(`${path}.last-load`, 'last-load-outside-hours', {
      lastLoad: lastLoad.text,
      from: from.text,
      to: to.text,
    });
}
