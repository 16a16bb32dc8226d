import type { Line, Outline } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import type { Figure } from '../figure.ts';
import type { OutlineResult } from '../outline/index.ts';
import { pick, sumFigure, thingNamed } from '../parts.ts';
import type { TopicResult } from '../topic.ts';
import { type JointedSlab, type Panel, type SlabJoints, slabJoints } from './slab-joints.ts';
import type { JointMix } from './spacing-figure.ts';

export { panelAngleLimit, panelRatioLimit, spacingMultiplier } from './limits.ts';
export {
  earlyEntryDepthIn,
  jointDepthIn,
  jointSpacingLimitIn,
  panelRatio,
  splitIntoPanels,
} from './panels.ts';
export type { Panel, SlabJoints } from './slab-joints.ts';

export type JointsResult = TopicResult<
  {
    readonly slabs: Readonly<Record<string, SlabJoints>>;
    readonly total: Readonly<Record<'length' | 'sawn', Figure>>;
  },
  {
    /** On the surface, in the order of their numbers. */
    readonly lines: Readonly<Record<string, readonly Line[]>>;
    /** On the surface, in the order of their letters. */
    readonly panels: Readonly<Record<string, readonly Panel[]>>;
  }
>;

/**
 * Contraction joints of every slab: how far apart they may be, where they are, the panels between them, and
 * their depth.
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
  const panels: Record<string, readonly Panel[]> = {};
  const problems: CoreProblem[] = [];
  for (const slab of Object.values(slabs)) {
    const outline: Outline = thingNamed(outlines, slab.id, 'outline');
    const shape = thingNamed(shapes.slabs, slab.id, 'shape');
    const placing = thingNamed(lies, slab.id, 'place').surface;
    const made = slabJoints(slab, shape, { outline, placing }, mix);
    figures[slab.id] = made.figures;
    lines[slab.id] = made.lines;
    panels[slab.id] = made.panels;
    for (const line of made.useless) {
      problems.push({
        code: 'joint-line-outside',
        path: `build.slabs.${slab.id}.joints.lines.${line}`,
        parts: {},
      });
    }
  }
  const totalOf = (key: 'length' | 'sawn') =>
    sumFigure({ parts: pick(figures, key), unitSuffix: 'Ft', unit: 'ft', decimals: 1 });
  return {
    figures: {
      slabs: figures,
      total: {
        length: totalOf('length'),
        sawn: totalOf('sawn'),
      },
    },
    data: { lines, panels },
    problems,
  };
}
