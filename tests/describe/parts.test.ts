import { expect, test } from 'vitest';
import type { Step } from '../../src/calculate/pour-day/index.ts';
import { isCountedTooMild } from '../../src/describe/parts/mild-days.ts';
import { orderedVolume, soldVolume } from '../../src/describe/parts/ordered.ts';
import { sawDayOn } from '../../src/describe/parts/saw-day.ts';
import { row, withNote } from '../../src/describe/parts/tables.ts';
import { describeProposal } from '../../src/describe/proposal/index.ts';
import { proposalFactsOf } from '../../src/describe/proposal-facts.ts';
import { showIn } from '../../src/describe/show/index.ts';
import { beforeYouLeave } from '../../src/describe/work-order/day-checks.ts';
import { workList } from '../../src/describe/work-order/day-tasks.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';

const { job, results } = jobNamed(preparedIn(DEMO_JOBS), 'maple-court');
const made = { job, results, show: showIn('us'), words: en as Words };
const { pourDay } = results;
if (pourDay === null) throw new Error('maple-court is poured');

/** Maple-court with other steps on the day of its pour. */
const withSaws = (...steps: readonly Step[]) => ({
  pourDay: { ...pourDay, data: { ...pourDay.data, steps } },
});
const saw = (name: Step['name'], fromHr: number | null): Step => ({ name, fromHr, toHr: null });

test('joints are sawn on a later day only where no saw runs before', () => {
  const on = pourDay.data.on;
  expect(sawDayOn(withSaws(saw('saw', 31)))).toBe('2026-05-09');
  expect(on).toBe('2026-05-08');
  expect(sawDayOn(withSaws(saw('saw', 24)))).toBe('2026-05-09');
  expect(sawDayOn(withSaws(saw('saw', 23.9)))).toBeNull();
  expect(sawDayOn(withSaws(saw('saw-early', 14), saw('saw', 31)))).toBeNull();
  expect(sawDayOn(withSaws(saw('saw', null)))).toBeNull();
  expect(sawDayOn(withSaws(saw('cure', 31)))).toBeNull();
  expect(sawDayOn({ pourDay: null })).toBeNull();
});

test('days of waiting are too few where it is cold and nobody said how warm it will be', () => {
  const told = (isCold: boolean, isEstimated: boolean) =>
    isCountedTooMild({
      pourDay: { ...pourDay, data: { ...pourDay.data, isCold } },
      strength: { ...results.strength, data: { isEstimated } },
    });
  expect([told(true, false), told(true, true), told(false, false), told(false, true)]).toEqual([
    true,
    false,
    false,
    false,
  ]);
});

test('concrete is told in the unit of its price, and in that of the job behind it', () => {
  const { suppliers } = job.company;
  const price = { ...suppliers.concrete.price, perUnit: 'm3' as const };
  const byMetre = {
    ...job,
    company: { ...job.company, suppliers: { ...suppliers, concrete: { ...suppliers.concrete, price } } },
  };
  const show = showIn('us');
  expect(soldVolume(10, { job: byMetre, show })).toBe('7.65 m³');
  expect(orderedVolume(10, { job: byMetre, show })).toBe('7.65 m³ (10.00 yd³)');
  expect(orderedVolume(10, { job: byMetre, show: showIn('metric') })).toBe('7.65 m³');
  expect(orderedVolume(10, { job, show })).toBe('10.00 yd³');
});

test('a note stands below the last row', () => {
  expect(withNote([row('a'), row('b')], 'note').map(({ note }) => note)).toEqual([null, 'note']);
  expect(withNote([], 'note')).toEqual([]);
});

/** The days of a job with a phase drawn out over two days that do the same. */
function drawnOut(phase: string) {
  const { data } = results.crew;
  const days = data.days.flatMap((day) =>
    day.phase === phase && day.kind === 'work' ? [day, { ...day, on: `${day.on}-later` }] : [day],
  );
  const crew = { ...results.crew, data: { ...data, days } };
  const parts = days.filter((day) => day.phase === phase && day.kind === 'work');
  return { made: { ...made, results: { ...results, crew } }, parts };
}

test('the owner is shown the work on the last day', () => {
  const { made: twoDays, parts } = drawnOut('strip-and-clean');
  const { owner } = en.crewDays.beforeYouLeave;
  expect(parts.map((part) => beforeYouLeave(twoDays, part).includes(owner))).toEqual([false, true]);
});

test('the soft strip goes in on the last day of forming', () => {
  const { made: twoDays, parts } = drawnOut('base-and-forms');
  const forming = parts.filter(({ tasks }) => tasks.some(({ task }) => task === 'form'));
  expect(forming).toHaveLength(2);
  const { softStrip } = en.crewDays;
  const has = forming.map((part) => workList(twoDays, [part]).items.some(({ text }) => text === softStrip));
  expect(has).toEqual([false, true]);
});

test('a homeowner who has to choose is asked to tick', () => {
  const facts = proposalFactsOf(job, results);
  const open = { ...facts, publicWalks: facts.publicWalks.map((walk) => ({ ...walk, way: null })) };
  const { tick, sign } = en.proposal.next;
  expect(describeProposal(open, en as Words).summary.next.items).toContain(tick);
  expect(describeProposal(facts, en as Words).summary.next.items).toContain(sign);
});
