import {
  type BoxAround,
  boxAround,
  type Outline,
  outlineAreaSqIn,
  type RingCorner,
  ringCorners,
} from '../../geometry/index.ts';

/** A change of direction of less is no corner [rad]: two chords of a curve, a slight bend. */
const CORNER_RAD = (5 * Math.PI) / 180;
/** A crack starts at a corner that turns into the concrete by more than this [rad]. Common practice, no source. */
const RE_ENTRANT_RAD = (15 * Math.PI) / 180;

/** What counts of the shape of a panel. */
export type PanelShape = {
  readonly outline: Outline;
  readonly areaSqIn: number;
  /** The smallest rectangle round it: its length and width are those of the panel. */
  readonly box: BoxAround;
  readonly corners: readonly RingCorner[];
  /** Corners that turn into the concrete; a panel that is done has none. */
  readonly reEntrant: readonly RingCorner[];
  readonly holeCount: number;
  /** Of the corners that stick out; half a turn where there is none. */
  readonly smallestRad: number;
};

/** A right angle to within the noise of its making [rad]. */
const SQUARE_RAD = 1e-6;

/** Whether a panel is a rectangle. */
export function isRectangle({ outline, corners, holeCount }: PanelShape): boolean {
  return (
    holeCount === 0 &&
    corners.length === 4 &&
    corners.every(({ insideRad }) => Math.abs(insideRad - Math.PI / 2) < SQUARE_RAD) &&
    outline.rings.every((ring) => ring.every(({ bulge }) => bulge === 0))
  );
}

export function panelShape(outline: Outline): PanelShape {
  const corners = ringCorners(outline, CORNER_RAD);
  return {
    outline,
    areaSqIn: outlineAreaSqIn(outline),
    box: boxAround(outline),
    corners,
    reEntrant: corners.filter(({ insideRad }) => insideRad > Math.PI + RE_ENTRANT_RAD),
    holeCount: outline.rings.length - 1,
    smallestRad: Math.min(Math.PI, ...corners.map(({ insideRad }) => insideRad)),
  };
}
