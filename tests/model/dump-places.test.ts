import { describe, expect, test } from 'vitest';
import { DEMO_JOBS, FULL_JOB, jobNamed, preparedIn, TEST_JOBS } from '../support/project.ts';

const full = jobNamed(preparedIn(TEST_JOBS), FULL_JOB);
const demo = jobNamed(preparedIn(DEMO_JOBS), 'maple-court');

describe('places that take rubble', () => {
  test('what is written comes in inches, hours from midnight and days from Monday', () => {
    const yard = full.job.company.places['breaker-yard'];
    expect(yard?.largestPiece).toEqual({ sideIn: 23, thicknessIn: 9 });
    expect(yard?.open).toEqual({ fromHr: 7, toHr: 19.5, lastLoadHr: 15 });
    expect(yard?.openOn).toEqual([1, 2, 3, 4, 5]);
    expect(yard?.rejectedUsd?.toString()).toBe('141.13');
    expect(yard?.feeWithBase).toMatchObject({ perUnit: 'load', text: '$31.43 per load' });
    expect(yard?.feeWithBase?.amountUsd.toString()).toBe('31.43');
    expect(Object.keys(yard?.surcharges ?? {})).toEqual(['concrete-with-steel']);
    expect(yard?.surcharges['concrete-with-steel']).toMatchObject({ text: '$14.27 per load' });
    expect(yard?.mixedLoads).toBe(true);
  });

  test('what nobody said is not known; no load is mixed, and all days are open', () => {
    const tip = full.job.company.places['tip'];
    expect(tip).toMatchObject({ surcharges: {}, feeWithBase: null, rejectedUsd: null, open: null });
    expect(tip?.openOn).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(tip?.mixedLoads).toBe(false);
    expect(full.origins.get('company.places.tip.mixed-loads')).toEqual({
      spot: null,
      text: 'no',
      from: 'shipped',
    });
    expect(full.origins.get('company.places.breaker-yard.mixed-loads')).toMatchObject({
      text: 'yes',
      from: 'company',
    });
  });

  test('the demo company says hours of all its places', () => {
    const hours = Object.values(demo.job.company.places).map(({ open }) => open);
    expect(hours).toEqual([
      { fromHr: 7, toHr: 16.5, lastLoadHr: 16 },
      { fromHr: 6.5, toHr: 17, lastLoadHr: 16.5 },
      { fromHr: 8, toHr: 16, lastLoadHr: 15.5 },
    ]);
  });
});
