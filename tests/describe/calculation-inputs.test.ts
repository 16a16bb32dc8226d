import { describe, expect, test } from 'vitest';
import { type Figure, num, walkFigures } from '../../src/calculate/figure.ts';
import { describeCalculationOf } from '../../src/describe/index.ts';
import { en, type Words } from '../../src/words/index.ts';
import { DEMO_JOBS, preparedIn } from '../support/project.ts';

describe.each(preparedIn(DEMO_JOBS).map((prepared) => [prepared.job.id, prepared] as const))(
  'the calculation sheet of %s',
  (id, prepared) => {
    const figures = new Map<string, Figure>(
      Object.entries(prepared.results.figures).flatMap(([topic, tree]) =>
        walkFigures(tree, topic).map((row) => [row.id, row.figure] as const),
      ),
    );
    const topics = describeCalculationOf(prepared, en as Words).topics.map(({ groups }) =>
      groups.flatMap(({ heading, figures: rows }) =>
        rows.map(({ name, origins }) => ({
          id: heading === null ? name : `${heading}.${name}`,
          origins: origins ?? '',
        })),
      ),
    );
    const inputsOf = (figure: Figure | undefined) =>
      Object.entries(figure?.inputs ?? {}).map(([name, input]) => [name, num(input), input.unit]);

    test('names a long list of inputs where it comes again, and the figure named has it printed above', () => {
      let again = 0;
      for (const rows of topics) {
        for (const [place, { id: own, origins }] of rows.entries()) {
          const [, named] = /^inputs as of ([\w.-]+)/.exec(origins) ?? [];
          if (named === undefined) continue;
          again += 1;
          expect(inputsOf(figures.get(own)), own).toEqual(inputsOf(figures.get(named)));
          const above = rows.slice(0, place).find((row) => row.id === named);
          expect(above?.origins.length, `${named} above ${own}`).toBeGreaterThan(80);
          expect(above?.origins.startsWith('inputs as of')).toBe(false);
        }
      }
      // The smallest job has no heights, and few figures of many inputs.
      expect(again).toBeGreaterThan(id === 'corner-walk' ? 0 : 40);
    });

    test('says of every other figure where each input comes from', () => {
      const others = topics.flat().filter(({ origins }) => !origins.startsWith('inputs as of'));
      expect(others.length).toBeGreaterThan(200);
      for (const { id: own, origins } of others) {
        for (const name of Object.keys(figures.get(own)?.inputs ?? {})) expect(origins, own).toContain(name);
      }
    });
  },
);
