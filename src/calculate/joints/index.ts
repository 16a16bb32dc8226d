import { boundsOf, type Line, lineLengthIn, type Outline } from '../../geometry/index.ts';
import { constant, type Figure, figure, given, num } from '../figure.ts';
import type { Job, Slab } from '../job.ts';
import type { OutlineResult, Placing, ShapeFigures } from '../outline/index.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import {
  jointDepth,
  panelRatioLimit,
  panelSideLimit,
  spacingCap,
  spacingMultiplier,
  walkSpacing,
} from './limits.ts';
import { boxOf, jointLines } from './lines.ts';
import { jointDepthIn, jointSpacingLimitIn, panelRatio, splitIntoPanels } from './panels.ts';
import { boxOfStrip, stripJointLines } from './strip-lines.ts';

export { spacingMultiplier } from './limits.ts';
export { jointDepthIn, jointSpacingLimitIn, panelRatio, splitIntoPanels } from './panels.ts';

type JointedSlab = Pick<Slab, 'id' | 'use' | 'thicknessIn' | 'jointSpacingIn' | 'shape'>;
type JointMix = Pick<Job['build']['mix'], 'slumpIn' | 'aggregateIn'>;

export type SlabJoints = {
  /** Sides of the box around the outline, or of a walk rolled out straight; the panels divide them. */
  readonly 'box-length': Figure;
  readonly 'box-width': Figure;
  readonly 'spacing-limit': Figure;
  readonly 'panels-along': Figure;
  readonly 'panels-across': Figure;
  readonly 'panel-length': Figure;
  readonly 'panel-width': Figure;
  readonly 'panel-ratio': Figure;
  readonly depth: Figure;
  readonly length: Figure;
  readonly isolation: Figure;
};

export type JointsResult = TopicResult<
  {
    readonly slabs: Readonly<Record<string, SlabJoints>>;
    readonly total: { readonly length: Figure; readonly isolation: Figure };
  },
  { readonly lines: Readonly<Record<string, readonly Line[]>> }
>;

/**
 * Contraction joints of every slab: spacing, equal panels, depth, and the lines within the outline;
 * and the isolation joint along the house and along concrete that stays.
 */
export function calcJoints(input: {
  readonly slabs: Readonly<Record<string, JointedSlab>>;
  readonly shapes: Pick<OutlineResult['figures'], 'slabs'>;
  readonly outlines: OutlineResult['data']['slabs'];
  readonly lies: OutlineResult['data']['lies'];
  readonly mix: JointMix;
}): JointsResult {
  const { slabs, shapes, outlines, lies, mix } = input;
  const figures: Record<string, SlabJoints> = {};
  const lines: Record<string, readonly Line[]> = {};
  for (const slab of Object.values(slabs)) {
    const outline = thingNamed(outlines, slab.id, 'outline');
    const shape = thingNamed(shapes.slabs, slab.id, 'shape');
    const made = slabJoints(
      slab,
      shape,
      { outline, placing: thingNamed(lies, slab.id, 'place').surface },
      mix,
    );
    figures[slab.id] = made.figures;
    lines[slab.id] = made.lines;
  }
  const totalOf = (key: 'length' | 'isolation') =>
    sumFigure({ parts: pick(figures, key), unitSuffix: 'Ft', unit: 'ft', decimals: 1 });
  return {
    figures: { slabs: figures, total: { length: totalOf('length'), isolation: totalOf('isolation') } },
    data: { lines },
    problems: [],
  };
}

function slabJoints(
  slab: JointedSlab,
  shape: ShapeFigures,
  laid: { readonly outline: Outline; readonly placing: Placing },
  mix: JointMix,
) {
  const { outline } = laid;
  const bounds = boundsOf(outline);
  const { base } = slab.shape;
  const centreLine = shape['centre-line'];
  const isStrip = base.kind === 'strip' && centreLine !== undefined;
  const box = isStrip ? boxOfStrip(base, num(centreLine)) : boxOf(bounds);
  const side = (which: 'longer' | 'shorter', lengthIn: number) =>
    figure({
      value: lengthIn,
      unit: 'in',
      decimals: 2,
      formula: {
        method: isStrip
          ? `${which === 'longer' ? 'length of the centre line' : 'width'} of the walk`
          : `${which} side of the box around the outline`,
      },
      inputs: isStrip ? { centreLineIn: centreLine } : shape.perimeter.inputs,
    });
  const boxLengthIn = side('longer', box.lengthIn);
  const boxWidthIn = side('shorter', box.widthIn);
  const limitIn = spacingLimit(slab, boxWidthIn, mix);
  const panels = splitIntoPanels(box, num(limitIn));
  const lines = isStrip
    ? stripJointLines(base, { lengthIn: box.lengthIn, panels, ...laid })
    : jointLines(outline, bounds, panels);

  const alongCount = panelCountFigure(panels.alongCount, panels.addedAlongCount, {
    boxSideIn: boxLengthIn,
    limitIn,
  });
  const acrossCount = panelCountFigure(panels.acrossCount, panels.addedAcrossCount, {
    boxSideIn: boxWidthIn,
    limitIn,
  });
  const panelLengthIn = panelSide(boxLengthIn, alongCount);
  const panelWidthIn = panelSide(boxWidthIn, acrossCount);

  const figures: SlabJoints = {
    'box-length': boxLengthIn,
    'box-width': boxWidthIn,
    'spacing-limit': limitIn,
    'panels-along': alongCount,
    'panels-across': acrossCount,
    'panel-length': panelLengthIn,
    'panel-width': panelWidthIn,
    'panel-ratio': figure({
      value: panelRatio({ panelLengthIn: num(panelLengthIn), panelWidthIn: num(panelWidthIn) }),
      unit: 'ratio',
      decimals: 2,
      formula: 'max(panelLengthIn, panelWidthIn) / min(panelLengthIn, panelWidthIn)',
      inputs: { panelLengthIn, panelWidthIn },
    }),
    depth: depthFigure(slab),
    length: figure({
      value: lines.reduce((sumIn, line) => sumIn + lineLengthIn(line), 0) / 12,
      unit: 'ft',
      decimals: 1,
      formula: { method: 'lines between the panels of the box, cut where they leave the outline' },
      inputs: { alongCount, acrossCount, boxLengthIn, boxWidthIn },
    }),
    isolation: figure({
      value: num(shape['along-house']) + num(shape['along-stays']),
      unit: 'ft',
      decimals: 1,
      formula: 'alongHouseFt + alongStaysFt',
      inputs: { alongHouseFt: shape['along-house'], alongStaysFt: shape['along-stays'] },
      source: 'NRMCA CIP 6: isolation joints at walls, steps and slabs that are there (seen)',
    }),
  };
  return { figures, lines };
}

