import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { summaryOf } from '../../src/commands/job-summary.ts';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import { describeJob, describeJobsPage } from '../../src/describe/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { type Piece, piecesOf } from '../support/html.ts';
import { pagesIn } from '../support/pages.ts';
import { partOfFull } from '../support/part-of-full.ts';
import { DEMO_JOBS, FULL_JOB, preparedIn, TEST_JOBS } from '../support/project.ts';
import { keysOfWords, pseudo, watchedWords, withoutBrackets } from '../support/pseudo.ts';
import { aRenderer, type Renderer } from '../support/render.ts';
import { withTexts } from '../support/text-leaves.ts';
import { readTrees, type Trees, withLeaf, withoutPath } from '../support/trees.ts';
import { aWorkbench, type Workbench } from '../support/workbench.ts';

const JOBS = [
  [TEST_JOBS, FULL_JOB],
  [DEMO_JOBS, 'maple-court'],
  [DEMO_JOBS, 'garden-row'],
  [DEMO_JOBS, 'corner-walk'],
] as const;
const benches = new Map<string, Workbench>(JOBS.map(([, id]) => [id, aWorkbench(id)]));
afterAll(() => benches.forEach((bench) => bench.remove()));

let renderer: Renderer;
beforeAll(() => {
  renderer = aRenderer();
});

function prepare(id: string, trees: Trees): PreparedJob {
  const bench = benches.get(id);
  if (bench === undefined) throw new RangeError(`no bench for ${id}`);
  return bench.prepare(trees);
}

/*
 * Texts of the files are numbers here and fixed text stands in brackets, so that letters outside of
 * brackets are text that no translation reaches.
 */
describe.each(JOBS)('%s/%s says nothing that is not in the words', (jobsDir, id) => {
  let pages: ReadonlyMap<string, string>;
  let prepared: PreparedJob;
  beforeAll(() => {
    prepared = prepare(
      id,
      withTexts(readTrees(jobsDir, id), (_, index) => String(100_000 + index)),
    );
    pages = pagesIn(prepared, pseudo, renderer);
  });

  test.each(['proposal', 'work-order', 'materials', 'safety', 'calculation', 'binder', 'site-walk', 'jobs'])(
    'on the page %s',
    (name) => {
      const said = piecesOf(pages.get(name) ?? '').filter(isSaid);
      expect(said.length).toBeGreaterThan(10);
      const left = said.map((piece) => withoutKnown(withoutBrackets(piece.text), prepared));
      expect(left.filter((text) => /\p{L}/u.test(text))).toEqual([]);
    },
  );
});

const SAID_ATTRIBUTES = [
  'title',
  'alt',
  'aria-label',
  'aria-description',
  'placeholder',
  'data-label',
  'data-overdue',
];

/** Text and attributes that are read or spoken, but for how a figure was made and on whose word. */
function isSaid({ kind, name, within }: Piece): boolean {
  if (kind === 'attribute') return SAID_ATTRIBUTES.includes(name);
  return kind === 'text' && !isAudit(within);
}

/** Ids, formulas and sources of figures, and the sources of findings. */
function isAudit(within: readonly string[]): boolean {
  const last = within.at(-1) ?? '';
  if (within.some((element) => element.startsWith('div.finding.'))) return last === 'p.small';
  if (within.includes('section.sources')) return last === 'li';
  if (!within.includes('table.topic') || !within.includes('tbody')) return false;
  return last === 'th' || last === 'th.topic__group' || last === 'td';
}

/** Symbols that stand behind a number, and are the same in every language of one system of units. */
const UNITS =
  /(?<=\d[\d,.]* ?)(?:sq ft\/gal|yd3\/h|min|sq in\/ft|sq in|lb\/cu ft|lb\/sq ft\/h|kg\/m²\/h|lb\/sq ft|sq ft|cu ft|ft|in|deg|yd³|yd3|lb|tons?|psi|°F|°C|mph|km\/h|mi|gal|h|days|each|per h|APF|dBA|mm|m²|m³|m|kg|km|t|L|MPa)(?![\p{L}\d])/gu;
