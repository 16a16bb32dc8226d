import { describe, expect, test } from 'vitest';
import { describeJob } from '../../src/describe/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS, jobNamed, preparedIn, TEST_JOBS } from '../support/project.ts';

const say = en.crewDays;

function workOrderOf(id: string) {
  return describeJob(jobNamed(preparedIn(DEMO_JOBS), id), en as Words).workOrder;
}

/** The texts of a list of each day, by date. */
function listsOf(id: string, list: 'before' | 'work' | 'after') {
  return workOrderOf(id).days.map((day) => day[list].items.map(({ text }) => text));
}

const daysWith = (lists: readonly (readonly string[])[], text: string) =>
  lists.flatMap((texts, index) => (texts.includes(text) ? [index] : []));

// Regression: thickness was asked for on the days of the base, when the old slab was gone, and the look round
// before work, the photographs and the pre-pour page on each day of a phase.
describe('what the crew looks at on each day of maple-court', () => {
  const before = listsOf('maple-court', 'before');
  const after = listsOf('maple-court', 'after');

  test('the first two days tear out, two lay base, forms and steel', () => {
    expect(workOrderOf('maple-court').days.map(({ phase }) => phase)).toEqual([
      en.common.phases['tear-out'],
      en.common.phases['tear-out'],
      en.common.phases['base-and-forms'],
      en.common.phases['base-and-forms'],
      en.common.phases.pour,
      en.common.phases['strip-and-clean'],
    ]);
  });

  test('photographs and protection come once, before anything is broken', () => {
    expect(daysWith(before, say.beforeYouStart.photos)).toEqual([0]);
    expect(daysWith(before, say.beforeYouStart.protect)).toEqual([0]);
  });

  test('marks are looked at on each day that digs, water runs where it is sawn or broken', () => {
    expect(daysWith(before, say.beforeYouStart.marks)).toEqual([0, 1]);
    expect(daysWith(before, say.beforeYouStart.water)).toEqual([0]);
  });

  test('the old slab is measured on the day on which it is broken', () => {
    expect(daysWith(after, say.beforeYouLeave.thickness)).toEqual([0]);
  });

  test('the base is looked at before base is laid, and the pre-pour page filled in on the last day', () => {
    expect(daysWith(before, say.beforeYouStart.soft)).toEqual([2]);
    expect(daysWith(before, say.beforeYouStart.strings)).toEqual([2]);
    expect(daysWith(after, say.beforeYouLeave.prePour)).toEqual([3]);
    expect(daysWith(after, say.beforeYouLeave.stakes)).toEqual([2, 3]);
  });

  test('whoever saws comes back where the saw may run on the day after only', () => {
    const work = listsOf('maple-court', 'work');
    expect(daysWith(work, say.sawNextDay)).toEqual([4]);
    const { proposal } = describeJob(jobNamed(preparedIn(DEMO_JOBS), 'maple-court'), en as Words);
    const told = proposal.calendar.rows.map(({ cells }) => [cells[0], cells[1]]);
    expect(told).toContainEqual([
      'Sat\u00a09\u00a0May',
      'The concrete cures. We come back to cut the joints',
    ]);
    expect(daysWith(listsOf('garden-row', 'work'), say.tasks['saw-joints'])).toEqual([4]);
  });

  test('cuts are cured again where joints are sawn', () => {
    expect(daysWith(after, say.beforeYouLeave.curedCuts)).toEqual([4]);
    expect(daysWith(after, say.beforeYouLeave.cured)).toEqual([]);
  });
});

describe('a day on which only trailers are loaded and driven', () => {
  test('asks for no marks and no water, and has the loader', () => {
    const [, second = []] = listsOf('garden-row', 'before');
    const [, left = []] = listsOf('garden-row', 'after');
    expect(second).toEqual([]);
    expect(left).toEqual([say.beforeYouLeave.edges, say.beforeYouLeave.swept, say.beforeYouLeave.machine]);
    const facts = workOrderOf('garden-row').days[1]?.facts ?? [];
    const machines = facts.find(({ label }) => label === en.workOrder.day.machines);
    expect(machines?.value).toBe('Compact loader with breaker');
  });
});

