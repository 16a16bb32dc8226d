import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brokenParts, dugParts } from '../../../src/calculate/crew/standing.ts';
import { COMPANY_FIGURE, type FigureTree, num } from '../../../src/calculate/figure.ts';
import type { Hollow, TapedShape } from '../../../src/calculate/job.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import { calcTearOut } from '../../../src/calculate/tear-out/index.ts';
import type { PublicText } from '../../../src/calculate/text.ts';
import { insetRing, ringAreaSqIn } from '../../../src/geometry/index.ts';
import { runCount } from '../../support/property-runs.ts';
import { crewOf } from '../crew/a-plan.ts';
import { byId, rectangle } from '../haul/a-haul.ts';
import { expressionCount, wrongFormulas } from '../haul/reevaluate.ts';
import { asTaped, TAPE_LIMITS } from '../slabs.ts';

const SEED = 20_261_128;

/** 6 by 3 ft of block 8 in thick and 2 ft high, on a footing of 14 by 6 in, 20 in of soil inside. */
function aPlanter(changed: Partial<Hollow> = {}): Hollow {
  return {
    id: 'planter',
    label: 'Planter' as PublicText,
    shape: rectangle(6, 3),
    material: 'block',
    walls: { thicknessIn: 8, heightIn: 24 },
    footing: { widthIn: 14, thicknessIn: 6 },
    fill: { material: 'soil', depthIn: 20 },
    steel: 'none',
    breakOut: 'breaker',
    unitWeightLbPerCuFt: null,
    ...changed,
  };
}

function torn(...things: readonly Hollow[]) {
  const outline = calcOutline({ slabs: {}, existing: byId(things), limits: TAPE_LIMITS });
  const { figures: shapes, data } = outline;
  const result = calcTearOut({
    existing: {},
    hollow: byId(things),
    posts: {},
    oldSteps: {},
    green: {},
    chip: {},
    slabs: {},
    shapes,
    outlines: data.existing,
  });
  return { result, outlines: data.existing };
}

function figuresOf(thing: Hollow) {
  const figures = torn(thing).result.figures.hollow[thing.id];
  if (figures === undefined) throw new Error(`${thing.id} has figures`);
  return figures;
}

const circle = (diameterIn: number): TapedShape => asTaped({ kind: 'circle', diameterIn });