const RATES = /(?<=\$[\d,.]+)\/(?:h|yd3|ton|load|mi|lb|day|each|visit|sq ft|ft)(?!\p{L})/gu;
const PER = / \/ (?:ft|m)(?!\p{L})/gu;
const KINDS_OF_FILE = /\bPDF\b/g;

function withoutKnown(text: string, { job, results }: PreparedJob): string {
  const names = [
    ...Object.keys(job.company.forms.boards),
    ...Object.keys(job.company.forms.strips),
    ...Object.values(job.build.slabs).map(({ reinforcement: steel }) =>
      steel.kind === 'mesh' ? steel.style : '',
    ),
    ...results.safety.data.silica.map(({ row }) => row?.name ?? ''),
  ].toSorted((one, other) => other.length - one.length);
  return names
    .filter((name) => name !== '')
    .reduce((at, name) => at.replaceAll(name, ' '), text)
    .replace(UNITS, ' ')
    .replace(RATES, ' ')
    .replace(PER, ' ')
    .replace(KINDS_OF_FILE, ' ');
}

test('brackets in brackets are taken off, and letters beside them are seen', () => {
  expect(withoutBrackets('[a [b] c] d')).toBe('  d');
  expect('4 ft 3 in a'.replace(UNITS, '')).toBe('4  3  a');
  expect('12 install'.replace(UNITS, '')).toBe('12 install');
});

type Edit = readonly [of: keyof Trees, path: string, text: string];

