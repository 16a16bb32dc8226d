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

/** All text of the plan, in the first order of placing that finds room for every label; null if none does. */
export function letter(
  view: PlanView,
  targets: readonly LabelTarget[],
  placement: Placement,
  zone: Room['zone'],
  limits: MarkLimits,
): Lettering | null {
  const marked = emptyRoom(view, placement, zone);
  const bays = placeBayMarks(view.areas, placement, marked, limits);
  if (bays === null) return null;
  const isOfHeights = view.falls.length > 0 && view.areas.some(({ corners }) => corners.length > 0);
  for (const order of isOfHeights ? ordersOfHeights : orders) {
    const room = { ...marked, boxes: [...marked.boxes], thinLines: [...marked.thinLines], ticks: [] };
    const made = letterInOrder(view, targets, placement, room, { order, limits });
    if (made !== null) return { ...made, bays };
  }
  return null;
}

function letterInOrder(
  { areas, photoPoints, falls, isPlain, words }: PlanView,
  targets: readonly LabelTarget[],
  placement: Placement,
  room: Room,
  manner: { readonly order: Order; readonly limits: LeaderLimits },
): Omit<Lettering, 'bays'> | null {
  const labels: Primitive[] = [];
  const dimensions: Primitive[] = [];
  const left: LabelTarget[] = [];
  // On a plan of bays the numbers come first: a name without room is left out, and no radius is wanted.
  const isSecond = isMarked({ areas });
  for (const target of targets) {
    const inside = placeLabelInside(target, placement, room);
    if (inside === null) left.push(target);
    else labels.push(...inside);
  }
  const photos = placePhotoNumbers(photoPoints, placement, room);
  const slopes = placeFallTexts(falls, placement, room);
  const joints: Primitive[] = [];
  for (const step of manner.order) {
    if (step === 'dimensions' && !isPlain) dimensions.push(...placeDimensions(areas, placement, room));
    if (step === 'joints') joints.push(...placeJointTags(areas, placement, room));
    if (step === 'corners') joints.push(...placeCornerTags(areas, placement, room));
    if (step === 'curves' && !isSecond && !isPlain)
      dimensions.push(...placeRadii(areas, words.radius, placement, room));
    if (step !== 'labels') continue;
    for (const target of left) {
      const outside = placeLabelOutside(target, placement, room, manner.limits);
      if (outside === null && !isSecond) return null;
      labels.push(...(outside ?? []));
    }
  }
  joints.push(...placePanelLetters(areas, placement, room));
  const boxes = [...room.boxes, ...room.symbols];
  return { dimensions, labels, joints, photos, falls: slopes, boxes };
}
