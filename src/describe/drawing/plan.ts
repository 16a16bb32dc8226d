import { type Bounds, boundsOf, containsPoint, type Line, type Outline } from '../../geometry/index.ts';
import { areaLabelStyle, type LeaderLimits, placeLabelInside, placeLabelOutside } from './area-labels.ts';
import type { Box } from './boxes.ts';
import { dimensionRoomIn, inOrderOfRole, placeDimensions, placeRadii } from './dimensions.ts';
import {
  type Drawing,
  type HatchPattern,
  type HatchPrimitive,
  type Layer,
  type LayerName,
  type LinePrimitive,
  lineWeightsMm,
  type PathPart,
  type PathPrimitive,
  type Primitive,
  type Scale,
} from './drawing.ts';
import { outlineParts, outlineSegments, type Placement, toGround, toPaper } from './paper.ts';
import type { Room } from './room.ts';
import { scalesOf, type UnitSystem } from './scales.ts';
import { titleStrip } from './strip.ts';
import { textWidthIn } from './text-width.ts';

export type PlanArea = {
  readonly label: string;
  readonly outline: Outline;
  readonly role: 'goes' | 'new' | 'stays';
  readonly joints: readonly Line[];
  /** A length of this area as it is written on the drawing. */
  readonly dimension: (lengthIn: number) => string;
};

export type PlanView = {
  readonly id: string;
  readonly title: string;
  readonly areas: readonly PlanArea[];
  /** The most paper the drawing may take [in]; its height shrinks to what it shows. */
  readonly sheet: { readonly widthIn: number; readonly heightIn: number };
  readonly system: UnitSystem;
  readonly words: {
    /** A scale such as 1/4″ = 1′ or 1:50, in words. */
    readonly scale: (scale: string) => string;
    /** A radius, from its length as written. */
    readonly radius: (length: string) => string;
    /** The length of the scale bar. */
    readonly lengthOf: (lengthIn: number) => string;
  };
};

const layerOfRole = { goes: 'existing-goes', new: 'new-slab', stays: 'stays' } as const satisfies Record<
  PlanArea['role'],
  LayerName
>;
const patternOfRole: Record<PlanArea['role'], HatchPattern> = { goes: 'goes', new: 'new', stays: 'none' };

const frameInsetIn = 0.02;
const leastPlanHeightIn = 1.1;

/**
 * A plan of one or more areas at the largest standard scale that fits the sheet with its dimensions and
 * labels.
 *
 * @throws {RangeError} If there is no area, a name uses a character outside the font, or the sheet is too
 *                      small to hold the labels at any scale.
 */
export function drawPlan(view: PlanView): Drawing {
  const bounds = boundsOfAll(view.areas);
  for (const scale of scalesOf(view.system)) {
    const drawing = drawAtScale(view, bounds, scale);
    if (drawing !== null) return drawing;
  }
  throw new RangeError(
    `a sheet of ${view.sheet.widthIn} by ${view.sheet.heightIn} in is too small for the plan ${view.id}`,
  );
}

function drawAtScale(view: PlanView, bounds: Bounds, scale: Scale): Drawing | null {
  const { sheet, words } = view;
  const scaleText = words.scale(scale.text);
  const strip = titleStrip({
    title: view.title,
    widthIn: sheet.widthIn,
    scale,
    scaleText,
    system: view.system,
    lengthOf: words.lengthOf,
  });
  const shapeWidthIn = (bounds.maxXIn - bounds.minXIn) * scale.paperInPerIn;
  const shapeHeightIn = (bounds.maxYIn - bounds.minYIn) * scale.paperInPerIn;
  const planHeightIn = Math.max(leastPlanHeightIn, shapeHeightIn + 2 * dimensionRoomIn);
  const heightIn = planHeightIn + strip.heightIn;
  if (shapeWidthIn + 2 * dimensionRoomIn > sheet.widthIn || heightIn > sheet.heightIn) return null;

  const placement: Placement = {
    paperInPerIn: scale.paperInPerIn,
    bounds,
    corner: { xIn: (sheet.widthIn - shapeWidthIn) / 2, yIn: (planHeightIn - shapeHeightIn) / 2 },
  };
  const zone = {
    leftIn: 2 * frameInsetIn,
    topIn: 2 * frameInsetIn,
    rightIn: sheet.widthIn - 2 * frameInsetIn,
    bottomIn: planHeightIn - frameInsetIn,
  };
  // The first manner of placing that works: short leaders, then any, and across a line only as the last.
  const leaders: readonly LeaderLimits[] = [
    { mostIn: 0.8, mayCrossLines: false },
    { mostIn: Infinity, mayCrossLines: false },
    { mostIn: Infinity, mayCrossLines: true },
  ];
  const manners = leaders.flatMap((limits): Manner[] => [
    { order: 'dimensions first', limits },
    { order: 'labels first', limits },
  ]);
  const lettering = manners.reduce<Lettering | null>(
    (found, manner) => found ?? letter(view, placement, emptyRoom(view, placement, zone), manner),
    null,
  );
  if (lettering === null) return null;

  const layers: Layer[] = [
    ...(['stays', 'goes', 'new'] as const).map((role) => areaLayer(view, role, placement, lettering.boxes)),
    {
      name: 'joints',
      primitives: view.areas.flatMap((area) => area.joints.map((joint) => jointLine(joint, placement))),
    },
    { name: 'dimensions', primitives: lettering.dimensions },
    { name: 'labels', primitives: lettering.labels },
    { name: 'frame', primitives: frame(sheet.widthIn, heightIn, planHeightIn, strip.primitives) },
  ];
  return {
    id: view.id,
    title: view.title,
    widthIn: sheet.widthIn,
    heightIn,
    scale: { paperInPerIn: scale.paperInPerIn, text: scaleText },
    layers,
  };
}

