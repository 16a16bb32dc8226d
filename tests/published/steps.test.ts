import { evaluateRules } from '../../src/calculate/findings/index.ts';
import {
  calcFlights,
  equalRisers,
  formedRiserIn,
  isEven,
  strideIn,
} from '../../src/calculate/flights/index.ts';
import type { PublicText } from '../../src/calculate/text.ts';
import { shippedRules } from '../calculate/findings/shipped-rules.ts';
import { runChecks } from './load.ts';

function risersOf(rise: { totalIn: number; mostIn: number }): number[] {
  const { count, riserIn } = equalRisers({ totalIn: rise.totalIn, mostIn: rise.mostIn });
  return [count, riserIn];
}

/** Codes of what the shipped rules find in a flight of three such risers, wide and with a long landing. */
function findingsOf({ riserIn, treadIn }: { riserIn: number; treadIn: number }): string {
  const flight = {
    id: 'porch',
    label: 'Porch steps' as PublicText,
    widthIn: 48,
    rise: { kind: 'taped', riserCount: 3, riserIn },
    treadIn,
    landingIn: 48,
    treadSlope: 0,
    roomIn: null,
  } as const;
  const { figures } = calcFlights({ flights: {}, steps: { porch: flight }, points: undefined, graded: {} });
  const { findings } = evaluateRules({
    rules: shippedRules('general'),
    figures: { flights: figures },
    tags: ['steps'],
    acknowledged: [],
  });
  return findings.map(({ code }) => code).join(', ') || 'none';
}

runChecks('steps', {
  stride: (given) => strideIn({ riserIn: given.riserIn, treadIn: given.treadIn }),
  'equal risers': risersOf,
  'formed riser': ({ totalIn, count, treadIn, fallInPerFt }) =>
    formedRiserIn({ totalIn, count, treadRiseIn: (treadIn * fallInPerFt) / 12 }),
  even: ({ risersIn }) => isEven(risersIn),
  findings: findingsOf,
});
