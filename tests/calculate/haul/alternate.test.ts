import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alternating } from '../../../src/calculate/haul/alternate.ts';
import { waitedFor } from '../../../src/calculate/haul/working-figures.ts';
import { runCount } from '../../support/property-runs.ts';
import { waitedFor as leastWaitedFor } from './plan/brute-whole.ts';

const TRAILERS = ['a', 'b', 'c'] as const;
const SEED = 20_261_126;

describe('loads that take turns', () => {
  test('too many of one trailer follow each other at the start', () => {
    const order = alternating([...'aaaab'].map((trailer) => ({ trailer })));
    expect(order.map(({ trailer }) => trailer).join('')).toBe('aaaba');
  });

  test(`invariant: no other order has fewer that wait, and each trailer keeps its order (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...TRAILERS), { minLength: 1, maxLength: 12 }), (trailers) => {
        const loads = trailers.map((trailer, index) => ({ trailer, index }));
        const order = alternating(loads);
        const counts = TRAILERS.map((trailer) => trailers.filter((one) => one === trailer).length);
        expect(waitedFor(order)).toBe(leastWaitedFor(counts));
        for (const trailer of TRAILERS)
          expect(order.filter((load) => load.trailer === trailer)).toEqual(
            loads.filter((load) => load.trailer === trailer),
          );
      }),
      { numRuns: runCount(300), seed: SEED },
    );
  });
});
