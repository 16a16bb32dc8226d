import type { UnitSystem } from '../../calculate/job.ts';
import { clockFace } from '../../units/index.ts';
import type { Words } from '../../words/index.ts';

/** On a clock of 12 hours for a job in feet, of 24 for a metric one; past midnight it starts again. */
export function clockWords(timeHr: number, unitSystem: UnitSystem, words: Words): string {
  const { time, half } = clockFace(timeHr % 24, unitSystem === 'us' ? 12 : 24);
  return half === null ? time : words.materials.places[half](time);
}
