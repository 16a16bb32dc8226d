import { containsPoint, type Line } from '../../geometry/index.ts';
import { type Box, boxesOverlap } from './boxes.ts';
import {
  type HatchPattern,
  type HatchPrimitive,
  type Layer,
  type LayerName,
  type LinePrimitive,
  lineWeightsMm,
  type PathPart,
  type PathPrimitive,
  type Primitive,
} from './drawing.ts';
import { outlineParts, type Placement, toGround, toPaper } from './paper.ts';
import type { PlanArea, PlanView } from './plan-view.ts';
import type { Strip } from './strip.ts';

export const frameInsetIn = 0.02;

const layerOfRole = { goes: 'existing-goes', new: 'new-slab', stays: 'stays' } as const satisfies Record<
  PlanArea['role'],
  LayerName
>;
const patternOfRole: Record<PlanArea['role'], HatchPattern> = { goes: 'goes', new: 'new', stays: 'none' };

/** Hatch and edges of all areas of one role; the hatch leaves holes and letters free. */
export function areaLayer(
  view: PlanView,
  role: PlanArea['role'],
  placement: Placement,
  boxes: readonly Box[],
): Layer {
  const areas = view.areas.filter((area) => area.role === role);
  const pattern = patternOfRole[role];
  const hatched = areas.filter((area) => area.bars === undefined);
  const hatches = hatched.map((area): HatchPrimitive => {
    const inside = boxes.filter((box) =>
      box.every((corner) => containsPoint(area.outline, toGround(placement, corner))),
    );
    // By the even-odd rule two boxes over one another would be hatched where they meet.
    const apart = inside.filter(
      (box, index) => !inside.slice(0, index).some((earlier) => boxesOverlap(earlier, box)),
    );
    return {
      kind: 'hatch',
      parts: [...outlineParts(placement, area.outline), ...apart.flatMap(boxParts)],
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

export function jointLine(joint: Line, placement: Placement): LinePrimitive {
  return {
    kind: 'line',
    from: toPaper(placement, { xIn: joint.fromXIn, yIn: joint.fromYIn }),
    to: toPaper(placement, { xIn: joint.toXIn, yIn: joint.toYIn }),
    weightMm: lineWeightsMm.existing,
    dash: 'dash-dot',
  };
}

export function bayLine(line: Line, placement: Placement): LinePrimitive {
  return { ...jointLine(line, placement), dash: 'dashed' };
}

/** The border of the sheet, with the title strip along its foot. */
export function frame(
  widthIn: number,
  heightIn: number,
  stripTopIn: number,
  strip: Strip['primitives'],
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

function movedDown(primitive: Strip['primitives'][number], byIn: number): Primitive {
  if (primitive.kind === 'text') return { ...primitive, yIn: primitive.yIn + byIn };
  const down = (point: { readonly xIn: number; readonly yIn: number }) => ({
    ...point,
    yIn: point.yIn + byIn,
  });
  return { ...primitive, from: down(primitive.from), to: down(primitive.to) };
}

function boxParts([first, ...rest]: Box): PathPart[] {
  return [
    { kind: 'move', ...first },
    ...rest.map((corner): PathPart => ({ kind: 'line', ...corner })),
    { kind: 'close' },
  ];
}
