import { type Bounds, boundsOf } from '../../geometry/index.ts';
import type { LeaderLimits } from './area-labels.ts';
import { barPrimitives } from './bar-lines.ts';
import { bayStyles } from './bay-block.ts';
import { dimensionRoomIn, dimensionStyle } from './candidate.ts';
import type { Drawing, Layer, Scale } from './drawing.ts';
import { fallPrimitives, fallStyle } from './falls.ts';
import { jointTagStyle } from './joint-tags.ts';
import { areaLabelStyle, holeLabelStyle, type LabelTarget, labelTargets } from './label-targets.ts';
import { type Lettering, lettering } from './lettering.ts';
import { panelLetterStyle } from './panel-letters.ts';
import { type Placement, toPaper } from './paper.ts';
import { photoPrimitives, photoStyle } from './photos.ts';
import { areaLayer, bayLine, frame, frameInsetIn, jointLine } from './plan-layers.ts';
import { isMarked, type PlanArea, type PlanView } from './plan-view.ts';
import { scalesOf } from './scales.ts';
import { titleStrip } from './strip.ts';
import { textWidthIn } from './text-width.ts';

const leastPlanHeightIn = 1.1;
/** Round the shapes of a plan without dimensions: for a name. */
const plainRoomIn = 0.35;

/** Tried in this order: short leaders, then any, and across a line only as the last. */
const leaderLimits: readonly LeaderLimits[] = [
  { mostIn: 0.8, mayCrossLines: false },
  { mostIn: Infinity, mayCrossLines: false },
  { mostIn: Infinity, mayCrossLines: true },
];

/** Among bays a name may be left out: it is not looked for over the whole sheet. */
const leaderLimitsAmongBays: readonly LeaderLimits[] = [
  { mostIn: 1.5, mayCrossLines: false },
  { mostIn: 1.5, mayCrossLines: true },
];

/**
 * A plan of one or more areas at the largest standard scale that fits the sheet with its dimensions and
 * labels. A joint's or a photograph's number that has no free place is left out; an area's or a hole's
 * label only where the sheet would hold no plan with it: first those of holes, then all of them. Where bays
 * are drawn their numbers come first: a label without room is left out, and a number only where no scale has
 * room for all of them.
 *
 * @throws {RangeError} If there is no area, a name uses a character outside the font, a named hole is
 *                      none, or the sheet is too small for the shapes at any scale.
 */
export function drawPlan(view: PlanView): Drawing {
  refuseUnknownCharacters(view);
  const bounds = boundsOfAll(view);
  const ordered = { ...view, areas: inOrderOfRole(view.areas) };
  // Names may have no place at any scale: on half a page, or among dozens of shapes. The plan is worth more.
  const withoutHoles = ordered.areas.map((area) => ({ ...area, holes: [] }));
  const allTargets = labelTargets(ordered.areas);
  const tries = isMarked(ordered)
    ? [false, true].map((mayLeaveOut) => ({ targets: allTargets, mayLeaveOut }))
    : [allTargets, labelTargets(withoutHoles), []].map((targets) => ({ targets, mayLeaveOut: false }));
  for (const { targets, mayLeaveOut } of tries) {
    for (const scale of scalesOf(view.system)) {
      const drawing = drawAtScale(ordered, { targets, mayLeaveOut }, bounds, scale);
      if (drawing !== null) return drawing;
    }
  }
  throw new RangeError(
    `a sheet of ${view.sheet.widthIn} by ${view.sheet.heightIn} in is too small for the plan ${view.id}`,
  );
}

