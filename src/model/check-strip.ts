import { itemsOf } from './outline-bases.ts';
import type { Finder } from './problems-found.ts';

const PIECES = ['straight', 'arc', 'turn'] as const;
type Piece = (typeof PIECES)[number];

/** What else stands with each: always, or one with the other. */
const WITH: Readonly<Record<Piece, readonly ('radius' | 'rounded' | 'back')[]>> = {
  straight: [],
  arc: ['radius'],
  turn: ['rounded', 'back'],
};
const OTHER_KEYS = ['radius', 'rounded', 'back'] as const;
const EXAMPLES = { radius: '10 ft', rounded: 'parallel', back: '3 ft' } as const;

/** @param path Of the line of a walk. */
export function checkStrip(finder: Finder, path: string): void {
  const items = itemsOf(path, finder.origins);
  if (items === null) return;
  if (items.length === 0) finder.add(path, 'line-empty', {});
  const pieces = items.map((item, index) => pieceAt(finder, `${path}.${item}`, index + 1));
  for (const [index, piece] of pieces.entries()) {
    if (piece !== 'turn') continue;
    const neighbours = [index === 0 ? undefined : pieces[index - 1], pieces[index + 1]];
    // A neighbour that is unclear has its own problem.
    if (neighbours.some((each) => each !== 'straight' && each !== null)) {
      finder.add(`${path}.${items[index]}.turn`, 'turn-not-between-straights', { piece: String(index + 1) });
    }
  }
}

/** What a piece is, with all keys that it needs; null where it is not one thing. */
function pieceAt({ origins, add }: Finder, path: string, number: number): Piece | null {
  const has = (key: string) => origins.has(`${path}.${key}`);
  const [piece, ...others] = PIECES.filter(has);
  if (piece === undefined || others.length > 0) {
    add(path, 'piece-unclear', { piece: String(number), known: PIECES });
    return null;
  }
  const own = WITH[piece];
  const isAsked = piece === 'arc' || own.some(has);
  for (const key of own) {
    if (isAsked && !has(key)) add(path, 'piece-lacks', { piece, key, example: EXAMPLES[key] });
  }
  for (const key of OTHER_KEYS) {
    if (has(key) && !own.includes(key)) add(`${path}.${key}`, 'piece-extra', { piece, key });
  }
  return piece;
}
