import { num } from '../figure.ts';
import type { Machine } from '../job.ts';
import type { UsableTrailer } from './usable-trailer.ts';

/** A machine that rides on a trailer: heavy enough that somebody wrote down how it is tied down. */
export type Riding = Machine & { readonly tiedDown: NonNullable<Machine['tiedDown']> };

/** What rides together on one trailer, heaviest first. */
export type Together = readonly Riding[];

/** The trailers that take all of these, one behind the other; the one that carries least first. */
export function trailersFor(
  together: Together,
  trailers: readonly UsableTrailer[],
): readonly UsableTrailer[] {
  const weightLb = together.reduce((sum, { tiedDown }) => sum + tiedDown.weightLb, 0);
  const lengthIn = together.reduce((sum, { tiedDown }) => sum + tiedDown.lengthIn, 0);
  return trailers
    .filter(({ trailer, figures }) => num(figures.payload) >= weightLb && trailer.box.lengthIn >= lengthIn)
    .sort((one, other) => num(one.figures.payload) - num(other.figures.payload));
}

/**
 * The machines in as few rides as their weights and lengths allow; in the order in which the first of each is
 * wanted, that is in the order given.
 *
 * @param riding - Each fits on one of the trailers by itself.
 */
export function fewestRides(
  riding: readonly Riding[],
  trailers: readonly UsableTrailer[],
): readonly Together[] {
  const byWeight = riding.toSorted(
    (one, other) => other.tiedDown.weightLb - one.tiedDown.weightLb || (one.id < other.id ? -1 : 1),
  );
  const wantedAt = (together: Together) => Math.min(...together.map((machine) => riding.indexOf(machine)));
  return place([], byWeight, byWeight.length, trailers).toSorted(
    (one, other) => wantedAt(one) - wantedAt(other),
  );
}

/** The fewest rides, at most so many, that begin with these; each machine where it fits first, then elsewhere. */
function place(
  rides: readonly Together[],
  left: readonly Riding[],
  most: number,
  trailers: readonly UsableTrailer[],
): readonly Together[] {
  const [machine, ...others] = left;
  if (machine === undefined) return rides;
  const fuller = rides.flatMap((ride, index) => {
    const more = [...ride, machine];
    return trailersFor(more, trailers).length === 0 ? [] : [rides.with(index, more)];
  });
  const ways = rides.length < most ? [...fuller, [...rides, [machine]]] : fuller;
  return ways.reduce<readonly Together[]>((best, way) => {
    const least = best.length === 0 ? most : best.length - 1;
    if (way.length > least) return best;
    const found = place(way, others, least, trailers);
    return found.length === 0 ? best : found;
  }, []);
}
