import { describe, expect, test } from 'vitest';
import { calcClearances, leastClearance } from '../../../src/calculate/clearances/index.ts';
import { num } from '../../../src/calculate/figure.ts';
import type { WallPart } from '../../../src/calculate/job.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { testExpressions } from '../evaluate.ts';
import { graded, pointsAt } from '../grades/a-grade.ts';
import { aSlab, byId, rectangle } from '../slabs.ts';

const drive = aSlab({ shape: rectangle(480, 216, { at: { xIn: 0, yIn: 0 } }) });
// Level across at 100 in, falling 10 in along its 480.
const spots = { house: [0, 0, 100], wall: [0, 216, 100], street: [480, 0, 90] } as const;
const { slabs: gradedSlabs } = graded({ slabs: [drive], points: pointsAt(spots, 'finish') }).data;

function aPart(changed: Partial<WallPart> = {}): WallPart {
  return {
    id: 'siding',
    label: 'Siding' as PublicText,
    kind: 'siding',
    at: { xIn: 240, yIn: 216 },
    heightIn: 97,
    beside: { kind: 'slab', id: 'drive' },
    leastIn: null,
    ...changed,
  };
}

function calc(changed: Partial<WallPart> = {}, surfaces: Partial<typeof gradedSlabs> = gradedSlabs) {
  const { figures, problems } = calcClearances({
    walls: byId(aPart(changed)),
    slabs: { drive },
    graded: surfaces as typeof gradedSlabs,
  });
  const made = figures['siding'];
  const values =
    made === undefined
      ? null
      : Object.fromEntries(Object.entries(made).map(([key, figure]) => [key, num(figure)]));
  return { values, problems, figures };
}

describe('parts of walls', () => {
  test('exact: half way down a slab that falls 10 in, and what lacks to 2 in', () => {
    expect(calc().values).toEqual({
      surface: expect.closeTo(95, 9),
      clearance: expect.closeTo(2, 9),
      buried: 0,
      least: 2,
      'short-by': expect.closeTo(0, 9),
    });
    expect(calc({ heightIn: 96.25 }).values).toMatchObject({
      clearance: expect.closeTo(1.25, 9),
      'short-by': expect.closeTo(0.75, 9),
    });
  });

  test('exact: covered by what lies above it; nothing published is short of nothing', () => {
    expect(calc({ kind: 'brick-weeps', heightIn: 94 }).values).toEqual({
      surface: expect.closeTo(95, 9),
      clearance: 0,
      buried: expect.closeTo(1, 9),
    });
    expect(calc({ heightIn: 94 }).values).toMatchObject({ 'short-by': 2 });
  });

  test('earth lies as high as the job says, also below the datum', () => {
    const beside = { kind: 'earth', heightIn: -3 } as const;
    expect(calc({ beside, heightIn: 1 }).values).toEqual({
      surface: -3,
      clearance: 4,
      buried: 0,
      least: 6,
      'short-by': 2,
    });
  });

  test('the least of the job counts before that of the table', () => {
    expect(calc({ leastIn: 3 }).values).toMatchObject({ least: 3, 'short-by': expect.closeTo(1, 9) });
    expect(calc({ kind: 'vent', leastIn: 3 }).values).toMatchObject({ least: 3 });
    expect(calc({ leastIn: 0 }).values).toMatchObject({ least: 0, 'short-by': 0 });
  });

  test('a slab without a surface is a problem, and so is one that is not beside it', () => {
    expect(calc({}, {}).problems).toEqual([
      { code: 'wall-without-surface', path: 'heights.walls.siding.beside', parts: { slab: 'Driveway' } },
    ]);
    expect(calc({ at: { xIn: 240, yIn: 228 } }).problems).toEqual([]);
    expect(calc({ at: { xIn: 240, yIn: 230 } })).toMatchObject({
      values: null,
      problems: [
        {
          code: 'wall-off-slab',
          path: 'heights.walls.siding.at',
          parts: { slab: 'Driveway', by: '1′ 2″' },
        },
      ],
    });
  });

  // From memory: International Residential Code, R317.1 and R703.7.2.1. Seen: Masonry and Concrete (2004), p. 285.
  test.each([
    ['siding', 2, 6],
    ['weep-screed', 2, 4],
    ['door-sill', 1, null],
    ['brick-weeps', null, null],
    ['vent', null, null],
    ['window-well', null, null],
  ] as const)('published: %s stays %s in above a slab and %s in above earth', (kind, slabIn, earthIn) => {
    expect(leastClearance(kind, 'slab')?.value ?? null).toBe(slabIn);
    expect(leastClearance(kind, 'earth')?.value ?? null).toBe(earthIn);
  });
});

testExpressions('parts of walls', calc({ heightIn: 96.3 }).figures, 4);
