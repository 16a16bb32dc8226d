import type { Heights, LevelNote, LevelPoint } from '../../../src/calculate/job.ts';
import type { CrewText, PublicText } from '../../../src/calculate/text.ts';

export const height = (on: string, valueIn: number): LevelNote => ({ on, kind: 'height', valueIn });
export const back = (on: string, valueIn: number): LevelNote => ({ on, kind: 'backsight', valueIn });
export const fore = (on: string, valueIn: number): LevelNote => ({ on, kind: 'foresight', valueIn });

/** A fixed point at the corner of the plan, 100 in above the datum. */
export function aPoint(changed: Partial<LevelPoint> = {}): LevelPoint {
  return {
    id: 'floor',
    label: 'Garage floor' as PublicText,
    at: { xIn: 0, yIn: 0 },
    heightIn: 100,
    kind: 'fixed',
    stoodOn: { kind: 'stays' },
    ...changed,
  };
}

export function someHeights(points: readonly LevelPoint[], notes: readonly LevelNote[] = []): Heights {
  return {
    datum: 'Nail in the curb' as CrewText,
    notes,
    closingErrorIn: notes.length === 0 ? null : 0.125,
    points: Object.fromEntries(points.map((point) => [point.id, point])),
  };
}
