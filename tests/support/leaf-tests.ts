import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { changedText } from './change-leaf.ts';
import { partOfFull } from './part-of-full.ts';
import { FULL_JOB, TEST_JOBS } from './project.ts';
import { aRenderer, type Renderer } from './render.ts';
import { instancesOf, type SchemaLeaf } from './schema-leaves.ts';
import { differs, type Shown, shownPages } from './shown-pages.ts';
import { leavesOf, readTrees, subtree, type Trees, withLeaf, withoutPath } from './trees.ts';
import { aWorkbench } from './workbench.ts';

type Side = keyof Trees;
type Edit = { readonly of: Side; readonly path: string; readonly text: string };
type Special = {
  /** Changes made before, in the job that is compared with too. */
  readonly setting?: readonly Edit[];
  /** Changes made instead of the generic one. */
  readonly change?: readonly Edit[];
  readonly reason: string;
};

const BAGS_WIN: readonly Edit[] = [{ of: 'company', path: 'suppliers.bagged.price', text: '$0.10 per bag' }];

/** Shapes whose measurements check one another, and a piece that must go on touching its neighbour. */
function tapedSpecials(things: string, prefix: string): Readonly<Record<string, Special>> {
  const special = (leaf: string, path: string, text: string, reason: string) => [
    `job ${things}.*.${leaf}`,
    { change: [{ of: 'job', path: `${things}.${prefix}${path}`, text }], reason } satisfies Special,
  ];
  const closes = 'a fifth more, and the sides do not close';
  const agrees = 'a fifth more, and the diagonals disagree';
  return Object.fromEntries([
    special('sides.*.length', 'wedge.sides.0.length', '9 ft 2 in', closes),
    special('sides.*.turn', 'wedge.sides.1.turn', '90.5 deg left', closes),
    special('four-sides.sides.*', 'pad.four-sides.sides.0', '9 ft 1/2 in', agrees),
    special('four-sides.diagonal', 'pad.four-sides.diagonal', '12 ft 1/2 in', agrees),
    special('four-sides.other-diagonal', 'pad.four-sides.other-diagonal', '12 ft 2 in', agrees),
    special(
      'triangles.corners.*.from.*',
      'plot.triangles.corners.1.from.0',
      '2',
      'a corner is measured from two different ones before it',
    ),
    special(
      'added.*.turned',
      'yard.added.landing.turned',
      '270 deg',
      'at most other angles it does not touch',
    ),
  ]);
}

/** Level notes check one another, and what a point is says what else is said of it. */
function levelSpecials(): Readonly<Record<string, Special>> {
  const special = (leaf: string, reason: string, ...edits: readonly (readonly [string, string])[]) => [
    `job heights.${leaf}`,
    {
      change: edits.map(([path, text]) => ({ of: 'job' as const, path: `heights.${path}`, text })),
      reason,
    },
  ];
  const closes = 'a fifth more, and the notes do not close';
  return Object.fromEntries([
    special(
      'notes.*.on',
      'a turning point is sighted and stood on',
      ['notes.3.on', 'tp-2'],
      ['notes.4.on', 'tp-2'],
    ),
    special('notes.*.height', 'a fifth more is another hill', ['notes.0.height', '100.01 ft']),
    special('notes.*.backsight', closes, ['notes.1.backsight', '4.321 ft']),
    special('notes.*.foresight', closes, ['notes.2.foresight', '3.08 ft']),
    special('points.*.height', 'a fifth more is another hill', ['points.bay-door.height', '101.7 ft']),
    special('points.*.kind', 'a rod stood on what is fixed or there now', ['points.plot-1.kind', 'fixed']),
    special('points.*.stood-on', 'no more than two words and ids may stand there', [
      'points.old-middle.stood-on',
      'dirt',
    ]),
  ]);
}

