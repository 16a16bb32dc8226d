import type { TapedShape } from '../../src/calculate/job.ts';
import { calcJoints } from '../../src/calculate/joints/index.ts';
import { calcOutline } from '../../src/calculate/outline/index.ts';
import type { calcReinforcement } from '../../src/calculate/reinforcement/index.ts';
import type { PublicText } from '../../src/calculate/text.ts';

/** An L of 2,500 sq ft with a rounded corner, #4 at 12 in both ways. */
export function largeSlab(jointSpacingIn: number | null) {
  const shape: TapedShape = {
    base: {
      kind: 'corners',
      points: [
        { xIn: 0, yIn: 0 },
        { xIn: 840, yIn: 0 },
        { xIn: 840, yIn: 300 },
        { xIn: 400, yIn: 300 },
        { xIn: 400, yIn: 570 },
        { xIn: 0, yIn: 570 },
      ],
    },
    rounded: [{ corner: 2, by: { kind: 'setback', setbackIn: 120 } }],
    bent: [],
    edges: [],
    cutOuts: {},
    added: {},
    taped: null,
    at: null,
    turnedRad: 0,
  };
  const slab = {
    id: 'mat',
    label: 'Mat' as PublicText,
    use: 'driveway' as const,
    thicknessIn: 5,
    jointSpacingIn,
    joints: { cut: 'wet-sawn' as const, lines: {}, propose: 'rest' as const, sealed: false },
    shape,
    reinforcement: {
      kind: 'bars' as const,
      material: 'steel' as const,
      size: 4 as const,
      spacingIn: 12,
      spacingAcrossIn: null,
      coverIn: null,
      corners: 'crossed' as const,
    },
  };
  const slabs = { mat: slab };
  const limits = { closingErrorIn: 2, joiningGapIn: 1 };
  const { figures: shapes, data } = calcOutline({ slabs, existing: {}, limits });
  return { slabs, shapes, outlines: data.slabs, lies: data.lies };
}

/** Its laps are off its joints. */
export function largeMat(outlined: ReturnType<typeof largeSlab>): Parameters<typeof calcReinforcement>[0] {
  const joints = calcJoints({ ...outlined, mix: { slumpIn: 4, aggregateIn: 0.75 } });
  return {
    ...outlined,
    joints: joints.figures.slabs,
    jointLines: joints.data.lines,
    suppliers: {
      mesh: { sheetLengthIn: 120, sheetWidthIn: 60, lapIn: 8, roll: null },
      bars: { stocksIn: [240], lapDiameters: 40, kerfIn: null },
      glassFibreBars: null,
    },
  };
}
