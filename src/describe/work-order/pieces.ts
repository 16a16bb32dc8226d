import { TASK_OF } from '../../calculate/breaking/index.ts';
import type { WorkDay } from '../../calculate/crew/index.ts';
import { num } from '../../calculate/figure.ts';
import type { Existing } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import { productionRow } from '../../calculate/production-row.ts';
import type { Made } from '../made.ts';
import type { FactView } from '../views.ts';

/** How large a piece may be, and how it is said as one limit of several. */
type Limit = { readonly sideIn: number; readonly say: (side: string) => string };
/** A limit that may be the least: why to break so small. */
type Reason = Limit & { readonly because: string };

/**
 * On a day on which things are broken, sawn or lifted out: how large their pieces may be, by the
 * hands, the machine and the places they go to. Things of which all is alike share a line.
 */
export function piecesFacts(made: Made, parts: readonly WorkDay[]): readonly FactView[] {
  const today = new Set(parts.flatMap(({ tasks }) => tasks.map(({ task }) => task)));
  const labelsByText = new Map<string, string[]>();
  for (const thing of Object.values(made.job.site.existing)) {
    const isSawn = today.has('saw-cut') && made.results.breaking.figures.grids[thing.id] !== undefined;
    if (!isSawn && !today.has(TASK_OF[thing.breakOut])) continue;
    const text = piecesText(thing, made);
    labelsByText.set(text, [...(labelsByText.get(text) ?? []), thing.label]);
  }
  const say = made.words.workOrder.breakPieces;
  return [...labelsByText].map(([text, labels]) => ({
    label: say.label,
    value: say.of(labels.join(', '), text),
  }));
}

/** What to break to or saw along, then the other limits, the smallest first; rounded down to the inch. */
function piecesText(thing: Existing, made: Made): string {
  const { results, show, words } = made;
  const say = words.workOrder.breakPieces;
  const size = (sideIn: number) => show.size(Math.floor(sideIn));
  const reasons = [byHand(thing, made), ...byPlaces(thing, made)].toSorted(smallestFirst);
  const grid = results.breaking.figures.grids[thing.id];
  const [least = byHand(thing, made), ...more] = reasons;
  const first =
    grid === undefined
      ? say.broken(size(least.sideIn), least.because)
      : say.sawn(show.size(num(grid['piece-along'])), show.size(num(grid['piece-across'])));
  const others: readonly Limit[] = [...(grid === undefined ? more : reasons), ...byMachine(thing, made)];
  return say.list([first, ...others.toSorted(smallestFirst).map((limit) => limit.say(size(limit.sideIn)))]);
}

function smallestFirst(one: Limit, other: Limit): number {
  return one.sideIn - other.sideIn;
}

function byHand({ id }: Existing, { results, words }: Made): Reason {
  const { because, more } = words.workOrder.breakPieces.hand;
  const figures = thingNamed(results.tearOut.figures.existing, id, 'existing thing');
  return { sideIn: num(figures['hand-piece']), because, say: more };
}

function byMachine({ id, breakOut }: Existing, { job, results, words }: Made): readonly Limit[] {
  const { machines, production } = job.company;
  const piece = results.breaking.figures['machine-piece'][id];
  const { machine } = productionRow(production, TASK_OF[breakOut]);
  if (piece === undefined || machine === null) return [];
  const { label } = thingNamed(machines, machine, 'machine');
  const { machine: say } = words.workOrder.breakPieces;
  return [{ sideIn: num(piece), say: (side) => say(label, side) }];
}

/** Of each place that a load with some of it goes to, where it said how large a piece it takes. */
function byPlaces({ id }: Existing, { job, results, words }: Made): readonly Reason[] {
  const { because, more } = words.workOrder.breakPieces.place;
  const goesTo = results.haul.data.loads.flatMap(({ place, pieces }) =>
    pieces.some(({ existingId }) => existingId === id) ? [place] : [],
  );
  return [...new Set(goesTo)].flatMap((placeId) => {
    const { label, largestPiece } = thingNamed(job.company.places, placeId, 'place');
    if (largestPiece === null) return [];
    return [
      { sideIn: largestPiece.sideIn, because: because(label), say: (side: string) => more(label, side) },
    ];
  });
}
