export {
  type Arc,
  arcOf,
  bulgeFromRise,
  circularSegmentAreaSqIn,
  edgeLengthIn,
  pointOnArc,
  sectorAreaSqIn,
} from './arc.ts';
export { bandAreaSqIn, type EdgeLine } from './band.ts';
export { type Bend, type BendEdgesResult, bendEdges } from './bend-edges.ts';
export { type BoxAround, boxAround } from './box-around.ts';
export {
  moveOutline,
  orient,
  polygonRing,
  rectangleRing,
  reverseRing,
  turnOutline,
  turnPoint,
  withEdgeKinds,
} from './build.ts';
export { centroidOf } from './centroid.ts';
export { circleRing, sectorRing } from './circle.ts';
export { clearStretches } from './clear-stretches.ts';
export { clipLineToOutline, clipSegmentToOutline, type Line, type Stretch } from './clip.ts';
export { type CrossLine, crossLines } from './cross-lines.ts';
export { segmentsMeet, selfCrossing } from './crossing.ts';
export { radiusFromSetbackIn, type SimpleCurve, simpleCurve } from './curve.ts';
export { cutOutline } from './cut-outline.ts';
export { type DiagonalCheck, type DiagonalCulprit, diagonalCheck } from './diagonal-check.ts';
export { type Chord, chordsOf } from './flatten.ts';
export { type FourSidesIn, type FourSidesResult, fourSidesRing } from './four-sides.ts';
export { gridLines, lineLengthIn } from './grid-lines.ts';
export { type HalfPlane, leftOf, opposite } from './half-plane.ts';
export { unitAlong } from './heading.ts';
export { cornerFactor, type InsetResult, insetRing } from './inset.ts';
export { type JoinResult, joinAlongEdge } from './join.ts';
export { jointMiss } from './joint-miss.ts';
export { type Kink, kinksOf } from './kinks.ts';
export { type LowPoint, lowPoints } from './low-points.ts';
export {
  type Bounds,
  boundsOf,
  containsPoint,
  distanceToEdgeIn,
  distanceToOneEdgeIn,
  edgeLengthsByKindIn,
  isOnEdge,
  labelPointOf,
  outlineAreaSqIn,
  outlinePerimeterIn,
  ringAreaSqIn,
} from './measure.ts';
export { nearestOnEdge } from './nearest-on-edge.ts';
export { type NumberedEdge, numberedEdges } from './numbered-edges.ts';
export {
  chordOffsets,
  type Deflection,
  deflectionsAlong,
  type Offset,
  tangentOffsets,
} from './offsets.ts';
export {
  crossSqIn,
  distanceIn,
  type Edge,
  type EdgeKind,
  edgesOf,
  type Outline,
  type Point,
  type Ring,
  type Vertex,
  vertexAt,
} from './outline.ts';
export { commonPieces, isWithin, overlapAreaSqIn, piecesOutside, unionAreaSqIn } from './overlap.ts';
export { type RingCorner, ringCorners } from './ring-corners.ts';
export { type CornerDoesNotFit, type RoundCornersResult, roundCorners } from './round-corners.ts';
export type { CornerArc, RoundedCorner } from './rounded-corner.ts';
export type { Rounding } from './rounding.ts';
export { segmentCrossingIn } from './segment-crossing.ts';
export { type SharpCorner, sharpCorners } from './sharp-corners.ts';
export { sliceDirectionDeg } from './slice-direction.ts';
export { type CutLine, type Slice, sliceOutline } from './slice-outline.ts';
export { outOfSquare, type SquareTriple, squareTriple } from './squaring.ts';
export { stretchOutline } from './stretch.ts';
export { type StripEdges, type StripProblem, type StripResult, type StripTurn, stripRing } from './strip.ts';
export type { StripPiece, TurnRounding } from './strip-pieces.ts';
export { linesAcross, type StripLine } from './strip-stations.ts';
export type { TurnLayout, TurnWidths } from './strip-turn.ts';
export {
  areInLine,
  climbAlong,
  climbTowards,
  fallOf,
  type HeightPoint,
  heightAt,
  lowered,
  type Plane,
  planeAt,
  planeOf,
  type Surface,
  surfaceThrough,
  type Triangle,
  triangleAt,
} from './surface.ts';
export { largestBreak } from './surface-breaks.ts';
export { climbOf, type LinePiece, pointAlong, surfaceAlong } from './surface-line.ts';
export { cellsWithin, type VolumeBetween, volumeBetween } from './surface-volume.ts';
export { tapeCorner } from './tape-corner.ts';
export type { TapeSlip } from './tape-slip.ts';
export { type SwingTies, swingTies } from './ties.ts';
export { trapezoidRing } from './trapezoid.ts';
export { type ClosedTraverse, type Closure, closeTraverse, type WalkedSide } from './traverse.ts';
export { type TiedCorner, type TrianglesResult, trianglesRing } from './triangles.ts';
export { compoundTangents, reverseCurve } from './two-arcs.ts';
