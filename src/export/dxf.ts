import {
  DxfWriter,
  LWPolylineFlags,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from '@tarikjabiri/dxf';
import type {
  Drawing,
  PaperPoint,
  PathPrimitive,
  Primitive,
  TextPrimitive,
} from '../describe/drawing/index.ts';
import { dxfText } from './dxf-text.ts';
import { polylinesOf } from './polylines.ts';

const pointsPerIn = 72;

/**
 * Height of a capital in parts of the text size; the height of a text in DXF is that of its capitals.
 * OS/2 table of the shipped Noto Sans (@fontsource/noto-sans 5.3.0), sCapHeight 714 of 1000; seen.
 */
const capHeightRatio = 0.714;

/** A colour that a program shows black on white and white on black. DXF colour index; from memory. */
const blackOrWhite = 7;
const lineTypes = { 'dash-dot': 'DASHDOT', dashed: 'DASHED' } as const;

/**
 * A drawing as a DXF file in real inches, y up, with the origin of the ground at 0, 0: a layer for each of
 * the drawing's, outlines as closed polylines with true arcs, lines, circles for dots, and texts. Hatches
 * are left out. The same drawing gives the same bytes.
 *
 * Source: Autodesk, "DXF Reference", LWPOLYLINE and TEXT (from memory).
 * @throws {RangeError} If a number is not finite.
 */
export function drawingToDxf(drawing: Drawing): string {
  const ground = groundOf(drawing);
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Inches);
  // 0 is US customary: dash patterns and the like are read in inches.
  dxf.setVariable('$MEASUREMENT', { 70: 0 });
  // Positive is a dash, negative a gap; the same pattern as on paper.
  const pattern = (points: readonly number[]) => points.map((pt) => ground.lengthIn(pt / pointsPerIn));
  dxf.addLType(lineTypes['dash-dot'], '__ . __ . __', pattern([9, -2.5, 1.2, -2.5]));
  dxf.addLType(lineTypes.dashed, '__ __ __', pattern([7, -4]));
  for (const { name, primitives } of drawing.layers) {
    if (primitives.every((primitive) => primitive.kind === 'hatch')) continue;
    dxf.addLayer(name, blackOrWhite, 'Continuous');
    dxf.setCurrentLayerName(name);
    for (const primitive of primitives) addPrimitive(dxf, primitive, ground);
  }
  dxf.setZeroLayerAsCurrent();
  return `${dxf.stringify()}\n`;
}

export type Ground = {
  readonly lengthIn: (paperIn: number) => number;
  readonly point: (point: PaperPoint) => PaperPoint;
};

/** From inches on the paper, y down, to inches on the ground, y up. */
function groundOf({ scale, origin }: Drawing): Ground {
  const lengthIn = (paperIn: number) => {
    const groundIn = paperIn / scale.paperInPerIn;
    if (!Number.isFinite(groundIn)) {
      throw new RangeError(`a drawing takes finite numbers only, got ${paperIn} in on the paper`);
    }
    // So little is nothing but noise of the way to the paper and back.
    return Math.round(groundIn * 1e10) / 1e10;
  };
  const point = ({ xIn, yIn }: PaperPoint) => ({
    xIn: lengthIn(xIn - origin.xIn),
    yIn: lengthIn(origin.yIn - yIn),
  });
  return { lengthIn, point };
}

function addPrimitive(dxf: DxfWriter, primitive: Primitive, ground: Ground): void {
  switch (primitive.kind) {
    case 'path':
      return addPath(dxf, primitive, ground);
    case 'line': {
      const [from, to] = [ground.point(primitive.from), ground.point(primitive.to)];
      dxf.addLine(point3d(from.xIn, from.yIn), point3d(to.xIn, to.yIn), lineType(primitive));
      return;
    }
    case 'dot': {
      const { xIn, yIn } = ground.point(primitive);
      dxf.addCircle(point3d(xIn, yIn), ground.lengthIn(primitive.radiusIn));
      return;
    }
    case 'text':
      return addText(dxf, primitive, ground);
    case 'hatch':
      return;
  }
}

function addPath(dxf: DxfWriter, path: PathPrimitive, ground: Ground): void {
  for (const { vertices, isClosed } of polylinesOf(path.parts)) {
    const placed = vertices.map((vertex) => {
      const { xIn, yIn } = ground.point(vertex);
      return { point: { x: xIn, y: yIn }, bulge: vertex.bulge };
    });
    const flags = isClosed ? LWPolylineFlags.Closed : LWPolylineFlags.None;
    dxf.addLWPolyline(placed, { flags, ...lineType(path) });
  }
}

function addText(dxf: DxfWriter, text: TextPrimitive, ground: Ground): void {
  const value = dxfText(text.text);
  if (value === '') return;
  const { xIn, yIn } = ground.point(text);
  const at = point3d(xIn, yIn);
  const heightIn = ground.lengthIn((capHeightRatio * text.sizePt) / pointsPerIn);
  const { Left, Center, Right } = TextHorizontalAlignment;
  dxf.addText(at, heightIn, value, {
    rotation: 0 - text.turnDeg,
    horizontalAlignment: { start: Left, middle: Center, end: Right }[text.anchor],
    verticalAlignment: TextVerticalAlignment.BaseLine,
    // Where a text is not set from its left end, the second point is the one that counts.
    secondAlignmentPoint: at,
  });
}

function lineType({ dash }: { readonly dash: PathPrimitive['dash'] }): { lineType?: string } {
  return dash === 'solid' ? {} : { lineType: lineTypes[dash] };
}
