import { type Box, baselineDropIn, textBox } from './boxes.ts';
import { lineWeightsMm, type PaperPoint, type Primitive, type TextPrimitive } from './drawing.ts';
import { type Placement, toPaper } from './paper.ts';
import type { PhotoPoint } from './plan-view.ts';
import { isFree, type Room } from './room.ts';

export const photoStyle = { sizePt: 8, weight: 700 } as const;

const standIn = 0.045;
const wedgeLongIn = 0.2;
/** Half of the angle that the wedge opens [rad]; about that of a telephone held upright, a sign only. */
const wedgeHalfRad = (25 * Math.PI) / 180;

/** A dot where the photographer stands, and a wedge that opens the way he looks. */
export function photoPrimitives(point: PhotoPoint, placement: Placement): readonly Primitive[] {
  const at = toPaper(placement, point.at);
  const corner = (turnRad: number) => reached(at, wedgeLongIn, directionRad(point) + turnRad);
  return [
    {
      kind: 'path',
      parts: [
        { kind: 'move', ...at },
        { kind: 'line', ...corner(-wedgeHalfRad) },
        { kind: 'line', ...corner(wedgeHalfRad) },
        { kind: 'close' },
      ],
      weightMm: lineWeightsMm.existing,
      dash: 'solid',
    },
    { kind: 'dot', ...at, radiusIn: standIn },
  ];
}

/** What a standpoint takes, for letters to keep clear of it. */
export function photoBox(point: PhotoPoint, placement: Placement): Box {
  const at = toPaper(placement, point.at);
  const aheadRad = directionRad(point);
  const halfIn = wedgeLongIn * Math.sin(wedgeHalfRad) + 0.01;
  const corner = (aheadIn: number, rightIn: number) =>
    reached(reached(at, aheadIn, aheadRad), rightIn, aheadRad + Math.PI / 2);
  const backIn = -standIn - 0.01;
  return [
    corner(backIn, -halfIn),
    corner(wedgeLongIn, -halfIn),
    corner(wedgeLongIn, halfIn),
    corner(backIn, halfIn),
  ];
}

/** The number of each standpoint, behind it where that is free. */
export function placePhotoNumbers(
  points: readonly PhotoPoint[],
  placement: Placement,
  room: Room,
): readonly TextPrimitive[] {
  return points.flatMap((point) => {
    const at = toPaper(placement, point.at);
    for (const awayIn of [0.14, 0.18, 0.24, 0.3, 0.38]) {
      for (const eighth of [4, 3, 5, 2, 6, 1, 7, 0]) {
        const place = reached(at, awayIn, directionRad(point) + (eighth * Math.PI) / 4);
        const text: TextPrimitive = {
          kind: 'text',
          xIn: place.xIn,
          yIn: place.yIn + baselineDropIn(photoStyle.sizePt),
          text: point.text,
          anchor: 'middle',
          ...photoStyle,
          turnDeg: 0,
        };
        const box = textBox(text, 0.015);
        if (!isFree(room, box)) continue;
        room.boxes.push(box);
        return [text];
      }
    }
    return [];
  });
}

/** Clockwise from up, as on the paper. */
function directionRad({ lookingDeg }: PhotoPoint): number {
  return (lookingDeg * Math.PI) / 180;
}

function reached(from: PaperPoint, farIn: number, clockwiseFromUpRad: number): PaperPoint {
  return {
    xIn: from.xIn + farIn * Math.sin(clockwiseFromUpRad),
    yIn: from.yIn - farIn * Math.cos(clockwiseFromUpRad),
  };
}
