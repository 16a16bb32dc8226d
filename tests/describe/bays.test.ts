import { describe, expect, test } from 'vitest';
import { showIn } from '../../src/describe/show/index.ts';
import { baysView } from '../../src/describe/work-order/bays.ts';
import { en, type Words } from '../../src/words/index.ts';
import { allJobs, jobNamed } from '../support/project.ts';

const jobs = allJobs();

function viewOf(id: string) {
  const { job, results } = jobNamed(jobs, id);
  return baysView({ job, results, show: showIn(job.unitSystem), words: en as Words });
}

/** Text in a layer of the plan. */
function textsOf(id: string, layer: 'bays' | 'labels' = 'bays'): readonly string[] {
  const layers = viewOf(id)?.chalked?.plan.drawing.layers ?? [];
  return layers
    .filter(({ name }) => name === layer)
    .flatMap(({ primitives }) => primitives)
    .flatMap((one) => (one.kind === 'text' ? [one.text] : []));
}

describe('the bays on the work order', () => {
  // By hand: the driveway is 18 ft wide, so that so many square feet reach so many eighteenths of a foot.
  test('a line of the driveway lies as far from its end as the loads before it reach', () => {
    const rows = (viewOf('maple-court')?.chalked?.lines.rows ?? []).filter(
      ({ cells: [, what] }) => what === 'Old driveway',
    );
    const { results } = jobNamed(jobs, 'maple-court');
    const taken = results.haul.data.loads.flatMap(({ pieces }, index) =>
      pieces.flatMap(({ existingId, areaSqFt }) =>
        existingId === 'old-drive' && areaSqFt !== null ? [{ load: `${index + 1}`, areaSqFt }] : [],
      ),
    );
    expect(taken.length).toBeGreaterThan(2);
    expect(rows.map(({ cells }) => cells.slice(0, 3))).toEqual(
      taken.map(({ load, areaSqFt }) => [load, 'Old driveway', `${Math.round(areaSqFt)} sq ft`]),
    );
    let beforeSqFt = 0;
    for (const [index, { cells }] of rows.entries()) {
      const line = cells[3] ?? '';
      if (index === 0) expect(line).toBe('start here');
      else {
        const [, ft, inches, eighths = '0', parts = '1'] =
          /^(\d+)′ (\d+)(?: (\d+)\/(\d+))?″ from [A-Z] and [A-Z]$/.exec(line) ?? [];
        const shownIn = Number(ft) * 12 + Number(inches) + Number(eighths) / Number(parts);
        expect(Math.abs(shownIn - (beforeSqFt / 18) * 12), line).toBeLessThanOrEqual(1 / 16);
      }
      beforeSqFt += taken[index]?.areaSqFt ?? Number.NaN;
    }
  });

  test('metric: the patio, 5.4 m long, in halves', () => {
    expect(viewOf('garden-row')?.chalked?.lines.rows.map(({ cells }) => cells)).toEqual([
      ['1', 'Old patio', '8.1 m²', 'start here'],
      // Between them the other trailer is driven with soil.
      ['3', 'Old patio', '8.1 m²', '2.70 m from A and B'],
    ]);
  });

  test.each(['maple-court', 'garden-row', 'full'])(
    'every load by area of %s has its number on the plan',
    (id) => {
      const loads = jobNamed(jobs, id).results.haul.data.loads;
      const numbers = loads.flatMap(({ areaSqFt }, index) => (areaSqFt === null ? [] : [`${index + 1}`]));
      expect(numbers.length).toBeGreaterThan(1);
      expect(textsOf(id)).toEqual(expect.arrayContaining([...numbers, 'A', 'B']));
      const soil = loads.flatMap(({ areaSqFt }, index) => (areaSqFt === null ? [`${index + 1}`] : []));
      expect(textsOf(id).filter((text) => soil.includes(text))).toEqual([]);
    },
  );

  test('a thing too narrow for its name has it beside the plan', () => {
    expect(textsOf('garden-row', 'labels').toSorted()).toEqual(['Brick edging', 'Old patio']);
  });

  test('where nothing is split there is no plan, and it is said', () => {
    expect(viewOf('corner-walk')).toEqual({
      notes: { heading: 'Before you chalk', items: [en.workOrder.bays.whole] },
      chalked: null,
    });
  });

  test('ends that are not as far from their corners are told apart', () => {
    const { job, results } = jobNamed(jobs, 'full');
    const tied = results.bays.data.bays.find(({ ties }) => ties.length === 2);
    if (tied === undefined) throw new Error('the full job has a line');
    const { existingId, load } = tied;
    const figures = results.bays.figures[existingId]?.[load] ?? {};
    const [first, second] = tied.ties.map(({ figure }, index) => {
      const made = figures[figure];
      if (made === undefined) throw new Error(`no figure ${figure}`);
      return [figure, { ...made, value: 120 + 12 * index }] as const;
    });
    const slanted = {
      [existingId]: { [load]: Object.fromEntries([first, second].flatMap((one) => (one ? [one] : []))) },
    };
    const changed = {
      ...results,
      bays: { ...results.bays, figures: { ...results.bays.figures, ...slanted } },
    };
    const only = {
      ...changed.bays.data,
      bays: results.bays.data.bays.filter(
        (bay) => bay.existingId === existingId && (bay === tied || bay.lines.length === 0),
      ),
    };
    const view = baysView({
      job,
      results: { ...changed, bays: { ...changed.bays, data: only } },
      show: showIn('us'),
      words: en as Words,
    });
    const [a, b] = tied.ties.map(({ mark }) => mark.toUpperCase());
    expect(view?.chalked?.lines.rows.map(({ cells }) => cells[3])).toEqual([
      'start here',
      `10′ 0″ from ${a}; 11′ 0″ from ${b}`,
    ]);
  });

  test('without anything loaded by area there is nothing to say', () => {
    const { job, results } = jobNamed(jobs, 'corner-walk');
    const none = { ...results, bays: { ...results.bays, data: { bays: [], marks: {} } } };
    expect(baysView({ job, results: none, show: showIn('us'), words: en as Words })).toBeNull();
  });
});
