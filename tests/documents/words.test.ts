import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { summaryOf } from '../../src/commands/job-summary.ts';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import { describeJob, describeJobsPage } from '../../src/describe/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { type Piece, piecesOf } from '../support/html.ts';
import { pagesIn } from '../support/pages.ts';
import { partOfFull } from '../support/part-of-full.ts';
import { DEMO_JOBS, FULL_JOB, jobNamed, preparedIn, TEST_JOBS } from '../support/project.ts';
import { keysOfWords, pseudo, watchedWords, withoutBrackets } from '../support/pseudo.ts';
import { aRenderer, type Renderer } from '../support/render.ts';
import { withTexts } from '../support/text-leaves.ts';
import { readTrees, type Trees, withLeaf, withoutPath } from '../support/trees.ts';
import { aWorkbench, type Workbench } from '../support/workbench.ts';
import { VARIANTS } from './word-variants.ts';

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
  use(jobNamed(preparedIn(TEST_JOBS), 'side-steps'));
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
