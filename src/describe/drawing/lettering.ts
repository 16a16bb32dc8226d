import type { Outline } from '../../geometry/index.ts';
import { type LeaderLimits, placeLabelInside, placeLabelOutside } from './area-labels.ts';
import { type MarkLimits, placeBayMarks } from './bay-marks.ts';
import type { Box, Segment } from './boxes.ts';
import { placeCornerTags } from './corner-tags.ts';
import { crossedBy } from './crossed.ts';
import { placeRadii } from './curve-tags.ts';
import { placeDimensions } from './dimensions.ts';
import type { Primitive } from './drawing.ts';
import { fallBox, placeFallTexts } from './falls.ts';
import { placeJointTags } from './joint-tags.ts';
import type { LabelTarget } from './label-targets.ts';
import { placePanelLetters } from './panel-letters.ts';
import { outlineSegments, type Placement } from './paper.ts';
import { photoBox, placePhotoNumbers } from './photos.ts';
import { jointLine } from './plan-layers.ts';
import { isMarked, type PlanView } from './plan-view.ts';
import type { Room } from './room.ts';
import { segmentsNear } from './segment-index.ts';

/** In which order numbers of joints and curves, dimensions, and labels with leaders look for their places. */
const orders = [
  ['joints', 'curves', 'dimensions', 'corners', 'labels'],
  ['labels', 'joints', 'curves', 'dimensions', 'corners'],
] as const;
/** On a plan of heights they come first, and no radius is wanted. */
const ordersOfHeights = [
  ['corners', 'joints', 'dimensions', 'labels'],
  ['corners', 'labels', 'joints', 'dimensions'],
] as const;
type Order = (typeof orders)[number] | (typeof ordersOfHeights)[number];

export type Lettering = {
  readonly dimensions: readonly Primitive[];
  readonly labels: readonly Primitive[];
  readonly joints: readonly Primitive[];
  readonly bays: readonly Primitive[];
  readonly photos: readonly Primitive[];
  readonly falls: readonly Primitive[];
  readonly boxes: readonly Box[];
};

/** The sheet with what has its fixed place: edges, joints, lines of bays, photo standpoints, arrows of fall. */
function emptyRoom(view: PlanView, placement: Placement, zone: Room['zone']): Room {
  const segments = fixedSegments(view, placement);
  return {
    zone,
    boxes: [],
    symbols: [
      ...view.photoPoints.map((point) => photoBox(point, placement)),
      ...view.falls.map((fall) => fallBox(fall, placement)),
    ],
    thinLines: [],
    ticks: [],
    segments,
    isCrossed: crossedBy(segments, zone),
    segmentsNear: segmentsNear(segments),
    segmentsBut: segmentsBut(segments, placement),
  };
}

/** Made once for each outline that is asked for. */
function segmentsBut(segments: readonly Segment[], placement: Placement): Room['segmentsBut'] {
  const known = new Map<Outline, Room['segmentsNear']>();
  const startOf = ({ from }: Segment) => `${from.xIn} ${from.yIn}`;
  return (outline) => {
    const found = known.get(outline);
    if (found !== undefined) return found;
    const own = new Set(outlineSegments(placement, outline).map(startOf));
    const others = segmentsNear(segments.filter((segment) => !own.has(startOf(segment))));
    known.set(outline, others);
    return others;
  };
}

/** Edges, joints and lines of bays. */
function fixedSegments(view: PlanView, placement: Placement): readonly Segment[] {
  return view.areas.flatMap((area) => [
    ...outlineSegments(placement, area.outline),
    ...[...area.joints.map(({ line }) => line), ...area.bays.lines].map((line) => {
      const { from, to } = jointLine(line, placement);
      return { from, to };
    }),
  ]);
}

/** What has found its place so far. Placing adds to it, so that whoever tries something takes a copy. */
type Letters = {
  readonly room: Room;
  readonly labels: Primitive[];
  readonly dimensions: Primitive[];
  readonly joints: Primitive[];
  readonly photos: readonly Primitive[];
  readonly falls: readonly Primitive[];
  /** Labels that have no place inside. */
  readonly left: readonly LabelTarget[];
};

function copyOf({ room, labels, dimensions, joints, ...others }: Letters): Letters {
  return {
    ...others,
    room: copyOfRoom(room),
    labels: [...labels],
    dimensions: [...dimensions],
    joints: [...joints],
  };
}

