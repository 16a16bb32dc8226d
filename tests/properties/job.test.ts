import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { truckOrderCostUsd } from '../../src/calculate/concrete/truck.ts';
import { type Figure, num, walkFigures } from '../../src/calculate/figure.ts';
import { calculateJob, type JobResults } from '../../src/calculate/index.ts';
import type { Job } from '../../src/calculate/job.ts';
import { describeProposal } from '../../src/describe/proposal/index.ts';
import { proposalFactsOf } from '../../src/describe/proposal-facts.ts';
import { Usd } from '../../src/units/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { NO_TIE_INS, rectangle, someBars, someMesh } from '../calculate/slabs.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';
import { runCount } from '../support/property-runs.ts';
import { expectTotal } from '../support/totals.ts';

/** Set PROPERTY_SEED to repeat a run. */
const seed = Number(process.env['PROPERTY_SEED'] ?? Date.now() % 2 ** 31);
const run = { seed, numRuns: runCount(100) };
console.log(`job: properties run with PROPERTY_SEED=${seed}`);

const demo = jobNamed(preparedIn(DEMO_JOBS), 'maple-court').job;

type Slab = Job['build']['slabs'][string];
type Steel = Slab['reinforcement'];
/** A job of one old slab and one new one of the same sides. */
type Sizes = {
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly oldThicknessIn: number;
  readonly thicknessIn: number;
  readonly baseIn: number;
  readonly digIn: number;
  /** Of corner 2, as a share of the shorter side; 0 leaves it square. */
  readonly roundedRatio: number;
};

const sizes: fc.Arbitrary<Sizes> = fc.record({
  lengthIn: fc.integer({ min: 48, max: 720 }),
  widthIn: fc.integer({ min: 36, max: 360 }),
  oldThicknessIn: fc.integer({ min: 12, max: 32 }).map((quarters) => quarters / 4),
  thicknessIn: fc.integer({ min: 12, max: 32 }).map((quarters) => quarters / 4),
  baseIn: fc.integer({ min: 0, max: 8 }),
  digIn: fc.integer({ min: 0, max: 12 }),
  roundedRatio: fc.constantFrom(0, 0, 0.1, 0.3, 0.9),
});

const steel: fc.Arbitrary<Steel> = fc.oneof(
  fc.constant<Steel>({ kind: 'none' }),
  fc.constantFrom('6x6-w1.4' as const, '4x4-w2.9' as const).map((style): Steel => someMesh({ style })),
  fc
    .record({
      size: fc.constantFrom(3 as const, 4 as const, 5 as const),
      spacingIn: fc.integer({ min: 6, max: 36 }),
    })
    .map((bars): Steel => someBars({ ...bars, coverIn: 1 })),
);

function jobOf(from: Job, made: Sizes, changes: Partial<Slab> = {}): Job {
  const { lengthIn, widthIn, oldThicknessIn, thicknessIn, baseIn, digIn, roundedRatio } = made;
  const setbackIn = roundedRatio * Math.min(lengthIn, widthIn);
  const rounding = { kind: 'setback' as const, setbackIn };
  const shape = rectangle(lengthIn, widthIn, {
    rounded: setbackIn > 0 ? [{ corner: 2, by: rounding }] : [],
    edges: [
      { edge: 4, kind: 'house' },
      { edge: 1, kind: 'stays' },
    ],
  });
  const old = from.site.existing['old-drive'];
  const slab = from.build.slabs['drive'];
  if (old === undefined || slab === undefined) throw new RangeError('the demo job has no drive');
  // A cover that a slab of 3 in has room for.
  const reinforcement =
    slab.reinforcement.kind === 'none' ? slab.reinforcement : { ...slab.reinforcement, coverIn: 1 };
  return {
    ...from,
    acknowledged: [],
    company: { ...from.company, allowances: { ...from.company.allowances, formBulgeIn: 0 } },
    heights: null,
    walls: {},
    profiles: {},
    lids: {},
    tieIns: NO_TIE_INS,
    price: { ...from.price, hidden: {} },
    site: {
      ...from.site,
      flights: {},
      existing: { [old.id]: { ...old, shape, thicknessIn: oldThicknessIn } },
    },
    build: {
      ...from.build,
      slabs: {
        [slab.id]: {
          ...slab,
          thickenedEdges: [],
          reinforcement,
          shape,
          thicknessIn,
          baseIn,
          digIn,
          ...changes,
        },
      },
    },
  };
}

