import { checkNotes, isInNotes, lineOf, NOTES, POINTS } from './check-notes.ts';
import { childrenOf } from './paths.ts';
import { checkId, type Finder, idAt, textAt } from './problems-found.ts';
import { tieInHeights } from './tie-in-heights.ts';

const LAYERS = ['tile', 'overlay'];
const WALLS = 'heights.walls';
/** Keys of what has a height against the datum. */
const HEIGHTS = ['height', 'ground'];
const STOOD_ON_WORDS = ['stays', 'dirt'];

/** What of heights does not fit together, whatever the numbers are. */
export function checkHeights(finder: Finder): void {
  const points = childrenOf(POINTS, finder.origins);
  if (finder.origins.has(POINTS) && points.length === 0) finder.add(POINTS, 'nobody-named', {});
  for (const id of points) checkPoint(finder, id);
  checkNotes(finder);
  checkMixed(finder);
}

function checkPoint(finder: Finder, id: string): void {
  const { origins, add } = finder;
  const path = `${POINTS}.${id}`;
  if (!origins.has(`${path}.height`) && !isInNotes(origins, id)) add(path, 'height-missing', {});
  const kind = textAt(`${path}.kind`, origins);
  const hasStoodOn = origins.has(`${path}.stood-on`);
  if (kind === 'finish' && hasStoodOn) add(`${path}.stood-on`, 'stood-on-of-finish', {});
  if (kind === 'existing' && !hasStoodOn) add(path, 'stood-on-missing', {});
  if (kind !== 'finish' && hasStoodOn) checkStoodOn(finder, path, kind);
}

function checkStoodOn(finder: Finder, path: string, kind: string | null): void {
  const { origins, add } = finder;
  const at = `${path}.stood-on`;
  checkId(finder, at, {
    thing: 'existing',
    below: 'site.existing',
    mayBeNone: origins.has('site'),
    orWords: STOOD_ON_WORDS,
  });
  const id = idAt(at, origins);
  if (kind === 'fixed' && id === 'dirt') add(at, 'fixed-on-dirt', {});
  if (id === null || STOOD_ON_WORDS.includes(id)) return;
  const thing = `site.existing.${id}`;
  if (origins.has(`${thing}.walls`)) add(at, 'stood-on-walls', { id });
  else if (kind === 'fixed' && origins.has(thing) && !isLayered(finder, thing))
    add(at, 'fixed-on-what-goes', { id });
}

/** A layer without its thickness has a problem of its own. */
function isLayered({ origins }: Finder, thing: string): boolean {
  return LAYERS.includes(textAt(`${thing}.coating`, origins) ?? '');
}

/**
 * A sign means inches from a datum called 0, no sign a height from one with a height of its own: side by
 * side they are a datum apart. Zero fits both.
 */
function checkMixed({ origins, add }: Finder): void {
  const paths = [POINTS, NOTES, WALLS]
    .flatMap((below) =>
      childrenOf(below, origins).flatMap((name) => HEIGHTS.map((key) => `${below}.${name}.${key}`)),
    )
    .concat(tieInHeights(origins));
  const written = paths.flatMap((path) => {
    const text = textAt(path, origins) ?? '';
    const isZero = !/[1-9]/.test(text);
    return isZero ? [] : [{ path, text, isSigned: /^\s*[+\-−]/.test(text) }];
  });
  const [first] = written;
  const other = written.find(({ isSigned }) => isSigned !== first?.isSigned);
  if (first === undefined || other === undefined) return;
  const [signed, plain] = first.isSigned ? [first, other] : [other, first];
  add(other.path, 'heights-mixed', {
    signed: signed.text,
    plain: plain.text,
    first: lineOf(first.path, origins),
  });
}
