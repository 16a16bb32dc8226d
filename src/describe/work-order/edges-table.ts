import { HOLE_OVER_IN, type MadeJoint } from '../../calculate/edges/index.ts';
import { num } from '../../calculate/figure.ts';
import type { Slab } from '../../calculate/job.ts';
import { thingNamed } from '../../calculate/parts.ts';
import type { Made } from '../made.ts';
import { end, row, start, tableOrNull } from '../parts/tables.ts';
import type { TableView } from '../views.ts';

/** What is done along every edge of a slab that is not free all round; edges that are alike stand in one row. */
export function edgesTable(made: Made): TableView | null {
  const { edges: say } = made.words.steel;
  return tableOrNull(
    say.caption,
    [start(say.slab), start(say.edge), start(say.joint), start(say.to), end(say.length), start(say.bars)],
    Object.values(made.job.build.slabs).flatMap((slab) => slabRows(slab, made)),
  );
}

function slabRows(slab: Slab, made: Made): TableView['rows'] {
  const { results, show, words } = made;
  const { edges: say } = words.steel;
  const joints = thingNamed(results.edges.data.joints, slab.id, 'slab').filter(
    ({ lengthFt }) => lengthFt > 0,
  );
  const rows = alike(joints).map((group) => groupRow(slab, group, made));
  const isolatedFt = joints
    .filter(({ how }) => how === 'isolated')
    .reduce((sum, { lengthFt }) => sum + lengthFt, 0);
  const otherFt = num(thingNamed(results.edges.figures.isolation, slab.id, 'slab')) - isolatedFt;
  // Round posts and columns within the slab, and along the sides of a walk, which have no number.
  if (otherFt < LEAST_SHOWN_FT) return joints.every(({ how }) => how === 'free') ? [] : rows;
  return [
    ...rows,
    row(slab.label, say.other, say.hows.isolated, say.nothing, show.run(otherFt), say.nothing),
  ];
}

const LEAST_SHOWN_FT = 0.05;

function alike(joints: readonly MadeJoint[]): readonly (readonly MadeJoint[])[] {
  const groups = new Map<string, MadeJoint[]>();
  for (const joint of joints) {
    const { how, into, postTensioned, knownBy, detail, barCount } = joint;
    const key = JSON.stringify([
      how,
      how === 'free' ? null : into,
      postTensioned,
      knownBy,
      detail,
      barCount > 0,
    ]);
    groups.set(key, [...(groups.get(key) ?? []), joint]);
  }
  return [...groups.values()];
}

function groupRow(slab: Slab, joints: readonly MadeJoint[], made: Made): TableView['rows'][number] {
  const { show, words } = made;
  const { edges: say, and } = words.steel;
  const [first] = joints;
  if (first === undefined) throw new RangeError('a group of edges has one at least');
  const lengthFt = joints.reduce((sum, joint) => sum + joint.lengthFt, 0);
  return {
    ...row(
      slab.label,
      joints.map(({ edge }) => `${edge}`).join(and),
      say.hows[first.how],
      first.how === 'free' ? say.nothing : say.intos[first.into],
      show.run(lengthFt),
      barsText(joints, first, made),
    ),
    note: noteOf(first, made),
  };
}

function barsText(joints: readonly MadeJoint[], { steel }: MadeJoint, { show, words }: Made): string {
  const { edges: say } = words.steel;
  const count = joints.reduce((sum, { barCount }) => sum + barCount, 0);
  if (steel === null || count === 0) return say.nothing;
  return say.barsOf(
    show.count(count),
    show.size(steel.diameterIn),
    show.size(steel.lengthIn),
    show.size(steel.spacingIn),
  );
}

function noteOf(
  { steel, isDrilled, barCount, postTensioned, knownBy, detail }: MadeJoint,
  { show, words }: Made,
): string | null {
  const { edges: say } = words.steel;
  const notes = [
    ...(steel === null ? [] : [howSet(steel)]),
    ...(postTensioned === true ? [say.tendons] : []),
    ...(postTensioned === false && knownBy !== null ? [say.noTendons(knownBy)] : []),
    ...(detail === null ? [] : [say.detail(detail)]),
    ...(isDrilled ? [say.stop] : []),
  ];
  return notes.length === 0 ? null : notes.join(' ');

  function howSet({ diameterIn, lengthIn }: NonNullable<MadeJoint['steel']>): string {
    if (barCount === 0) return say.besideIt;
    const half = show.size(lengthIn / 2);
    return isDrilled ? say.drilled(show.size(diameterIn + HOLE_OVER_IN), half) : say.castIn(half);
  }
}