/** A part of the full job once more for each, so that words which stand for a choice or a finding come up. */
const VARIANTS: readonly (readonly Edit[])[] = [
  // The pour before its forms stand, on a way that only a pump goes; an edge without a taper.
  [
    ['job', 'plan.pours-on', '2026-05-07'],
    ['job', 'site.access.way-slope', '30 %'],
    ['job', 'build.slabs.drive.thickened-edges.3.taper', '0 in'],
    ['job', 'build.slabs.terrace.probed-depth', '3 1/2 in'],
  ],
  [
    ['job', 'site.access.way-slope', '12 %'],
    ['job', 'build.mix.air', '2 %'],
    ['job', 'build.mix.water-cement', '0.5'],
    ['job', 'build.mix.fly-ash', '30 %'],
    ['job', 'build.mix.slag', '55 %'],
    ['job', 'build.mix.additives.0', 'accelerator'],
    ['job', 'build.mix.slump', '6 in'],
    ['job', 'build.mix.aggregate', '2 in'],
    ['company', 'suppliers.concrete.on-the-way', '90 min'],
  ],
  [
    ['job', 'site.access.way-slope', '12 %'],
    ['company', 'placing.pump.reach', '10 ft'],
    ['company', 'placing.buggy.steepest', '10 %'],
  ],
  [
    ['company', 'suppliers.concrete.short-load-below', '5.5 yd3'],
    ['company', 'suppliers.concrete.short-load-fee', '$900'],
  ],
  [['job', 'build.mix.air', '9 %']],
  [['job', 'build.mix.exposure', 'no-freezing']],
  [['job', 'build.mix.exposure', 'freezing']],
  [['job', 'build.slabs.drive.base', '0 in']],
  [
    ['company', 'suppliers.base.delivery', '$0'],
    ['job', 'heights.public-walks.town-walk.way', 'match'],
    ['job', 'heights.public-walks.town-walk.transition', '1/16 in per ft'],
  ],
  [
    ['company', 'trailers.big-box.axle-rating', '5,000 lb'],
    ['company', 'machines.skid.tied-down.weight', '900 lb'],
    ['job', 'heights.public-walks.town-walk.way', 'replace'],
    ['job', 'heights.drains.channel.pipe.length', '60 ft'],
    ['job', 'heights.lids.cleanout.kind', 'lid'],
    ['job', 'heights.lids.valve.kind', 'meter-box'],
    // As high as the surface there.
    ['job', 'heights.lids.valve.height', '100.91 ft'],
    ['job', 'site.under-slab.roof-water.kind', 'irrigation'],
    ['job', 'site.under-slab.lamp.kind', 'wires'],
    ['job', 'site.under-slab.lamp.depth', '4 in'],
  ],
  [
    ['company', 'tow-vehicle.tow-rating', '6,000 lb'],
    ['company', 'machines.skid.tied-down.weight', '900 lb'],
    ['company', 'tow-vehicle.gross-rating', '26,001 lb'],
  ],
  [
    ['company', 'tow-vehicle.combined-rating', '14,000 lb'],
    ['company', 'machines.skid.tied-down.weight', '900 lb'],
    ['job', 'heights.public-walks.town-walk.way', 'grind'],
    ['job', 'heights.public-walks.town-walk.left.should', '99.9 ft'],
    ['job', 'heights.public-walks.town-walk.right.should', '99.9 ft'],
  ],
  [
    ['company', 'tow-vehicle.carries', '4,000 lb'],
    ['company', 'machines.skid.tied-down.weight', '900 lb'],
    ['job', 'heights.public-walks.town-walk.way', 'leave-edge'],
  ],
  [
    ['company', 'tow-vehicle.hitch-rating', '900 lb'],
    ['company', 'machines.skid.tied-down.weight', '900 lb'],
  ],
  [['company', 'suppliers.concrete.short-load-below', '8 yd3']],
  [['company', 'machines.skid.kind', 'jackhammer']],
  [
    ['company', 'machines.skid.wet', 'no'],
    ['company', 'machines.skid.kind', 'jackhammer'],
  ],
  ['base', 'finish', 'cure', 'backfill'].map(
    (task): Edit => ['company', `production.${task}.machine`, 'skid'],
  ),
  ...['working', 'done', 'paid'].map((stage): readonly Edit[] => [['job', 'job.stage', stage]]),
  // Nothing but what is acknowledged.
  [
    ['job', 'build.slabs.drive.thickness', '5 in'],
    ['job', 'build.slabs.walk.fall.slope', '1/4 in per ft'],
    ['company', 'production.finish.people', '3'],
    ['company', 'rules.pour-over-a-day.limit', '9 days'],
    ['company', 'rules.load-near-payload.limit', '100 %'],
    ['company', 'rules.licence-group-a.limit', '14,000 lb'],
    ['company', 'rules.levels-not-closed.limit', '1 each'],
  ],
  [['job', 'build.slabs.drive.thickness', '3 in']],
  [['job', 'build.slabs.drive.base', '3 in']],
  [['job', 'build.slabs.drive.fall.slope', '1/16 in per ft']],
  [
    ['job', 'build.slabs.drive.joint-spacing', '40 ft'],
    ['job', 'build.slabs.drive.rectangle.length', '20 ft'],
    ['job', 'heights.points.curb-left.at.0', '20 ft'],
    ['job', 'heights.points.curb-right.at.0', '20 ft'],
    ['job', 'build.slabs.drive.joints.lines.gate.from.0', '15 ft'],
    ['job', 'build.slabs.drive.joints.lines.gate.to.0', '15 ft'],
  ],
  // And the drive falls to the house, the pad is steep, the play place has a hollow, and the ramp lies beside
  // the yard, higher and steeper.
  [
    ['job', 'build.mix.strength', '3000 psi'],
    ['job', 'heights.points.drive-end.height', '101.6 ft'],
    ['job', 'build.steps.door-steps.landing', '3 ft'],
    ['job', 'heights.points.pad-3.height', '100.5 ft'],
    ['job', 'heights.points.plot-middle.height', '101 ft'],
    ['job', 'build.slabs.yard.label', 'Yard'],
    ['job', 'build.slabs.ramp.at.0', '54 ft'],
    ['job', 'heights.points.ramp-1.at.0', '55 ft'],
    ['job', 'heights.points.ramp-2.at.0', '55 ft'],
    ['job', 'heights.points.ramp-3.at.0', '62 ft'],
    ['job', 'heights.points.ramp-3.height', '100 ft'],
  ],
  // And the drive hardly falls at all.
  [
    ['job', 'build.mix.air', '3 %'],
    ['job', 'heights.points.drive-end.height', '101.15 ft'],
  ],
  [
    ['company', 'production.place.pace', '0.5 yd3 per h'],
    ['company', 'production.break-out.pace', '5 sq ft per h'],
  ],
  [['company', 'production.finish.people', '1']],
  [['company', 'production.form.people', '7']],
  [
    ['company', 'pricing.payments.0.share', '45 %'],
    ['company', 'pricing.payments.1.share', '20 %'],
  ],
  [['job', 'plan.drivers', '2']],
  // The loader is slower than two trucks, or than one that swaps its trailers.
  [
    ['job', 'plan.drivers', '2'],
    ['company', 'loading-time', '3 h'],
  ],
  [['company', 'loading-time', '3 h']],
  [
    ['company', 'places.breaker-yard.base.minimum', '$0.00'],
    ['company', 'suppliers.geotextile.lap', '9 in'],
    ['job', 'build.slabs.drive.curve-form', 'stiff-strip'],
    ['job', 'build.slabs.terrace.rounded-by-chord.2.rise', '5 in'],
    ['job', 'build.slabs.path.strip.line.1.rounded', 'outer'],
    ['job', 'build.slabs.wedge.sides.2.length', '9 ft 2 in'],
    ['company', 'rules.panel-long.limit', '1.1'],
    ['company', 'rules.price-below-cost.limit', '40 %'],
    ['job', 'job.rule-sets.1', 'california'],
  ],
  // Steps with everything that is found in steps, and the others without a landing of their own.
  [
    ['job', 'build.steps.porch-steps.width', '30 in'],
    ['job', 'build.steps.porch-steps.risers', '7'],
    ['job', 'build.steps.porch-steps.riser', '7.8 in'],
    ['job', 'build.steps.porch-steps.tread', '8 in'],
    ['job', 'build.steps.porch-steps.tread-fall', '5/8 in per ft'],
    ['job', 'build.steps.porch-steps.landing', '30 in'],
    ['job', 'build.steps.porch-steps.room', '9 ft'],
  ],
  // A day too hot, windy and wet for it, after a night of frost, and no saw may run when its time is.
  [
    ['job', 'pour.weather.concrete', '97 F'],
    ['job', 'pour.weather.times.0.air', '84 F'],
    ['job', 'pour.weather.times.1.wind', '31 mph'],
    ['job', 'pour.weather.times.1.rain-chance', '60 %'],
    ['job', 'pour.weather.low-before', '30 F'],
    ['job', 'pour.weather.rain-before', '1 in'],
    ['job', 'pour.weather.on', '2026-05-11'],
    ['job', 'pour.noise-allowed.to', '8:00 am'],
    ['company', 'suppliers.concrete.free-cancel', '9 h'],
    ['company', 'production.place.pace', '5 yd3 per h'],
  ],
  // A cold one.
  [
    ['job', 'pour.weather.concrete', '48 F'],
    ['job', 'pour.weather.times.0.air', '37 F'],
    ['job', 'pour.weather.times.1.air', '38 F'],
  ],
  // The saw would run at night; an early-entry saw would not.
  [
    ['job', 'pour.noise-allowed.to', '10:00 pm'],
    ['company', 'production.finish.pace', '400 sq ft per h'],
  ],
  // Cured otherwise, and other things come on the face later.
  [
    ['job', 'pour.curing', 'sheeting'],
    ['job', 'pour.later-coat', 'stain'],
  ],
  [
    ['job', 'pour.curing', 'wet-cover'],
    ['job', 'pour.later-coat', 'overlay'],
  ],
  // A straight of the walk comes out even.
  [['company', 'forms.boards.low-board.length', '10 ft']],
  [['job', 'build.slabs.drive.fall.direction', '270 deg']],
  [['job', 'heights.points.ramp-2.height', '100.9 ft']],
  [['job', 'heights.points.ramp-3.height', '100.4 ft']],
  // A driveway that bends in its middle.
  [
    ['job', 'build.slabs.plot.use', 'driveway'],
    ['job', 'heights.points.plot-middle.height', '101.30 ft'],
  ],
  // Bars of glass fibre with little cover, edges that need another slab, and tendons behind one of them.
  [
    ['job', 'build.slabs.drive.reinforcement.material', 'glass-fibre'],
    ['job', 'build.slabs.drive.reinforcement.corners', 'crossed'],
    ['job', 'build.slabs.drive.reinforcement.cover', '1 in'],
    ['job', 'build.slabs.drive.joints.cut', 'tooled'],
    ['job', 'build.slabs.drive.edge-joints.1.how', 'keyed'],
    ['job', 'build.slabs.drive.thickness', '5 3/4 in'],
    ['job', 'build.slabs.drive.edge-joints.4.how', 'isolated'],
    ['job', 'build.slabs.drive.edge-joints.4.post-tensioned', 'yes'],
  ],
  // Joints that stand askew and far apart, and a corner that turns in without one.
  [
    ['job', 'build.slabs.drive.joints.propose', 'nothing'],
    ['job', 'build.slabs.drive.joints.lines.gate.to.0', '29 ft'],
    ['job', 'build.slabs.walk.joints.propose', 'nothing'],
  ],
  // Pieces of 2, 4, 5, 3 and 4 ft: 18 ft, which no saw gets out of three boards.
  [
    ['company', 'forms.boards.low-board.length', '7 ft'],
    ['company', 'forms.run-past', '0 in'],
  ],
];

