import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Figure, num, walkFigures } from '../../src/calculate/figure.ts';
import { calculateJob } from '../../src/calculate/index.ts';
import type { Heights, Job } from '../../src/calculate/job.ts';
import type { PublicText } from '../../src/calculate/text.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';
import { runCount } from '../support/property-runs.ts';

const prepared = preparedIn(DEMO_JOBS);

type WithHeights = Job & { readonly heights: Heights };

/** @throws {Error} If the job says nothing of heights. */
function demoOf(id: string): WithHeights {
  const { job } = jobNamed(prepared, id);
  const { heights } = job;
  if (heights === null) throw new Error(`${id} has no heights`);
  return { ...job, heights, acknowledged: [], price: { ...job.price, hidden: {} } };
}

/** @throws {Error} If the job has a problem. */
function figuresOf(job: Job): ReadonlyMap<string, Figure> {
  const { results, problems } = calculateJob(job, { why: false });
  if (results === null || problems.length > 0) throw new Error(JSON.stringify(problems));
  return new Map(
    Object.entries(results.figures)
      .flatMap(([topic, tree]) => walkFigures(tree, topic))
      .map(({ id, figure }) => [id, figure]),
  );
}

/** Every height above the datum that the job writes, higher by so much [in]. */
function raised(job: WithHeights, byIn: number): Job {
  const { heights, walls } = job;
  const points = Object.values(heights.points).map((point) => {
    const heightIn = point.heightIn === null ? null : point.heightIn + byIn;
    return [point.id, { ...point, heightIn }] as const;
  });
  const parts = Object.values(walls).map((part) => {
    const { beside } = part;
    const moved = beside.kind === 'earth' ? { ...beside, heightIn: beside.heightIn + byIn } : beside;
    return [part.id, { ...part, heightIn: part.heightIn + byIn, beside: moved }] as const;
  });
  const walks = Object.values(job.tieIns.publicWalks).map((walk) => {
    const { left, right } = walk.ends;
    const ends = {
      left: { ...left, shouldIn: left.shouldIn + byIn },
      right: { ...right, shouldIn: right.shouldIn + byIn },
    };
    return [walk.id, { ...walk, ends }] as const;
  });
  const profiles = Object.values(job.profiles).map((profile) => {
    const beyond = profile.beyond.map((point) => ({ ...point, heightIn: point.heightIn + byIn }));
    return [profile.id, { ...profile, beyond }] as const;
  });
  return {
    ...job,
    tieIns: { ...job.tieIns, publicWalks: Object.fromEntries(walks) },
    profiles: Object.fromEntries(profiles),
    heights: {
      ...heights,
      notes: heights.notes.map((note) =>
        note.kind === 'height' ? { ...note, valueIn: note.valueIn + byIn } : note,
      ),
      points: Object.fromEntries(points),
    },
    walls: Object.fromEntries(parts),
  };
}

/** What is a height above the datum, by the last names of its id. */
const IS_HEIGHT =
  /^levels\.(points|notes)\.|\.(finish|existing|slab-bottom|base-bottom|surface|now|should|planned|(transition|panel)-start)$|\.tops\.[^.]+$|\.beyond\.[^.]+\.height$|\.strings\.[^.]+\.(from|to)$/;

describe('whole jobs with heights', () => {
  test.each(['maple-court', 'garden-row'])(
    'invariant: another datum changes %s in its heights alone',
    (id) => {
      const demo = demoOf(id);
      const before = figuresOf(demo);
      fc.assert(
        fc.property(fc.integer({ min: -1000, max: 4000 }), (byIn) => {
          const after = figuresOf(raised(demo, byIn));
          expect([...after.keys()]).toEqual([...before.keys()]);
          for (const [name, figure] of after) {
            const was = before.get(name);
            const movedIn = num(figure) - (was === undefined ? Number.NaN : num(was));
            const expectedIn = IS_HEIGHT.test(name) ? byIn : 0;
            expect(Math.abs(movedIn - expectedIn), `${name} moved by ${movedIn}`).toBeLessThan(1e-6);
          }
        }),
        { seed: 20261126, numRuns: runCount(3), endOnFailure: true },
      );
    },
  );

  // The patio is one plane: 9.645 m along the house, down 20 mm in each metre from it.
  test('invariant: one more point on the plane of the patio changes no figure but its own', () => {
    const demo = demoOf('garden-row');
    const before = figuresOf(demo);
    const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(share, share, (alongShare, acrossShare) => {
        const [xM, yM] = [6 * alongShare, 3 * acrossShare];
        const inches = (metres: number) => metres / 0.0254;
        const heightIn = inches(9.645 - 0.02 * yM);
        const label = 'One more' as PublicText;
        const more = {
          id: 'one-more',
          label,
          at: { xIn: inches(xM), yIn: inches(yM) },
          heightIn,
          stoodOn: null,
        };
        const points = { ...demo.heights.points, 'one-more': { ...more, kind: 'finish' as const } };
        const after = figuresOf({ ...demo, heights: { ...demo.heights, points } });
        for (const [name, was] of before) {
          const now = after.get(name);
          const movedBy = now === undefined ? Number.NaN : num(now) - num(was);
          expect(Math.abs(movedBy), `${name} moved by ${movedBy}`).toBeLessThan(1e-6);
        }
        const added = [...after.keys()].filter((name) => !before.has(name));
        expect(added).toEqual(['levels.points.one-more.height']);
      }),
      { seed: 20261126, numRuns: runCount(3), endOnFailure: true },
    );
  });

  // Squares of an inch, summed at their middles, from the heights of the job and nothing of the program's.
  test('the dig of the drive less its fill is what small squares between the surfaces add up to', () => {
    const [lengthIn, widthIn, radiusIn] = [432, 216, 36];
    const isOutside = (xIn: number, yIn: number) => {
      const fromEndIn = xIn - (lengthIn - radiusIn);
      const fromSideIn = Math.max(radiusIn - yIn, yIn - (widthIn - radiusIn));
      return fromEndIn > 0 && fromSideIn > 0 && Math.hypot(fromEndIn, fromSideIn) > radiusIn;
    };
    const dropFt = (xFt: number) => (xFt < 10 ? 0.02 * xFt : 0.2 + (0.28 / 26) * (xFt - 10));
    let sumCuIn = 0;
    for (let xIn = 0.5; xIn < lengthIn; xIn += 1) {
      // Both surfaces drop 0.06 ft from side to side alike.
      const leftIn = 12 * (100.5 - (0.4 / 36) * (xIn / 12)) - 4;
      const bottomIn = 12 * (100.58 - dropFt(xIn / 12)) - 9;
      for (let yIn = 0.5; yIn < widthIn; yIn += 1) {
        if (!isOutside(xIn, yIn)) sumCuIn += leftIn - bottomIn;
      }
    }
    const figures = figuresOf(demoOf('maple-court'));
    const valueOf = (name: string) => num(figures.get(`grades.driveway.drive.${name}`) as Figure);
    // 557 squares are cut by the two arcs: less than half an inch in 5 of each is missed, and most cancel.
    expect(Math.abs(valueOf('dig-volume') - valueOf('fill-volume') - sumCuIn / 1728)).toBeLessThan(0.05);
  });
});