describe('a hollow thing is its walls, its footing and its fill', () => {
  test('exact: a rectangle', () => {
    const { walls, footing, fill, ...made } = figuresOf(aPlanter());
    const insideSqFt = ((72 - 16) * (36 - 16)) / 144;
    expect(num(made['corner-factor'])).toBeCloseTo(4, 12);
    expect(num(made['inside-area'])).toBeCloseTo(insideSqFt, 9);
    expect(num(made['centre-line'])).toBeCloseTo((2 * (64 + 28)) / 12, 9);
    expect(num(walls.volume)).toBeCloseTo((18 - insideSqFt) * 2, 9);
    // Outside and inside of the footing: the middle of the walls, 64 by 28 in, 7 in out and in.
    expect(footing === undefined ? null : num(footing.volume)).toBeCloseTo(
      ((78 * 42 - 50 * 14) / 144) * (6 / 12),
      9,
    );
    expect(fill === undefined ? null : num(fill.volume)).toBeCloseTo((insideSqFt * 20) / 12, 9);
  });

  test('exact: a circle', () => {
    const { walls, footing, fill } = figuresOf(aPlanter({ shape: circle(48) }));
    const discSqFt = (radiusIn: number) => (Math.PI * radiusIn ** 2) / 144;
    expect(num(walls.volume)).toBeCloseTo((discSqFt(24) - discSqFt(16)) * 2, 9);
    expect(footing === undefined ? null : num(footing.volume)).toBeCloseTo(
      (discSqFt(27) - discSqFt(13)) * (6 / 12),
      9,
    );
    expect(fill === undefined ? null : num(fill.volume)).toBeCloseTo(discSqFt(16) * (20 / 12), 9);
  });

  test('walls alone have no other parts', () => {
    const figures = figuresOf(aPlanter({ footing: null, fill: null }));
    expect(Object.keys(figures)).toEqual(['corner-factor', 'inside-area', 'centre-line', 'walls']);
  });

  // Block concrete 135 lb/cu ft, upper end (seen), 55 % of it there (common practice); 1,200 lb/yd3
  // broken (City of Oakland worksheet, seen).
  test('published: what the walls weigh, in place and in the box', () => {
    const { walls } = figuresOf(aPlanter());
    expect(num(walls['unit-weight'])).toBeCloseTo(135 * 0.55, 9);
    expect(num(walls.weight)).toBeCloseTo(num(walls.volume) * 74.25, 6);
    expect(num(walls['loose-unit-weight']) * 27).toBeCloseTo(1200, 6);
    const own = figuresOf(aPlanter({ unitWeightLbPerCuFt: 110 }));
    expect(num(own.walls.weight)).toBeCloseTo(num(walls.volume) * 110, 6);
    expect(own.walls['unit-weight'].source).toBe(COMPANY_FIGURE);
    expect(own.footing === undefined ? null : num(own.footing['unit-weight'])).toBeCloseTo(150, 9);
  });

  // Sand and gravel, wet, 120 lb/cu ft (ASCE 7, from memory), swell 15 % (seen).
  test('published: gravel inside', () => {
    const { fill } = figuresOf(aPlanter({ fill: { material: 'gravel', depthIn: 12 } }));
    expect(fill === undefined ? null : num(fill.weight)).toBeCloseTo(((56 * 20) / 144) * 120, 6);
    expect(fill === undefined ? null : num(fill['loose-unit-weight'])).toBeCloseTo(120 / 1.15, 9);
  });

  const wayOf = (changed: Partial<Hollow>) =>
    torn(aPlanter(changed)).result.data.cargo.map(({ name, existingId, stream, ...cargo }) => {
      expect(existingId).toBe('planter');
      expect(cargo['weight-per-sq-ft']).toBeNull();
      return [name, stream];
    });

  test.each([
    { changed: {}, streams: ['masonry', 'clean-concrete', 'soil'] },
    {
      changed: { material: 'brick', steel: 'bars' },
      streams: ['masonry', 'concrete-with-steel', 'soil'],
    },
    {
      changed: { material: 'concrete', steel: 'mesh', fill: { material: 'concrete', depthIn: 4 } },
      streams: ['concrete-with-steel', 'concrete-with-steel', 'concrete-with-steel'],
    },
    {
      changed: { material: 'concrete', fill: { material: 'gravel', depthIn: 4 } },
      streams: ['clean-concrete', 'clean-concrete', 'soil'],
    },
  ] as const)('each part goes its way: $streams', ({ changed, streams }) => {
    const names = ['planter--walls', 'planter--footing', 'planter--fill'];
    expect(wayOf(changed)).toEqual(names.map((name, index) => [name, streams[index]]));
  });

  test('the streams hold all of it', () => {
    const { figures } = torn(aPlanter(), aPlanter({ id: 'other', shape: circle(60) })).result;
    const sum = Object.values(figures.hollow)
      .flatMap(({ walls, footing, fill }) => [walls, footing, fill])
      .reduce((sumLb, part) => sumLb + (part === undefined ? Number.NaN : num(part.weight)), 0);
    expect(num(figures.total.weight)).toBeCloseTo(sum, 6);
  });

  test('formulas give their values', () => {
    const figures = torn(
      aPlanter(),
      aPlanter({ id: 'round', shape: circle(61.3), material: 'concrete', steel: 'bars' }),
      aPlanter({ id: 'own', unitWeightLbPerCuFt: 99.5, fill: { material: 'gravel', depthIn: 9.25 } }),
    ).result.figures satisfies FigureTree;
    expect(wrongFormulas(figures)).toEqual([]);
    expect(expressionCount(figures)).toBeGreaterThan(45);
  });

  test(`invariant: the footing is the ring between two outlines moved in (seed ${SEED})`, () => {
    const side = fc.double({ min: 40, max: 120, noNaN: true });
    const share = fc.double({ min: 0.05, max: 0.9, noNaN: true });
    const areaAt = (thing: Hollow, byIn: number) => {
      const inner = insetRing(torn(thing).outlines['planter']?.rings[0] ?? [], byIn);
      return inner.ok ? ringAreaSqIn(inner.ring) / 144 : Number.NaN;
    };
    fc.assert(
      fc.property(side, side, share, share, (lengthIn, widthIn, wallShare, footingShare) => {
        const wallIn = (Math.min(lengthIn, widthIn) / 4) * wallShare;
        const widthOfFootingIn = wallIn * footingShare;
        const thing = aPlanter({
          shape: {
            ...rectangle(lengthIn / 12, widthIn / 12),
            rounded: [{ corner: 3, by: { kind: 'setback', setbackIn: wallIn + 6 } }],
          },
          walls: { thicknessIn: wallIn, heightIn: 12 },
          footing: { widthIn: widthOfFootingIn, thicknessIn: 12 },
          fill: { material: 'soil', depthIn: 12 },
        });
        const { walls, footing, fill } = figuresOf(thing);
        const ringSqFt =
          areaAt(thing, (wallIn - widthOfFootingIn) / 2) - areaAt(thing, (wallIn + widthOfFootingIn) / 2);
        expect(footing === undefined ? null : num(footing.volume)).toBeCloseTo(ringSqFt, 8);
        // A foot high and filled to the top, walls and fill are the whole outline.
        const together = num(walls.volume) + (fill === undefined ? Number.NaN : num(fill.volume));
        expect(together).toBeCloseTo(areaAt(thing, 0), 8);
      }),
      { numRuns: runCount(30), seed: SEED },
    );
  });
});

