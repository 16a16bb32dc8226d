import { num } from '../../src/calculate/figure.ts';
import { curvedSpacing, layForms, leastBendFt } from '../../src/calculate/forms/index.ts';
import { runChecks } from './load.ts';

runChecks('forms', {
  leastBendFt,

  /** Of what is taken where the company gives no spacing of its own. */
  isWithinStakeSpacing: ({ form, leastIn, mostIn }: { form: string; leastIn: number; mostIn: number }) => {
    const spacingIn = num(curvedSpacing(null, form === 'strip'));
    return spacingIn >= leastIn && spacingIn <= mostIn;
  },

  /** A strip along one arc from old concrete to the house, so without a lap. */
  stripIn: ({ radiusIn, turnDeg }: { radiusIn: number; turnDeg: number }) => {
    const turnRad = (turnDeg * Math.PI) / 180;
    const from = { xIn: radiusIn, yIn: 0, bulge: Math.tan(turnRad / 4), edge: 'formed' as const };
    const to = { xIn: radiusIn * Math.cos(turnRad), yIn: radiusIn * Math.sin(turnRad), bulge: 0 };
    const [laid] = layForms({
      outline: { rings: [[from, { ...to, edge: 'stays' }, { xIn: 0, yIn: 0, bulge: 0, edge: 'house' }]] },
      board: { lengthIn: 192 },
      strip: { lengthIn: 480, lapIn: 12 },
      runPastIn: null,
    });
    return laid?.pieceIn ?? Number.NaN;
  },
});
