import { boundsOf, containsPoint, labelPointOf, type Outline, type Point } from '../../geometry/index.ts';
import type { TextStyle } from './lines.ts';
import type { PlanArea } from './plan-view.ts';

export const areaLabelStyle = { sizePt: 9, weight: 700 } as const;
export const holeLabelStyle = { sizePt: 8, weight: 400 } as const;

/** What a label belongs to: an area, or a hole in one. */
export type LabelTarget = {
  readonly label: string;
  readonly style: TextStyle;
  /** A place inside; a leader ends here. */
  readonly at: Point;
  readonly shape: Outline;
  /** Areas that the label must not stand in even where they lie over the shape. */
  readonly others: readonly Outline[];
  /** Whether a label with a leader may have these corners. */
  readonly mayStandAt: (corners: readonly Point[]) => boolean;
};

/** Every label of a plan, those of holes first: they have the fewest places. */
export function labelTargets(areas: readonly PlanArea[]): LabelTarget[] {
  return [
    ...areas.flatMap((area) => area.holes.map((hole) => holeTarget(hole, area, areas))),
    ...areas.map((area) => areaTarget(area, areas)),
  ];
}

function areaTarget(area: PlanArea, areas: readonly PlanArea[]): LabelTarget {
  return {
    label: area.label,
    style: areaLabelStyle,
    at: labelPointOf(area.outline),
    shape: area.outline,
    others: outlinesBut(area, areas),
    mayStandAt: isOutsideAll(areas),
  };
}

/**
 * A hole's label may stand in its hole, elsewhere in the area, or outside every area.
 * @throws {RangeError} If its place lies in no hole of the area.
 */
function holeTarget(
  hole: PlanArea['holes'][number],
  area: PlanArea,
  areas: readonly PlanArea[],
): LabelTarget {
  const shape = area.outline.rings
    .slice(1)
    .map((ring): Outline => ({ rings: [ring] }))
    .find((one) => containsPoint(one, hole.at));
  if (shape === undefined) {
    throw new RangeError(
      `"${hole.label}" must lie in a hole of ${area.label}, got ${hole.at.xIn}, ${hole.at.yIn}`,
    );
  }
  const isOutside = isOutsideAll(areas);
  return {
    label: hole.label,
    style: holeLabelStyle,
    at: hole.at,
    shape,
    others: outlinesBut(area, areas),
    mayStandAt: (corners) =>
      corners.every((corner) => containsPoint(area.outline, corner)) || isOutside(corners),
  };
}

function outlinesBut(area: PlanArea, areas: readonly PlanArea[]): Outline[] {
  return areas.filter((other) => other !== area).map((other) => other.outline);
}

/** Outside what the areas enclose: a label in another area's hole would be taken for the hole's. */
function isOutsideAll(areas: readonly PlanArea[]): LabelTarget['mayStandAt'] {
  const enclosed = areas.map(({ outline }) => {
    const outer: Outline = { rings: outline.rings.slice(0, 1) };
    return { outer, bounds: boundsOf(outer) };
  });
  return (corners) =>
    corners.every(
      (corner) =>
        !enclosed.some(({ outer, bounds }) => isWithin(bounds, corner) && containsPoint(outer, corner)),
    );
}

function isWithin(bounds: ReturnType<typeof boundsOf>, { xIn, yIn }: Point): boolean {
  return xIn >= bounds.minXIn && xIn <= bounds.maxXIn && yIn >= bounds.minYIn && yIn <= bounds.maxYIn;
}
