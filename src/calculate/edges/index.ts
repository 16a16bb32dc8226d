import type { NumberedEdge } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { constant, type Figure, figure, given, num } from '../figure.ts';
import type { EdgeJoint, EdgeJointKind, JoinedTo, Slab } from '../job.ts';
import type { SlabJoints } from '../joints/index.ts';
import type { OutlineResult } from '../outline/index.ts';
import { sumFigure, thingNamed } from '../parts.ts';
import { inputsOf, type Part } from '../sum-figure.ts';
import type { TopicResult } from '../topic.ts';
import { edgeLeftIn, runTogether } from './edge-left.ts';
import { barsAlong, type JointSteel, jointSteel } from './joint-steel.ts';

export { barsAlong, HOLE_OVER_IN, jointSteel } from './joint-steel.ts';

type EdgeSlab = Pick<Slab, 'id' | 'thicknessIn' | 'shape' | 'edgeJoints' | 'joints'>;

type Laid = {
  readonly outlines: OutlineResult['data']['slabs'];
  readonly edges: OutlineResult['data']['edges'];
};
type Input = Laid & {
  readonly slabs: Readonly<Record<string, EdgeSlab>>;
  readonly shapes: Pick<OutlineResult['figures'], 'slabs'>;
  /** The joints within each slab. */
  readonly joints: Readonly<Record<string, Pick<SlabJoints, 'length'>>>;
};

/** What stands at an edge decides what is done there, where the job does not say. */
const USUAL_JOINT = { formed: 'free', joint: 'free', house: 'isolated', stays: 'isolated' } as const;
const USUAL_INTO = { formed: 'new-slab', joint: 'new-slab', house: 'house', stays: 'old-slab' } as const;

export type EdgeFigures = {
  readonly length: Figure;
  /** Dowels or tie bars; nothing where the edge has none. */
  readonly bars?: Figure;
  /** Holes to drill for them; nothing where they are cast in on both sides. */
  readonly holes?: Figure;
};

export type EdgesResult = TopicResult<
  {
    /** By slab, then `edge-1`, `edge-2` …: edges whose joint is said. */
    readonly edges: Readonly<Record<string, Readonly<Record<string, EdgeFigures>>>>;
    /** By slab that has such an edge: its thickness. */
    readonly dowelled: Readonly<Record<string, Figure>>;
    readonly keyed: Readonly<Record<string, Figure>>;
    /** By slab: what is kept apart from the house and from old concrete, and wherever it is asked for. */
    readonly isolation: Readonly<Record<string, Figure>>;
    /** By slab: its joints and what it is kept apart along, where they get a sealant, else 0. */
    readonly sealed: Readonly<Record<string, Figure>>;
    readonly total: {
      readonly isolation: Figure;
      readonly sealed: Figure;
      readonly dowels: Figure;
      readonly ties: Figure;
      readonly holes: Figure;
    };
  },
  {
    /** Every edge of a slab, said or usual; none of a strip, whose sides have no number. */
    readonly joints: Readonly<Record<string, readonly MadeJoint[]>>;
    /** By slab, what of the house and of old concrete it is still kept apart from [ft]. */
    readonly apart: Readonly<Record<string, { readonly houseFt: number; readonly staysFt: number }>>;
  }
>;

/** A joint as it is made. */
export type MadeJoint = Pick<EdgeJoint, 'edge' | 'how' | 'postTensioned' | 'knownBy' | 'detail'> & {
  readonly into: JoinedTo;
  readonly lengthFt: number;
  readonly steel: JointSteel | null;
  readonly isDrilled: boolean;
  /** Bars; 0 where the slab beside it has them. */
  readonly barCount: number;
};

/**
 * What is done along each edge of a slab: exactly one of free, isolated, dowelled, tied, keyed. Its bars, the
 * holes for them, and the soft strip that follows from it. Two slabs that say different things of one edge
 * are a problem; where they say the same, its bars count once.
 */
