export {
  type Arc,
  arcOf,
  bulgeFromRise,
  circularSegmentAreaSqIn,
  pointOnArc,
  sectorAreaSqIn,
} from './arc.ts';
export {
  moveOutline,
  orient,
  polygonRing,
  rectangleRing,
  reverseRing,
  turnOutline,
  withEdgeKinds,
} from './build.ts';
export { clipLineToOutline, clipSegmentToOutline, type Line, type Stretch } from './clip.ts';
export { segmentsMeet, selfCrossing } from './crossing.ts';
export { radiusFromSetbackIn, type SimpleCurve, simpleCurve } from './curve.ts';
export { type Chord, chordsOf } from './flatten.ts';
export {
  type Bounds,
  boundsOf,
  containsPoint,
  distanceToEdgeIn,
  edgeLengthsByKindIn,
  labelPointOf,
  outlineAreaSqIn,
  outlinePerimeterIn,
  ringAreaSqIn,
} from './measure.ts';
export {
  distanceIn,
  type Edge,
  type EdgeKind,
  edgesOf,
  type Outline,
  type Point,
  type Ring,
  type Vertex,
} from './outline.ts';
export { type RoundCornersResult, type RoundedCorner, roundCorners } from './round-corners.ts';