/** @throws {Error} If the job has a problem. */
function resultsOf(job: Job): JobResults {
  const { results, problems } = calculateJob(job, { why: false });
  if (results === null || problems.length > 0) throw new Error(JSON.stringify(problems));
  return results;
}

function valueOf({ figures }: JobResults, id: string): number {
  const [topic = ''] = id.split('.');
  const found = walkFigures(figures[topic] ?? {}, topic).find((row) => row.id === id);
  if (found === undefined) throw new RangeError(`there is no figure ${id}`);
  return num(found.figure);
}

const grown = fc.record({
  key: fc.constantFrom('lengthIn' as const, 'widthIn' as const, 'thicknessIn' as const),
  byIn: fc.integer({ min: 1, max: 24 }),
});

/** A longer, wider or thicker slab; old and new grow together. */
function larger(made: Sizes, { key, byIn }: { readonly key: keyof Sizes; readonly byIn: number }): Sizes {
  const more = { ...made, [key]: made[key] + byIn };
  return key === 'thicknessIn' ? { ...more, oldThicknessIn: made.oldThicknessIn + byIn } : more;
}

describe('more slab is more of everything that is measured', () => {
  /*
   * Cost has steps on purpose, and some go down. Off here: the fee for a short load, so that a
   * larger order loses none; coarse increments (an order by 1/100 yd3 and ton); the choice between
   * trailers and places (one of each, paid by the ton with no minimum); the minimum charge; bars,
   * since a longer piece may use up an offcut; and joints, since a squarer or thicker slab has fewer.
   */
  const withoutMinimum: Job = {
    ...demo,
    plan: { ...demo.plan, trailers: ['long-box'] },
    company: {
      ...demo.company,
      places: Object.fromEntries(
        Object.entries(demo.company.places)
          .filter(([id]) => id === 'landfill')
          .map(([id, place]) => [id, { ...place, minimumUsd: new Usd(0) }]),
      ),
      suppliers: {
        ...demo.company.suppliers,
        concrete: { ...demo.company.suppliers.concrete, incrementCuYd: 0.01, shortLoadFeeUsd: new Usd(0) },
        base: { ...demo.company.suppliers.base, incrementTon: 0.01 },
      },
      pricing: { ...demo.company.pricing, minimumChargeUsd: new Usd(0) },
    },
  };
  const joints: Slab['joints'] = { cut: 'wet-sawn', lines: {}, propose: 'nothing', sealed: false };

  // Square corners: a setback is a share of the shorter side here and would grow too.
  test('area, weight, net yards and cost grow with length, width and thickness', () => {
    fc.assert(
      fc.property(sizes, grown, fc.boolean(), (rounded, growth, hasMesh) => {
        const made = { ...rounded, roundedRatio: 0 };
        const reinforcement: Steel = hasMesh ? someMesh() : { kind: 'none' };
        const [one, other] = [made, larger(made, growth)].map((size) =>
          resultsOf(jobOf(withoutMinimum, size, { reinforcement, joints })),
        );
        if (one === undefined || other === undefined) throw new RangeError('two jobs were calculated');
        const grows = ['tear-out.existing.old-drive.weight', 'concrete.total.net', 'concrete.total.needed'];
        const areas = ['outline.slabs.drive.area', 'outline.existing.old-drive.area'];
        for (const id of grows) expect(valueOf(other, id), id).toBeGreaterThan(valueOf(one, id));
        for (const id of areas) {
          if (growth.key === 'thicknessIn') expect(valueOf(other, id), id).toBe(valueOf(one, id));
          else expect(valueOf(other, id), id).toBeGreaterThan(valueOf(one, id));
        }
        expect(valueOf(other, 'cost.total')).toBeGreaterThanOrEqual(valueOf(one, 'cost.total'));
      }),
      run,
    );
  });

  // 10 x 27 ft, 4 in thick, 3 % spill and 1/4 in of base: 270 x 4.37 / 324 = 3.64 yd3. Ordered as 3.75,
  // under 4 yd3, it costs 3.75 x 172 + 120 + 28 for fuel + 75 on a Saturday + 3.75 x 9 for fibers = $901.75; as 4.00 there
  // is no fee for a short load, 4 x 172 + 28 + 75 + 4 x 9 = $827. So the
  // fee makes more concrete cheaper, and the job orders more.
  test('a fee for a short load can make more concrete cheaper', () => {
    const { concrete } = demo.company.suppliers;
    expect([3.75, 4].map((order) => truckOrderCostUsd(order, concrete).toFixed(2))).toEqual([
      '901.75',
      '827.00',
    ]);
    const results = resultsOf(
      jobOf(demo, {
        lengthIn: 27 * 12,
        widthIn: 10 * 12,
        oldThicknessIn: 4,
        thicknessIn: 4,
        baseIn: 4,
        digIn: 4,
        roundedRatio: 0,
      }),
    );
    expect(results.concrete.data.supply).toBe('truck');
    expect(valueOf(results, 'concrete.total.needed')).toBeCloseTo((270 * (4 * 1.03 + 0.25)) / 324, 12);
    expect(valueOf(results, 'concrete.truck.order')).toBe(4);
    // On a Friday, placed at 6 yd3 an hour, 6 min a yard of it free: 688 + 28 + 36 + 16 min at $150 an hour.
    expect(valueOf(results, 'cost.lines.ready-mix')).toBe(792);
  });
});

