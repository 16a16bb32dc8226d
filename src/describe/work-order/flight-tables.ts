import { num } from '../../calculate/figure.ts';
import {
  FOOT_SPOTS,
  RISER_SPREAD_IN,
  type SplitFigures,
  type StayFigures,
  treadWork,
} from '../../calculate/flights/index.ts';
import type { JobResults } from '../../calculate/index.ts';
import type { Flight, FootSpot } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

type Row = TableView['rows'][number];

/** The lowest step of each flight that stays, at both ends and in the middle; null where none stays. */
export function flightsTable(made: Made): TableView | null {
  const say = made.words.flights.stays;
  return tableOrNull(
    say.caption,
    [start(say.flight), start(say.spot), end(say.now), end(say.afterwards), start(say.surface)],
    Object.values(made.job.site.flights).flatMap((flight) => spotRows(flight, made)),
  );
}

function spotRows(flight: Flight, made: Made): readonly Row[] {
  const { show, words, results } = made;
  const say = words.flights.stays;
  const figures = figuresOf(flight, results);
  const [lowestIn = 0] = flight.risersIn;
  const rows = FOOT_SPOTS.map((spot) =>
    row(
      flight.label,
      say.spots[spot],
      show.fine(lowestIn),
      show.fine(num(figures.risers[spot])),
      surfaceText(spot, figures, made),
    ),
  );
  const last = rows.length - 1;
  return rows.map((one, index) => (index === last ? { ...one, note: flightNote(flight, made) } : one));
}

function surfaceText(spot: FootSpot, { surface }: StayFigures, { show, words }: Made): string {
  const say = words.flights.stays;
  if (surface === undefined) return say.noHelp;
  const [higherIn, lowerIn] = [num(surface.higher[spot]), num(surface.lower[spot])];
  if (higherIn > NOISE_IN) return say.higher(show.fineUp(higherIn));
  return lowerIn > NOISE_IN ? say.lower(show.fineUp(lowerIn)) : say.asPlanned;
}

function flightNote(flight: Flight, made: Made): string {
  const { show, words, results } = made;
  const say = words.flights.stays;
  const figures = figuresOf(flight, results);
  const others = flight.risersIn.slice(1).map(show.fine);
  const isSteep =
    results.flights.data.uneven.includes(flight.id) &&
    FOOT_SPOTS.every((spot) => surfaceText(spot, figures, made) === say.asPlanned);
  return [
    ...(figures.foot === undefined ? [] : [footText(figures.foot, made)]),
    ...(others.length === 0 ? [] : [say.others(others.join(say.and))]),
    say.difference(
      show.fineUp(num(figures['difference-now'])),
      show.fineUp(num(figures.difference)),
      show.fine(RISER_SPREAD_IN),
    ),
    moveText(figures, made),
    ...(isSteep ? [say.steep] : []),
  ].join(' ');
}

/** What the heights say of the surface at the foot, spot by spot. */
function footText(foot: NonNullable<StayFigures['foot']>, { show, words }: Made): string {
  const say = words.flights.stays;
  const { stays, up, down } = say;
  const spots = FOOT_SPOTS.map((spot) => {
    const changeIn = num(foot[spot].change);
    const size = show.fine(Math.abs(changeIn));
    const moves = size === show.fine(0) ? stays : (changeIn > 0 ? up : down)(size);
    return say.spotMoves(say.spots[spot], moves);
  });
  return say.fromHeights(spots.join(say.and));
}

/** Where the surface may lie against what is there now, so that no step has to be touched. */
function moveText({ surface }: StayFigures, { show, words }: Made): string {
  const say = words.flights.stays;
  if (surface === undefined) return say.othersUneven;
  const [upIn, downIn] = [num(surface['may-rise']), num(surface['may-drop'])];
  const [mustUpIn, mustDownIn] = [num(surface['must-rise']), num(surface['must-drop'])];
  if (mustUpIn > NOISE_IN) return say.mustRise(show.fineUp(mustUpIn), show.fineDown(upIn));
  if (mustDownIn > NOISE_IN) return say.mustDrop(show.fineUp(mustDownIn), show.fineDown(downIn));
  return say.mayMove(show.fineDown(upIn), show.fineDown(downIn));
}

/** The noise of a chain of doubles [in]. */
const NOISE_IN = 1e-9;

/**
 * What each tread has to come up or go down so that all steps are equal; for the flights that the new surface
 * leaves with steps too uneven or too high, and null where there is none.
 */
export function splitsTable(made: Made): TableView | null {
  const say = made.words.flights.splits;
  const rows = Object.values(made.job.site.flights).flatMap((flight) => {
    if (!made.results.flights.data.uneven.includes(flight.id)) return [];
    const figures = figuresOf(flight, made.results);
    const landingIn = flight.topping?.landingIn ?? 0;
    return [
      ...splitRows({ flight, split: figures.kept, landing: say.asItIs }, made),
      ...(figures.raised === undefined
        ? []
        : splitRows({ flight, split: figures.raised, landing: say.raised(made.show.fine(landingIn)) }, made)),
    ];
  });
  return tableOrNull(
    say.caption,
    [start(say.flight), start(say.landing), end(say.each), end(say.tread), end(say.change), start(say.work)],
    rows,
  );
}

function splitRows(
  made: { readonly flight: Flight; readonly split: SplitFigures; readonly landing: string },
  { show, words }: Made,
): readonly Row[] {
  const { flight, split, landing } = made;
  const say = words.flights.splits;
  const treads = Object.values(split.treads);
  const last = treads.length - 1;
  return treads.map((tread, index) => {
    const work = treadWork(tread);
    const [addIn, offIn] = [num(tread.add), num(tread['take-off'])];
    const moved = offIn > addIn ? say.down(show.fine(offIn)) : say.up(show.fine(addIn));
    const cells = row(
      flight.label,
      landing,
      show.fine(num(split.riser)),
      show.count(index + 1),
      work === 'as-it-is' ? say.none : moved,
      say.works[work],
    );
    if (index !== last || flight.topping === null) return cells;
    const { thinnestIn, thickestIn } = flight.topping;
    return { ...cells, note: say.topping(show.fine(thinnestIn), show.fine(thickestIn)) };
  });
}

function figuresOf({ id }: Flight, results: JobResults): StayFigures {
  return thingNamed(results.flights.figures.stays, id, 'flight');
}