function copyOfRoom(room: Room): Room {
  return { ...room, boxes: [...room.boxes], thinLines: [...room.thinLines], ticks: [...room.ticks] };
}

/**
 * All text of the plan, in the first order of placing that finds room for every label; null if none does.
 *
 * @returns Of limits; what does not follow from them is placed once for all that are tried.
 */
export function lettering(
  view: PlanView,
  targets: readonly LabelTarget[],
  placement: Placement,
  zone: Room['zone'],
): (limits: MarkLimits) => Lettering | null {
  const empty = emptyRoom(view, placement, zone);
  const isOfHeights = view.falls.length > 0 && view.areas.some(({ corners }) => corners.length > 0);
  const inOrders = (room: Room) => {
    const inside = lettersInside(view, targets, placement, room);
    return (isOfHeights ? ordersOfHeights : orders).map((order) => {
      let begun: Letters | null = null;
      return (limits: LeaderLimits) => {
        begun ??= beforeLabels(order, view, placement, copyOf(inside));
        return fromLabelsOn(order, view, placement, copyOf(begun), limits);
      };
    });
  };
  const first = <R>(tries: readonly ((limits: LeaderLimits) => R | null)[], limits: LeaderLimits) =>
    tries.reduce<R | null>((found, attempt) => found ?? attempt(limits), null);
  if (!isMarked(view)) {
    const tries = inOrders(empty);
    return (limits) => {
      const made = first(tries, limits);
      return made === null ? null : { ...made, bays: [] };
    };
  }
  return (limits) => {
    const room = copyOfRoom(empty);
    const bays = placeBayMarks(view.areas, placement, room, limits);
    const made = bays === null ? null : first(inOrders(room), limits);
    return made === null || bays === null ? null : { ...made, bays };
  };
}

/** Labels that have a place inside their areas, photographs and falls: they come first in every order. */
function lettersInside(
  { photoPoints, falls }: PlanView,
  targets: readonly LabelTarget[],
  placement: Placement,
  start: Room,
): Letters {
  const room = copyOfRoom(start);
  const labels: Primitive[] = [];
  const left: LabelTarget[] = [];
  for (const target of targets) {
    const inside = placeLabelInside(target, placement, room);
    if (inside === null) left.push(target);
    else labels.push(...inside);
  }
  const photos = placePhotoNumbers(photoPoints, placement, room);
  const slopes = placeFallTexts(falls, placement, room);
  return { room, labels, dimensions: [], joints: [], photos, falls: slopes, left };
}

function beforeLabels(order: Order, view: PlanView, placement: Placement, letters: Letters): Letters {
  for (const step of order.slice(
    0,
    order.findIndex((one) => one === 'labels'),
  ))
    place(step, view, placement, letters);
  return letters;
}

/** Null where a label has no place; among bays one may be left out. */
function fromLabelsOn(
  order: Order,
  view: PlanView,
  placement: Placement,
  letters: Letters,
  limits: LeaderLimits,
): Omit<Lettering, 'bays'> | null {
  const { room, left, labels, dimensions, joints, photos, falls } = letters;
  for (const target of left) {
    const outside = placeLabelOutside(target, placement, room, limits);
    if (outside === null && !isMarked(view)) return null;
    labels.push(...(outside ?? []));
  }
  for (const step of order.slice(order.findIndex((one) => one === 'labels') + 1))
    place(step, view, placement, letters);
  joints.push(...placePanelLetters(view.areas, placement, room));
  return { dimensions, labels, joints, photos, falls, boxes: [...room.boxes, ...room.symbols] };
}

function place(
  step: Order[number],
  { areas, isPlain, words }: PlanView,
  placement: Placement,
  { room, dimensions, joints }: Letters,
): void {
  if (step === 'dimensions' && !isPlain) dimensions.push(...placeDimensions(areas, placement, room));
  if (step === 'joints') joints.push(...placeJointTags(areas, placement, room));
  if (step === 'corners') joints.push(...placeCornerTags(areas, placement, room));
  // On a plan of bays their numbers come first, and no radius is wanted.
  if (step === 'curves' && !isMarked({ areas }) && !isPlain)
    dimensions.push(...placeRadii(areas, words.radius, placement, room));
}
