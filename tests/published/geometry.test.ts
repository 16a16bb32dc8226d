import {
  arcOf,
  bulgeFromRise,
  chordOffsets,
  circularSegmentAreaSqIn,
  compoundTangents,
  deflectionsAlong,
  distanceIn,
  edgeLengthsByKindIn,
  type Outline,
  outlineAreaSqIn,
  outlinePerimeterIn,
  outOfSquare,
  polygonRing,
  type Rounding,
  radiusFromSetbackIn,
  rectangleRing,
  reverseCurve,
  ringAreaSqIn,
  roundCorners,
  sectorAreaSqIn,
  simpleCurve,
  squareTriple,
  tangentOffsets,
  type Vertex,
} from '../../src/geometry/index.ts';
import { runChecks } from './load.ts';

const radOf = (deg: number) => (deg * Math.PI) / 180;
const degOf = (rad: number) => (rad * 180) / Math.PI;

function polygon(points: readonly (readonly [number, number])[]) {
  return polygonRing(points.map(([xIn, yIn]) => ({ xIn, yIn })));
}

function roundedRectangle(given: { length: number; width: number; setback: number }): Outline {
  const ring = rectangleRing({ lengthIn: given.length, widthIn: given.width });
  const by: Rounding = { kind: 'setback', setbackIn: given.setback };
  const result = roundCorners(ring, new Map([1, 2, 3, 4].map((corner) => [corner, by])));
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

/** Rounds corner 2 of a triangle with long legs, so that the figures come out of the ring itself. */
function rounded(deflectionDeg: number, by: Rounding, legIn: number) {
  const turnRad = radOf(deflectionDeg);
  const ring = polygonRing([
    { xIn: -legIn, yIn: 0 },
    { xIn: 0, yIn: 0 },
    { xIn: legIn * Math.cos(turnRad), yIn: legIn * Math.sin(turnRad) },
  ]);
  const result = roundCorners(ring, new Map([[2, by]]));
  const [corner] = result.ok ? result.corners : [];
  if (!result.ok || corner === undefined) throw new Error('the corner does not fit');
  return { corner, lostSqIn: ringAreaSqIn(ring) - ringAreaSqIn(result.ring) };
}

function areaLost(given: { radius: number; deflectionDeg: number }): number {
  const setbackIn = given.radius * Math.tan(radOf(given.deflectionDeg) / 2);
  return rounded(given.deflectionDeg, { kind: 'setback', setbackIn }, 100).lostSqIn;
}

function cornerToRadius(given: { radius: number; deflectionDeg: number; answer: string }): number {
  const by: Rounding = { kind: 'radius', radiusIn: given.radius };
  const { corner } = rounded(given.deflectionDeg, by, 1000);
  const [arc] = corner.arcs;
  const answers: Record<string, number | null | undefined> = {
    setback: corner.setbackBeforeIn,
    'arc length': arc?.arcLengthIn,
    chord: arc?.chordIn,
    external: arc?.externalIn,
    rise: arc?.riseIn,
  };
  return answers[given.answer] ?? Number.NaN;
}

function stationOfCurve(given: {
  radius: number;
  deflectionDeg: number;
  corner: number;
  answer: string;
}): number {
  const curve = simpleCurve({ radiusIn: given.radius, deflectionRad: radOf(given.deflectionDeg) });
  const start = given.corner - curve.tangentIn;
  return given.answer === 'start' ? start : start + curve.arcLengthIn;
}

function lastDeflection(radiusIn: number, arcLengthIn: number, answer: string): number {
  const last = deflectionsAlong({ radiusIn, arcLengthIn, stepIn: arcLengthIn / 3 }).at(-1);
  return answer === 'chord' ? (last?.chordIn ?? Number.NaN) : degOf(last?.deflectionRad ?? Number.NaN);
}

function offsetsFromChord(given: { chord: number; rise: number; step: number }): number[] {
  const bulge = bulgeFromRise({ chordIn: given.chord, riseIn: given.rise });
  const from: Vertex = { xIn: 0, yIn: 0, bulge, edge: 'formed' };
  const { radiusIn } = arcOf(from, { xIn: given.chord, yIn: 0 });
  const rows = chordOffsets({ radiusIn, chordIn: given.chord, stepIn: given.step });
  return rows.map(({ offsetIn }) => offsetIn);
}

function compoundCurve(given: { radii: number[]; turnsDeg: number[]; answer: string }): number[] {
  const [firstRadiusIn = Number.NaN, secondRadiusIn = Number.NaN] = given.radii;
  const [firstDeg = Number.NaN, secondDeg = Number.NaN] = given.turnsDeg;
  const firstTurnRad = radOf(firstDeg);
  if (given.answer === 'own tangents') {
    const secondTurnRad = radOf(secondDeg);
    const { firstTangentIn, secondTangentIn } = compoundTangents({
      firstRadiusIn,
      firstTurnRad,
      secondRadiusIn,
      secondTurnRad,
    });
    return [firstTangentIn, secondTangentIn];
  }
  const by: Rounding = { kind: 'two-arcs', firstRadiusIn, firstTurnRad, secondRadiusIn };
  const { corner } = rounded(firstDeg + secondDeg, by, 100);
  return given.answer === 'setbacks'
    ? [corner.setbackBeforeIn, corner.setbackAfterIn]
    : corner.arcs.map(({ arcLengthIn }) => arcLengthIn);
}

function reverseCurveOf(given: { radii: number[]; offset: number }): number[] {
  const [radius1In = Number.NaN, radius2In = Number.NaN] = given.radii;
  const curve = reverseCurve({ offsetIn: given.offset, radius1In, radius2In });
  return [degOf(curve.turnRad), curve.runIn, curve.longChordIn, curve.arc1In, curve.arc2In];
}

/** The box is as long as our curve runs; the printed formula must give our radius back. */
function boxRadius(given: { radius: number; wide: number }): number {
  const { runIn } = reverseCurve({
    offsetIn: given.wide,
    radius1In: given.radius,
    radius2In: given.radius,
  });
  return (runIn ** 2 + given.wide ** 2) / (4 * given.wide);
}

function offSquare(given: { sides: number[]; diagonal: number; apartIn: number; answer: string }): number {
  const [aFt = Number.NaN, bFt = Number.NaN] = given.sides;
  const found = outOfSquare({
    aIn: 12 * aFt,
    bIn: 12 * bFt,
    diagonal1In: 12 * given.diagonal + given.apartIn / 2,
    diagonal2In: 12 * given.diagonal - given.apartIn / 2,
  });
  if (found === null) return Number.NaN;
  return given.answer === 'off deg' ? degOf(found.offRad) : found.sidewaysIn / 12;
}

function squareTripleFt(given: { sides: number[] }): number[] {
  const [firstFt = Number.NaN, secondFt = Number.NaN] = given.sides;
  const triple = squareTriple([12 * firstFt, 12 * secondFt]);
  return triple === null ? [] : [triple.firstIn / 12, triple.secondIn / 12, triple.diagonalIn / 12];
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
  'corner rounded to a radius': cornerToRadius,
  'station of a curve': stationOfCurve,
  'point along a curve': (given) => lastDeflection(given.radius, given.station - given.start, given.answer),
  'end of a curve': (given) =>
    lastDeflection(given.radius, given.radius * radOf(given.deflectionDeg), given.answer),
  'chord offsets': offsetsFromChord,
  'tangent offsets': (given) =>
    tangentOffsets({ radiusIn: given.radius, mostIn: given.most, stepIn: given.step }).map(
      ({ offsetIn }) => offsetIn,
    ),
  'compound curve': compoundCurve,
  'reverse curve': reverseCurveOf,
  'radius of an s curve in a box': boxRadius,
  'out of square': offSquare,
  'square triple': squareTripleFt,
  diagonal: (given) => distanceIn({ xIn: 0, yIn: 0 }, { xIn: given.length, yIn: given.width }),
});
