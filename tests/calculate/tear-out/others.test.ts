import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FigureTree, num } from '../../../src/calculate/figure.ts';
import type { Chip, Green, OldSteps, Posts } from '../../../src/calculate/job.ts';
import { calcTearOut } from '../../../src/calculate/tear-out/index.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { runCount } from '../../support/property-runs.ts';
import { crewOf, production, row } from '../crew/a-plan.ts';
import { byId } from '../haul/a-haul.ts';
import { expressionCount, wrongFormulas } from '../haul/reevaluate.ts';

const SEED = 20_261_129;
const label = (text: string) => text as PublicText;

function someSteps(changed: Partial<OldSteps> = {}): OldSteps {
  return {
    id: 'porch',
    label: label('Porch steps'),
    material: 'concrete',
    steel: 'none',
    widthIn: 60,
    riserCount: 3,
    riserIn: 7,
    treadIn: 12,
    landingIn: 36,
    ...changed,
  };
}

function somePosts(changed: Partial<Posts> = {}): Posts {
  const footing = { diameterIn: 12, depthIn: 30 };
  return { id: 'fence', label: label('Fence posts'), count: 4, footing, ...changed };
}

const HEDGE: Green = { id: 'hedge', label: label('Hedge'), looseCuYd: 3, looseLbPerCuFt: 10 };

const LIP: Chip = { id: 'lip', label: label('Garage lip'), areaSqFt: 6, thicknessIn: 0.25 };

function torn(things: {
  readonly posts?: readonly Posts[];
  readonly steps?: readonly OldSteps[];
  readonly green?: readonly Green[];
  readonly chip?: readonly Chip[];
}) {
  return calcTearOut({
    existing: {},
    hollow: {},
    posts: byId(things.posts ?? []),
    oldSteps: byId(things.steps ?? []),
    green: byId(things.green ?? []),
    chip: byId(things.chip ?? []),
    slabs: {},
    shapes: { slabs: {}, existing: {} },
    outlines: {},
  });
}

function stepsVolumeCuFt(changed: Partial<OldSteps>): number {
  const volume = torn({ steps: [someSteps(changed)] }).figures['old-steps']['porch']?.volume;
  return volume === undefined ? Number.NaN : num(volume);
}

const ways = (result: ReturnType<typeof torn>) =>
  result.data.cargo.map(({ name, existingId, stream }) => [name, existingId, stream]);

describe('posts', () => {
  test('exact: round footings, as clean concrete', () => {
    const result = torn({ posts: [somePosts()] });
    const figures = result.figures.posts['fence'];
    if (figures === undefined) throw new Error('the posts have figures');
    // Four of a foot across and 2 1/2 ft deep.
    const volumeCuFt = 4 * Math.PI * 0.5 ** 2 * 2.5;
    expect(num(figures.footings.volume)).toBeCloseTo(volumeCuFt, 9);
    expect(num(figures.footings.weight)).toBeCloseTo(volumeCuFt * 150, 6);
    expect(num(figures['hole-fill'])).toBeCloseTo(volumeCuFt / 27, 9);
    expect(ways(result)).toEqual([['posts--fence', 'posts.fence', 'clean-concrete']]);
    expect(num(result.figures.total.weight)).toBeCloseTo(volumeCuFt * 150, 6);
  });

  // Lifts of at most 6 in: common practice, no source.
  test.each([
    { depthIn: 30, lifts: 5 },
    { depthIn: 30.1, lifts: 6 },
    { depthIn: 4, lifts: 1 },
  ])('a hole $depthIn in deep is filled in $lifts lifts', ({ depthIn, lifts }) => {
    const posts = [somePosts({ footing: { diameterIn: 10, depthIn } })];
    expect(torn({ posts }).figures.posts['fence']?.lifts.value).toBe(lifts);
  });
});