// Regression: a panel of bags without steel was asked about trucks, tickets, chairs and saws.
describe('one walk panel of bags', () => {
  const walk = workOrderOf('corner-walk');

  test('its pre-pour page asks for what is there', () => {
    const { items } = say.prePour;
    expect(walk.prePour.items.map(({ text }) => text)).toEqual([
      items.tops,
      items.base,
      items.strip,
      items.power,
      items.washout,
      items.way,
      items.bags,
    ]);
  });

  test('its soft strip goes in with the forms, and nothing is said of joints it has not', () => {
    const [first = []] = listsOf('corner-walk', 'work');
    expect(first).toContain(say.softStrip);
    expect(first.indexOf(say.softStrip)).toBe(first.indexOf(say.tasks.form) + 1);
    expect(walk.joints?.rows.map(({ cells, note }) => [cells[0], note])).toEqual([
      [en.workOrder.joints.edge, null],
    ]);
  });

  test('its proposal promises no agreed prices and no grooves', () => {
    const { proposal } = describeJob(jobNamed(preparedIn(DEMO_JOBS), 'corner-walk'), en as Words);
    expect(proposal.hidden).toBeNull();
    expect(proposal.signatures.sentence).not.toContain('hidden');
    expect(proposal.aboutConcrete.items[0]).toBe(en.proposal.about.noGrooves);
  });
});

describe('the proposal of maple-court', () => {
  const { proposal } = describeJob(jobNamed(preparedIn(DEMO_JOBS), 'maple-court'), en as Words);

  test('is signed with its agreed prices, and has nothing to tick once all is chosen', () => {
    expect(proposal.hidden?.table.rows.length).toBeGreaterThan(0);
    expect(proposal.signatures.sentence).toContain('agreed prices for hidden conditions');
    expect(proposal.summary.next.items).toContain(en.proposal.next.sign);
    expect(proposal.summary.next.items).not.toContain(en.proposal.next.tick);
    expect(proposal.aboutConcrete.items[0]).toBe(en.proposal.about.grooves);
  });
});

// Regression: a planter and steps had bays to chalk, 41 sq ft of steps to break, joints to tool that were sawn, a
// truck every 10 min where one comes, and days of waiting for mild weather in the cold.
describe('a planter and steps that go on a cold day, and a landing with tooled joints', () => {
  const { workOrder, proposal } = describeJob(jobNamed(preparedIn(TEST_JOBS), 'side-steps'), en as Words);
  const [first, ...later] = workOrder.days;
  const last = later.at(-1);

  test('nothing is chalked, and nothing is measured that is not there', () => {
    const items = first?.work.items ?? [];
    expect(items.slice(0, 3).map(({ text, quantity }) => [text, quantity])).toEqual([
      [say.tasks['set-up'], null],
      [say.tasks['break-out'], null],
      [say.tasks['break-out-by-hand'], null],
    ]);
    expect(workOrder.loads?.caption).toBe(en.workOrder.loads.captionByWeight);
    expect(first?.after.items.map(({ text }) => text)).not.toContain(say.beforeYouLeave.thickness);
  });

  test('joints are tooled while the slab is finished, and only there', () => {
    const tooled = en.pourDay.clock.tooled('');
    const steps = workOrder.pourDay?.clock.rows.map(({ cells }) => cells[1] ?? '') ?? [];
    expect(steps.filter((step) => step.includes(tooled))).toEqual([
      en.pourDay.clock.tooled(en.pourDay.clock.steps['finish-float']),
    ]);
    expect(later.flatMap(({ work }) => work.items.map(({ text }) => text))).toContain(say.finishTooled);
    const maple = workOrderOf('maple-court').pourDay?.clock.rows.map(({ cells }) => cells[1] ?? '') ?? [];
    expect(maple.filter((step) => step.includes('tool the joints'))).toEqual([]);
  });

  test('one truck has no other behind it', () => {
    const { facts } = en.workOrder.chute;
    expect(workOrder.chute?.facts.find(({ label }) => label === facts.loads)?.value).toMatch(/^[\d.]+ yd³$/);
  });

  test('days of waiting are told to be too few in the cold', () => {
    expect(last?.facts).toContainEqual({ label: en.pourDay.waits.days, value: en.pourDay.waits.cold });
    expect(proposal.care.items).toContain(en.proposal.care.cold);
    // Maple-court has the air of the coming days, corner-walk is poured in the heat.
    for (const id of ['maple-court', 'corner-walk']) {
      const values = workOrderOf(id).days.flatMap(({ facts }) => facts.map(({ value }) => value));
      expect(values).not.toContain(en.pourDay.waits.cold);
    }
  });
});
