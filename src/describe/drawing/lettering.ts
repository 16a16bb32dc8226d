import { type LeaderLimits, placeLabelInside, placeLabelOutside } from './area-labels.ts';
import type { Box } from './boxes.ts';
import { placeCornerTags } from './corner-tags.ts';
import { placeRadii } from './curve-tags.ts';
import { placeDimensions } from './dimensions.ts';
import type { Primitive } from './drawing.ts';
import { placeJointTags } from './joint-tags.ts';
import type { LabelTarget } from './label-targets.ts';
import { outlineSegments, type Placement } from './paper.ts';
import { photoBox, placePhotoNumbers } from './photos.ts';
import { jointLine } from './plan-layers.ts';
import type { PlanView } from './plan-view.ts';
import type { Room } from './room.ts';

/** In which order numbers of joints and curves, dimensions, and labels with leaders look for their places. */
const orders = [
  ['joints', 'curves', 'dimensions', 'corners', 'labels'],
  ['labels', 'joints', 'curves', 'dimensions', 'corners'],
] as const;
type Order = (typeof orders)[number];

export type Lettering = {
  readonly dimensions: readonly Primitive[];
  readonly labels: readonly Primitive[];
  readonly joints: readonly Primitive[];
  readonly photos: readonly Primitive[];
  readonly boxes: readonly Box[];
  /** Numbers of corners, joints, curves and photographs: the tables ask for them by name. */
  readonly tagCount: number;
};

/** The sheet with what has its fixed place: edges, joints, photo standpoints. */
function emptyRoom(view: PlanView, placement: Placement, zone: Room['zone']): Room {
  return {
    zone,
    boxes: [],
    symbols: view.photoPoints.map((point) => photoBox(point, placement)),
    thinLines: [],
    ticks: [],
    segments: view.areas.flatMap((area) => [
      ...outlineSegments(placement, area.outline),
      ...area.joints.map(({ line }) => {
        const { from, to } = jointLine(line, placement);
        return { from, to };
      }),
    ]),
  };
}

/**
 * All text of the plan, in the order of placing that finds room for most numbers, and then for most of
 * the rest; null if a label has no place in any.
 */
export function letter(
  view: PlanView,
  targets: readonly LabelTarget[],
  placement: Placement,
  zone: Room['zone'],
  limits: LeaderLimits,
): Lettering | null {
  let best: Lettering | null = null;
  for (const order of orders) {
    const room = emptyRoom(view, placement, zone);
    const made = letterInOrder(view, targets, placement, room, { order, limits });
    if (made === null) continue;
    if (best === null || isFuller(made, best)) best = made;
    // Nothing was left out: another order could only move things about.
    if (made.tagCount === tagsWanted(view)) break;
  }
  return best;
}

function isFuller(one: Lettering, other: Lettering): boolean {
  return (
    one.tagCount > other.tagCount ||
    (one.tagCount === other.tagCount && one.boxes.length > other.boxes.length)
  );
}

function tagsWanted({ areas, photoPoints }: PlanView): number {
  return areas.reduce(
    (sum, { joints, tags, corners }) =>
      sum + joints.filter(({ tag }) => tag !== null).length + tags.length + corners.length,
    photoPoints.length,
  );
}

function letterInOrder(
  { areas, photoPoints, words }: PlanView,
  targets: readonly LabelTarget[],
  placement: Placement,
  room: Room,
  manner: { readonly order: Order; readonly limits: LeaderLimits },
): Lettering | null {
  const labels: Primitive[] = [];
  const dimensions: Primitive[] = [];
  const left: LabelTarget[] = [];
  for (const target of targets) {
    const inside = placeLabelInside(target, placement, room);
    if (inside === null) left.push(target);
    else labels.push(...inside);
  }
  const photos = placePhotoNumbers(photoPoints, placement, room);
  const joints: Primitive[] = [];
  let curveCount = 0;
  for (const step of manner.order) {
    if (step === 'dimensions') dimensions.push(...placeDimensions(areas, placement, room));
    if (step === 'joints') joints.push(...placeJointTags(areas, placement, room));
    if (step === 'corners') joints.push(...placeCornerTags(areas, placement, room));
    if (step === 'curves') {
      const curves = placeRadii(areas, words.radius, placement, room);
      curveCount = curves.filter(({ kind }) => kind === 'text').length;
      dimensions.push(...curves);
    }
    if (step !== 'labels') continue;
    for (const target of left) {
      const outside = placeLabelOutside(target, placement, room, manner.limits);
      if (outside === null) return null;
      labels.push(...outside);
    }
  }
  const tagCount = curveCount + joints.length + photos.length;
  const boxes = [...room.boxes, ...room.symbols];
  return { dimensions, labels, joints, photos, boxes, tagCount };
}