function spacingLimit(slab: JointedSlab, boxWidthIn: Figure, mix: JointMix): Figure {
  const path = `build.slabs.${slab.id}`;
  if (slab.jointSpacingIn !== null) {
    return figure({
      value: slab.jointSpacingIn,
      unit: 'in',
      decimals: 1,
      formula: 'ownSpacingIn',
      inputs: { ownSpacingIn: given(`${path}.joint-spacing`, slab.jointSpacingIn, 'in') },
      source: 'a spacing of the job’s own',
    });
  }
  const { ratio, mix: mixWords, source } = spacingMultiplier(mix);
  const isWalk = slab.use === 'walk';
  const limits = {
    multiplierRatio: constant(`joint spacing over thickness, ${mixWords}`, ratio, 'ratio', source),
    thicknessIn: given(`${path}.thickness`, slab.thicknessIn, 'in'),
    capIn: constant('joint spacing, most', spacingCap.lengthIn, 'in', spacingCap.source),
  };
  const walk = {
    boxWidthIn,
    walkSpacingIn: constant('joint spacing of walks', walkSpacing.lengthIn, 'in', walkSpacing.source),
  };
  return figure({
    value: jointSpacingLimitIn({
      multiplier: ratio,
      thicknessIn: slab.thicknessIn,
      walkWidthIn: isWalk ? num(boxWidthIn) : null,
    }),
    unit: 'in',
    decimals: 1,
    formula: isWalk
      ? 'min(multiplierRatio * thicknessIn, capIn, max(boxWidthIn, walkSpacingIn))'
      : 'min(multiplierRatio * thicknessIn, capIn)',
    inputs: isWalk ? { ...limits, ...walk } : limits,
    source,
  });
}

function panelCountFigure(
  value: number,
  addedCount: number,
  inputs: { boxSideIn: Figure; limitIn: Figure },
): Figure {
  if (addedCount === 0) {
    return figure({
      value,
      unit: 'each',
      decimals: 0,
      formula: 'ceilStep(boxSideIn / limitIn, 1)',
      inputs,
      rounding: 'up',
    });
  }
  return figure({
    value,
    unit: 'each',
    decimals: 0,
    formula: { method: 'ceil(side / limit), then one more at a time until the panels are square enough' },
    inputs: {
      ...inputs,
      ratioLimit: constant(
        'panel length over width, most',
        panelRatioLimit.ratio,
        'ratio',
        panelRatioLimit.source,
      ),
      leastSideIn: constant('panel side, least', panelSideLimit.lengthIn, 'in', panelSideLimit.source),
    },
    source: panelRatioLimit.source,
    rounding: 'up',
  });
}

function panelSide(boxSideIn: Figure, panelCount: Figure): Figure {
  return figure({
    value: num(boxSideIn) / num(panelCount),
    unit: 'in',
    decimals: 2,
    formula: 'boxSideIn / panelCount',
    inputs: { boxSideIn, panelCount },
  });
}

function depthFigure(slab: JointedSlab): Figure {
  const { shareOfThickness, leastIn, stepIn, source } = jointDepth;
  return figure({
    value: jointDepthIn(slab.thicknessIn),
    unit: 'in',
    decimals: 3,
    formula: 'ceilStep(max(thicknessIn * shareRatio, leastIn), stepIn)',
    inputs: {
      thicknessIn: given(`build.slabs.${slab.id}.thickness`, slab.thicknessIn, 'in'),
      shareRatio: constant('joint depth over thickness', shareOfThickness, 'ratio', source),
      leastIn: constant('joint depth, least', leastIn, 'in', source),
      stepIn: constant('step a saw or groover is set in', stepIn, 'in', 'common practice, no source'),
    },
    source,
    rounding: 'up',
  });
}