export function calcEdges(input: Input): EdgesResult {
  const slabs = Object.values(input.slabs);
  const shared = sharedEdges(slabs, input.edges);
  const edges: Record<string, Record<string, EdgeFigures>> = {};
  const isolation: Record<string, Figure> = {};
  const sealed: Record<string, Figure> = {};
  const joints: Record<string, readonly MadeJoint[]> = {};
  const apart: Record<string, { houseFt: number; staysFt: number }> = {};
  for (const slab of slabs) {
    const said = slab.edgeJoints.map((joint) => madeJoint(slab, joint, input));
    const own = said.filter(({ edge }) => !shared.later.has(`${slab.id}.${edge}`));
    const figures = Object.fromEntries(
      own.map((joint) => [`edge-${joint.edge}`, edgeFigures(slab, joint, input)]),
    );
    joints[slab.id] = allJoints(slab, input).map(
      (usual) =>
        own.find(({ edge }) => edge === usual.edge) ??
        said.map((joint) => ({ ...joint, barCount: 0 })).find(({ edge }) => edge === usual.edge) ??
        usual,
    );
    apart[slab.id] = stillApart(slab, said, thingNamed(input.shapes.slabs, slab.id, 'shape'));
    if (own.length > 0) edges[slab.id] = figures;
    const apartFt = isolationFigure(slab, said, figures, thingNamed(input.shapes.slabs, slab.id, 'shape'));
    isolation[slab.id] = apartFt;
    sealed[slab.id] = sealedFigure(slab, thingNamed(input.joints, slab.id, 'slab').length, apartFt);
  }
  const counted = (key: 'bars' | 'holes', how: readonly EdgeJointKind[]) => {
    const found = Object.entries(edges).flatMap(([id, own]) =>
      (joints[id] ?? []).flatMap(({ edge, how: is }): readonly (readonly [string, Figure])[] => {
        const one = own[`edge-${edge}`]?.[key];
        return one === undefined || !how.includes(is) ? [] : [[`${id}-${edge}`, one]];
      }),
    );
    return sumFigure({ parts: Object.fromEntries(found), unitSuffix: 'Count', unit: 'each', decimals: 0 });
  };
  return {
    figures: {
      edges,
      dowelled: thicknesses(slabs, 'dowelled'),
      keyed: thicknesses(slabs, 'keyed'),
      isolation,
      sealed,
      total: {
        isolation: sumFigure({ parts: isolation, unitSuffix: 'Ft', unit: 'ft', decimals: 1 }),
        sealed: sumFigure({ parts: sealed, unitSuffix: 'Ft', unit: 'ft', decimals: 1 }),
        dowels: counted('bars', ['dowelled']),
        ties: counted('bars', ['tied']),
        holes: counted('holes', ['dowelled', 'tied']),
      },
    },
    data: { joints, apart },
    problems: shared.problems,
  };
}

function thicknesses(slabs: readonly EdgeSlab[], kind: EdgeJointKind): Record<string, Figure> {
  return Object.fromEntries(
    slabs
      .filter(({ edgeJoints }) => edgeJoints.some(({ how }) => how === kind))
      .map(({ id, thicknessIn }) => [
        id,
        figure({
          value: thicknessIn,
          unit: 'in',
          decimals: 2,
          formula: 'thicknessIn',
          inputs: { thicknessIn: given(`build.slabs.${id}.thickness`, thicknessIn, 'in') },
        }),
      ]),
  );
}

function kindOf({ shape }: EdgeSlab, edge: number) {
  return shape.edges.find((one) => one.edge === edge)?.kind ?? 'formed';
}

function madeJoint(slab: EdgeSlab, joint: EdgeJoint, laid: Laid): MadeJoint {
  const { edge, how } = joint;
  const into = joint.into ?? USUAL_INTO[kindOf(slab, edge)];
  const steel = how === 'dowelled' || how === 'tied' ? jointSteel(how, slab.thicknessIn) : null;
  const lengthFt = lengthFtOf(slab, edge, laid);
  const barCount = steel === null ? 0 : barsAlong({ lengthIn: lengthFt * 12, spacingIn: steel.spacingIn });
  const isDrilled = steel !== null && into !== 'new-slab';
  return { ...joint, into, lengthFt, steel, isDrilled, barCount };
}

/** Every edge as it would be if nothing were said. */
function allJoints(slab: EdgeSlab, laid: Laid): readonly MadeJoint[] {
  if (slab.shape.base.kind === 'strip') return [];
  const numbers = numbersOf(thingNamed(laid.edges, slab.id, 'edges'));
  return numbers.map((edge) => {
    const how = USUAL_JOINT[kindOf(slab, edge)];
    return madeJoint(slab, { edge, how, into: null, postTensioned: null, knownBy: null, detail: null }, laid);
  });
}

/** Of the edges that are left, each once and in order. */
function numbersOf(edges: readonly NumberedEdge[]): readonly number[] {
  const numbers = edges.flatMap(({ number }) => (number === null ? [] : [number]));
  return [...new Set(numbers)].sort((one, other) => one - other);
}

function lengthFtOf({ id }: EdgeSlab, edge: number, { outlines, edges }: Laid): number {
  const rim = { outline: thingNamed(outlines, id, 'outline'), edges: thingNamed(edges, id, 'edges') };
  return edgeLeftIn(rim, edge) / 12;
}

