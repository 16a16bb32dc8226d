import { distanceToEdgeIn, type Outline, type Point } from '../../geometry/index.ts';
import type { CoreProblem } from '../../problems/index.ts';
import { formatFeetInches, formatInches } from '../../units/index.ts';
import type { Drain, LevelPoint } from '../job.ts';
import { isOnSlab } from '../levels/index.ts';
import type { StringCorner } from '../outline/index.ts';
import type { DrainFigures } from './drain-figures.ts';
import type { TiedPoint } from './walk-points.ts';

/** The rim as fixed heights of the surface, in the line that a channel runs. */
export function drainPoints({ id, label, at }: Drain, { rim }: DrainFigures): readonly TiedPoint[] {
  return at.map((place, index) => {
    const point: LevelPoint = {
      id: at.length === 1 ? id : `${id}-${index + 1}`,
      label,
      at: place,
      heightIn: null,
      kind: 'fixed',
      stoodOn: { kind: 'stays' },
    };
    return { point, height: rim, path: `heights.drains.${id}.rim` };
  });
}

type Slabs = {
  readonly outlines: Readonly<Record<string, Outline>>;
  readonly corners: Readonly<Record<string, readonly StringCorner[]>>;
};

/** Where a drain is that no slab has, and a pipe that no water runs through. */
export function drainProblems({ id, at, rimIn, pipe }: Drain, slabs: Slabs): readonly CoreProblem[] {
  const path = `heights.drains.${id}`;
  const off = at.flatMap((place, index): CoreProblem[] => {
    const parts = offSlabs(place, slabs);
    return parts === null ? [] : [{ code: 'drain-off-slab', path: `${path}.at.${index}`, parts }];
  });
  if (pipe === null) return off;
  const overIn = pipe.invertIn + pipe.sizeIn - rimIn;
  const upIn = pipe.outletIn - pipe.invertIn;
  return [
    ...off,
    ...(overIn > 0
      ? [
          {
            code: 'invert-above-rim',
            path: `${path}.pipe.invert`,
            parts: { by: formatInches(overIn, 8) },
          } as const,
        ]
      : []),
    ...(upIn >= 0
      ? [
          {
            code: 'pipe-does-not-fall',
            path: `${path}.pipe.outlet`,
            parts: { by: formatInches(upIn, 8) },
          } as const,
        ]
      : []),
  ];
}

function offSlabs(
  at: Point,
  { outlines, corners }: Slabs,
): { readonly slab: string; readonly by: string } | null {
  const each = Object.entries(outlines);
  if (each.some(([id, outline]) => isOnSlab(outline, corners[id] ?? [], at))) return null;
  const [nearest] = each
    .map(([slab, outline]) => ({ slab, byIn: distanceToEdgeIn(outline, at) }))
    .toSorted((one, other) => one.byIn - other.byIn);
  return nearest === undefined ? null : { slab: nearest.slab, by: formatFeetInches(nearest.byIn, 8) };
}