/** Keys that no job leads to, each with what keeps it. */
const OTHER_ROW =
  'a control of a row of Table 1 that no machine of a job leads to; every code of the table has a word';
const KEPT: Readonly<Record<string, string>> = {
  'workOrder.chute.balance.whenEmpty': 'for a plant of which nobody said how early its last load is called',
  'materials.concrete.script.questions.drive': 'for a plant of which nobody said how long its trucks drive',
  'materials.concrete.script.questions.balance':
    'for a plant of which nobody said how early its last load is called',
  'safety.silica.controls.collector-99': OTHER_ROW,
  'safety.silica.controls.water-at-bit': OTHER_ROW,
  'safety.silica.controls.water-with-surfactant': OTHER_ROW,
  'safety.silica.controls.drum-exhaust-and-sprays': OTHER_ROW,
  'safety.silica.controls.booth-or-remote-station': OTHER_ROW,
  'safety.silica.controls.outdoors-only': OTHER_ROW,
  'safety.silica.tasks.haul':
    'every task has a word; hauling has no machine of its own, so it is never dusty',
  'findings.other': 'for a rule whose code has no sentence of its own; every shipped rule has one',
};

/** Words that no variant above leads to yet: each wants one, and then leaves this list. */
const WANTS_A_VARIANT: readonly string[] = [
  'materials.stock.found',
  'steel.plan.onJoint',
  'steel.cutPlan.found',
  'steel.edges.besideIt',
  'findings.sentences.lap-on-joint',
];