/** A public walk names points of the heights that its slab meets. */
function publicWalkSpecials(): Readonly<Record<string, Special>> {
  const special = (leaf: string, ...edits: readonly (readonly [string, string])[]) => [
    `job heights.public-walks.*.${leaf}`,
    {
      change: edits.map(([path, text]) => ({
        of: 'job' as const,
        path: `heights.public-walks.town-walk.${path}`,
        text,
      })),
      reason: 'a point of the heights on the slab, near where it should be',
    } satisfies Special,
  ];
  return Object.fromEntries([
    special('left.now', ['left.now', 'garage-left'], ['left.should', '101.2 ft']),
    special('left.up', ['left.up', 'garage-left']),
    special('right.now', ['right.now', 'garage-right'], ['right.should', '101.2 ft']),
    special('right.up', ['right.up', 'garage-right']),
  ]);
}

/** Slabs that show what a company says, where those that stay in every part do not: the full job takes longer. */
const SHOWN_BY: readonly (readonly [start: string, slab: string])[] = [
  ['suppliers.glass-fibre-bars', 'plot'],
  ['suppliers.mesh', 'wedge'],
  ['placing.chute.reach', 'terrace'],
];

/** Leaves for which the generic change is no valid or no telling one. */
const SPECIAL: Readonly<Record<string, Special>> = {
  ...tapedSpecials('site.existing', 'old-'),
  ...tapedSpecials('build.slabs', ''),
  'job heights.walls.*.beside': {
    change: [
      { of: 'job', path: 'heights.walls.sill.beside', text: 'wedge' },
      { of: 'job', path: 'heights.walls.sill.at.0', text: '40 ft' },
      { of: 'job', path: 'heights.walls.sill.at.1', text: '20 ft' },
    ],
    reason: 'a part of a wall stands at the slab that is beside it',
  },
  'job build.steps.*.from': {
    change: [{ of: 'job', path: 'build.steps.door-steps.from', text: 'garage-right' }],
    reason: 'a point of the heights, below the other end',
  },
  'job build.slabs.*.corners.*.*': {
    change: [{ of: 'job', path: 'build.slabs.walk.corners.3.0', text: '10 ft 6 in' }],
    reason: 'a public walk meets the others',
  },
  'job build.slabs.*.at.*': {
    change: [{ of: 'job', path: 'build.slabs.seat.at.0', text: '73 ft' }],
    reason: 'slabs with heights do not leave their points',
  },
  'job site.flights.*.foot-ends.*.*': {
    change: [{ of: 'job', path: 'site.flights.wedge-flight.foot-ends.0.0', text: '41 ft' }],
    reason: 'a foot is at a slab with heights',
  },
  'job build.steps.*.to': {
    setting: [{ of: 'job', path: 'build.steps.door-steps.landing', text: '3 ft' }],
    change: [{ of: 'job', path: 'build.steps.door-steps.to', text: 'bay-door' }],
    reason: 'a point of the heights, above the other end',
  },
  'company pricing.payments.*.share': {
    change: [
      { of: 'company', path: 'pricing.payments.0.share', text: '25 %' },
      { of: 'company', path: 'pricing.payments.1.share', text: '40 %' },
    ],
    reason: 'the shares add up to the whole, so two change together',
  },
  'company suppliers.sundries.sheeting-price': {
    setting: [{ of: 'job', path: 'pour.curing', text: 'sheeting' }],
    reason: 'sheeting is bought where concrete is cured under it',
  },
  'job build.mix.additives.*': {
    change: [{ of: 'job', path: 'build.mix.additives.2', text: 'accelerator' }],
    reason: 'an additive is named once, and all others are',
  },
  'company suppliers.concrete.additives.accelerator': {
    setting: [{ of: 'job', path: 'build.mix.additives.2', text: 'accelerator' }],
    reason: 'an additive is billed where it is in the mix',
  },
  'company suppliers.bagged.label': {
    setting: BAGS_WIN,
    reason: 'a yard is named where something is bought there',
  },
  'company suppliers.bagged.phone': {
    setting: BAGS_WIN,
    reason: 'a yard is named where something is bought there',
  },
  'job build.slabs.*.edge-joints.*.post-tensioned': {
    setting: [{ of: 'job', path: 'build.slabs.drive.edge-joints.4.how', text: 'isolated' }],
    change: [{ of: 'job', path: 'build.slabs.drive.edge-joints.4.post-tensioned', text: 'yes' }],
    reason: 'nothing is drilled into what has tendons',
  },
  'company suppliers.glass-fibre-bars.notice': {
    setting: [{ of: 'job', path: 'build.slabs.plot.reinforcement.corners', text: 'crossed' }],
    reason: 'bent pieces of the same yard are ordered earlier',
  },
  'company places.*.accepts.*': {
    change: [{ of: 'company', path: 'places.breaker-yard.accepts.2', text: 'masonry' }],
    reason: 'a place names each kind of load once',
  },
  'company places.*.open-on.*': {
    change: [{ of: 'company', path: 'places.breaker-yard.open-on.4', text: 'saturday' }],
    reason: 'a place names each day once',
  },
  'company places.*.sells-base': {
    change: [{ of: 'company', path: 'places.tip.sells-base', text: 'yes' }],
    reason: 'the other place has a fee for loads that go back with base',
  },
  'company forms.boards.*.height': {
    change: [{ of: 'company', path: 'forms.boards.high-board.height', text: '5 1/4 in' }],
    reason: 'a board as high as its slab has no finding, and one is acknowledged',
  },
  ...levelSpecials(),
  ...publicWalkSpecials(),
  'job heights.drains.*.pipe.invert': {
    change: [{ of: 'job', path: 'heights.drains.channel.pipe.invert', text: '100.55 ft' }],
    reason: 'a pipe leaves below the rim of its drain',
  },
  'job heights.drains.*.pipe.outlet': {
    change: [{ of: 'job', path: 'heights.drains.channel.pipe.outlet', text: '100.1 ft' }],
    reason: 'a pipe falls to its outlet',
  },
  'job build.slabs.*.fall.direction': {
    change: [{ of: 'job', path: 'build.slabs.drive.fall.direction', text: '92 deg' }],
    reason: 'the fixed heights of the drive leave no other',
  },
  'job heights.bends-along.*.*': {
    change: [{ of: 'job', path: 'heights.bends-along.0.0', text: 'garage-right' }],
    reason: 'a point of the heights, and none twice',
  },
  'job heights.garages.*.slab': {
    change: [
      { of: 'job', path: 'heights.garages.garage.slab', text: 'wedge' },
      { of: 'job', path: 'heights.points.garage-left.at.0', text: '40 ft' },
      { of: 'job', path: 'heights.points.garage-left.at.1', text: '20 ft' },
      { of: 'job', path: 'heights.points.garage-right.at.0', text: '49 ft' },
      { of: 'job', path: 'heights.points.garage-right.at.1', text: '20 ft' },
    ],
    reason: 'a slab meets all points of it',
  },
  'job heights.garages.*.points.*': {
    change: [{ of: 'job', path: 'heights.garages.garage.points.0', text: 'curb-left' }],
    reason: 'a fixed point on the slab, and none twice',
  },
  'job heights.keep-dry.*.along.*.*': {
    change: [{ of: 'job', path: 'heights.keep-dry.lot-line.along.1.0', text: '4 ft' }],
    reason: 'a fifth more leaves as much of the water to it',
  },
  'job heights.public-walks.*.slab': {
    change: [
      { of: 'job', path: 'heights.public-walks.town-walk.slab', text: 'wedge' },
      { of: 'job', path: 'heights.points.curb-left.at.0', text: '43 ft' },
      { of: 'job', path: 'heights.points.curb-left.at.1', text: '18 ft' },
      { of: 'job', path: 'heights.points.curb-right.at.0', text: '46 ft' },
      { of: 'job', path: 'heights.points.curb-right.at.1', text: '18 ft' },
    ],
    reason: 'a slab meets both ends of it',
  },
  'job job.rule-sets.*': {
    change: [{ of: 'job', path: 'job.rule-sets.1', text: 'california' }],
    reason: 'the ids of rule sets stand in no file of the job',
  },
  'job job.acknowledged.*.finding': {
    change: [{ of: 'job', path: 'job.acknowledged.0.finding', text: 'walk-slopes-across' }],
    reason: 'the codes of rules stand in no file of the job',
  },
  'job job.acknowledged.*.where': {
    change: [{ of: 'job', path: 'job.acknowledged.0.where', text: 'drive' }],
    reason: 'a place of a finding is the id of a thing',
  },
};

