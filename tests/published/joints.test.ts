import { num } from '../../src/calculate/figure.ts';
import type { JointCut, Use } from '../../src/calculate/job.ts';
import {
  calcJoints,
  jointSpacingLimitIn,
  panelAngleLimit,
  panelRatioLimit,
  spacingMultiplier,
} from '../../src/calculate/joints/index.ts';
import { aSlab, at, outlined, rectangle } from '../calculate/slabs.ts';
import { runChecks } from './load.ts';

type Sides = { lengthFt: number; widthFt: number; use: Use };

function laid(changed: Parameters<typeof aSlab>[0]) {
  const made = outlined(aSlab(changed));
  const { figures, data } = calcJoints({ ...made, mix: { slumpIn: 4, aggregateIn: 0.75 } });
  return { figures: at(figures.slabs, 'drive'), lines: at(data.lines, 'drive') };
}

const ofSides = ({ lengthFt, widthFt, use }: Sides) =>
  laid({ use, shape: rectangle(lengthFt * 12, widthFt * 12) });

runChecks('joints', {
  'spacing ft': (given: { thicknessIn: number; slumpIn: number; aggregateIn: number }) =>
    jointSpacingLimitIn({
      multiplier: spacingMultiplier(given).ratio,
      thicknessIn: given.thicknessIn,
      walkWidthIn: null,
    }) / 12,
  'depth in': ({ thicknessIn, cut }: { thicknessIn: number; cut: JointCut }) =>
    num(laid({ thicknessIn, joints: { cut, lines: {}, propose: 'rest', sealed: false } }).figures.depth),
  'joints across': (sides: Sides) => ofSides(sides).lines.length,
  'panels of': (sides: Sides) => {
    const { figures } = ofSides(sides);
    return [
      num(figures.panels),
      num(figures['panel-length']) / 12,
      num(figures['panel-ratio']),
      num(figures['smallest-angle']),
    ];
  },
  // A rectangle lies along x: the middle joint is level.
  'centre joint': (sides: Sides) =>
    ofSides(sides).lines.some(({ fromYIn, toYIn }) => Math.abs(fromYIn - toYIn) < 1e-6),
  'ratio most': () => panelRatioLimit.ratio,
  'angle least deg': () => panelAngleLimit.deg,
});