test('every word is used by a document', () => {
  const { words, read } = watchedWords(en as Words);
  // A page shows what is described, a list of words too, and nothing else.
  const use = (prepared: PreparedJob) => {
    const summary = summaryOf(prepared);
    const perfect = { ...summary, findings: { stop: 0, fix: 0, note: 0 } };
    return JSON.stringify([describeJob(prepared, words), describeJobsPage([summary, perfect], words)]);
  };
  pagesIn(prepare(FULL_JOB, partOfFull(readTrees(TEST_JOBS, FULL_JOB), [])), words, renderer);
  for (const prepared of preparedIn(DEMO_JOBS)) use(prepared);
  const full = readTrees(TEST_JOBS, FULL_JOB);
  use(prepare(FULL_JOB, full));
  // Every hidden condition calculates the job once more, and every comparison plans its trips anew.
  const plain = aWorkbench(FULL_JOB, { why: false });
  onTestFinished(() => plain.remove());
  const withoutHidden = { ...full, job: withoutPath(full.job, ['price', 'hidden']) };
  for (const edits of VARIANTS) {
    const changed = edits.reduce<Trees>(
      (at, [of, path, text]) => ({ ...at, [of]: withLeaf(at[of], path.split('.'), text) }),
      withoutHidden,
    );
    const named = edits.flatMap(([, path, text]) => [...path.split('.'), text]);
    use(plain.prepare(partOfFull(changed, named)));
  }
  const unread = keysOfWords(en).filter((key) => !read.has(key));
  expect(unread.toSorted()).toEqual([...Object.keys(KEPT), ...WANTS_A_VARIANT].toSorted());
});