/**
 * One test a leaf: changed by itself in a part of the full job that has it, or else in the full job,
 * it changes the bytes of a document. And one that every special case is of a leaf there is.
 *
 * @param tried Of the leaves, those that are tried in this run.
 */
export function testLeaves(
  side: Side,
  leaves: readonly SchemaLeaf[],
  tried: readonly SchemaLeaf[] = leaves,
): void {
  describe(`each leaf of the ${side} changes a document`, () => {
    const trees = readTrees(TEST_JOBS, FULL_JOB);
    const withoutHidden = { ...trees, job: withoutPath(trees.job, ['price', 'hidden']) };
    // Joints round five holes take a second to lay, and each measurement of the yard lays them anew.
    const yardJoints = ['build', 'slabs', 'yard', 'joints', 'propose'];
    const bench = aWorkbench(FULL_JOB, { why: false });
    afterAll(() => bench.remove());
    let renderer: Renderer;
    beforeAll(() => {
      renderer = aRenderer();
    });
    const before = new Map<string, { readonly start: Trees; readonly shown: Shown }>();
    const shownOf = (changed: Trees) => shownPages(bench.prepare(changed), renderer);

    test.each(tried.map((leaf) => [leaf.name, leaf] as const))('%s', (name, leaf) => {
      const { setting = [], change } = SPECIAL[`${side} ${name}`] ?? {};
      // Every hidden condition calculates the job once more: they are there for their own leaves only.
      const given = name.startsWith('price.hidden') ? trees : withoutHidden;
      const job = name.startsWith('build') ? withLeaf(given.job, yardJoints, 'nothing') : given.job;
      const full = withEdits({ ...given, job }, setting);
      const waysIn = (whole: Trees) => (change === undefined ? generic(side, leaf, whole) : [change]);
      const tells = (part: Trees) => {
        const key = JSON.stringify(part);
        const known = before.get(key) ?? { start: part, shown: shownOf(part) };
        // Neighbours in the schema often change the same part, and a hundred parts would fill the memory.
        if (before.size > 8) before.clear();
        before.set(key, known);
        const { start, shown } = known;
        // What stands at a place that is not driven to changes nothing; one of several has to.
        return waysIn(start).some((way) => differs(shown, shownOf(withEdits(start, way))));
      };
      const named = [
        ...(waysIn(full)[0] ?? []).flatMap(({ path, text }) => [...path.split('.'), text]),
        ...SHOWN_BY.flatMap(([start, slab]) => (name.startsWith(start) ? [slab] : [])),
      ];
      expect(tells(partOfFull(full, named)) || tells(full)).toBe(true);
    });

    test('every special case is of a leaf', () => {
      const names = leaves.map(({ name }) => `${side} ${name}`);
      const special = Object.keys(SPECIAL).filter((name) => name.startsWith(`${side} `));
      expect(special.length).toBeGreaterThan(0);
      expect(special.filter((name) => !names.includes(name))).toEqual([]);
    });
  });
}

function generic(side: Side, leaf: SchemaLeaf, start: Trees): readonly (readonly Edit[])[] {
  return instancesOf(leaf, leavesOf(start[side])).map((instance) => [
    { of: side, path: instance.path.join('.'), text: changedText(leaf, instance, start) },
  ]);
}

function withEdits(start: Trees, edits: readonly Edit[]): Trees {
  return edits.reduce((at, { of, path, text }) => {
    subtree(at[of], path.split('.'));
    return { ...at, [of]: withLeaf(at[of], path.split('.'), text) };
  }, start);
}
