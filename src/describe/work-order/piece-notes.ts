import { pieceFits } from '../../calculate/haul/index.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { DumpPlace, Existing, Job } from '../../calculate/job.ts';
import type { Made } from '../made.ts';
import { placesUsed } from '../parts/places-used.ts';

/** How small to break for each place that said so, and what is too thick for where it goes. */
export function pieceNotes({ job, results, show, words }: Made): readonly string[] {
  const say = words.workOrder.pieces;
  return placesUsed(job, results).flatMap(({ id, label, largestPiece }) => {
    const things = thingsTakenTo(id, job, results);
    if (largestPiece === null || things.length === 0) return [];
    const { sideIn, thicknessIn } = largestPiece;
    const tooThick = things.filter((thing) => isTooThick(thing, largestPiece));
    return [
      say.most(show.size(sideIn), label),
      ...tooThick.map((thing) =>
        say.tooThick(thing.label, show.size(thing.thicknessIn), label, show.size(thicknessIn)),
      ),
    ];
  });
}

/** The existing things of which a load goes to a place, each once; soil comes in no pieces. */
function thingsTakenTo(placeId: string, job: Job, { haul }: JobResults): readonly Existing[] {
  const ids = haul.data.loads
    .filter(({ place }) => place === placeId)
    .flatMap(({ pieces }) => pieces.flatMap(({ existingId }) => existingId ?? []));
  return [...new Set(ids)].flatMap((id) => job.site.existing[id] ?? []);
}

/** Whether its pieces stay too large even when they are broken to the side that the place takes. */
function isTooThick(thing: Existing, limit: NonNullable<DumpPlace['largestPiece']>): boolean {
  const { sideIn } = limit;
  return !pieceFits({ lengthIn: sideIn, widthIn: sideIn, thicknessIn: thing.thicknessIn }, limit);
}
