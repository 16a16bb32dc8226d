import { describe, expect, test } from 'vitest';
import type { PublicText } from '../../src/calculate/text.ts';
import { describeProposal } from '../../src/describe/proposal/index.ts';
import { proposalFactsOf } from '../../src/describe/proposal-facts.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS, jobNamed, preparedIn } from '../support/project.ts';

const prepared = preparedIn(DEMO_JOBS);
const factsOf = (id: string) => {
  const { job, results } = jobNamed(prepared, id);
  return proposalFactsOf(job, results);
};
const HEADING = 'Where the water will go';

function waterOf(facts: ReturnType<typeof factsOf>) {
  return describeProposal(facts, en as Words).areas.items.find(({ heading }) => heading === HEADING);
}

const arrowsOf = (water: ReturnType<typeof waterOf>) =>
  (water?.plan?.drawing.layers ?? [])
    .filter(({ name }) => name === 'falls')
    .flatMap(({ primitives }) => primitives)
    // A shaft and two barbs each.
    .filter(({ kind }) => kind === 'line').length / 3;

describe('where the water will go, for the homeowner', () => {
  // 0.48 ft in 36 and 0.06 in 18 are 1.37 % together; 1.5 and 2 % are 2.5 %.
  test('is told from the heights, with an arrow for each part of a slab', () => {
    const water = waterOf(factsOf('maple-court'));
    expect(water?.facts).toEqual([
      {
        label: 'Driveway',
        value:
          'Towards the street, 3/16″ / ft (1.4 %) over all, from the heights we took. Beside the house it falls away from the wall.',
      },
      {
        label: 'Front walk',
        value: 'Towards the lawn, 5/16″ / ft (2.5 %) over all, from the heights we took.',
      },
    ]);
    expect(arrowsOf(water)).toBe(3);
  });

  test('is told as planned where no heights tell, with an arrow where a direction is said', () => {
    const water = waterOf(factsOf('garden-row'));
    expect(water?.facts.map(({ label, value }) => `${label}: ${value}`)).toEqual([
      'Patio: Towards the garden, 20 mm / m (2.0 %) over all, from the heights we took. Beside the house it falls away from the wall.',
      'Garden walk: Towards the beds, 20 mm / m (2.0 %), as it is planned.',
      'Parking bay: Towards the lane, 20 mm / m (2.0 %), as it is planned.',
    ]);
    expect(arrowsOf(water)).toBe(3);
  });

  test('a part that falls to the house and a hollow are not hidden', () => {
    const facts = factsOf('maple-court');
    const [drive, walk] = facts.slabs;
    if (drive === undefined || walk === undefined) throw new Error('two slabs');
    const wet = { ...drive, water: { slope: 0.01, standsDeepIn: 0.5, atHouse: 'to-it' as const } };
    expect(waterOf({ ...facts, slabs: [wet, walk] })?.facts[0]?.value).toBe(
      'Towards the street, 1/8″ / ft (1.0 %) over all, from the heights we took. A part of it falls towards the house, and we settle with you where that water goes. Up to 1/2″ of water would stand in a hollow, which we settle before forming.',
    );
  });

  test('is a plain picture: names and arrows, no lengths and no radii', () => {
    const layers = waterOf(factsOf('garden-row'))?.plan?.drawing.layers ?? [];
    expect(layers.find(({ name }) => name === 'dimensions')?.primitives).toEqual([]);
    const labels = layers.find(({ name }) => name === 'labels')?.primitives ?? [];
    expect(labels.flatMap((one) => (one.kind === 'text' ? [one.text] : []))).toEqual(
      expect.arrayContaining(['Patio', 'Garden walk', 'Parking bay']),
    );
  });

  test('one slab has its arrows on its own plan; without any there is no picture', () => {
    const facts = factsOf('maple-court');
    expect(waterOf({ ...facts, slabs: facts.slabs.slice(0, 1) })).toBeUndefined();
    const dry = facts.slabs.map((slab) => ({ ...slab, falls: [], label: slab.label as PublicText }));
    expect(waterOf({ ...facts, slabs: dry })).toBeUndefined();
  });
});
