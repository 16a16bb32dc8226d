import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import type { Profile, Slab } from '../../../src/calculate/job.ts';
import { calcProfiles } from '../../../src/calculate/profiles/index.ts';
import type { CrewText } from '../../../src/calculate/text.ts';
import { testExpressions } from '../evaluate.ts';
import { graded, oldAtOrigin, pointsAt } from '../grades/a-grade.ts';
import { aSlab, rectangle } from '../slabs.ts';

const at = (xIn: number, yIn: number) => ({ xIn, yIn });

/** A drive of 40 by 18 ft that falls 2 % for 10 ft and 1 % for 30 ft; its old one lies 1 in lower, level across. */
const made = (use: Slab['use']) =>
  graded({
    slabs: [aSlab({ use, shape: rectangle(480, 216, { at: at(0, 0) }) })],
    existing: [oldAtOrigin()],
    points: [
      ...pointsAt({ a: [0, 0, 1200], b: [0, 216, 1200] }, 'fixed', { kind: 'stays' }),
      ...pointsAt(
        {
          c: [120, 0, 1197.6],
          d: [120, 216, 1197.6],
          e: [480, 0, 1194],
          f: [480, 216, 1194],
        },
        'finish',
      ),
      ...pointsAt(
        { g: [0, 0, 1199], h: [0, 216, 1199], i: [480, 0, 1193], j: [480, 216, 1193] },
        'existing',
        {
          kind: 'existing',
          id: 'old',
        },
      ),
    ],
  }).data.slabs;
const DRIVE = made('driveway');

function profileOf(along: readonly ReturnType<typeof at>[], beyond: Profile['beyond'] = [], slabs = DRIVE) {
  const profile = { id: 'middle', label: 'Middle' as CrewText, along, beyond };
  return calcProfiles({ profiles: { middle: profile }, graded: slabs });
}

describe('a profile', () => {
  test('exact: has a station at both edges of the slab and at its break, measured from its own start', () => {
    const { figures, problems } = profileOf([at(-60, 100), at(540, 100)]);
    expect(problems).toEqual([]);
    const stations = figures['middle']?.stations ?? {};
    expect(Object.entries(stations).map(([letter, { along }]) => [letter, num(along)])).toEqual([
      ['a', 60],
      ['b', 180],
      ['c', 540],
    ]);
    expect(Object.values(stations).map(({ finish }) => num(finish))).toEqual([1200, 1197.6, 1194]);
    // Old top 1199 - 1.5 at the break; its 4 in go, and the new slab takes 4 and 4.
    expect(stations['b']?.existing?.value).toBeCloseTo(1197.5, 9);
    expect(stations['b']?.['base-bottom']?.value).toBeCloseTo(1189.6, 9);
    expect(stations['b']?.dig?.value).toBeCloseTo(1197.5 - 4 - 1189.6, 9);
    const stretches = figures['middle']?.stretches ?? {};
    expect(Object.keys(stretches)).toEqual(['a-to-b', 'b-to-c']);
    expect(Object.values(stretches).map(({ slope }) => Math.round(num(slope) * 1e9) / 1e9)).toEqual([
      0.02, 0.01,
    ]);
  });

  test('goes on round a bend on one slab, and stands there too', () => {
    const { data } = profileOf([at(60, 60), at(240, 60), at(240, 156)]);
    const [drawn] = data.profiles;
    expect(drawn?.reaches).toHaveLength(1);
    expect(drawn?.stations.map(({ alongIn }) => alongIn)).toEqual([0, 60, 180, 276]);
    expect(drawn?.stations.at(-1)?.at).toEqual(at(240, 156));
    expect(drawn?.reaches[0]?.old.map(({ goneIn }) => goneIn)).toEqual([4, 4]);
  });

  test('leaves a slab and comes back to it: two reaches, with letters that go on', () => {
    const { data } = profileOf([at(100, 200), at(100, 300), at(200, 300), at(200, 100)]);
    expect(data.profiles[0]?.reaches.map(({ letters }) => letters)).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
  });

  test('is a problem where it meets no slab, or only the edge of one', () => {
    const problem = { code: 'profile-off-slabs', path: 'heights.profiles.middle.along', parts: {} };
    expect(profileOf([at(0, 300), at(480, 300)]).problems).toEqual([problem]);
    expect(profileOf([at(0, 216), at(480, 216)]).problems).toEqual([problem]);
    expect(profileOf([at(5, 5), at(5, 5)]).problems).toEqual([problem]);
  });

  describe('past its last slab', () => {
    const beyond = (...points: readonly (readonly [number, number])[]) =>
      points.map(([awayIn, heightIn]) => ({ label: 'There' as CrewText, awayIn, heightIn }));
    const line = [at(-60, 100), at(540, 100)];
    const straight = profileOf(line).figures['middle']!;
    const last = straight.stations['c']!;
    const lastSlope = num(straight.stretches['b-to-c']!.slope);

    // Published (worked): a gutter that falls 12 % met by an apron that climbs 3 % is a sag of 15 %: the climb after less
    // the climb before, as highway design manuals define a grade break (from memory).
    test('exact: a dip of so much as the climb after is above the climb before', () => {
      const heightIn = num(last.finish);
      const points = beyond([24, heightIn - 2.88], [100, heightIn + 0.12]);
      const figures = profileOf(line, points).figures['middle']?.beyond ?? {};
      expect(num(figures['point-1']!.slope)).toBeCloseTo(0.12, 12);
      expect(num(figures['point-1']!.crest!)).toBeCloseTo(0.12 - lastSlope, 12);
      expect(figures['point-1']!.sag).toBeUndefined();
      expect(num(figures['point-2']!.sag!)).toBeCloseTo(0.15, 12);
      expect(num(figures['point-2']!.along)).toBe(num(last.along) + 124);
      expect(num(figures['point-2']!.height)).toBe(heightIn + 0.12);
    });

    test('where no cars drive, only how it goes on is told', () => {
      const figures = profileOf(line, beyond([24, 1190], [60, 1192]), made('patio')).figures['middle'];
      expect(Object.values(figures?.beyond ?? {}).map((one) => Object.keys(one))).toEqual([
        ['along', 'height', 'slope'],
        ['along', 'height', 'slope'],
      ]);
    });

    testExpressions('beyond', profileOf(line, beyond([24, 1190], [60, 1192])).figures, 10);
  });
});