/** Edges that two slabs have and both speak of: the later of the two, and where they disagree. */
function sharedEdges(slabs: readonly EdgeSlab[], edges: Laid['edges']) {
  const later = new Set<string>();
  const problems: CoreProblem[] = [];
  const said = slabs.flatMap((slab) =>
    slab.edgeJoints.map((joint) => {
      const own = thingNamed(edges, slab.id, 'edges').filter(({ number }) => number === joint.edge);
      return { slab, joint, own };
    }),
  );
  for (const [index, one] of said.entries()) {
    const first = said
      .slice(0, index)
      .find(
        (other) =>
          other.slab.id !== one.slab.id &&
          other.own.some((theirs) => one.own.some((ours) => runTogether(theirs, ours))),
      );
    if (first === undefined) continue;
    later.add(`${one.slab.id}.${one.joint.edge}`);
    if (first.joint.how === one.joint.how) continue;
    problems.push({
      code: 'edge-joints-disagree',
      path: `build.slabs.${one.slab.id}.edge-joints.${one.joint.edge}.how`,
      parts: { how: one.joint.how, other: first.joint.how, slab: first.slab.id, edge: `${first.joint.edge}` },
    });
  }
  return { later, problems };
}

function edgeFigures(
  slab: EdgeSlab,
  { edge, how, steel, isDrilled, lengthFt, barCount }: MadeJoint,
  { shapes }: Pick<Input, 'shapes'>,
): EdgeFigures {
  const length = figure({
    value: lengthFt,
    unit: 'ft',
    decimals: 2,
    formula: { method: `what is left of edge ${edge} between rounded corners and joined pieces` },
    inputs: { perimeterFt: thingNamed(shapes.slabs, slab.id, 'shape').perimeter },
  });
  if (steel === null) return { length };
  const bars = figure({
    value: barCount,
    unit: 'each',
    decimals: 0,
    formula: 'ceilStep(lengthFt * 12 / spacingIn, 1)',
    inputs: {
      lengthFt: length,
      spacingIn: constant(
        how === 'tied' ? 'spacing of tie bars' : 'spacing of dowels',
        steel.spacingIn,
        'in',
        steel.source,
      ),
    },
    source: steel.source,
    rounding: 'up',
  });
  if (!isDrilled) return { length, bars };
  const holes = figure({
    value: num(bars),
    unit: 'each',
    decimals: 0,
    formula: 'barCount',
    inputs: { barCount: bars },
  });
  return { length, bars, holes };
}

const ISOLATION_SOURCE = 'NRMCA CIP 6: isolation joints at walls, steps and slabs that are there (seen)';

function stillApart(slab: EdgeSlab, said: readonly MadeJoint[], shape: Along) {
  const joinedFt = (kind: 'house' | 'stays') =>
    said
      .filter(({ edge, how }) => how !== 'isolated' && kindOf(slab, edge) === kind)
      .reduce((sum, { lengthFt }) => sum + lengthFt, 0);
  return {
    houseFt: num(shape['along-house']) - joinedFt('house'),
    staysFt: num(shape['along-stays']) - joinedFt('stays'),
  };
}

function sealedFigure({ id, joints }: EdgeSlab, jointsFt: Figure, isolationFt: Figure): Figure {
  const share = joints.sealed ? 1 : 0;
  return figure({
    value: share * (num(jointsFt) + num(isolationFt)),
    unit: 'ft',
    decimals: 1,
    formula: 'sealedShare * (jointsFt + isolationFt)',
    inputs: {
      sealedShare: given(`build.slabs.${id}.joints.sealed`, share, 'ratio'),
      jointsFt,
      isolationFt,
    },
  });
}

type Along = { readonly 'along-house': Figure; readonly 'along-stays': Figure };

/** Along the house and old concrete, less the edges that are joined to it, and what else is isolated. */
function isolationFigure(
  slab: EdgeSlab,
  made: readonly MadeJoint[],
  figures: Readonly<Record<string, EdgeFigures>>,
  shape: Along,
): Figure {
  const parts = made.flatMap(({ edge, how }): readonly (Part & { readonly sign: 1 | -1 })[] => {
    const isUsual = USUAL_JOINT[kindOf(slab, edge)] === 'isolated';
    const length = figures[`edge-${edge}`]?.length;
    if (length === undefined || isUsual === (how === 'isolated')) return [];
    return [{ key: `edge${edge}Ft`, input: length, sign: isUsual ? -1 : 1 }];
  });
  const usual = { alongHouseFt: shape['along-house'], alongStaysFt: shape['along-stays'] };
  const usualFt = num(shape['along-house']) + num(shape['along-stays']);
  const sumFt = parts.reduce((sum, { input, sign }) => sum + sign * num(input), usualFt);
  return figure({
    // What is left of an edge that is taken away whole is the noise of two sums.
    value: Math.max(0, sumFt),
    unit: 'ft',
    decimals: 1,
    formula: `max(0, alongHouseFt + alongStaysFt${parts.map(({ key, sign }) => `${sign < 0 ? ' - ' : ' + '}${key}`).join('')})`,
    inputs: { ...usual, ...inputsOf(parts) },
    source: ISOLATION_SOURCE,
  });
}
