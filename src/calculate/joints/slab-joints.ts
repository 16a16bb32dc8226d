import { boundsOf, type Line, lineLengthIn, type Outline } from '../../geometry/index.ts';
import { constant, type Figure, figure, given, num } from '../figure.ts';
import type { Slab } from '../job.ts';
import type { Placing, ShapeFigures } from '../outline/index.ts';
import { type BoxFigures, boxFigures } from './box-figures.ts';
import { layJoints, uselessLines } from './layout.ts';
import { earlyEntry, jointDepth, panelAngleLimit, panelRatioLimit } from './limits.ts';
import { ownLines } from './own-lines.ts';
import type { PanelShape } from './panel-shape.ts';
import { earlyEntryDepthIn, jointDepthIn } from './panels.ts';
import { type JointMix, spacingFigure, walkWidthFigure } from './spacing-figure.ts';
import { linesAcrossStrip } from './strip-stations.ts';

export type JointedSlab = Pick<Slab, 'id' | 'use' | 'thicknessIn' | 'jointSpacingIn' | 'joints' | 'shape'>;

export type SlabJoints = BoxFigures & {
  /** Mean width, of a walk only [in]. */
  readonly 'walk-width'?: Figure;
  readonly 'spacing-limit': Figure;
  readonly panels: Figure;
  /** Longest side of any panel, and of the panel that is most out of square its ratio of sides. */
  readonly 'panel-length': Figure;
  readonly 'panel-ratio': Figure;
  /** Longest side over the spacing limit. */
  readonly 'length-over-limit': Figure;
  /** Of any panel [deg]. */
  readonly 'smallest-angle': Figure;
  /** Corners that turn into the slab and have no joint. */
  readonly 'open-corners': Figure;
  readonly depth: Figure;
  readonly length: Figure;
  /** Of this slab that is sawn [ft]. */
  readonly sawn: Figure;
  /** The layout without the joints of the job's own, where it has some. */
  readonly proposed?: Worst & { readonly length: Figure };
};

/** A piece of a slab between joints. */
export type Panel = {
  readonly outline: Outline;
  /** Of the smallest rectangle round it. */
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly ratio: number;
  readonly areaSqFt: number;
  /** Of its corners that stick out; 180 where it has none. */
  readonly smallestDeg: number;
};

export type LaidJoints = {
  readonly lines: readonly Line[];
  readonly panels: readonly Panel[];
  /** Ids of the job's own joints that cut nothing. */
  readonly useless: readonly string[];
};

/** The joints of one slab: figures, lines in the order of their numbers, panels in the order of their letters. */
export function slabJoints(
  slab: JointedSlab,
  shape: ShapeFigures,
  laid: { readonly outline: Outline; readonly placing: Placing },
  mix: JointMix,
): { readonly figures: SlabJoints } & LaidJoints {
  const walkWidth = walkWidthFigure(slab, shape);
  const limit = spacingFigure(slab, walkWidth, mix);
  const { base } = slab.shape;
  const limitIn = num(limit);
  const across = base.kind === 'strip' ? linesAcrossStrip(base, { ...laid, limitIn }) : null;
  const own = ownLines(slab.joints.lines, laid);
  const { outline } = laid;
  const { panels, lines } = layJoints({ outline, own, across, limitIn, propose: slab.joints.propose });
  const proposed =
    own.length === 0 ? null : layJoints({ outline, own: [], across, limitIn, propose: 'rest' });
  const length = lengthFigure(lines, limit);
  const useless = uselessLines(outline, own);
  return {
    figures: {
      ...(walkWidth === null ? {} : { 'walk-width': walkWidth }),
      ...boxFigures(base, shape, laid.outline),
      'spacing-limit': limit,
      ...worstFigures(panels, limit),
      depth: depthFigure(slab),
      length,
      sawn: sawnFigure(length, slab),
      ...(proposed === null
        ? {}
        : {
            proposed: {
              ...worstFigures(proposed.panels, limit),
              length: lengthFigure(proposed.lines, limit),
            },
          }),
    },
    lines,
    panels: inReadingOrder(panels).map(panelOf),
    useless: Object.keys(slab.joints.lines).filter((_, index) => useless.includes(index)),
  };
}

const DEG = 180 / Math.PI;