function emptyRoom(view: PlanView, placement: Placement, zone: Room['zone']): Room {
  return {
    zone,
    boxes: [],
    thinLines: [],
    segments: view.areas.flatMap((area) => [
      ...outlineSegments(placement, area.outline),
      ...area.joints.map((joint) => {
        const { from, to } = jointLine(joint, placement);
        return { from, to };
      }),
    ]),
  };
}

type Manner = { readonly order: 'dimensions first' | 'labels first'; readonly limits: LeaderLimits };

type Lettering = {
  readonly dimensions: readonly Primitive[];
  readonly labels: readonly Primitive[];
  readonly boxes: readonly Box[];
};

/** All text of the plan: labels that fit inside, then dimensions and labels with leaders, in either order. */
function letter(view: PlanView, placement: Placement, room: Room, manner: Manner): Lettering | null {
  const labels: Primitive[] = [];
  const dimensions: Primitive[] = [];
  const left: PlanArea[] = [];
  for (const area of inOrderOfRole(view.areas)) {
    const inside = placeLabelInside(area, view.areas, placement, room);
    if (inside === null) left.push(area);
    else labels.push(...inside);
  }
  const dimension = () => {
    // A radius has few places, a dimension can move out: so the radii come first.
    dimensions.push(...placeRadii(view.areas, view.words.radius, placement, room));
    dimensions.push(...placeDimensions(view.areas, placement, room));
  };
  if (manner.order === 'dimensions first') dimension();
  for (const area of left) {
    const outside = placeLabelOutside(area, view.areas, placement, room, manner.limits);
    if (outside === null) return null;
    labels.push(...outside);
  }
  if (manner.order === 'labels first') dimension();
  return { dimensions, labels, boxes: room.boxes };
}

function areaLayer(
  view: PlanView,
  role: PlanArea['role'],
  placement: Placement,
  boxes: readonly Box[],
): Layer {
  const areas = view.areas.filter((area) => area.role === role);
  const pattern = patternOfRole[role];
  const hatches = areas.map((area): HatchPrimitive => {
    const inside = boxes.filter((box) =>
      box.every((corner) => containsPoint(area.outline, toGround(placement, corner))),
    );
    return {
      kind: 'hatch',
      parts: [...outlineParts(placement, area.outline), ...inside.flatMap(boxParts)],
      pattern,
    };
  });
  const edges = areas.map(
    (area): PathPrimitive => ({
      kind: 'path',
      parts: outlineParts(placement, area.outline),
      weightMm: role === 'new' ? lineWeightsMm.newEdge : lineWeightsMm.existing,
      dash: 'solid',
    }),
  );
  return { name: layerOfRole[role], primitives: pattern === 'none' ? edges : [...hatches, ...edges] };
}

function boxParts([first, ...rest]: Box): PathPart[] {
  return [
    { kind: 'move', ...first },
    ...rest.map((corner): PathPart => ({ kind: 'line', ...corner })),
    { kind: 'close' },
  ];
}

function jointLine(joint: Line, placement: Placement): LinePrimitive {
  return {
    kind: 'line',
    from: toPaper(placement, { xIn: joint.fromXIn, yIn: joint.fromYIn }),
    to: toPaper(placement, { xIn: joint.toXIn, yIn: joint.toYIn }),
    weightMm: lineWeightsMm.existing,
    dash: 'dash-dot',
  };
}

function frame(
  widthIn: number,
  heightIn: number,
  stripTopIn: number,
  strip: readonly Primitive[],
): Primitive[] {
  const corners = boxParts([
    { xIn: frameInsetIn, yIn: frameInsetIn },
    { xIn: widthIn - frameInsetIn, yIn: frameInsetIn },
    { xIn: widthIn - frameInsetIn, yIn: heightIn - frameInsetIn },
    { xIn: frameInsetIn, yIn: heightIn - frameInsetIn },
  ]);
  return [
    { kind: 'path', parts: corners, weightMm: lineWeightsMm.existing, dash: 'solid' },
    {
      kind: 'line',
      from: { xIn: frameInsetIn, yIn: stripTopIn },
      to: { xIn: widthIn - frameInsetIn, yIn: stripTopIn },
      weightMm: lineWeightsMm.existing,
      dash: 'solid',
    },
    ...strip.map((primitive) => movedDown(primitive, stripTopIn)),
  ];
}

function movedDown(primitive: Primitive, byIn: number): Primitive {
  if (primitive.kind === 'text') return { ...primitive, yIn: primitive.yIn + byIn };
  if (primitive.kind !== 'line') return primitive;
  const down = (point: { readonly xIn: number; readonly yIn: number }) => ({
    ...point,
    yIn: point.yIn + byIn,
  });
  return { ...primitive, from: down(primitive.from), to: down(primitive.to) };
}

function boundsOfAll(areas: readonly PlanArea[]): Bounds {
  if (areas.length === 0) throw new RangeError('a plan needs at least one area');
  const each = areas.map((area) => {
    // Asked here, so that an unknown character is refused by name before any layout.
    textWidthIn(area.label, areaLabelStyle);
    return boundsOf(area.outline);
  });
  return {
    minXIn: Math.min(...each.map((bounds) => bounds.minXIn)),
    minYIn: Math.min(...each.map((bounds) => bounds.minYIn)),
    maxXIn: Math.max(...each.map((bounds) => bounds.maxXIn)),
    maxYIn: Math.max(...each.map((bounds) => bounds.maxYIn)),
  };
}
