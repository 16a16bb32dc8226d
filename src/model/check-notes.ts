import type { Origins } from '../problems/index.ts';
import { childrenOf } from './paths.ts';
import { type Finder, idAt, textAt } from './problems-found.ts';

export const POINTS = 'heights.points';
export const NOTES = 'heights.notes';

const READINGS = ['height', 'backsight', 'foresight'] as const;

type Note = { readonly path: string; readonly on: string; readonly says: (typeof READINGS)[number] };

/** Whether every sight of level notes can have a height: in their order, whatever the numbers are. */
export function checkNotes(finder: Finder): void {
  const { origins, add } = finder;
  const hasNotes = origins.has(NOTES);
  const hasError = origins.has('heights.closing-error');
  if (!hasNotes && hasError) add('heights.closing-error', 'closing-error-without-notes', {});
  if (!hasNotes) return;
  if (!hasError) add('heights', 'missing-key', { key: 'closing-error', thing: 'heights', example: '1/8 in' });
  if (childrenOf(NOTES, origins).length === 0) add(NOTES, 'nobody-named', {});
  const notes = notesOf(finder);
  checkKnown(finder, notes);
  checkOrder(finder, notes);
  for (const { path, on, says } of notes) {
    if (says !== 'height' && isFinish(origins, on)) add(`${path}.on`, 'finish-sighted', { station: on });
  }
}

/** Whether a point has its height from a note, or a note that has a problem of its own. */
export function isInNotes(origins: Origins, id: string): boolean {
  return childrenOf(NOTES, origins).some((index) => textAt(`${NOTES}.${index}.on`, origins) === id);
}

function isFinish(origins: Origins, station: string): boolean {
  return textAt(`${POINTS}.${station}.kind`, origins) === 'finish';
}

/** Where a job path was written, `jobs/walk/heights.yaml:4`. */
export function lineOf(path: string, origins: Origins): string {
  const spot = origins.get(path)?.spot ?? null;
  return spot === null ? path : `${spot.file}:${spot.line}`;
}

/** The notes that say one thing; each other one is a problem. */
function notesOf({ origins, add }: Finder): readonly Note[] {
  return childrenOf(NOTES, origins).flatMap((index) => {
    const path = `${NOTES}.${index}`;
    const on = idAt(`${path}.on`, origins);
    const said = READINGS.filter((key) => origins.has(`${path}.${key}`));
    const [says] = said;
    if (said.length !== 1) add(path, 'note-unclear', { known: READINGS });
    return says === undefined || said.length > 1 || on === null ? [] : [{ path, on, says }];
  });
}

/** A known height is written once: two of them would be two datums. */
function checkKnown({ origins, add }: Finder, notes: readonly Note[]): void {
  const written = new Map<string, string>();
  for (const { path, on, says } of notes) {
    if (says !== 'height') continue;
    const point = `${POINTS}.${on}.height`;
    const first = written.get(on) ?? (origins.has(point) ? point : null);
    const at = `${path}.height`;
    if (first === null) written.set(on, at);
    else add(at, 'height-twice', { station: on, where: lineOf(first, origins) });
  }
}

/** A set-up stands on a known height or on what was sighted before; a sight is taken from a set-up. */
function checkOrder({ origins, add }: Finder, notes: readonly Note[]): void {
  const known = new Set([
    ...notes.flatMap(({ on, says }) => (says === 'height' ? [on] : [])),
    ...childrenOf(POINTS, origins).filter((id) => origins.has(`${POINTS}.${id}.height`)),
  ]);
  const sighted = new Set<string>();
  let last = '';
  let hasSetUp = false;
  for (const { path, on, says } of notes) {
    if (says === 'foresight') {
      if (!hasSetUp) add(path, 'foresight-before-backsight', {});
      hasSetUp = true;
      sighted.add(on);
      last = on;
    } else if (says === 'backsight') {
      const heights = [...new Set([...known, ...sighted])];
      if (heights.length === 0) add(`${path}.on`, 'notes-without-start', { station: on });
      else if (!heights.includes(on))
        add(`${path}.on`, 'backsight-on-unknown', {
          station: on,
          last,
          known: heights.filter((station) => !isFinish(origins, station)),
        });
      hasSetUp = true;
      // One mistake is one problem: what is sighted from here counts as having a height.
      sighted.add(on);
    }
  }
}
