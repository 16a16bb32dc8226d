import { describe, expect, test } from 'vitest';
import { num } from '../../../src/calculate/figure.ts';
import { calcFlights } from '../../../src/calculate/flights/index.ts';
import type { Flight } from '../../../src/calculate/job.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { graded, oldAtOrigin, pointsAt } from '../grades/a-grade.ts';
import { aSlab, rectangle } from '../slabs.ts';

const at = (xIn: number, yIn: number) => ({ xIn, yIn });

/**
 * A walk of 40 by 18 ft at the foot of some steps at its start. The new one falls 1 in in 100 in across, from
 * 100 in; the old one is level at 99 in.
 */
function walk(known: boolean) {
  return graded({
    slabs: [aSlab({ id: 'walk', label: 'Walk' as PublicText, shape: rectangle(480, 216, { at: at(0, 0) }) })],
    existing: [oldAtOrigin()],
    points: [
      ...pointsAt({ a: [0, 0, 100], b: [480, 0, 96], c: [0, 200, 98] }, 'finish'),
      ...(known
        ? pointsAt({ d: [0, 0, 99], e: [480, 0, 99], f: [0, 216, 99] }, 'existing', {
            kind: 'existing',
            id: 'old',
          })
        : []),
    ],
  }).data.slabs;
}

function stay(foot: Flight['foot'], known = true) {
  const porch: Flight = {
    id: 'porch',
    label: 'Porch steps' as PublicText,
    risersIn: [7.5, 7, 7],
    treadIn: 11,
    widthIn: 100,
    foot,
    topping: null,
  };
  const { figures, data, problems } = calcFlights({
    flights: { porch },
    steps: {},
    points: undefined,
    graded: walk(known),
  });
  return { porch: figures.stays['porch'], uneven: data.uneven, problems };
}

const ends = (left: readonly [number, number], right: readonly [number, number]) =>
  ({ kind: 'ends', left: at(...left), right: at(...right) }) as const;

describe('what changes at the foot of a flight, from the heights', () => {
  test('exact: the new surface less what is there now, at both ends and halfway', () => {
    const { porch, problems } = stay(ends([0, 0], [0, 100]));
    expect(problems).toEqual([]);
    const { left, middle, right } = porch?.foot ?? {};
    expect([left, middle, right].map((spot) => spot && num(spot.change))).toEqual([1, 0.5, 0]);
    expect([left, middle, right].map((spot) => spot && num(spot.planned))).toEqual([100, 99.5, 99]);
    expect(Object.values(porch?.risers ?? {}).map(num)).toEqual([6.5, 7, 7.5]);
    // The middle of the foot carries the split: 21 1/2 in less 1/2 in, in three.
    expect(porch === undefined ? null : num(porch.kept.riser)).toBe(7);
  });

  test('exact: a walk that pitches along the step is uneven by that alone', () => {
    expect(stay(ends([0, 0], [0, 100])).uneven).toEqual(['porch']);
    // 6.7 to 6.8 in beside 7 in.
    expect(stay(ends([0, 20], [0, 30])).uneven).toEqual([]);
  });

  test('a foot is at a slab up to a foot away, and no further', () => {
    expect(stay(ends([-12, 0], [-12, 100])).problems).toEqual([]);
    expect(stay(ends([-12.1, 0], [-12.1, 100])).problems).toEqual([
      { code: 'foot-off-slabs', path: 'site.flights.porch.foot-ends', parts: {} },
    ]);
  });

  test('where nobody knows what is there now, it is asked for', () => {
    expect(stay(ends([0, 0], [0, 100]), false).problems).toEqual([
      { code: 'foot-without-old', path: 'site.flights.porch.foot-ends', parts: { slab: 'Walk' } },
    ]);
  });

  test('a surface above the lowest tread is a problem where the foot is said', () => {
    const { problems } = stay({ kind: 'ends', left: at(0, -650), right: at(0, 650) });
    expect(problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'foot-above-tread site.flights.porch.foot-ends',
    ]);
  });

  test('what the job says goes before', () => {
    const changeIn = { left: 0.25, middle: 0.5, right: 0.75 };
    const { porch, problems } = stay({ kind: 'typed', changeIn });
    expect(problems).toEqual([]);
    expect(porch?.foot).toBeUndefined();
    expect(Object.values(porch?.risers ?? {}).map(num)).toEqual([7.25, 7, 6.75]);
  });
});
