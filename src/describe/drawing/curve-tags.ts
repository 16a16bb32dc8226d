import { type Arc, arcOf, distanceIn, edgesOf, type Point, pointOnArc } from '../../geometry/index.ts';
import { baselineDropIn, isBoxInside, textBox } from './boxes.ts';
import {
  type Candidate,
  crossesAny,
  dimensionStyle,
  isClear,
  isOutside,
  type Placed,
  take,
  thinLine,
} from './candidate.ts';
import { type DotPrimitive, lineWeightsMm, type PaperPoint, type TextPrimitive } from './drawing.ts';
import { type Placement, toPaper } from './paper.ts';
import type { PlanArea } from './plan-view.ts';
import type { Room } from './room.ts';

const awaysIn = [0.1, 0.22, 0.36, -0.1, -0.22, -0.4, -0.6, 0.5, 0.7, -0.8];
const shares = [0.5, 0.3, 0.7, 0.15, 0.85];

/** How far a tag's centre and its place on the arc may miss the arc drawn [in on the ground]. */
const hairIn = 0.01;

type CurveText = {
  readonly text: string;
  readonly centre: Point;
  /** Places on the arc where the leader may start. */
  readonly feet: readonly Point[];
};

/**
 * The tag of each arc, or else its radius, written outside it, with a leader to the arc and on to a dot
 * at its centre where that is on the sheet. Inside the concrete only where there is no other place.
 */
export function placeRadii(
  areas: readonly PlanArea[],
  radiusText: (length: string) => string,
  placement: Placement,
  room: Room,
): Placed {
  const placed: Placed = [];
  const done = new Set<string>();
  for (const area of areas) {
    for (const curve of curveTexts(area, radiusText)) {
      const key = [curve.text, curve.centre.xIn.toFixed(3), curve.centre.yIn.toFixed(3)].join(' ');
      if (done.has(key)) continue;
      const chosen = bestOf(candidatesOf(curve, placement, room), areas, placement, room);
      if (chosen === undefined) continue;
      done.add(key);
      placed.push(...take(chosen, room));
    }
  }
  return placed;
}

/** Tags as given, then the radius of each circle that has none; of an ellipse there is no one radius. */
function curveTexts(area: PlanArea, radiusText: (length: string) => string): CurveText[] {
  const arcs = area.outline.rings.flatMap((ring) =>
    edgesOf(ring).flatMap(({ from, to }) => (from.bulge === 0 ? [] : [arcOf(from, to)])),
  );
  const feetOf = (arc: Arc) => shares.map((share) => pointOnArc(arc, share));
  const isOn = (arc: Arc, tag: PlanArea['tags'][number]) =>
    distanceIn(arc.centre, tag.centre) < hairIn &&
    Math.abs(distanceIn(tag.at, tag.centre) - arc.radiusIn) < hairIn;
  const tagged = area.tags.map(({ text, at, centre }): CurveText => {
    // Of two arcs of one circle, the tag is that of the one whose middle it names.
    const arc = arcs.find((one) => distanceIn(pointOnArc(one, 0.5), at) < hairIn);
    return { text, centre, feet: [at, ...(arc === undefined ? [] : feetOf(arc))] };
  });
  if (area.isForeshortened === true) return tagged;
  const untagged = arcs
    .filter((arc) => !area.tags.some((tag) => isOn(arc, tag)))
    .map((arc) => ({
      text: radiusText(area.dimension(arc.radiusIn)),
      centre: arc.centre,
      feet: feetOf(arc),
    }));
  return [...tagged, ...untagged];
}

type RadiusCandidate = Candidate & { readonly hasCentre: boolean };

/** Better a leader across a line than an arc without its radius; best one to the centre across nothing. */
function bestOf(
  candidates: readonly RadiusCandidate[],
  areas: readonly PlanArea[],
  placement: Placement,
  room: Room,
): Candidate | undefined {
  const clear = candidates.filter((candidate) => isClear(candidate, room));
  const outside = clear.filter((candidate) => isOutside(candidate, areas, placement));
  const edges = room.segments;
  const thin = room.thinLines;
  const manners: readonly ((one: RadiusCandidate) => boolean)[] = [
    (one) => one.hasCentre && !crossesAny(one, edges) && !crossesAny(one, thin),
    (one) => one.hasCentre && !crossesAny(one, thin),
    (one) => !crossesAny(one, edges) && !crossesAny(one, thin),
    () => true,
  ];
  for (const pool of [outside, clear]) {
    for (const manner of manners) {
      const found = pool.find(manner);
      if (found !== undefined) return found;
    }
  }
  return undefined;
}

function candidatesOf(curve: CurveText, placement: Placement, room: Room): RadiusCandidate[] {
  const centre = toPaper(placement, curve.centre);
  const isCentreOnSheet = isBoxInside([centre, centre, centre, centre], room.zone);
  return curve.feet.flatMap((place) => {
    const foot = toPaper(placement, place);
    return awaysIn.flatMap((awayIn) => {
      const given = { foot, centre, awayIn, label: curve.text };
      // A label on the centre's side would sit on the line to the centre.
      const withCentre = isCentreOnSheet && awayIn > 0 ? [radiusAt({ ...given, hasCentre: true })] : [];
      return [...withCentre, radiusAt({ ...given, hasCentre: false })];
    });
  });
}

function radiusAt(given: {
  foot: PaperPoint;
  centre: PaperPoint;
  awayIn: number;
  label: string;
  hasCentre: boolean;
}): RadiusCandidate {
  const { foot, centre, awayIn, label, hasCentre } = given;
  const radiusIn = Math.hypot(foot.xIn - centre.xIn, foot.yIn - centre.yIn);
  const away = { xIn: (foot.xIn - centre.xIn) / radiusIn, yIn: (foot.yIn - centre.yIn) / radiusIn };
  const end = { xIn: foot.xIn + away.xIn * awayIn, yIn: foot.yIn + away.yIn * awayIn };
  const isToTheRight = away.xIn * awayIn >= 0;
  const text: TextPrimitive = {
    kind: 'text',
    xIn: end.xIn + (isToTheRight ? 0.03 : -0.03),
    yIn: end.yIn + baselineDropIn(dimensionStyle.sizePt),
    text: label,
    anchor: isToTheRight ? 'start' : 'end',
    ...dimensionStyle,
    turnDeg: 0,
  };
  const outer = { from: foot, to: end };
  const segments = hasCentre ? [outer, { from: centre, to: foot }] : [outer];
  const dot: DotPrimitive = { kind: 'dot', ...centre, radiusIn: 0.022 };
  return {
    hasCentre,
    box: textBox(text, 0.015),
    segments,
    ticks: [],
    mayNotCross: segments,
    primitives: [
      ...segments.map((segment) => thinLine(segment, lineWeightsMm.thin)),
      ...(hasCentre ? [dot] : []),
      text,
    ],
  };
}