describe('steps that go', () => {
  // 5 ft wide: three risers of 7 in below the landing of 3 ft, two and one below the treads of 1 ft.
  test('exact: a flight of three risers', () => {
    expect(stepsVolumeCuFt({})).toBeCloseTo(5 * (3 * 3 + 2 * 1 + 1 * 1) * (7 / 12), 9);
  });

  test.each([
    { changed: {}, stream: 'clean-concrete' },
    { changed: { steel: 'mesh' }, stream: 'concrete-with-steel' },
    { changed: { material: 'brick', steel: 'bars' }, stream: 'masonry' },
    { changed: { material: 'block' }, stream: 'masonry' },
  ] as const)('go as $stream', ({ changed, stream }) => {
    expect(ways(torn({ steps: [someSteps(changed)] }))).toEqual([
      ['old-steps--porch', 'old-steps.porch', stream],
    ]);
  });

  test(`invariant: a flight is its steps one on another (seed ${SEED})`, () => {
    const inches = fc.double({ min: 4, max: 60, noNaN: true });
    fc.assert(
      fc.property(
        inches,
        inches,
        inches,
        fc.integer({ min: 1, max: 12 }),
        (riserIn, treadIn, landingIn, n) => {
          const layersSqIn = Array.from({ length: n }, (_, step) => riserIn * (landingIn + step * treadIn));
          const sum = layersSqIn.reduce((total, one) => total + one, 0);
          const made = stepsVolumeCuFt({ riserIn, treadIn, landingIn, riserCount: n });
          expect(made / ((60 * sum) / 1728)).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: runCount(50), seed: SEED },
    );
  });
});

describe('green', () => {
  test('exact: by its loose volume and weight, in its stream', () => {
    const result = torn({ green: [HEDGE] });
    expect(ways(result)).toEqual([['green--hedge', 'green.hedge', 'green']]);
    expect(num(result.figures.total.weight)).toBeCloseTo(3 * 27 * 10, 9);
    expect(result.figures.streams.green?.['loose-volume'].value).toBe(3);
  });
});

describe('coating chipped off what stays', () => {
  // 130 lb/cu ft: ASCE 7 commentary, mortar (from memory).
  test('exact: weighed as mortar, in no load', () => {
    const result = torn({ chip: [LIP] });
    const figures = result.figures.chip['lip'];
    expect(figures?.volume.value).toBe(0.125); // 6 sq ft of 1/4 in
    expect(figures?.weight.value).toBeCloseTo(16.25, 9);
    expect(result.data.cargo).toEqual([]);
    expect(num(result.figures.total.weight)).toBe(0);
  });

  test('exact: at its own pace, one person', () => {
    const chip = byId([LIP, { ...LIP, id: 'step', areaSqFt: 3 }]);
    const pace = row('chip', '6 sq ft per h', 1, { machine: 'jackhammer' });
    const { tasks } = crewOf({ chip, production: production({ chip: pace }) }).figures;
    expect(tasks.chip?.quantity.value).toBe(9);
    expect(tasks.chip?.['labor-hours'].value).toBe(1.5);
    expect(crewOf().figures.tasks).not.toHaveProperty('chip');
    expect(() => crewOf({ chip })).toThrow(/no pace for chip/);
  });
});

test('one id may stand for a thing of each kind', () => {
  const result = torn({
    posts: [somePosts({ id: 'old' })],
    steps: [someSteps({ id: 'old' })],
    green: [{ ...HEDGE, id: 'old' }],
  });
  expect(new Set(result.data.cargo.map(({ name }) => name)).size).toBe(3);
  const sum = result.data.cargo.reduce((sumLb, { weight }) => sumLb + num(weight), 0);
  expect(num(result.figures.total.weight)).toBeCloseTo(sum, 6);
});

test('formulas give their values', () => {
  const figures = torn({
    posts: [somePosts(), somePosts({ id: 'gate', count: 2, footing: { diameterIn: 15.5, depthIn: 41 } })],
    steps: [someSteps(), someSteps({ id: 'side', riserCount: 5, riserIn: 6.75, material: 'brick' })],
    green: [HEDGE],
    chip: [LIP],
  }).figures satisfies FigureTree;
  expect(wrongFormulas(figures)).toEqual([]);
  expect(expressionCount(figures)).toBeGreaterThan(30);
});

// A cubic foot is 3 sq ft of 4 in slab; mesh takes 1.6 times as long (Planning Planet wiki, seen).
test('exact: footings and steps are broken out by their volume', () => {
  const things = { posts: [somePosts()], steps: [someSteps({ steel: 'mesh' })] };
  const { posts, 'old-steps': steps, total } = torn(things).figures;
  const before = crewOf().figures.tasks['break-out']?.quantity;
  const after = crewOf({
    oldSteps: byId(things.steps),
    tearOut: { hollow: {}, posts, 'old-steps': steps, soil: {}, total },
  }).figures.tasks['break-out']?.quantity;
  const postsCuFt = 4 * Math.PI * 0.5 ** 2 * 2.5;
  expect(Number(after?.value) - Number(before?.value)).toBeCloseTo(
    3 * (postsCuFt + 1.6 * stepsVolumeCuFt({})),
    6,
  );
});

// Each lift of each hole counts as so much base: 4 holes of a foot across in 5 lifts (common practice, no source).
test('exact: the holes of posts are filled at the pace of base', () => {
  const { posts, total } = torn({ posts: [somePosts()] }).figures;
  const quantity = (changed: Parameters<typeof crewOf>[0]) => crewOf(changed).figures.tasks.base?.quantity;
  const more = quantity({ tearOut: { hollow: {}, posts, 'old-steps': {}, soil: {}, total } });
  expect(Number(more?.value) - Number(quantity({})?.value)).toBeCloseTo(4 * Math.PI * 0.5 ** 2 * 5, 9);
});
