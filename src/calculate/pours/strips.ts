import {
  distanceToEdgeIn,
  type Line,
  labelPointOf,
  type Outline,
  segmentsMeet,
} from '../../geometry/index.ts';

/** The panels of a slab between two joints that run right across it. */
export type Strip = {
  /** Places in the panels of the slab. */
  readonly panels: readonly number[];
  readonly areaSqFt: number;
  /** Place in the joints of the slab of the one after it; null at the end of the slab. */
  readonly endsAt: number | null;
};

type PanelArea = { readonly outline: Outline; readonly areaSqFt: number };

/** An end this near the edge of a slab is on it [in]. */
const ON_EDGE_IN = 0.01;
/** Joints that turn from each other by less run the same way [rad]. */
const SAME_WAY_RAD = (35 * Math.PI) / 180;

/**
 * A slab in strips, in their order: divided at the joints that run from edge to edge and do not cross, of the
 * two ways that joints run in that with the more of them, and of those that are as many the shorter ones. What is placed
 * up to such a joint has one straight end. One strip where no joint runs across.
 */
export function stripsOf(
  outline: Outline,
  lines: readonly Line[],
  panels: readonly PanelArea[],
): readonly Strip[] {
  const across = [...lines.entries()].filter(([, line]) =>
    endsOf(line).every((end) => distanceToEdgeIn(outline, end) < ON_EDGE_IN),
  );
  const families = across.map(([, first]) => {
    const family: (readonly [number, Line])[] = [];
    for (const one of across) {
      if (turnRad(first, one[1]) < SAME_WAY_RAD && family.every(([, other]) => !cross(other, one[1])))
        family.push(one);
    }
    return family;
  });
  const lengthIn = (family: (typeof families)[number]) =>
    family.reduce(
      (sumIn, [, line]) => sumIn + Math.hypot(line.toXIn - line.fromXIn, line.toYIn - line.fromYIn),
      0,
    );
  const [best = []] = families.toSorted(
    (one, other) => other.length - one.length || lengthIn(one) - lengthIn(other),
  );
  const [, first] = best[0] ?? [];
  if (first === undefined) return [stripOf(panels, [...panels.keys()], null)];

  const inOrder = best
    .map(([place, line]) => ({ place, line: alike(line, first) }))
    .toSorted((one, other) => asideIn(first, middleOf(one.line)) - asideIn(first, middleOf(other.line)));
  const points = panels.map((panel) => labelPointOf(panel.outline));
  const stripAt = points.map((point) => inOrder.filter(({ line }) => asideIn(line, point) > 0).length);
  return Array.from({ length: inOrder.length + 1 }, (_, at) =>
    stripOf(
      panels,
      [...panels.keys()].filter((place) => stripAt[place] === at),
      inOrder[at]?.place ?? null,
    ),
  ).filter(({ panels: some }) => some.length > 0);
}

function stripOf(panels: readonly PanelArea[], places: readonly number[], endsAt: number | null): Strip {
  return {
    panels: places,
    areaSqFt: places.reduce((sum, place) => sum + (panels[place]?.areaSqFt ?? 0), 0),
    endsAt,
  };
}

type End = { readonly xIn: number; readonly yIn: number };

function endsOf({ fromXIn, fromYIn, toXIn, toYIn }: Line): readonly [End, End] {
  return [
    { xIn: fromXIn, yIn: fromYIn },
    { xIn: toXIn, yIn: toYIn },
  ];
}

function middleOf({ fromXIn, fromYIn, toXIn, toYIn }: Line): End {
  return { xIn: (fromXIn + toXIn) / 2, yIn: (fromYIn + toYIn) / 2 };
}

function cross(one: Line, other: Line): boolean {
  const [from, to] = endsOf(one);
  const [otherFrom, otherTo] = endsOf(other);
  return segmentsMeet({ from, to }, { from: otherFrom, to: otherTo });
}

/** Between the ways of two lines, whichever ends they are drawn from. */
function turnRad(one: Line, other: Line): number {
  const offRad = Math.abs(headingRad(one) - headingRad(other)) % Math.PI;
  return Math.min(offRad, Math.PI - offRad);
}

function headingRad({ fromXIn, fromYIn, toXIn, toYIn }: Line): number {
  return Math.atan2(toYIn - fromYIn, toXIn - fromXIn);
}

/** A line drawn from the end from which another one is. */
function alike(line: Line, first: Line): Line {
  if (Math.cos(headingRad(line) - headingRad(first)) >= 0) return line;
  return { fromXIn: line.toXIn, fromYIn: line.toYIn, toXIn: line.fromXIn, toYIn: line.fromYIn };
}

/** How far a point lies to the right of a line [in]; below 0 to the left. */
function asideIn({ fromXIn, fromYIn, toXIn, toYIn }: Line, { xIn, yIn }: End): number {
  const [dxIn, dyIn] = [toXIn - fromXIn, toYIn - fromYIn];
  return ((xIn - fromXIn) * dyIn - (yIn - fromYIn) * dxIn) / Math.hypot(dxIn, dyIn);
}
