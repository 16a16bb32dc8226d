import {
  arcOf,
  bulgeFromRise,
  circularSegmentAreaSqIn,
  distanceIn,
  edgeLengthsByKindIn,
  type Outline,
  outlineAreaSqIn,
  outlinePerimeterIn,
  polygonRing,
  radiusFromSetbackIn,
  rectangleRing,
  ringAreaSqIn,
  roundCorners,
  sectorAreaSqIn,
  simpleCurve,
  type Vertex,
} from '../../src/geometry/index.ts';
import { runChecks } from './load.ts';

const radOf = (deg: number) => (deg * Math.PI) / 180;

function polygon(points: readonly (readonly [number, number])[]) {
  return polygonRing(points.map(([xIn, yIn]) => ({ xIn, yIn })));
}

function roundedRectangle(given: { length: number; width: number; setback: number }): Outline {
  const ring = rectangleRing({ lengthIn: given.length, widthIn: given.width });
  const result = roundCorners(ring, new Map([1, 2, 3, 4].map((corner) => [corner, given.setback])));
  if (!result.ok) throw new Error(`corner ${result.corner} does not fit`);
  return { rings: [result.ring] };
}

function arcFromChord(given: { chord: number; rise: number; answer: string }): number {
  const bulge = bulgeFromRise({ chordIn: given.chord, riseIn: given.rise });
  const from: Vertex = { xIn: 0, yIn: 0, bulge, edge: 'formed' };
  const arc = arcOf(from, { xIn: given.chord, yIn: 0 });
  const answers: Record<string, number> = {
    radius: arc.radiusIn,
    'sweep deg': (arc.sweepRad * 180) / Math.PI,
    'arc length': arc.radiusIn * arc.sweepRad,
    'sector area': sectorAreaSqIn({ radiusIn: arc.radiusIn, sweepRad: arc.sweepRad }),
    'segment area': circularSegmentAreaSqIn({ radiusIn: arc.radiusIn, riseIn: given.rise }),
  };
  return answers[given.answer] ?? Number.NaN;
}

function arcFromRadius(given: { radius: number; deflectionDeg: number; answer: string }): number {
  const curve = simpleCurve({ radiusIn: given.radius, deflectionRad: radOf(given.deflectionDeg) });
  const answers: Record<string, number> = {
    tangent: curve.tangentIn,
    'arc length': curve.arcLengthIn,
    chord: curve.chordIn,
    rise: curve.riseIn,
    external: curve.externalIn,
  };
  return answers[given.answer] ?? Number.NaN;
}

/** Rounds corner 2 of a triangle with long legs, so that the area lost comes out of the ring itself. */
function areaLost(given: { radius: number; deflectionDeg: number }): number {
  const legIn = 100;
  const turnRad = radOf(given.deflectionDeg);
  const ring = polygonRing([
    { xIn: -legIn, yIn: 0 },
    { xIn: 0, yIn: 0 },
    { xIn: legIn * Math.cos(turnRad), yIn: legIn * Math.sin(turnRad) },
  ]);
  const result = roundCorners(ring, new Map([[2, given.radius * Math.tan(turnRad / 2)]]));
  return result.ok ? ringAreaSqIn(ring) - ringAreaSqIn(result.ring) : Number.NaN;
}

function curvedWalk(given: { innerRadius: number; width: number; turnDeg: number; answer: string }): number {
  const outerIn = given.innerRadius + given.width;
  const bulge = Math.tan(radOf(given.turnDeg) / 4);
  const end = { xIn: Math.cos(radOf(given.turnDeg)), yIn: Math.sin(radOf(given.turnDeg)) };
  const outline: Outline = {
    rings: [
      [
        { xIn: given.innerRadius, yIn: 0, bulge: 0, edge: 'joint' },
        { xIn: outerIn, yIn: 0, bulge, edge: 'formed' },
        { xIn: outerIn * end.xIn, yIn: outerIn * end.yIn, bulge: 0, edge: 'joint' },
        { xIn: given.innerRadius * end.xIn, yIn: given.innerRadius * end.yIn, bulge: -bulge, edge: 'house' },
      ],
    ],
  };
  const answers: Record<string, number> = {
    area: outlineAreaSqIn(outline),
    'inner edge': edgeLengthsByKindIn(outline).house.curvedIn,
    'outer edge': edgeLengthsByKindIn(outline).formed.curvedIn,
  };
  return answers[given.answer] ?? Number.NaN;
}

runChecks('geometry', {
  'polygon area': (given) => Math.abs(ringAreaSqIn(polygon(given.points))),
  'polygon perimeter': (given) => outlinePerimeterIn({ rings: [polygon(given.points)] }),
  'arc from chord and rise': arcFromChord,
  'arc from radius': arcFromRadius,
  'sector area': (given) => sectorAreaSqIn({ radiusIn: given.radius, sweepRad: given.sweepRad }),
  'area lost at a rounded corner': areaLost,
  'rounded rectangle area': (given) => outlineAreaSqIn(roundedRectangle(given)),
  'rounded rectangle perimeter': (given) => outlinePerimeterIn(roundedRectangle(given)),
  'curved walk': curvedWalk,
  'radius from setback': (given) =>
    radiusFromSetbackIn({ setbackIn: given.setback, deflectionRad: Math.PI - radOf(given.innerDeg) }),
  diagonal: (given) => distanceIn({ xIn: 0, yIn: 0 }, { xIn: given.length, yIn: given.width }),
});
