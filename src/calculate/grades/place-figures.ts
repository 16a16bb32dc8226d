import { heightAt, type Point, type Surface } from '../../geometry/index.ts';
import { type Figure, type FigureInput, figure, given, num } from '../figure.ts';
import type { Slab } from '../job.ts';
import { inputsByName } from '../parts.ts';
import type { GradePoint } from './points.ts';

export type PlaceFigures = {
  /** Top of the new slab above the datum [in]; below it where negative, as all heights here. */
  readonly finish: Figure;
  /** What is there now; only where the digging is known, as all that follows. */
  readonly existing?: Figure;
  /** Underside of the slab [in]. */
  readonly 'slab-bottom'?: Figure;
  /** Underside of the base [in]. */
  readonly 'base-bottom'?: Figure;
  /** From what is left when the old thing is gone down to the underside of the base [in]. */
  readonly dig?: Figure;
  /** From there up to the underside of the base [in]. */
  readonly fill?: Figure;
};

const READ_OFF = {
  method: 'on the plane of the three points around it; outside all of them on that of the nearest three',
};

/** Height of a surface at a place, from the points it runs through. */
export function heightFigure(surface: Surface, at: Point, points: readonly GradePoint[]): Figure {
  return figure({
    value: heightAt(surface, at),
    unit: 'in',
    decimals: 2,
    formula: READ_OFF,
    inputs: heightsOf(points),
  });
}

export function heightsOf(points: readonly GradePoint[]): Record<string, Figure> {
  return inputsByName(Object.fromEntries(points.map(({ point, height }) => [point.id, height])), 'In');
}

/**
 * How deep to dig at a place.
 *
 * @param gone From the top of the old thing to the bottom of what goes with it; null on bare ground.
 */
export function digFigures(made: {
  readonly slab: Slab;
  readonly finish: Figure;
  readonly existing: Figure;
  readonly gone: Figure | null;
}): Required<Omit<PlaceFigures, 'finish'>> {
  const { slab, finish, existing, gone } = made;
  const { thicknessIn, baseIn } = slab;
  const inches = (value: number, formula: string, inputs: Readonly<Record<string, FigureInput>>) =>
    figure({ value, unit: 'in', decimals: 2, formula, inputs });
  const at = (key: string) => `build.slabs.${slab.id}.${key}`;
  const slabBottom = inches(num(finish) - thicknessIn, 'finishIn - thicknessIn', {
    finishIn: finish,
    thicknessIn: given(at('thickness'), thicknessIn, 'in'),
  });
  const baseBottom = inches(num(slabBottom) - baseIn, 'slabBottomIn - baseIn', {
    slabBottomIn: slabBottom,
    baseIn: given(at('base'), baseIn, 'in'),
  });
  const leftIn = num(existing) - (gone === null ? 0 : num(gone));
  const left = gone === null ? 'existingIn' : 'existingIn - goneIn';
  const inputs = {
    existingIn: existing,
    ...(gone === null ? {} : { goneIn: gone }),
    baseBottomIn: baseBottom,
  };
  return {
    existing,
    'slab-bottom': slabBottom,
    'base-bottom': baseBottom,
    dig: inches(Math.max(0, leftIn - num(baseBottom)), `max(0, ${left} - baseBottomIn)`, inputs),
    fill: inches(Math.max(0, num(baseBottom) - leftIn), `max(0, baseBottomIn - (${left}))`, inputs),
  };
}
