import { calcGrades } from '../../../src/calculate/grades/index.ts';
import type { Existing, LevelPoint, Slab } from '../../../src/calculate/job.ts';
import { calcLayout } from '../../../src/calculate/layout/index.ts';
import { calcLevels } from '../../../src/calculate/levels/index.ts';
import { calcOutline } from '../../../src/calculate/outline/index.ts';
import type { CrewText, PublicText } from '../../../src/calculate/text.ts';
import { anOldSlab, byId, rectangle, TAPE_LIMITS } from '../slabs.ts';

/** Under a slab that lies at the origin. */
export function oldAtOrigin(changed: Partial<Existing> = {}): Existing {
  return anOldSlab({ shape: rectangle(480, 216, { at: { xIn: 0, yIn: 0 } }), ...changed });
}

/** `id: [x, y, height]` in inches; a name that starts with `old` was read on that thing, with `dirt` on it. */
export type Spots = Readonly<Record<string, readonly [number, number, number]>>;

export function pointsAt(spots: Spots, kind: LevelPoint['kind'], stoodOn: LevelPoint['stoodOn'] = null) {
  return Object.entries(spots).map(
    ([id, [xIn, yIn, heightIn]]): LevelPoint => ({
      id,
      label: `Point ${id}` as PublicText,
      at: { xIn, yIn },
      heightIn,
      kind,
      stoodOn,
    }),
  );
}

export function graded(made: {
  readonly slabs: readonly Slab[];
  readonly points: readonly LevelPoint[];
  readonly existing?: readonly Existing[];
}) {
  const slabs = byId(...made.slabs);
  const existing = byId(...(made.existing ?? []));
  const outline = calcOutline({ slabs, existing, limits: TAPE_LIMITS });
  if (outline.problems.length > 0) throw new Error(JSON.stringify(outline.problems));
  const layout = calcLayout({
    shapes: outline.figures,
    outlines: outline.data.slabs,
    corners: outline.data.corners,
    lies: outline.data.lies,
    stepIn: 12,
    unitIn: 12,
  });
  const heights = {
    datum: 'Nail, called 100.00 ft' as CrewText,
    notes: [],
    closingErrorIn: null,
    points: byId(...made.points),
  };
  const levels = calcLevels({
    heights,
    existing,
    plans: outline.data.plans,
    corners: layout.data.corners,
  });
  return calcGrades({
    heights,
    points: levels.figures.points,
    slabs,
    existing,
    plans: outline.data.plans,
    corners: layout.data.corners,
  });
}
