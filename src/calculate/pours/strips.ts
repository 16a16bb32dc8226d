import {
  distanceIn,
  edgesOf,
  type Line,
  lineLengthIn,
  type Outline,
  type Point,
} from '../../geometry/index.ts';

/** Panels of a slab between two joints at each of which the slab comes apart in two. */
export type Strip = {
  /** Places in the panels of the slab. */
  readonly panels: readonly number[];
  readonly areaSqFt: number;
  /** Place in the joints of the slab of the one after it; null at the end of the slab. */
  readonly endsAt: number | null;
};

type PanelArea = { readonly outline: Outline; readonly areaSqFt: number };
/** Two panels, by their places, that share a piece of a joint. */
type Border = { readonly panels: readonly [number, number]; readonly joint: number };

/** An edge of a panel lies on a joint where both its ends are no farther off [in]. */
const ON_JOINT_IN = 0.01;
/** Panels that share less of a joint touch in a corner [in]. */
const LEAST_SHARED_IN = 1;

/**
 * A slab in strips that follow each other: divided at joints at each of which it comes apart in two, as many as leave a
 * row of strips, and of rows that are as long that with the shorter joints. What is placed up to such a joint has one
 * straight end, and no strip lies in two places. One strip where no joint parts the slab.
 *
 * @param lines  Joints, in the order of their numbers.
 * @param panels Between them, in the order of their letters.
 */
export function stripsOf(lines: readonly Line[], panels: readonly PanelArea[]): readonly Strip[] {
  const borders = bordersOf(lines, panels);
  const parting = [...lines.keys()].filter(
    (joint) => piecesOf(panels.length, borders, new Set([joint])).length === 2,
  );
  const rows = parting.map((first) => {
    const joints = [first];
    for (const joint of parting) {
      if (joint !== first && rowOf(panels.length, borders, [...joints, joint]) !== null) joints.push(joint);
    }
    return joints;
  });
  const lengthIn = (joints: readonly number[]) =>
    joints.reduce((sumIn, joint) => sumIn + lineLengthIn(lines[joint] as Line), 0);
  const [best = []] = rows.toSorted(
    (one, other) => other.length - one.length || lengthIn(one) - lengthIn(other),
  );
  const row = rowOf(panels.length, borders, best) ?? [{ panels: [...panels.keys()], endsAt: null }];
  return row.map((strip) => ({
    ...strip,
    areaSqFt: strip.panels.reduce((sum, place) => sum + (panels[place]?.areaSqFt ?? 0), 0),
  }));
}

/** Strips one after the other, from the end with the first letter; null where they make no row. */
function rowOf(
  panelCount: number,
  borders: readonly Border[],
  joints: readonly number[],
): readonly Omit<Strip, 'areaSqFt'>[] | null {
  const pieces = piecesOf(panelCount, borders, new Set(joints));
  if (pieces.length !== joints.length + 1) return null;
  const pieceOf = (panel: number) => pieces.findIndex((piece) => piece.includes(panel));
  const links = joints.map((joint) => {
    const [border] = borders.filter((one) => one.joint === joint);
    return { joint, pieces: (border?.panels ?? []).map(pieceOf) };
  });
  const linksOf = (piece: number) => links.filter((link) => link.pieces.includes(piece));
  const ends = [...pieces.keys()].filter((piece) => linksOf(piece).length <= 1);
  const row: Omit<Strip, 'areaSqFt'>[] = [];
  let came = -1;
  // The pieces are in the order of their first letters.
  for (let at = ends[0]; at !== undefined; ) {
    const next = linksOf(at).find(({ joint }) => joint !== came);
    row.push({ panels: pieces[at] ?? [], endsAt: next?.joint ?? null });
    came = next?.joint ?? came;
    const from: number = at;
    at = next?.pieces.find((piece) => piece !== from);
  }
  // Where a piece has three neighbours, some are left.
  return row.length === pieces.length ? row : null;
}

/** Panels that hang together across joints, but for those given; each in order, by their first panels. */
function piecesOf(
  panelCount: number,
  borders: readonly Border[],
  without: ReadonlySet<number>,
): readonly (readonly number[])[] {
  const pieceOf = Array.from({ length: panelCount }, (_, place) => place);
  for (const { panels, joint } of borders) {
    if (without.has(joint)) continue;
    const [one, other] = panels.map((panel) => pieceOf[panel] ?? panel);
    const [kept, gone] = [Math.min(one ?? 0, other ?? 0), Math.max(one ?? 0, other ?? 0)];
    for (const [panel, piece] of pieceOf.entries()) if (piece === gone) pieceOf[panel] = kept;
  }
  return [...new Set(pieceOf)].map((piece) =>
    [...pieceOf.keys()].filter((panel) => pieceOf[panel] === piece),
  );
}

function bordersOf(lines: readonly Line[], panels: readonly PanelArea[]): readonly Border[] {
  return lines.flatMap((line, joint) => {
    const along = panels.map(({ outline }) => stretchesOn(line, outline));
    return panels.flatMap((_, one) =>
      panels.slice(one + 1).flatMap((__, step): Border[] => {
        const other = one + 1 + step;
        const shares = (along[one] ?? []).some((first) =>
          (along[other] ?? []).some(
            (second) =>
              Math.min(first.toIn, second.toIn) - Math.max(first.fromIn, second.fromIn) > LEAST_SHARED_IN,
          ),
        );
        return shares ? [{ panels: [one, other], joint }] : [];
      }),
    );
  });
}

/** Where the edges of a panel lie on a joint, from its start [in]. */
function stretchesOn(line: Line, outline: Outline) {
  const from = { xIn: line.fromXIn, yIn: line.fromYIn };
  const lengthIn = lineLengthIn(line);
  const along = { xIn: (line.toXIn - from.xIn) / lengthIn, yIn: (line.toYIn - from.yIn) / lengthIn };
  const alongIn = (at: Point) => (at.xIn - from.xIn) * along.xIn + (at.yIn - from.yIn) * along.yIn;
  const isOn = (at: Point) =>
    Math.abs((at.xIn - from.xIn) * along.yIn - (at.yIn - from.yIn) * along.xIn) < ON_JOINT_IN;
  return outline.rings
    .flatMap((ring) => edgesOf(ring))
    .filter((edge) => edge.from.bulge === 0 && distanceIn(edge.from, edge.to) > 0)
    .filter((edge) => isOn(edge.from) && isOn(edge.to))
    .map((edge) => {
      const [startIn, endIn] = [alongIn(edge.from), alongIn(edge.to)];
      return { fromIn: Math.min(startIn, endIn), toIn: Math.max(startIn, endIn) };
    });
}