describe('what cannot stand', () => {
  const sector = asTaped({ kind: 'sector', radiusIn: 60, angleRad: Math.PI / 2 });
  test.each([
    { name: 'walls', changed: { walls: { thicknessIn: 18, heightIn: 24 } }, code: 'walls-do-not-fit' },
    { name: 'footing', changed: { footing: { widthIn: 28, thicknessIn: 6 } }, code: 'footing-does-not-fit' },
    { name: 'outline', changed: { shape: sector }, code: 'walls-on-bent-outline' },
  ] as const)('$name: a problem, and no figures', ({ changed, code }) => {
    const { problems, figures, data } = torn(aPlanter(changed)).result;
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(problems[0]?.path).toMatch(/^site\.existing\.planter\.(walls|footing)/);
    expect(figures.hollow).toEqual({});
    expect(data.cargo).toEqual([]);
  });

  test('just inside of half, both fit', () => {
    const walls = { thicknessIn: 17.9, heightIn: 24 };
    expect(torn(aPlanter({ walls, footing: null })).result.problems).toEqual([]);
    expect(torn(aPlanter({ footing: { widthIn: 27.9, thicknessIn: 6 } })).result.problems).toEqual([]);
  });
});

describe('the work of it', () => {
  test('masonry has no steel; soil and gravel are dug, concrete is broken', () => {
    const filled = (material: 'soil' | 'gravel' | 'concrete') =>
      aPlanter({ id: material, steel: 'bars', fill: { material, depthIn: 12 }, breakOut: 'jackhammer' });
    const things = byId([filled('soil'), filled('gravel'), filled('concrete')]);
    const volumes = torn(...Object.values(things)).result.figures.hollow;
    const broken = brokenParts(things, volumes, 'jackhammer');
    expect(brokenParts(things, volumes, 'breaker')).toEqual([]);
    expect(broken.map(({ name, steel }) => `${name} ${steel}`)).toEqual([
      'soil--walls none',
      'soil--footing bars',
      'gravel--walls none',
      'gravel--footing bars',
      'concrete--walls none',
      'concrete--footing bars',
      'concrete--fill bars',
    ]);
    expect(dugParts(things, volumes).map(({ name }) => name)).toEqual(['soil--fill', 'gravel--fill']);
  });

  // A cubic foot is 3 sq ft of 4 in slab; bars take 2.05 times as long (Planning Planet wiki, seen).
  test('exact: hours go by the volume, as of so much slab', () => {
    const things = byId([aPlanter({ steel: 'bars' })]);
    const { hollow } = torn(aPlanter({ steel: 'bars' })).result.figures;
    const { walls, footing, fill } = figuresOf(aPlanter());
    const quantity = (changed: Parameters<typeof crewOf>[0], task: 'break-out' | 'dig') => {
      const made = crewOf(changed).figures.tasks[task]?.quantity;
      return made === undefined ? 0 : num(made);
    };
    const plain = crewOf().figures.tasks['break-out']?.quantity;
    const slabsSqFt = plain === undefined ? Number.NaN : num(plain);
    const tearOut = { hollow, posts: {}, 'old-steps': {}, soil: {}, total: { 'saw-cut': walls.volume } };
    const footingCuFt = footing === undefined ? Number.NaN : num(footing.volume);
    expect(quantity({ hollow: things, tearOut }, 'break-out')).toBeCloseTo(
      slabsSqFt + 3 * (num(walls.volume) + 2.05 * footingCuFt),
      9,
    );
    expect(quantity({ hollow: things, tearOut }, 'dig')).toBeCloseTo(
      (fill === undefined ? Number.NaN : num(fill.volume)) / 27,
      9,
    );
  });
});