function drawAtScale(
  view: PlanView,
  lettered: { readonly targets: readonly LabelTarget[]; readonly mayLeaveOut: boolean },
  bounds: Bounds,
  scale: Scale,
): Drawing | null {
  const { sheet, words } = view;
  const scaleText = words.scale(scale.text);
  const strip = titleStrip({
    title: view.title,
    widthIn: sheet.widthIn,
    scale,
    scaleText,
    system: view.system,
    lengthOf: words.lengthOf,
    north: view.northDeg === null ? null : { deg: view.northDeg, letter: words.north },
  });
  const shapeWidthIn = (bounds.maxXIn - bounds.minXIn) * scale.paperInPerIn;
  const shapeHeightIn = (bounds.maxYIn - bounds.minYIn) * scale.paperInPerIn;
  const roomIn = view.isPlain ? plainRoomIn : dimensionRoomIn;
  const planHeightIn = Math.max(leastPlanHeightIn, shapeHeightIn + 2 * roomIn);
  const heightIn = planHeightIn + strip.heightIn;
  if (shapeWidthIn + 2 * roomIn > sheet.widthIn || heightIn > sheet.heightIn) return null;

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
  const within = lettering(view, lettered.targets, placement, zone);
  const letters = (isMarked(view) ? leaderLimitsAmongBays : leaderLimits).reduce<Lettering | null>(
    (found, limits) => found ?? within({ ...limits, mayLeaveOut: lettered.mayLeaveOut }),
    null,
  );
  if (letters === null) return null;

  const joints = view.areas.flatMap((area) => area.joints.map(({ line }) => jointLine(line, placement)));
  const bays = view.areas.flatMap((area) => area.bays.lines.map((line) => bayLine(line, placement)));
  const photos = view.photoPoints.flatMap((point) => photoPrimitives(point, placement));
  const falls = view.falls.flatMap((fall) => fallPrimitives(fall, placement));
  const bars = view.areas.flatMap((area) =>
    area.bars === undefined ? [] : barPrimitives(area.bars, placement, letters.boxes),
  );
  const layers: Layer[] = [
    ...(['stays', 'goes', 'new'] as const).map((role) => areaLayer(view, role, placement, letters.boxes)),
    ...(bars.length === 0 ? [] : [{ name: 'bars' as const, primitives: bars }]),
    { name: 'joints', primitives: [...joints, ...letters.joints] },
    { name: 'bays', primitives: [...bays, ...letters.bays] },
    { name: 'photos', primitives: [...photos, ...letters.photos] },
    ...(falls.length === 0 ? [] : [{ name: 'falls' as const, primitives: [...falls, ...letters.falls] }]),
    { name: 'dimensions', primitives: letters.dimensions },
    { name: 'labels', primitives: letters.labels },
    { name: 'frame', primitives: frame(sheet.widthIn, heightIn, planHeightIn, strip.primitives) },
  ];
  return {
    id: view.id,
    title: view.title,
    widthIn: sheet.widthIn,
    heightIn,
    scale: { paperInPerIn: scale.paperInPerIn, text: scaleText },
    origin: toPaper(placement, { xIn: 0, yIn: 0 }),
    layers,
  };
}

/** What will be built first: it is dimensioned and lettered before the rest. */
function inOrderOfRole(areas: readonly PlanArea[]): PlanArea[] {
  const roles = ['new', 'goes', 'stays'];
  return [...areas].sort((a, b) => roles.indexOf(a.role) - roles.indexOf(b.role));
}

function boundsOfAll(view: PlanView): Bounds {
  if (view.areas.length === 0) throw new RangeError('a plan needs at least one area');
  const each = view.areas.map((area) => boundsOf(area.outline));
  const xs = view.photoPoints.map(({ at }) => at.xIn);
  const ys = view.photoPoints.map(({ at }) => at.yIn);
  return {
    minXIn: Math.min(...xs, ...each.map((bounds) => bounds.minXIn)),
    minYIn: Math.min(...ys, ...each.map((bounds) => bounds.minYIn)),
    maxXIn: Math.max(...xs, ...each.map((bounds) => bounds.maxXIn)),
    maxYIn: Math.max(...ys, ...each.map((bounds) => bounds.maxYIn)),
  };
}

/** Asked of every text given, so that a character outside the font is refused by name before any layout. */
function refuseUnknownCharacters({ areas, photoPoints, falls }: PlanView): void {
  for (const { label, holes, tags, joints, panels = [], bays } of areas) {
    textWidthIn(label, areaLabelStyle);
    for (const hole of holes) textWidthIn(hole.label, holeLabelStyle);
    for (const { text } of tags) textWidthIn(text, dimensionStyle);
    for (const style of bayStyles) {
      for (const { number, area } of bays.marks) textWidthIn(`${number}${area}`, style);
      for (const { text } of bays.hooks) textWidthIn(text, style);
    }
    for (const { tag } of joints) textWidthIn(tag ?? '', jointTagStyle);
    for (const { text } of panels) textWidthIn(text, panelLetterStyle);
  }
  for (const { text } of photoPoints) textWidthIn(text, photoStyle);
  for (const { text } of falls) textWidthIn(text ?? '', fallStyle);
}
