import { describe, expect, test } from 'vitest';
import { haulByFigures } from '../../../src/calculate/findings/haul-by.ts';
import { testExpressions } from '../evaluate.ts';

const tripsOn = ['2026-05-04', '2026-05-07', '2026-05-05'];
const by = (haulByOn: string | null, trips: readonly string[] = tripsOn) =>
  haulByFigures({ startsOn: '2026-05-04', haulByOn, tripsOn: trips });

describe('the last trip against the day by which all is hauled', () => {
  test.each([
    { haulByOn: '2026-05-04', late: 3 },
    { haulByOn: '2026-05-06', late: 1 },
    { haulByOn: '2026-05-07', late: 0 },
    { haulByOn: '2026-06-01', late: 0 },
  ])('by $haulByOn: $late days late', ({ haulByOn, late }) => {
    const figures = by(haulByOn);
    expect(figures?.['last-trip'].value).toBe(3);
    expect(figures?.['days-late'].value).toBe(late);
  });

  test('without such a day, and without a trip, there is nothing to hold against it', () => {
    expect([by(null), by('2026-05-04', [])]).toEqual([null, null]);
  });

  testExpressions('days late', { ...by('2026-05-05') }, 1);
});