function panelOf({ outline, box, areaSqIn, smallestRad }: PanelShape): Panel {
  const { lengthIn, widthIn } = box;
  return {
    outline,
    lengthIn,
    widthIn,
    ratio: lengthIn / widthIn,
    areaSqFt: areaSqIn / 144,
    smallestDeg: smallestRad * DEG,
  };
}

/** Panels whose middles are no further apart than this across the page stand in one row [in]. */
const ROW_IN = 24;

/** From the top down, each row from left to right. */
function inReadingOrder(panels: readonly PanelShape[]): readonly PanelShape[] {
  const keyed = panels.map((panel) => {
    const { minXIn, maxXIn, minYIn, maxYIn } = boundsOf(panel.outline);
    return { panel, row: -Math.round((minYIn + maxYIn) / 2 / ROW_IN), xIn: minXIn + maxXIn };
  });
  return keyed.toSorted((one, other) => one.row - other.row || one.xIn - other.xIn).map(({ panel }) => panel);
}

type Worst = Pick<
  SlabJoints,
  'panels' | 'panel-length' | 'panel-ratio' | 'length-over-limit' | 'smallest-angle' | 'open-corners'
>;

const LAYOUT =
  'a joint from each corner that turns in and over each hole, then the cuts after which the panels are fewest, squarest and most even';

function worstFigures(panels: readonly PanelShape[], limitIn: Figure): Worst {
  const ratioMost = constant(
    'panel length over width, most',
    panelRatioLimit.ratio,
    'ratio',
    panelRatioLimit.source,
  );
  const angleLeast = constant('corner of a panel, least', panelAngleLimit.deg, 'deg', panelAngleLimit.source);
  const inputs = { limitIn, ratioMost, angleLeast };
  const made = (value: number, unit: Figure['unit'], decimals: number, method: string) =>
    figure({ value, unit, decimals, formula: { method }, inputs });
  const longestIn = made(
    Math.max(...panels.map(({ box }) => box.lengthIn)),
    'in',
    2,
    'longest side of the smallest rectangle round any panel',
  );
  return {
    panels: figure({
      value: panels.length,
      unit: 'each',
      decimals: 0,
      formula: { method: LAYOUT },
      inputs,
      source: panelRatioLimit.source,
    }),
    'panel-length': longestIn,
    'panel-ratio': made(
      Math.max(...panels.map(({ box }) => box.lengthIn / box.widthIn)),
      'ratio',
      2,
      'the most of any panel: longer over shorter side of the smallest rectangle round it',
    ),
    'length-over-limit': figure({
      value: num(longestIn) / num(limitIn),
      unit: 'ratio',
      decimals: 3,
      formula: 'longestIn / limitIn',
      inputs: { longestIn, limitIn },
    }),
    'smallest-angle': made(
      Math.min(...panels.map(({ smallestRad }) => smallestRad)) * DEG,
      'deg',
      1,
      'sharpest corner of any panel',
    ),
    'open-corners': made(
      panels.reduce((count, { reEntrant }) => count + reEntrant.length, 0),
      'each',
      0,
      'corners that turn into a panel by more than 15 degrees',
    ),
  };
}

function lengthFigure(lines: readonly Line[], limitIn: Figure): Figure {
  return figure({
    value: lines.reduce((sumIn, line) => sumIn + lineLengthIn(line), 0) / 12,
    unit: 'ft',
    decimals: 1,
    formula: { method: 'length of all joints between the panels' },
    inputs: { limitIn },
  });
}

/** All joints, or none where they are tooled. */
function sawnFigure(lengthFt: Figure, { id, joints }: JointedSlab): Figure {
  const share = joints.cut === 'tooled' ? 0 : 1;
  return figure({
    value: share * num(lengthFt),
    unit: 'ft',
    decimals: 1,
    formula: 'sawnShare * lengthFt',
    inputs: { sawnShare: given(`build.slabs.${id}.joints.cut`, share, 'ratio'), lengthFt },
  });
}

function depthFigure(slab: JointedSlab): Figure {
  const { depthIn, mostThicknessIn } = earlyEntry;
  if (slab.joints.cut === 'early-entry' && slab.thicknessIn <= mostThicknessIn) {
    return figure({
      value: earlyEntryDepthIn(slab.thicknessIn),
      unit: 'in',
      decimals: 3,
      formula: 'earlyEntryIn',
      inputs: { earlyEntryIn: constant('depth of an early-entry cut', depthIn, 'in', earlyEntry.source) },
      source: earlyEntry.source,
      rounding: 'up',
    });
  }
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