/** Shares in hundredths that add up to one. */
const payments = fc
  .array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 6 })
  .filter((parts) => parts.reduce((sum, part) => sum + part, 0) < 100)
  .map((parts) => [...parts, 100 - parts.reduce((sum, part) => sum + part, 0)])
  .map((parts) => parts.map((part) => ({ label: demo.label, shareRatio: part / 100 })));

const anyJob: fc.Arbitrary<Job> = fc
  .record({
    made: sizes,
    reinforcement: steel,
    use: fc.constantFrom('driveway' as const, 'walk' as const, 'patio' as const),
    material: fc.constantFrom('concrete' as const, 'brick' as const, 'asphalt' as const),
    payments,
    taxOn: fc.constantFrom('nothing' as const, 'materials' as const, 'price' as const),
    taxRatio: fc.integer({ min: 0, max: 120 }).map((share) => share / 1000),
    overheadRatio: fc.integer({ min: 0, max: 400 }).map((share) => share / 1000),
    marginRatio: fc.integer({ min: 0, max: 400 }).map((share) => share / 1000),
    minimumUsd: fc.integer({ min: 0, max: 5_000 }),
    trailers: fc.constantFrom(['long-box'], ['short-box'], ['long-box', 'short-box']),
  })
  .map(({ made, reinforcement, use, material, trailers, minimumUsd, ...pricing }) => {
    const job = jobOf(demo, made, { reinforcement, use });
    const { existing } = job.site;
    return {
      ...job,
      plan: { ...job.plan, trailers },
      site: {
        ...job.site,
        existing: Object.fromEntries(Object.entries(existing).map(([id, one]) => [id, { ...one, material }])),
      },
      company: {
        ...job.company,
        pricing: { ...job.company.pricing, ...pricing, minimumChargeUsd: new Usd(minimumUsd) },
      },
    };
  });

/** What is left may be less than nothing: by a cent of rounding, or where nothing is asked for. */
const MAY_BE_NEGATIVE = ['price.margin', 'price.margin-share'];

test('whatever the job, no figure is negative or not a number, and totals shown are the sums shown', () => {
  fc.assert(
    fc.property(anyJob, (job) => {
      const results = resultsOf(job);
      const rows = Object.entries(results.figures).flatMap(([topic, tree]) => walkFigures(tree, topic));
      expect(rows.length).toBeGreaterThan(300);
      expect(rows.filter(({ id, figure }) => !isSound(id, figure)).map(({ id }) => id)).toEqual([]);
      const view = describeProposal(proposalFactsOf(job, results), en as Words);
      expectTotal(view.prices);
      expectTotal(view.payments);
      const { total, payments: paid } = results.price.data;
      expect(paid.reduce((sum, { price }) => sum.plus(price), new Usd(0)).toString()).toBe(total.toString());
      const [deposit] = paid;
      const share = job.company.pricing.payments[0]?.shareRatio ?? 0;
      expect(Number(deposit?.price)).toBeLessThanOrEqual(Number(new Usd(total).times(share)) + 1e-9);
      expect(results.price.figures.deposit.value.toString()).toBe(deposit?.price.toString());
    }),
    run,
  );
});

function isSound(id: string, figure: Figure): boolean {
  const isInRange = Number.isFinite(num(figure)) && (num(figure) >= 0 || MAY_BE_NEGATIVE.includes(id));
  return isInRange && Object.values(figure.inputs).every((input) => Number.isFinite(num(input)));
}
