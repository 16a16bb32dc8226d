import { baselineDropIn, type Segment, textBox } from './boxes.ts';
import type { PaperPoint, TextPrimitive } from './drawing.ts';
import type { Placement } from './paper.ts';
import { jointLine } from './plan-layers.ts';
import type { PlanArea } from './plan-view.ts';
import { isFree, type Room } from './room.ts';
import { textWidthIn } from './text-width.ts';

export const jointTagStyle = { sizePt: 8, weight: 400 } as const;

/** Between a letter and the joint or the edge. */
const airIn = 0.045;
const stepIn = 0.12;
/** How far from its end a number still tells which joint it belongs to. */
const mostAlongIn = 1.2;

/** The number of each joint: beside it near an end, else beyond its end; left out where neither is free. */
export function placeJointTags(
  areas: readonly PlanArea[],
  placement: Placement,
  room: Room,
): readonly TextPrimitive[] {
  const tagged = areas.flatMap(({ joints }) =>
    joints.flatMap(({ line, tag }) => (tag === null ? [] : [{ joint: jointLine(line, placement), tag }])),
  );
  return tagged.flatMap(({ joint, tag }) => {
    for (const text of placesOf(joint, tag)) {
      const box = textBox(text, airIn / 2);
      if (!isFree(room, box)) continue;
      room.boxes.push(box);
      return [text];
    }
    return [];
  });
}

function placesOf(joint: Segment, tag: string): TextPrimitive[] {
  const lengthIn = Math.hypot(joint.to.xIn - joint.from.xIn, joint.to.yIn - joint.from.yIn);
  const along = {
    xIn: (joint.to.xIn - joint.from.xIn) / lengthIn,
    yIn: (joint.to.yIn - joint.from.yIn) / lengthIn,
  };
  const halfWideIn = textWidthIn(tag, jointTagStyle) / 2;
  const halfHighIn = (0.8 * jointTagStyle.sizePt) / 72 / 2 + airIn;
  const halfAlongIn = Math.abs(along.xIn) * halfWideIn + Math.abs(along.yIn) * halfHighIn + airIn;
  const halfAcrossIn = Math.abs(along.yIn) * halfWideIn + Math.abs(along.xIn) * halfHighIn + airIn;
  const at = (alongIn: number, acrossIn: number): TextPrimitive =>
    textAt(tag, {
      xIn: joint.from.xIn + along.xIn * alongIn - along.yIn * acrossIn,
      yIn: joint.from.yIn + along.yIn * alongIn + along.xIn * acrossIn,
    });
  const beside: TextPrimitive[] = [];
  const farthestIn = Math.min(lengthIn / 2, mostAlongIn);
  for (let alongIn = halfAlongIn; alongIn <= farthestIn; alongIn += stepIn) {
    for (const fromStartIn of [alongIn, lengthIn - alongIn]) {
      beside.push(at(fromStartIn, halfAcrossIn), at(fromStartIn, -halfAcrossIn));
    }
  }
  return [...beside, at(-halfAlongIn, 0), at(lengthIn + halfAlongIn, 0)];
}

function textAt(tag: string, centre: PaperPoint): TextPrimitive {
  return {
    kind: 'text',
    xIn: centre.xIn,
    yIn: centre.yIn + baselineDropIn(jointTagStyle.sizePt),
    text: tag,
    anchor: 'middle',
    ...jointTagStyle,
    turnDeg: 0,
  };
}
