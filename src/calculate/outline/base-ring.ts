import {
  circleRing,
  closeTraverse,
  type DiagonalCulprit,
  diagonalCheck,
  fourSidesRing,
  polygonRing,
  type Ring,
  rectangleRing,
  ringAreaSqIn,
  sectorRing,
  selfCrossing,
  stripRing,
  trapezoidRing,
  trianglesRing,
} from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatNumber } from '../../units/index.ts';
import type { TapedBase } from '../job.ts';
import { told, toldLeast, toldMost } from './told.ts';

/** What a base tells beside its ring: how well its tape closes, how a walk turns. */
export type BaseFacts =
  | { readonly kind: 'plain' }
  | { readonly kind: 'walked'; readonly closure: ReturnType<typeof closeTraverse>['closure'] }
  | { readonly kind: 'four-sides'; readonly otherDiagonalIn: number; readonly missIn: number | null }
  | {
      readonly kind: 'strip';
      readonly lengthIn: number;
      readonly turns: Extract<ReturnType<typeof stripRing>, { ok: true }>['turns'];
    };

export type BaseRing =
  | { readonly ok: true; readonly ring: Ring; readonly facts: BaseFacts }
  | { readonly ok: false; readonly problem: CoreProblem };

/** How far a tape may miss, as the company has it. */
export type TapeLimits = { readonly closingErrorIn: number; readonly joiningGapIn: number };

/**
 * A taped shape before its corners are rounded, closed.
 *
 * @param path Job path of the thing that has the shape, for the problem where it cannot be closed.
 */
export function baseRing(base: TapedBase, path: string, limits: TapeLimits): BaseRing {
  const made = closed(base, path, limits);
  if (!made.ok) return made;
  const at = `${path}.${base.kind}`;
  const crossed = selfCrossing(made.ring);
  if (crossed !== null) {
    const [first, second] = crossed;
    return refused('outline-crosses-itself', at, { first: `${first}`, second: `${second}` });
  }
  if (!(Math.abs(ringAreaSqIn(made.ring)) > 0)) return refused('outline-without-area', at, {});
  return made;
}

function closed(base: TapedBase, path: string, limits: TapeLimits): BaseRing {
  switch (base.kind) {
    case 'rectangle':
      return plain(rectangleRing(base));
    case 'trapezoid':
      return plain(trapezoidRing(base));
    case 'circle':
      return plain(circleRing(base));
    case 'sector':
      return plain(sectorRing(base));
    case 'corners':
      return plain(polygonRing(base.points));
    case 'sides':
      return walked(base.sides, path, limits);
    case 'four-sides':
      return fourSides(base, path, limits);
    case 'triangles':
      return triangles(base, path);
    case 'strip':
      return strip(base, path);
  }
}

function plain(ring: Ring): BaseRing {
  return { ok: true, ring, facts: { kind: 'plain' } };
}

function walked(
  sides: Extract<TapedBase, { kind: 'sides' }>['sides'],
  path: string,
  limits: TapeLimits,
): BaseRing {
  const { ring, closure } = closeTraverse(sides);
  if (closure.errorIn > limits.closingErrorIn) {
    return refused('sides-do-not-close', `${path}.sides`, {
      error: told(closure.errorIn),
      direction: formatNumber(degrees(closure.directionRad), 0),
      share: formatNumber(closure.errorRatio * 100, 2),
      allowed: toldMost(limits.closingErrorIn),
    });
  }
  return { ok: true, ring, facts: { kind: 'walked', closure } };
}

function fourSides(
  base: Extract<TapedBase, { kind: 'four-sides' }>,
  path: string,
  limits: TapeLimits,
): BaseRing {
  const { sidesIn, diagonalIn, otherDiagonalIn } = base;
  const made = fourSidesRing({ sidesIn, diagonalIn });
  if (!made.ok) {
    return refused('four-sides-impossible', `${path}.four-sides.sides.${made.edge - 1}`, {
      edge: `${made.edge}`,
      least: toldLeast(made.leastIn),
      most: toldMost(made.mostIn),
    });
  }
  if (otherDiagonalIn === null) {
    return fourSided(made.ring, made.otherDiagonalIn, null);
  }
  const { missIn, likely } = diagonalCheck({ sidesIn, diagonalIn, otherDiagonalIn });
  if (Math.abs(missIn) > limits.closingErrorIn) {
    return refused('diagonals-disagree', `${path}.four-sides.other-diagonal`, {
      miss: told(Math.abs(missIn)),
      computed: told(made.otherDiagonalIn),
      culprit: culpritOf(likely?.culprit),
      wouldBe: likely === null ? '' : told(likely.culprit.wouldBeIn),
    });
  }
  return fourSided(made.ring, made.otherDiagonalIn, missIn);
}

/** The reading to tape again first: a side by its number, or a diagonal by its key. */
function culpritOf(culprit: DiagonalCulprit | undefined): string {
  if (culprit === undefined) return '';
  if (culprit.what === 'side') return `${culprit.number}`;
  return culprit.number === 1 ? 'diagonal' : 'other-diagonal';
}

function fourSided(ring: Ring, otherDiagonalIn: number, missIn: number | null): BaseRing {
  return { ok: true, ring, facts: { kind: 'four-sides', otherDiagonalIn, missIn } };
}

function triangles(base: Extract<TapedBase, { kind: 'triangles' }>, path: string): BaseRing {
  const made = trianglesRing(base);
  if (made.ok) return plain(made.ring);
  const corner = base.corners[made.corner - FIRST_FREE_CORNER];
  const [first, second] = corner?.from ?? [0, 0];
  return refused(
    'triangle-impossible',
    `${path}.triangles.corners.${made.corner - FIRST_FREE_CORNER}.distances.${made.which}`,
    {
      corner: `${made.corner}`,
      first: `${first}`,
      second: `${second}`,
      least: toldLeast(made.leastIn),
      most: toldMost(made.mostIn),
    },
  );
}

/** Corners 1 and 2 are the ends of the base. */
const FIRST_FREE_CORNER = 3;

function strip(base: Extract<TapedBase, { kind: 'strip' }>, path: string): BaseRing {
  const made = stripRing(base);
  if (made.ok) {
    return {
      ok: true,
      ring: made.ring,
      facts: { kind: 'strip', lengthIn: made.lengthIn, turns: made.turns },
    };
  }
  const at = `${path}.strip.line.${made.piece - 1}`;
  const piece = `${made.piece}`;
  switch (made.reason) {
    case 'radius-too-small':
      return refused('strip-too-tight', `${at}.radius`, {
        piece,
        radius: told(made.haveIn),
        least: toldLeast(made.leastIn),
      });
    case 'setback-too-long':
      return refused('strip-setback-too-long', `${at}.back`, {
        piece,
        back: told(made.haveIn),
        most: toldMost(made.mostIn),
      });
    case 'turn-without-straight':
    case 'straight-too-short':
      return refused('strip-straight-too-short', at, {
        piece,
        length: told(made.haveIn),
        least: toldLeast(made.leastIn),
      });
    case 'width-changes-on-arc':
      return refused('strip-width-on-arc', at, { piece });
  }
}

function degrees(angleRad: number): number {
  return (angleRad * 180) / Math.PI;
}

function refused(code: string, path: string, parts: Readonly<Record<string, string>>): BaseRing {
  return { ok: false, problem: { code, path, parts } };
}
