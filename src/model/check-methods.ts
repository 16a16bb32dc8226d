import { childrenOf } from './paths.ts';
import { type Finder, idAt } from './problems-found.ts';

/** The row of production that a way of taking things out needs; the breaker's is always asked for. */
const METHOD_ROWS: Readonly<Record<string, { readonly row: string; readonly example: string }>> = {
  jackhammer: { row: 'break-out-by-hand', example: '{ pace: 40 sq ft per h, people: 1 }' },
  'saw-and-lift': {
    row: 'saw-and-lift',
    example: '{ pace: 200 sq ft per h, people: 2, machine: loader }',
  },
};
const CHIPPING = 'company.production.chip';
const LIFTING = 'company.production.saw-and-lift';

/** Things go at a pace of the company, and pieces are sawn to what its machine lifts. */
export function checkMethods(finder: Finder): void {
  const { origins, add } = finder;
  if (!origins.has('company.production')) return;
  if (childrenOf('site.chip', origins).length > 0 && !origins.has(CHIPPING))
    add('site.chip', 'no-pace-for-chip', {});
  const asked = childrenOf('site.existing', origins).flatMap((id) => {
    const path = `site.existing.${id}.break-out`;
    const method = idAt(path, origins) ?? '';
    const row = METHOD_ROWS[method];
    return row === undefined ? [] : [{ path, method, ...row }];
  });
  for (const { path, ...parts } of asked) {
    if (!origins.has(`company.production.${parts.row}`)) add(path, 'no-pace-for-method', parts);
  }
  if (asked.some(({ method }) => method === 'saw-and-lift') && origins.has(LIFTING)) checkLifter(finder);
}

/** A machine that is named and not there has a problem of its own. */
function checkLifter({ origins, add }: Finder): void {
  const path = `${LIFTING}.machine`;
  if (!origins.has(path)) add(LIFTING, 'lift-without-machine', {});
  const machine = idAt(path, origins) ?? '';
  const place = `company.machines.${machine}`;
  if (origins.has(place) && !origins.has(`${place}.lifts`)) add(path, 'machine-without-lift', { machine });
}
