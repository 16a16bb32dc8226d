import { describe, expect, test } from 'vitest';
import { applyEdits, type JobEdit } from '../../src/calculate/edits.ts';
import { type Figure, num } from '../../src/calculate/figure.ts';
import { calculateJob } from '../../src/calculate/index.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';
import { NO_TIE_INS } from './slabs.ts';

const { job, results: now } = jobNamed(preparedIn(DEMO_JOBS), 'maple-court');

function after(...edits: readonly JobEdit[]) {
  const { results, problems } = calculateJob(
    applyEdits({ ...job, price: { ...job.price, hidden: {} } }, edits),
  );
  if (results === null) throw new Error(JSON.stringify(problems));
  return results;
}

const valueOf = (figure: Figure | undefined) => (figure === undefined ? 0 : num(figure));
const MORE_BASE: JobEdit = { edit: 'more-base', under: 'drive', byIn: 4 };
const FABRIC: JobEdit = { edit: 'geotextile', under: 'drive' };

describe('soft ground in maple-court', () => {
  const deeper = after(MORE_BASE);
  const driveSqFt = valueOf(now.outline.figures.slabs['drive']?.area);

  test('more base is paid with its digging, the hauling of that soil and the stone', () => {
    // 4 in under the drive, by hand.
    const dug = (results: typeof now) => valueOf(results.crew.figures.tasks.dig?.quantity);
    expect(dug(deeper) - dug(now)).toBeCloseTo((driveSqFt * 4) / 12 / 27, 9);
    const soilLb = (results: typeof now) => valueOf(results.tearOut.figures.streams.soil?.weight);
    // Two weights of more than 30,000 lb, each of prisms between surfaces: their difference keeps fewer digits.
    expect(soilLb(deeper) - soilLb(now)).toBeCloseTo(((driveSqFt * 4) / 12) * (3400 / 27), 5);
    const stoneTon = (results: typeof now) => num(results.base.figures.total.tons);
    const layerSqFt = valueOf(now.base.figures.slabs['drive']?.area);
    expect(stoneTon(deeper) - stoneTon(now)).toBeCloseTo((((layerSqFt * 4) / 12) * 130) / 2000, 9);
    const costOf = (results: typeof now, line: string) => valueOf(results.cost.figures.lines[line]);
    for (const line of ['tear-out-labor', 'haul-labor', 'haul-fees', 'base-stone']) {
      expect(costOf(deeper, line), line).toBeGreaterThan(costOf(now, line));
    }
  });

  test('fabric adds its rolls and nothing else', () => {
    const both = after(MORE_BASE, FABRIC);
    const { geotextile, ...lines } = both.cost.figures.lines;
    expect(Object.entries(lines).map(([name, figure]) => [name, num(figure)])).toEqual(
      Object.entries(deeper.cost.figures.lines).map(([name, figure]) => [name, num(figure)]),
    );
    // 681.85 sq ft of base, 107.42 ft round in a box of 8 in; 1 ft laps of rolls of 12 1/2 by 100 ft, 1,250 sq ft.
    expect(both.base.figures.geotextile?.total.rolls.value).toBe(1);
    expect(valueOf(geotextile)).toBe(140);
    expect(job.build.slabs['drive']?.geotextile).toBe(false);
  });

  test('the order of the two edits does not matter, and both are priced', () => {
    const price = (...edits: readonly JobEdit[]) => num(after(...edits).price.figures.total);
    expect(price(FABRIC, MORE_BASE)).toBe(price(MORE_BASE, FABRIC));
    const agreed = valueOf(now.hidden.figures['fabric-and-base']?.difference);
    expect(num(now.price.figures.total) + agreed).toBeCloseTo(price(MORE_BASE, FABRIC), 6);
  });

  test('fabric under a slab without a base is told', () => {
    const slab = job.build.slabs['drive'];
    if (slab === undefined) throw new Error('there is a drive');
    const bare = {
      ...job,
      acknowledged: [],
      heights: null,
      walls: {},
      profiles: {},
      lids: {},
      tieIns: NO_TIE_INS,
      site: { ...job.site, flights: {} },
      build: { ...job.build, slabs: { drive: { ...slab, baseIn: 0 } } },
    };
    const { problems } = calculateJob({
      ...bare,
      price: { ...job.price, hidden: { soft: { id: 'soft', label: slab.label, edits: [FABRIC] } } },
    });
    expect(problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'fabric-without-base price.hidden.soft.edits',
    ]);
  });
});
