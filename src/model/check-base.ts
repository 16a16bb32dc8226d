import { checkStrip } from './check-strip.ts';
import { type Base, CORNERS_OF_BASE, itemsOf } from './outline-bases.ts';
import type { Finder } from './problems-found.ts';

const FEWEST_CORNERS = 3;

/** Whether the base has an outline at all; what is wrong with its parts is found on the way. */
export function checkBase(finder: Finder, path: string, base: Base): boolean {
  switch (base) {
    case 'corners':
      return hasEnough(finder, `${path}.corners`, 'too-few-corners');
    case 'sides':
      checkTurns(finder, `${path}.sides`);
      return hasEnough(finder, `${path}.sides`, 'too-few-sides');
    case 'triangles':
      return checkTriangles(finder, `${path}.triangles.corners`);
    case 'strip':
      checkStrip(finder, `${path}.strip.line`);
      return true;
    default:
      return true;
  }
}

function hasEnough(
  { origins, add }: Finder,
  path: string,
  code: 'too-few-corners' | 'too-few-sides',
  beside = 0,
): boolean {
  const items = itemsOf(path, origins);
  if (items === null) return false;
  const count = beside + items.length;
  if (count < FEWEST_CORNERS) add(path, code, { count: String(count) });
  return count >= FEWEST_CORNERS;
}

/** The first side goes along; each other one turns from the one before. */
function checkTurns({ origins, add }: Finder, path: string): void {
  for (const [index, item] of (itemsOf(path, origins) ?? []).entries()) {
    const turn = `${path}.${item}.turn`;
    if (index === 0 && origins.has(turn)) add(turn, 'first-side-turns', {});
    if (index > 0 && !origins.has(turn)) {
      add(`${path}.${item}`, 'side-without-turn', { side: String(index + 1) });
    }
  }
}

/** Every corner is measured from two others that stand before it. */
function checkTriangles(finder: Finder, path: string): boolean {
  const { origins, add } = finder;
  for (const [index, item] of (itemsOf(path, origins) ?? []).entries()) {
    const corner = CORNERS_OF_BASE + 1 + index;
    const [first, second] = ['0', '1'].map((place) => {
      const at = `${path}.${item}.from.${place}`;
      const named = numberAt(at, finder);
      if (named !== null && named >= corner) {
        const known = Array.from({ length: corner - 1 }, (_, before) => String(before + 1));
        add(at, 'corner-not-fixed', { corner: String(corner), named: String(named), known });
      }
      return named;
    });
    if (first !== null && first === second) {
      add(`${path}.${item}.from.1`, 'corner-named-twice', { named: String(first) });
    }
  }
  return hasEnough(finder, path, 'too-few-corners', CORNERS_OF_BASE);
}

/** A corner number as written; null where it is none, which the reader refuses. */
function numberAt(path: string, { origins }: Finder): number | null {
  const written = origins.get(path)?.text.replace(/^(["'])(.*)\1$/, '$2');
  return written !== undefined && /^[1-9]\d?$/.test(written) ? Number(written) : null;
}
