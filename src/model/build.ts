import type {
  BarSize,
  Build,
  Reinforcement,
  Slab,
  SlabJointing,
  Steps,
  StepsRise,
  ThickenedEdge,
} from '../calculate/job.ts';
import type { BuildSection, SlabInput } from '../read/index.ts';
import { SHIPPED } from './constants.ts';
import { inCoreUnit, inCoreUnitOrNull, mapThings } from './quantity.ts';
import { shapeOf } from './shape.ts';
import { pointOf } from './shape-base.ts';

export function buildOf(input: BuildSection): Build {
  const { mix } = input;
  return {
    slabs: mapThings(input.slabs, slabOf),
    steps: mapThings(input.steps ?? {}, stepsOf),
    mix: {
      strengthPsi: inCoreUnitOrNull(mix.strength),
      airRatio: inCoreUnitOrNull(mix.air),
      waterCementRatio: mix['water-cement'] ?? null,
      flyAshRatio: inCoreUnitOrNull(mix['fly-ash']) ?? SHIPPED.flyAshRatio,
      slagRatio: inCoreUnitOrNull(mix.slag) ?? SHIPPED.slagRatio,
      additives: mix.additives ?? [],
      slumpIn: inCoreUnit(mix.slump),
      aggregateIn: inCoreUnit(mix.aggregate),
      exposure: mix.exposure,
    },
  };
}

function slabOf(id: string, input: SlabInput): Slab {
  return {
    id,
    label: input.label,
    use: input.use,
    shape: shapeOf(input),
    thicknessIn: inCoreUnit(input.thickness),
    thickenedEdges: thickenedOf(input['thickened-edges'] ?? {}),
    formHeightIn: inCoreUnitOrNull(input['form-height']),
    probedIn: inCoreUnitOrNull(input['probed-depth']),
    baseIn: inCoreUnit(input.base),
    digIn: inCoreUnit(input.dig),
    geotextile: input.geotextile ?? SHIPPED.geotextile,
    publicWay: input['public-way'] ?? SHIPPED.publicWay,
    fall: {
      slope: inCoreUnit(input.fall.slope),
      towards: input.fall.towards,
      directionDeg: inCoreUnitOrNull(input.fall.direction),
    },
    reinforcement: reinforcementOf(input.reinforcement),
    edgeJoints: edgeJointsOf(input['edge-joints'] ?? {}),
    finish: input.finish,
    jointSpacingIn: inCoreUnitOrNull(input['joint-spacing']),
    joints: jointingOf(input.joints),
    board: input.board,
    curveForm: input['curve-form'] ?? null,
    shortBoard: input['short-board'],
    note: input.note ?? null,
    crewNote: input['crew-note'] ?? null,
  };
}

function thickenedOf(input: NonNullable<SlabInput['thickened-edges']>): readonly ThickenedEdge[] {
  return Object.entries(input)
    .map(([edge, { depth, width, taper }]) => ({
      edge: Number(edge),
      depthIn: inCoreUnit(depth),
      widthIn: inCoreUnit(width),
      taperIn: inCoreUnitOrNull(taper) ?? SHIPPED.taperIn,
    }))
    .toSorted((one, other) => one.edge - other.edge);
}

function jointingOf(input: SlabInput['joints'] = {}): SlabJointing {
  return {
    cut: input.cut ?? SHIPPED.jointCut,
    lines: mapThings(input.lines ?? {}, (id, { from, to }) => ({
      id,
      from: pointOf(from),
      to: to === undefined ? null : pointOf(to),
    })),
    propose: input.propose ?? SHIPPED.jointsProposed,
    sealed: input.sealed ?? SHIPPED.jointsSealed,
  };
}

function edgeJointsOf(input: NonNullable<SlabInput['edge-joints']>): Slab['edgeJoints'] {
  return Object.entries(input).map(([edge, joint]) => ({
    edge: Number(edge),
    how: joint.how,
    into: joint.into ?? null,
    postTensioned: joint['post-tensioned'] ?? null,
    knownBy: joint['known-by'] ?? null,
    detail: joint.detail ?? null,
  }));
}

const BAR_SIZES: Readonly<Record<'3' | '4' | '5', BarSize>> = { 3: 3, 4: 4, 5: 5 };

/** @throws {RangeError} If it is neither mesh nor bars with a spacing, which the checks refuse. */
function reinforcementOf(input: SlabInput['reinforcement']): Reinforcement {
  if (input === undefined) return SHIPPED.reinforcement;
  const coverIn = inCoreUnitOrNull(input.cover);
  if (input.mesh !== undefined)
    return { kind: 'mesh', style: input.mesh, from: input.from ?? SHIPPED.meshFrom, coverIn };
  if (input.bars === undefined || input.spacing === undefined)
    throw new RangeError('bars need a size and a spacing');
  return {
    kind: 'bars',
    material: input.material ?? SHIPPED.barMaterial,
    size: BAR_SIZES[input.bars],
    spacingIn: inCoreUnit(input.spacing),
    spacingAcrossIn: inCoreUnitOrNull(input['spacing-across']),
    coverIn,
    corners: input.corners ?? SHIPPED.barCorners,
  };
}

type StepsInput = NonNullable<BuildSection['steps']>[string];

function stepsOf(id: string, input: StepsInput): Steps {
  return {
    id,
    label: input.label,
    widthIn: inCoreUnit(input.width),
    rise: riseOf(input),
    treadIn: inCoreUnit(input.tread),
    landingIn: inCoreUnit(input.landing),
    treadSlope: inCoreUnitOrNull(input['tread-fall']) ?? SHIPPED.treadSlope,
    roomIn: inCoreUnitOrNull(input.room),
  };
}

/** @throws {RangeError} If neither risers nor two ends are said, which the checks refuse. */
function riseOf({ risers, riser, from, to }: StepsInput): StepsRise {
  if (from !== undefined && to !== undefined)
    return { kind: 'heights', from, to, riserCount: risers ?? null };
  if (risers === undefined || riser === undefined) throw new RangeError('steps need risers, or two heights');
  return { kind: 'taped', riserCount: risers, riserIn: inCoreUnit(riser) };
}
