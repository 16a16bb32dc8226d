import type { LinePiece } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { type Figure, figure, num } from '../figure.ts';
import { type GradedSlab, type PlaceFigures, placeAt } from '../grades/index.ts';
import type { Profile } from '../job.ts';
import type { TopicResult } from '../topic.ts';
import { type BeyondFigures, beyondFigures } from './beyond-figures.ts';
import { type ProfileRun, profileRun, type Station } from './profile-run.ts';

export { stationLetter } from './profile-run.ts';

export type StationFigures = PlaceFigures & {
  /** From the start of the profile [in]. */
  readonly along: Figure;
};

export type StretchFigures = {
  /** How much it falls or climbs, along the profile [rise over run]. */
  readonly slope: Figure;
};

export type ProfileFigures = {
  /** By letter: ends and breaks of the new surface. */
  readonly stations: Readonly<Record<string, StationFigures>>;
  /** By the letters of its ends: `a-to-b`. */
  readonly stretches: Readonly<Record<string, StretchFigures>>;
  /** Points past the last slab, `point-1`; only where some are given. */
  readonly beyond?: Readonly<Record<string, BeyondFigures>>;
};

/** A profile as it is drawn and listed. */
export type DrawnProfile = ProfileRun & {
  readonly profile: Profile;
  readonly figures: ProfileFigures;
};

export type ProfilesResult = TopicResult<
  Readonly<Record<string, ProfileFigures>>,
  { readonly profiles: readonly DrawnProfile[] }
>;

/**
 * The new surface and what is there now along chosen lines, from slab to slab.
 *
 * @param input.graded The slabs whose surface is known from the heights of the job.
 */
export function calcProfiles(input: {
  readonly profiles: Readonly<Record<string, Profile>>;
  readonly graded: Readonly<Record<string, GradedSlab>>;
}): ProfilesResult {
  const slabs = Object.values(input.graded);
  const drawn = Object.values(input.profiles).map((profile): DrawnProfile => {
    const run = profileRun(profile.along, slabs);
    return { ...run, profile, figures: profileFigures(profile, run) };
  });
  return {
    figures: Object.fromEntries(drawn.map(({ profile, figures }) => [profile.id, figures])),
    data: { profiles: drawn },
    problems: drawn
      .filter(({ reaches }) => reaches.length === 0)
      .map(
        ({ profile }): CoreProblem => ({
          code: 'profile-off-slabs',
          path: `heights.profiles.${profile.id}.along`,
          parts: {},
        }),
      ),
  };
}

function profileFigures(profile: Profile, run: ProfileRun): ProfileFigures {
  const { stations, reaches } = run;
  const figures = Object.fromEntries(stations.map((station) => [station.letter, stationFigures(station)]));
  const stretches = reaches.flatMap(({ pieces, letters }) =>
    pieces.map((piece, index) => {
      const [from, to] = [letters[index] ?? '', letters[index + 1] ?? ''];
      return [`${from}-to-${to}`, stretchFigures(piece, figures[from], figures[to])] as const;
    }),
  );
  const [before, last] = stations.slice(-2).map(({ letter }) => figures[letter]);
  const beyond =
    before === undefined || last === undefined
      ? {}
      : beyondFigures(profile, run, [
          { along: before.along, height: before.finish },
          { along: last.along, height: last.finish },
        ]);
  return {
    stations: figures,
    stretches: Object.fromEntries(stretches),
    ...(Object.keys(beyond).length === 0 ? {} : { beyond }),
  };
}

function stationFigures({ slab, at, alongIn }: Station): StationFigures {
  return {
    along: figure({
      value: alongIn,
      unit: 'in',
      decimals: 2,
      formula: { method: 'along the line of the profile from its first point' },
      inputs: {},
    }),
    ...placeAt(slab, slab.parts, at),
  };
}

/** @throws {RangeError} If an end has no figures. */
function stretchFigures(
  piece: LinePiece,
  from: StationFigures | undefined,
  to: StationFigures | undefined,
): StretchFigures {
  if (from === undefined || to === undefined) throw new RangeError('a stretch without its ends');
  const inputs = { fromIn: from.finish, toIn: to.finish, startIn: from.along, endIn: to.along };
  return {
    slope: figure({
      value: Math.abs(num(from.finish) - num(to.finish)) / (piece.toIn - piece.fromIn),
      unit: 'ratio',
      decimals: 4,
      formula: 'max(fromIn - toIn, toIn - fromIn) / (endIn - startIn)',
      inputs,
    }),
  };
}
